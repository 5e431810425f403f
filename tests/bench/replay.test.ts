import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { comeBack, replayRun, saidNow } from '../../src/bench/index.ts';
import {
  begun,
  head,
  hears,
  shippedJob,
  type Turn,
  throughGate,
  toBar,
  toFirstGate,
} from './scripted.ts';

const core = ({ state }: Turn) => ({
  value: state.snapshot.value,
  context: state.snapshot.context,
  readings: state.readings,
  inputs: state.job.numbers.inputs,
  running: state.job.numbers.running,
  seq: state.seq,
});

/** Says one of the words that count now, chosen by `pick`. */
function anyWord(turn: Turn, pick: number): Turn {
  const { items, number } = saidNow(turn.state);
  const words = [
    ...items.map((item) => item.phrases[0] ?? ''),
    ...(number
      ? [String(number.min), String(number.max), String((number.min + number.max) / 2)]
      : []),
  ];
  return hears(turn, words[pick % words.length] ?? 'next');
}

describe('a run is its entries, replayed', () => {
  test('every run comes back to the same step, facts and readings', () => {
    const job = shippedJob();
    fc.assert(
      fc.property(fc.array(fc.nat({ max: 1_000 }), { maxLength: 60 }), (picks) => {
        const turn = picks.reduce(anyWord, hears(begun(), ...toBar));
        const back = replayRun(job, head, turn.entries);
        if (!back.ok) throw new Error(back.fault);
        expect({ ...core({ ...turn, state: back.state }) }).toEqual(core(turn));
      }),
      { seed: 20, numRuns: 40 },
    );
  });

  test('a missing entry is refused with its number', () => {
    const { entries } = hears(begun(), ...toBar);
    const back = replayRun(shippedJob(), head, [...entries.slice(0, 2), ...entries.slice(3)]);
    expect(back).toEqual({ ok: false, fault: 'Entry 2 of the run is missing; entry 3 follows.' });
  });

  test('after a break it says where we were and asks for every fact before anything turns', () => {
    const turn = hears(begun(), ...toBar, ...toFirstGate, ...throughGate, 'spindle running');
    const step = comeBack(turn.state, 9_000);
    const [append, say] = step.effects;
    expect(append?.kind === 'append' && append.entry.event).toEqual({ type: 'interrupted' });
    expect(say?.kind === 'say' && say.line).toBe(
      'Back after a break. We were at: Face the end. Stop the spindle. Say spindle stopped.',
    );
    expect(new Set(Object.values(step.state.snapshot.context.facts))).toEqual(new Set(['unknown']));
  });
});
