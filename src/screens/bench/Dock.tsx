/** The row that never moves: what to do in an emergency, hold, and on. */

import { Icon } from '../frame/Icon.tsx';
import { type Say, SayButton } from './SayButton.tsx';
import type { Scene } from './scene.ts';

interface DockProps {
  readonly scene: Scene;
  readonly say: Say;
}

export function Dock({ scene, say }: DockProps) {
  return (
    <nav class="dock" aria-label="Always here">
      <SayButton word="stop" say={say} shortcut="s" look="dock-stop">
        <Icon name="hand" />
        <span class="say-word">Stop: what to do</span>
      </SayButton>
      {scene.layout === 'held' ? (
        <p class="dock-held">
          <Icon name="hold" />
          Held
        </p>
      ) : (
        <SayButton word="hold" say={say} shortcut="h" look="dock-hold">
          <Icon name="hold" />
          <span class="say-word">Hold</span>
        </SayButton>
      )}
      <Onward scene={scene} say={say} />
    </nav>
  );
}

/** "Next", or "carry on" while held. It can always be pressed: when it leads nowhere, it is told what is missing. */
function Onward({ scene, say }: DockProps) {
  if (scene.waiting) return <p class="dock-wait">Answer the number</p>;
  const word = scene.layout === 'held' ? 'carry on' : 'next';
  const look = scene.ready ? 'dock-next main' : 'dock-next';
  return (
    <SayButton word={word} say={say} shortcut="Space" look={look}>
      <span class="say-word">{word === 'next' ? 'Next' : 'Carry on'}</span>
      {scene.ready ? <Icon name="next" /> : <span class="say-hint">{missing(scene)}</span>}
    </SayButton>
  );
}

function missing(scene: Scene): string {
  if (scene.list.number) return 'size first';
  if (scene.choices.length > 0) return 'choose first';
  return `${scene.open} open`;
}
