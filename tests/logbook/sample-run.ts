/** A run of our own forge yard, whole, for the logbook's tests. */

import type { KeptRun, RunEntry } from '../../src/bench/ports.ts';

/** An entry as the bench would write it; `change` puts other fields in. */
export function entry(runId: string, seq: number, change: Partial<RunEntry> = {}): RunEntry {
  return {
    version: 1,
    runId,
    seq,
    at: 1_790_000_000_000 + seq * 1000,
    step: 'guard',
    heard: { text: 'guard closed', from: 'speech', confidence: 0.92 },
    event: { type: 'answer', fact: 'guard', state: 'closed' },
    outcome: 'moved',
    said: 'Guard closed.',
    ...change,
  };
}

/** A finished run with two entries and two readings. */
export function sampleRun(id: string): KeptRun {
  const source = { key: 'hash-of-texts', flow: '{"flow":1}', kind: '{"kind":1}', card: '{}' };
  return {
    head: {
      id,
      flowId: 'gate-hinge-pin',
      flowTitle: 'Gate hinge pin',
      flowVersion: 1,
      sourceKey: source.key,
      operator: 'Ilse, forge yard',
      startedAt: 1_790_000_000_000,
      endedAt: 1_790_000_900_000,
      status: 'finished',
      inputs: { diameter: 16, material: 'low-carbon-steel' },
      cardId: 'yard-lathe',
    },
    source,
    entries: [entry(id, 0), entry(id, 1, { event: null, outcome: 'asked' })],
    readings: [
      {
        ...{ step: 'inspect-pin', reading: 'pin', label: 'Pin diameter', unit: 'mm' },
        ...{ value: 15.98, lower: 15.957, upper: 16, verdict: 'within', at: 1_790_000_800_000 },
      },
      {
        ...{ step: 'inspect-length', reading: 'length', label: 'Length, "over all"' },
        ...{ unit: 'mm', value: -0.2, at: 1_790_000_850_000 },
      },
    ],
  };
}
