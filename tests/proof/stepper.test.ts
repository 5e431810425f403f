import { describe, expect, it } from 'vitest';
import { beginJob, type FlowSnapshot, positionOf, stepJob } from '../../src/flow/index.ts';
import { stepperOf } from '../../src/proof/stepper.ts';
import { bigFlow } from './big-flow.ts';
import { jobOf } from './both-walks.ts';

const job = jobOf({
  ...(bigFlow(10) as object),
  gates: {},
  steps: [
    { id: 'ask', title: 'Ask', say: 'Ask.', kind: 'check', facts: { motor: 'off' } },
    { id: 'tell', title: 'Tell', say: 'Tell.', kind: 'tell', needs: { motor: 'off' } },
  ],
});
if (!job) throw new Error('The flow cannot be read.');
const answer = { type: 'fact', fact: 'motor', state: 'off' } as const;

describe('small steps', () => {
  const { machine } = job;
  const step = stepperOf(machine);
  const at = (one: FlowSnapshot) => Object.values(positionOf(one)).join(' ');

  it('go one arrow at a time: the answer, the way out, the gate', () => {
    const answered = step.first(beginJob(job), answer);
    const out = step.follow(answered);
    const opened = step.follow(out);
    expect([answered, out, opened].map(at)).toEqual(['ask open', 'tell gate', 'tell open']);
    expect(step.follow(opened)).toBe(opened);
  });

  it('come to where the whole step comes', () => {
    let one = step.first(beginJob(job), answer);
    for (let next = step.follow(one); next !== one; next = step.follow(one)) one = next;
    const whole = stepJob(job, beginJob(job), answer);
    expect(one.value).toEqual(whole.value);
    expect(one.context).toEqual(whole.context);
  });

  it('give the very snapshot back where an event is refused', () => {
    const begun = beginJob(job);
    expect(step.first(begun, { type: 'carry-on' })).toBe(begun);
  });
});
