/** Readings of a run, each against its limits. */

import type { KeptReading } from '../../bench/index.ts';
import {
  type Figure,
  formatOf,
  type Job,
  judgedFigure,
  type ReadingsHeld,
} from '../../flow/index.ts';
import { logbookTexts, type Say } from '../../texts/index.ts';
import { type Quantity, toBase } from '../../trade/index.ts';
import { AskWhy } from '../frame/AskWhy.tsx';
import { ToleranceBar } from '../plots/ToleranceBar.tsx';
import { useLanguage, useSay } from '../use-say.ts';
import { sizeText, VERDICTS } from './verdict-words.ts';

interface ReadingsListProps {
  readonly readings: readonly KeptReading[];
  /** Tells decimals and sides; without it numbers are shown as they are kept. */
  readonly job: Job | null;
  /** What was measured in all: limits can stand on it. Without it nothing tells where it comes from. */
  readonly held?: ReadingsHeld | undefined;
  /** Draws readings that were judged as bars. */
  readonly bars?: boolean;
}

/** What ends a size comes first; readings between passes and of the stock follow, smaller. */
export function ReadingsList({ readings, job, held, bars = false }: ReadingsListProps) {
  const say = useSay(logbookTexts);
  if (readings.length === 0) return <p class="soft">{say('nothingMeasured')}</p>;
  const ends = (reading: KeptReading) => job?.flow.steps.get(reading.step)?.kind === 'inspect';
  const rows = (list: readonly KeptReading[]) =>
    list.map((reading) => (
      <li key={`${reading.step} ${reading.at}`} class="reading" data-verdict={reading.verdict}>
        <Row
          reading={reading}
          decimals={decimalsOf(reading, job)}
          verdict={verdictText(reading, job, say)}
          why={whyOf(reading, job, held)}
        />
        {bars && <Bar reading={reading} job={job} />}
      </li>
    ));
  return (
    <>
      <ul class="readings" aria-label={say('readings')}>
        {rows(readings.filter(ends))}
      </ul>
      <ul class="readings on-the-way" aria-label={say('readingsOnTheWay')}>
        {rows(readings.filter((reading) => !ends(reading)))}
      </ul>
    </>
  );
}

interface RowProps {
  readonly reading: KeptReading;
  readonly decimals: number | undefined;
  readonly verdict: string | null;
  readonly why: readonly Figure[];
}

function Row({ reading, decimals, verdict, why }: RowProps) {
  const say = useSay(logbookTexts);
  const language = useLanguage();
  const { label, value, unit, lower, upper } = reading;
  return (
    <>
      <span class="reading-label">{label}</span>
      <AskWhy figures={why} look="reading-value">
        {sizeText(value, unit, language, decimals)}
      </AskWhy>
      {lower !== undefined && upper !== undefined && (
        <span class="reading-limits">
          {say('limits', {
            lower: sizeText(lower, '', language, decimals),
            upper: sizeText(upper, unit, language, decimals),
          })}
        </span>
      )}
      {verdict !== null && <span class="reading-verdict">{verdict}</span>}
    </>
  );
}

function whyOf(
  { step, value, unit, reading }: KeptReading,
  job: Job | null,
  held: ReadingsHeld | undefined,
): readonly Figure[] {
  const quantity = job?.flow.scope.readings.get(reading)?.reading.quantity;
  if (!job || !held || quantity === undefined) return [];
  const figure = judgedFigure(job, held, step, toBase(value, unit, quantity as Quantity));
  return figure ? [figure] : [];
}

/** Only readings that end a size are drawn: between passes every one is above its limits. */
function Bar({ reading, job }: { readonly reading: KeptReading; readonly job: Job | null }) {
  const step = job?.flow.steps.get(reading.step);
  const { lower, upper, value, verdict, label, unit } = reading;
  if (lower === undefined || upper === undefined || step?.kind !== 'inspect') return null;
  return (
    <ToleranceBar
      title={label}
      lower={lower}
      upper={upper}
      reading={value}
      side={step.side}
      verdict={verdict}
      decimals={decimalsOf(reading, job)}
      unit={unit}
    />
  );
}

/** Between passes there is always something left: that is no fault of the piece. */
function verdictText(
  { step, verdict }: KeptReading,
  job: Job | null,
  say: Say<typeof logbookTexts>,
): string | null {
  if (verdict === undefined) return null;
  const between = verdict === 'rework' && job?.flow.steps.get(step)?.kind === 'passes';
  return say(between ? 'betweenPasses' : VERDICTS[verdict]);
}

function decimalsOf({ step: id }: KeptReading, job: Job | null): number | undefined {
  const step = job?.flow.steps.get(id);
  if (!job || !step || !('reading' in step)) return undefined;
  return formatOf(step.reading.quantity as Quantity, job.card.units, step.reading).decimals;
}
