/** Which part of the machine is lit, and which way it is shown to go. */

import { describe, expect, it } from 'vitest';
import { viewNow } from '../../../src/bench/index.ts';
import { partNow } from '../../../src/screens/machine/part-now.ts';
import { begun, hears, shippedJob, throughGate, toBar, toFirstGate } from '../../bench/scripted.ts';

const at = (...words: readonly string[]) => {
  const { state } = hears(begun(), ...toBar, ...toFirstGate, ...words);
  return partNow(state.job, viewNow(state));
};
const cut = ['spindle running', 'tool clear', 'spindle stopped'];

describe('the part that is lit', () => {
  it('is the one an open condition is about', () => {
    expect(at('tool clear', 'speed set')).toEqual({ part: 'guard' });
  });

  it('is the switch for start and stop', () => {
    expect(at(...throughGate)).toEqual({ part: 'selector' });
    expect(at(...throughGate, 'spindle running', 'tool clear')).toEqual({ part: 'selector' });
  });

  it('is what the hands move while it cuts, with the way it goes', () => {
    const feeding = { part: 'cross-slide', direction: 'in' };
    expect(at(...throughGate, 'spindle running')).toEqual(feeding);
    const along = { part: 'carriage-wheel', direction: 'towards-chuck' };
    expect(at(...throughGate, ...cut, ...cut, 'next', 'spindle running')).toEqual(along);
  });

  it('is the work while it is measured, and nothing is to be moved', () => {
    expect(at(...throughGate, ...cut, ...cut, 'next', ...cut)).toEqual({ part: 'work' });
  });

  it('has no arrow while the run is held, nor in the walk of a trouble', () => {
    const held = [...throughGate, 'spindle running', 'hold'];
    expect(at(...held).direction).toBeUndefined();
    expect(at(...held, 'spindle stopped', 'tool clear').direction).toBeUndefined();
    const walk = [...throughGate, 'spindle running', 'poor finish', 'spindle stopped'];
    expect(at(...walk, 'tool locked', 'next', 'next').direction).toBeUndefined();
  });

  it('is shown going its way in every cut of the hinge pin', () => {
    const job = shippedJob();
    const cuts = [...job.plans.values()].filter(({ powered }) => powered);
    expect(cuts.length).toBeGreaterThan(8);
    const bare = cuts.filter(({ step }) => {
      const value = { [step.id]: 'cutting' };
      const { state } = begun();
      const snapshot = job.machine.resolveState({ value, context: state.snapshot.context });
      return partNow(job, viewNow({ ...state, job, snapshot })).direction === undefined;
    });
    expect(bare.map(({ step }) => step.id)).toEqual([]);
  });
});
