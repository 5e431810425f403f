import { describe, expect, it } from 'vitest';
import { beginJob, type FlowEvent, type FlowMachine, stepJob } from '../../src/flow/index.ts';
import { nearbyChart } from '../../src/proof/nearby-chart.ts';
import { stepperOf } from '../../src/proof/stepper.ts';
import { check, cut, planIn, step, tinyJob } from './tiny-walk.ts';

const job = tinyJob(
  check('first'),
  check('second', { needs: { guard: 'closed' } }),
  cut('third', 300),
);
const near = nearbyChart(job.machine, 'first', planIn(job, 'first').targets);

describe('the chart near a step', () => {
  it('holds the step, where it leads, and the end, and no other step', () => {
    expect(Object.keys(near.states).sort()).toEqual(['end', 'first', 'second']);
  });

  it('does with an event what the whole chart does', () => {
    const fact: FlowEvent = { type: 'fact', fact: 'motor', state: 'off' };
    for (const event of [fact, { type: 'hold' }, { type: 'interrupted' }] as const) {
      const seen = [job.machine, near].map((machine) => {
        const { value, context } = stepperOf(machine as FlowMachine)(standing(machine), event);
        return { value, context };
      });
      expect(seen[1]).toEqual(seen[0]);
    }
  });

  it('hears nothing in the steps that it leads to', () => {
    const answered = stepJob(job, beginJob(job), { type: 'fact', fact: 'motor', state: 'off' });
    const there = near.resolveState({ value: answered.value, context: answered.context });
    expect(answered.can({ type: 'hold' })).toBe(true);
    expect(there.can({ type: 'hold' })).toBe(false);
  });
});

function standing(machine: FlowMachine) {
  const { value, context } = beginJob(job);
  return machine.resolveState({ value, context });
}

describe('a chart that is altered', () => {
  it('is altered near the step as well', () => {
    const changed = tinyJob(check('first', { facts: { tool: 'clear' } }), step('second', {}));
    const other = nearbyChart(changed.machine, 'first', ['second']);
    const begun = other.resolveState({
      value: { first: 'open' },
      context: beginJob(changed).context,
    });
    expect(begun.can({ type: 'fact', fact: 'tool', state: 'clear' })).toBe(true);
    expect(begun.can({ type: 'fact', fact: 'motor', state: 'off' })).toBe(false);
  });
});
