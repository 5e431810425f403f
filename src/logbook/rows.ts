/** The rows of the logbook, parsed on the way in and on the way out. */

import { z } from 'zod';
import type { KeptReading, RunEntry, RunHead, RunSource, RunTally } from '../bench/ports.ts';
import { LogbookFault, type Told } from './fault.ts';
import { issueText } from './issue-text.ts';

const id = z.string().min(1).max(200);
const time = z.number().nonnegative();
const count = z.number().int().nonnegative();

const runTally: z.ZodType<RunTally> = z.strictObject({
  unclear: count,
  refused: count,
  within: count,
  rework: count,
  lost: count,
  notes: count,
  releases: z.array(z.string()).readonly(),
});

export const runHead: z.ZodType<RunHead> = z.strictObject({
  id,
  flowId: id,
  flowTitle: z.string(),
  flowVersion: z.number().int().nonnegative(),
  sourceKey: id,
  operator: z.string(),
  operatorId: id.exactOptional(),
  pace: z.enum(['first-time', 'familiar', 'own-pace']).exactOptional(),
  language: z.string().max(8).exactOptional(),
  batch: z.strictObject({ id, piece: count.min(2) }).exactOptional(),
  startedAt: time,
  endedAt: time.exactOptional(),
  status: z.enum(['open', 'finished', 'given-up']),
  inputs: z.record(z.string(), z.union([z.number(), z.string()])),
  cardId: z.string(),
  tally: runTally.exactOptional(),
});

export const runSource: z.ZodType<RunSource> = z.strictObject({
  key: id,
  flow: z.string(),
  kind: z.string(),
  card: z.string(),
});

export const runEntry: z.ZodType<RunEntry> = z.strictObject({
  version: z.literal(1),
  runId: id,
  seq: z.number().int().nonnegative(),
  at: time,
  step: z.string(),
  heard: z.strictObject({
    text: z.string(),
    from: z.enum(['speech', 'key', 'touch', 'gauge', 'script']),
    confidence: z.number().min(0).max(1),
  }),
  understood: z.string().exactOptional(),
  event: z.record(z.string(), z.json()).nullable(),
  outcome: z.enum(['moved', 'refused', 'asked', 'unclear', 'note']),
  said: z.string().exactOptional(),
});

export const keptReading: z.ZodType<KeptReading> = z.strictObject({
  step: z.string(),
  reading: z.string(),
  label: z.string(),
  unit: z.string(),
  value: z.number(),
  lower: z.number().exactOptional(),
  upper: z.number().exactOptional(),
  verdict: z.enum(['within', 'rework', 'lost']).exactOptional(),
  at: time,
});

/** A reading with the run it is of and its place among the run's readings. */
export interface ReadingRow {
  readonly runId: string;
  readonly place: number;
  readonly reading: KeptReading;
}

export const readingRow: z.ZodType<ReadingRow> = z.strictObject({
  runId: id,
  place: z.number().int().nonnegative(),
  reading: keptReading,
});

/** A value kept under a key for the Toolroom and the settings; its owner knows its shape. */
export interface KeptValue {
  readonly key: string;
  readonly value: unknown;
}

export const keptValue: z.ZodType<KeptValue> = z.strictObject({ key: id, value: z.unknown() });

/** Parses what is about to be written. @throws LogbookFault 'unfit', naming the field */
export function toWrite<T>(shape: z.ZodType<T>, row: unknown, what: Told): T {
  const parsed = shape.safeParse(row);
  if (parsed.success) return parsed.data;
  const why = firstTrouble(parsed.error);
  throw new LogbookFault('unfit', (say) => say('cannotKeep', { what: what(say), why: why(say) }));
}

/** Parses what was read. @throws LogbookFault 'damaged', naming the field */
export function fromStore<T>(shape: z.ZodType<T>, row: unknown, what: Told): T {
  const parsed = shape.safeParse(row);
  if (parsed.success) return parsed.data;
  const why = firstTrouble(parsed.error);
  throw new LogbookFault('damaged', (say) => say('damaged', { what: what(say), why: why(say) }));
}

/** The result in a list, or an empty list when the row was damaged, which is reported. */
export function whole<T>(parse: () => T, report: (fault: LogbookFault) => void): readonly T[] {
  try {
    return [parse()];
  } catch (error) {
    if (!(error instanceof LogbookFault)) throw error;
    report(error);
    return [];
  }
}

function firstTrouble({ issues: [first] }: z.ZodError): Told {
  if (first === undefined) return (say) => say('noReason');
  return (say) => `${first.path.join('.')} ${issueText(first, say)}`;
}
