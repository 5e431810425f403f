/** A run in counts, taken once when it ends. Pure. */

import type { KeptReading, RunEntry, RunTally } from '../bench/ports.ts';

/** Every judged reading counts, but where a size was taken again in the same step only the last. */
export function tallyOf(entries: readonly RunEntry[], readings: readonly KeptReading[]): RunTally {
  const outcomes = (outcome: RunEntry['outcome']) =>
    entries.filter((entry) => entry.outcome === outcome).length;
  const last = new Map(readings.map((one) => [`${one.step} ${one.reading}`, one.verdict]));
  const verdicts = (verdict: KeptReading['verdict']) =>
    [...last.values()].filter((one) => one === verdict).length;
  return {
    unclear: outcomes('unclear'),
    refused: outcomes('refused'),
    within: verdicts('within'),
    rework: verdicts('rework'),
    lost: verdicts('lost'),
    notes: entries.filter(({ event }) => event?.type === 'note').length,
    releases: entries.flatMap(({ event, outcome }) =>
      event?.type === 'release' && outcome === 'moved' ? [String(event.byName ?? '')] : [],
    ),
  };
}
