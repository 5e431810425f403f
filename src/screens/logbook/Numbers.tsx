/** The numbers a job was begun with, and what they came to: each tells where it comes from. */

import type { RunState } from '../../bench/index.ts';
import { inputFigures, workingFigures } from '../../flow/index.ts';
import { whyTexts } from '../../texts/index.ts';
import { WhyFigures } from '../frame/WhyFigures.tsx';
import { useSay } from '../use-say.ts';

type NumbersProps = Pick<RunState, 'job' | 'snapshot'>;

export function Numbers({ job, snapshot }: NumbersProps) {
  const say = useSay(whyTexts);
  const given = inputFigures(job, snapshot);
  const worked = workingFigures(job, snapshot);
  if (given.length + worked.length === 0) return null;
  return (
    <>
      <section class="stack" aria-labelledby="kept-numbers">
        <h2 id="kept-numbers">{say('numbersGiven')}</h2>
        <WhyFigures label={say('numbersGiven')} figures={given} />
      </section>
      <section class="stack" aria-labelledby="kept-worked">
        <h2 id="kept-worked">{say('workedOut')}</h2>
        <WhyFigures label={say('workedOut')} figures={worked} />
      </section>
    </>
  );
}
