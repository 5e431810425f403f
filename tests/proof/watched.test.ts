import { describe, expect, it } from 'vitest';
import { assign } from 'xstate';
import { beginJob, type FlowContext, type FlowMachine } from '../../src/flow/index.ts';
import { prove } from '../../src/proof/index.ts';
import { nearbyChart } from '../../src/proof/nearby-chart.ts';
import { stepperOf } from '../../src/proof/stepper.ts';
import { askedStates } from '../../src/proof/told-apart.ts';
import { KnownVariables, Variables } from '../../src/proof/variables.ts';
import { Unseeable } from '../../src/proof/walk-limits.ts';
import { Lens, watched } from '../../src/proof/watched.ts';
import { withGuards } from './altered-job.ts';
import { check, cut, tinyJob } from './tiny-walk.ts';

const job = tinyJob(check('first', { needs: { guard: 'closed' } }), check('last'));
const cutJob = tinyJob(cut('turn', 300), check('last'));
const variables = new Variables(job, new KnownVariables(job.flow.kind, askedStates(job)));
const facts = Object.fromEntries(
  variables.all.filter(({ kind }) => kind === 'fact').map(({ key, token }) => [key, token]),
);
/** Every fact left open. */
const context = { ...beginJob(job).context, facts } as unknown as FlowContext;

/** Plays one word at a state of the first step; tells the facts that were looked at, and what was put in their place. */
function seen(machine: FlowMachine, state: string, fact: string, answer: string) {
  const lens = new Lens(variables);
  const chart = nearbyChart(
    machine,
    'first',
    ['last'],
    watched(machine, lens, job.flow.kind.roles.speed.fact),
  );
  const before = chart.resolveState({ value: { first: state } as never, context });
  const looked: string[] = [];
  const after = lens.through(
    ({ name }) => looked.push(name) * 0,
    new Set(),
    () => stepperOf(chart).first(before, { type: 'fact', fact, state: answer }),
  );
  const held: Readonly<Record<string, unknown>> = after.context.facts;
  const changed = Object.entries(held).filter(([key, one]) => one !== facts[key]);
  return { looked: [...new Set(looked)], changed: Object.fromEntries(changed) };
}

describe('the lens', () => {
  it('sees the one fact that an answer is held against, and no other', () => {
    const { looked } = seen(job.machine, 'gate', 'guard', 'closed');
    expect(looked).toEqual(['fact:guard']);
  });

  it('leaves what is only taken over as open as it was', () => {
    expect(seen(job.machine, 'gate', 'guard', 'closed').changed).toEqual({ guard: 'closed' });
  });

  it('looks at nothing where an answer is none that is asked for', () => {
    expect(seen(job.machine, 'gate', 'tool', 'clear').changed).toEqual({});
  });

  it('refuses a guard that takes an answer which is not wanted', () => {
    const { machine } = withGuards(job, { answers: true });
    expect(() => seen(machine, 'gate', 'tool', 'clear')).toThrow(Unseeable);
  });

  it('refuses a look at what no variable stands for', () => {
    const lens = new Lens(variables);
    const look = () =>
      lens.through(
        () => 0,
        new Set(),
        () => lens.context(context).readings.size,
      );
    expect(look).toThrow('from afar');
    expect(() => 'size' in lens.context(context).readings).toThrow(Unseeable);
  });

  it('refuses a guard that looks at the speed itself, which counts only where it is known to be set', () => {
    const guard = ({ context: seenBy }: { context: FlowContext }) => seenBy.speedSet === null;
    const machine = job.machine.provide({ guards: { answers: guard } as object }) as FlowMachine;
    expect(() => seen(machine, 'gate', 'guard', 'closed')).toThrow('looks at the speed itself');
  });

  it('refuses an action that holds a speed against another and does more than forget it', () => {
    const keeps = assign(() => ({ speedSet: 100 }));
    const altered = cutJob.machine.provide({ actions: { forgetOtherSpeed: keeps } as object });
    const proof = prove({ ...cutJob, machine: altered as FlowMachine });
    expect(proof).toMatchObject({
      verdict: 'unseeable',
      reason: 'A speed is held against another, and is not forgotten.',
    });
  });

  it('hands out no value outside of a run', () => {
    expect(() => new Lens(variables).context(context).facts.motor).toThrow('outside of a run');
  });
});
