/** What the numbers of a job come to before it is begun, each with its "why that?". */

import { useMemo } from 'preact/hooks';
import { type Card, type Flow, workingFigures, workOut } from '../../flow/index.ts';
import { whyTexts } from '../../texts/index.ts';
import { WhyFigures } from '../frame/WhyFigures.tsx';
import { useSay } from '../use-say.ts';
import { type Draft, readDraft } from './draft.ts';

interface WorkedOutProps {
  readonly flow: Flow;
  readonly card: Card | undefined;
  readonly draft: Draft;
}

/** Nothing while a field cannot be read: the field says so itself. */
export function WorkedOut({ flow, card, draft }: WorkedOutProps) {
  const say = useSay(whyTexts);
  const { typed, proposed } = draft;
  const worked = useMemo(() => {
    if (!card) return null;
    const operator = 'anyone';
    const read = readDraft(flow, { operator, cardId: card.id, proposed, typed }, card.units);
    return read.ok ? workOut(flow, card, read.inputs) : null;
  }, [flow, card, proposed, typed]);
  if (!worked || !card) return null;
  return (
    <section class="stack" aria-labelledby="worked-out" aria-live="polite">
      <h2 id="worked-out">{say('workedOut')}</h2>
      {worked.ok ? (
        <>
          <p class="hint">{say('workedOutHint')}</p>
          <WhyFigures
            label={say('workedOut')}
            figures={workingFigures({ flow, card, numbers: worked.numbers }, nothingMeasured)}
          />
        </>
      ) : (
        <ul class="faults">
          {worked.faults.map((fault) => (
            <li key={fault}>{say('notYet', { fault })}</li>
          ))}
        </ul>
      )}
    </section>
  );
}

const nothingMeasured = { context: { readings: {} } };
