/** The pieces of a batch, size by size: what each piece measured, and whether it drifts. Pure. */

import { dialOf, type Job } from '../flow/index.ts';
import { answerRule, findRule, type RuleAnswer, toBase } from '../trade/index.ts';
import type { KeptReading } from './ports.ts';

/** Readings of the pieces made before this one, the first made first. */
export type EarlierPieces = readonly (readonly KeptReading[])[];

/** One size of the drawing over the pieces of a batch. */
export interface Characteristic {
  /** "step/reading". */
  readonly id: string;
  readonly step: string;
  readonly label: string;
  readonly unit: string;
  readonly lower: number;
  readonly upper: number;
  /** In `unit`, one a piece; a piece where it was not taken is left out. */
  readonly values: readonly number[];
}

/**
 * Sizes that end in an inspection, and those that stand in the drawing; where a flow has none, those of its passes.
 * The limits are the latest.
 */
export function characteristics(job: Job, pieces: EarlierPieces): readonly Characteristic[] {
  const all = byId(pieces);
  const drawn = job.flow.file.piece?.features.map(({ reading }) => reading) ?? [];
  const counts = all.filter(({ id, step }) => {
    const [, reading] = id.split('/');
    return job.flow.steps.get(step)?.kind === 'inspect' || drawn.includes(reading);
  });
  return counts.length > 0 ? counts : all;
}

/** Whether the cross dial makes the size: it is that of passes, or is held to the same limits. A length is not. */
export function isMadeOnDial({ flow }: Job, { step }: Characteristic): boolean {
  const own = flow.steps.get(step);
  if (!own || !('lower' in own)) return false;
  const limits = (one: typeof own) => JSON.stringify([one.lower, one.upper]);
  return flow.file.steps.some((one) => one.kind === 'passes' && limits(one) === limits(own));
}

function byId(pieces: EarlierPieces): readonly Characteristic[] {
  const found = new Map<string, Characteristic>();
  for (const readings of pieces) {
    for (const [id, reading] of lastOfEach(readings)) {
      const { step, label, unit, value, lower, upper } = reading;
      if (lower === undefined || upper === undefined) continue;
      const values = [...(found.get(id)?.values ?? []), value];
      found.set(id, { id, step, label, unit, lower, upper, values });
    }
  }
  return [...found.values()];
}

/** A size that was reworked counts as it ended. */
function lastOfEach(readings: readonly KeptReading[]): ReadonlyMap<string, KeptReading> {
  return new Map(readings.map((one) => [`${one.step}/${one.reading}`, one]));
}

/** What the trade's rule says of the drift of a size, in mm. */
export function driftOf(job: Job, one: Characteristic): RuleAnswer {
  const rule = findRule('drift', job.flow.language);
  if (!rule) return { ok: false, fault: 'The trade has no rule "drift".' };
  const mm = (value: number) => toBase(value, one.unit, 'length');
  const { crossReads, crossDivision } = dialOf(job.card);
  const step = job.flow.steps.get(one.step);
  return answerRule(rule, {
    readings: one.values.map(mm),
    lower: mm(one.lower),
    upper: mm(one.upper),
    side: step && 'side' in step ? step.side : 'outside',
    dial: isMadeOnDial(job, one) ? crossReads : 'diameter',
    graduation: crossDivision,
  });
}

/** So many pieces stand together in one point of the chart (common practice: four or five; pairs while there are few). */
export function groupSize(pieces: number): number {
  if (pieces >= 20) return 5;
  return pieces >= 12 ? 3 : 2;
}

/** Whole groups in the order in which the pieces were made; what is left over waits for its group. */
export function groupsOf(values: readonly number[]): readonly (readonly number[])[] {
  const size = groupSize(values.length);
  return Array.from({ length: Math.floor(values.length / size) }, (_, at) =>
    values.slice(at * size, (at + 1) * size),
  );
}
