/** The row that never moves: what to do in an emergency, hold, and on. */

import { commandSaid } from '../../flow/index.ts';
import { dockTexts, type Say as Texts } from '../../texts/index.ts';
import { Icon } from '../frame/Icon.tsx';
import { useLanguage, useSay } from '../use-say.ts';
import { type Say, SayButton } from './SayButton.tsx';
import type { Scene } from './scene.ts';

interface DockProps {
  readonly scene: Scene;
  readonly say: Say;
}

export function Dock({ scene, say }: DockProps) {
  const text = useSay(dockTexts);
  return (
    <nav class="dock" aria-label={text('always')}>
      <SayButton word="stop" say={say} shortcut="s" look="dock-stop">
        <Icon name="hand" />
        <span class="say-word">{text('stop')}</span>
      </SayButton>
      {scene.layout === 'held' ? (
        <p class="dock-held">
          <Icon name="hold" />
          {text('held')}
        </p>
      ) : (
        <SayButton word="hold" say={say} shortcut="h" look="dock-hold">
          <Icon name="hold" />
          <span class="say-word">{text('hold')}</span>
        </SayButton>
      )}
      <Onward scene={scene} say={say} />
    </nav>
  );
}

/** "Next", or "carry on" while held. It can always be pressed: when it leads nowhere, it is told what is missing. */
function Onward({ scene, say }: DockProps) {
  const text = useSay(dockTexts);
  const language = useLanguage();
  if (scene.waiting) return <p class="dock-wait">{text('answerNumber')}</p>;
  const word = scene.layout === 'held' ? 'carry on' : 'next';
  const look = scene.ready ? 'dock-next main' : 'dock-next';
  return (
    <SayButton word={word} say={say} shortcut="Space" look={look}>
      <span class="say-word">{capital(commandSaid(language, word))}</span>
      {scene.ready ? <Icon name="next" /> : <span class="say-hint">{missing(scene, text)}</span>}
    </SayButton>
  );
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

function missing(scene: Scene, text: Texts<typeof dockTexts>): string {
  if (scene.list.number) return text('sizeFirst');
  if (scene.choices.length > 0) return text('chooseFirst');
  return text('open', { n: scene.open });
}
