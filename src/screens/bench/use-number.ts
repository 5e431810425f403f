/** The number that is being typed. It goes when the question it answers goes. */

import { useState } from 'preact/hooks';
import type { Scene } from './scene.ts';

interface Typed {
  readonly question: string;
  readonly text: string;
}

export function useNumber(scene: Scene, take: (text: string) => void) {
  const question = `${scene.view.step.id} ${scene.view.phase} ${scene.list.number?.reading.id}`;
  const [typed, setTyped] = useState<Typed>({ question, text: '' });
  const text = typed.question === question ? typed.text : '';
  const type = (next: string) => setTyped({ question, text: next });
  return {
    text,
    type,
    take: () => {
      if (text === '') return;
      type('');
      take(text);
    },
  };
}
