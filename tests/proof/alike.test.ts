import { describe, expect, it } from 'vitest';
import { beginJob, type FlowContext, type Job } from '../../src/flow/index.ts';
import { alikeWhere } from '../../src/proof/alike.ts';
import { isRuledOut } from '../../src/proof/condition.ts';
import { check, cut, gauge, tinyJob } from './tiny-walk.ts';

const needs = { guard: 'closed' };
const job = tinyJob(check('first'), check('second', { needs }), gauge('size'), cut('turn', 300));

function at(one: Job, step: string, state: string, held: FlowContext['held'] = null) {
  const context: FlowContext = { ...beginJob(one).context, held };
  return one.machine.resolveState({ value: { [step]: state } as never, context });
}

const alike = (step: string, state: string, type: string, held: FlowContext['held'] = null) =>
  alikeWhere(at(job, step, state, held), 'is it taken', [type]).alike;

describe('a question is one at two places', () => {
  it('where the arrows that it asks about are the same', () => {
    expect(alike('second', 'open', 'stop')).toBe(alike('first', 'open', 'stop'));
  });

  it('but not where another answer is wanted', () => {
    expect(alike('second', 'gate', 'fact')).not.toBe(alike('first', 'open', 'fact'));
  });

  it('but not where a hold goes on elsewhere', () => {
    const held = (to: 'gate' | 'open') =>
      alike('second', 'hold', 'carry-on', { by: 'person', to, lost: [] });
    expect(held('gate')).not.toBe(held('open'));
  });

  it('but not where an arrow looks at the sizes of its step', () => {
    expect(alike('size', 'open', 'reading')).toBeUndefined();
  });
});

describe('a hazard is ruled out', () => {
  const never = { all: [{ moment: 'turning' }, { fact: 'guard', not: 'closed' }] } as const;

  it('where its moment cannot be, whatever is believed', () => {
    expect(isRuledOut(never, job, at(job, 'turn', 'gate'))).toBe(true);
    expect(isRuledOut(never, job, at(job, 'turn', 'cutting'))).toBe(false);
  });

  it('of several that would do, when each of them is', () => {
    const open = at(job, 'first', 'open');
    expect(isRuledOut({ any: [never, { asking: 'guard' }] }, job, open)).toBe(true);
    expect(isRuledOut({ any: [never, { asking: 'motor' }] }, job, open)).toBe(false);
  });
});
