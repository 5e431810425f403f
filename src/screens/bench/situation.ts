/** What the keys may mean in a scene: read from the one list, like the buttons. Pure. */

import type { KeySituation } from './keys.ts';
import { type Scene, wordOf } from './scene.ts';

/** `keys` is fact → key; `typed` is the number that is being typed. */
export function situationOf(
  scene: Scene,
  typed: string,
  keys: ReadonlyMap<string, string>,
): KeySituation {
  const facts = new Map<string, string>();
  for (const { fact, met, ask } of scene.gate) {
    const key = keys.get(fact);
    if (!met && ask && key !== undefined) facts.set(key, ask.word);
  }
  return {
    held: scene.layout === 'held',
    numberUnit: scene.list.number?.unit ?? null,
    waiting: scene.waiting !== null,
    typed,
    choices: scene.choices.map(wordOf),
    facts,
  };
}
