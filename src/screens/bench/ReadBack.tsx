/** A number that was heard, shown back large. Only its answers take it or drop it. */

import type { Figure } from '../../flow/index.ts';
import { AskWhy } from '../frame/AskWhy.tsx';
import { Icon } from '../frame/Icon.tsx';
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
  const { value, unit, decimals, far } = waiting;
  const take = far ? 'keep' : 'correct';
  return (
    <section class="read-back" aria-label="Read back">
      <p class="read-back-value" aria-live="polite">
        <span class="read-back-heard">Heard</span>
        <span class="figure-number">{value.toFixed(decimals)}</span>
        <span class="figure-unit"> {unit}</span>
      </p>
      {far && expected !== undefined && (
        <div class="read-back-far">
          <AskWhy figures={why} look="read-back-expected">
            Expected near {expected.toFixed(decimals)} {unit}. Measure again, or keep it.
          </AskWhy>
        </div>
      )}
      <div class="read-back-answers">
        <SayButton word="wrong" say={say} shortcut="x" look="answer">
          <Icon name="rub" />
          <span class="say-word">wrong</span>
        </SayButton>
        <SayButton word={take} say={say} shortcut={far ? 'k' : 'c'} look="answer main" gate>
          <Icon name="tick" />
          <span class="say-word">{take}</span>
        </SayButton>
      </div>
    </section>
  );
}
