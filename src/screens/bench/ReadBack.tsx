/** A number that was heard, shown back large. Only its answers take it or drop it. */

import { commandSaid, type Figure } from '../../flow/index.ts';
import { decimalIn, dockTexts, unitIn } from '../../texts/index.ts';
import { AskWhy } from '../frame/AskWhy.tsx';
import { Icon } from '../frame/Icon.tsx';
import { useLanguage, useSay } from '../use-say.ts';
import { type Say, SayButton } from './SayButton.tsx';
import type { Waiting } from './scene.ts';

interface ReadBackProps {
  readonly waiting: Waiting;
  readonly expected: number | undefined;
  readonly say: Say;
  /** What stands behind the size that was expected. */
  readonly why: readonly Figure[];
}

export function ReadBack({ waiting, expected, say, why }: ReadBackProps) {
  const text = useSay(dockTexts);
  const language = useLanguage();
  const { value, decimals, far } = waiting;
  const unit = unitIn(language, waiting.unit);
  const size = (one: number) => decimalIn(language, one, decimals);
  const take = far ? 'keep' : 'correct';
  return (
    <section class="read-back" aria-label={text('readBack')}>
      <p class="read-back-value" aria-live="polite">
        <span class="read-back-heard">{text('heard')}</span>
        <span class="figure-number">{size(value)}</span>
        <span class="figure-unit"> {unit}</span>
      </p>
      {far && expected !== undefined && (
        <div class="read-back-far">
          <AskWhy figures={why} look="read-back-expected">
            {text('expected', { size: `${size(expected)} ${unit}` })}
          </AskWhy>
        </div>
      )}
      <div class="read-back-answers">
        <SayButton word="wrong" say={say} shortcut="x" look="answer">
          <Icon name="rub" />
          <span class="say-word">{commandSaid(language, 'wrong')}</span>
        </SayButton>
        <SayButton word={take} say={say} shortcut={far ? 'k' : 'c'} look="answer main" gate>
          <Icon name="tick" />
          <span class="say-word">{commandSaid(language, take)}</span>
        </SayButton>
      </div>
    </section>
  );
}
