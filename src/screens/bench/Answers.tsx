/** What answers the step now: the gate's words, a choice, a number, or the answer to a number that was read back. */

import type { Figure } from '../../flow/index.ts';
import { dockTexts } from '../../texts/index.ts';
import { useSay } from '../use-say.ts';
import { Gate } from './Gate.tsx';
import type { KeySituation } from './keys.ts';
import { meaningOfKey } from './keys.ts';
import { NumberPad } from './NumberPad.tsx';
import { ReadBack } from './ReadBack.tsx';
import { type Say, SayButton } from './SayButton.tsx';
import { type Scene, wordOf } from './scene.ts';
import type { useNumber } from './use-number.ts';

interface AnswersProps {
  readonly scene: Scene;
  readonly keys: ReadonlyMap<string, string>;
  readonly say: Say;
  readonly number: ReturnType<typeof useNumber>;
  readonly situation: KeySituation;
  /** What a reading is held against, each with its why. */
  readonly bounds: readonly Figure[];
}

export function Answers({ scene, keys, say, number, situation, bounds }: AnswersProps) {
  const sayDock = useSay(dockTexts);
  const { waiting, list, urgent } = scene;
  const press = (key: string) => {
    const meaning = meaningOfKey(key, situation);
    if (meaning?.kind === 'type') number.type(meaning.typed);
  };
  return (
    <>
      {waiting && (
        <ReadBack
          waiting={waiting}
          expected={list.number?.expected}
          say={say}
          why={bounds.filter(({ id }) => id === 'expected')}
        />
      )}
      {list.number && (!waiting || number.text !== '') && (
        <NumberPad
          wanted={list.number}
          why={bounds.filter(({ id }) => id !== 'expected')}
          typed={number.text}
          onType={number.type}
          onTake={number.take}
          onKey={press}
        />
      )}
      {!waiting && (
        <Gate
          key={`${scene.view.step.id} ${scene.view.phase}`}
          lines={scene.gate}
          keys={keys}
          say={say}
          remedies={scene.layout !== 'cutting'}
        />
      )}
      <Choices scene={scene} say={say} />
      {urgent.length > 0 && (
        <section class="troubles" aria-label={sayDock('trouble')}>
          {urgent.map((item) => (
            <SayButton key={item.id} word={wordOf(item)} say={say} look="small" gate />
          ))}
        </section>
      )}
    </>
  );
}

function Choices({ scene, say }: Pick<AnswersProps, 'scene' | 'say'>) {
  const text = useSay(dockTexts);
  const answers = [...scene.answers, ...scene.offers];
  if (scene.choices.length + answers.length === 0) return null;
  return (
    <section
      class="choices"
      aria-label={text('choose')}
      data-question={scene.question ? '' : undefined}
    >
      {scene.choices.map((item, index) => (
        <SayButton
          key={item.id}
          word={wordOf(item)}
          say={say}
          shortcut={String(index + 1)}
          look="choice"
          gate
        />
      ))}
      {answers.map((item) => (
        <SayButton key={item.id} word={wordOf(item)} say={say} look="choice" gate />
      ))}
    </section>
  );
}
