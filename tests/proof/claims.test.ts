/** Each claim is broken by something small: a claim that nothing breaks would be no claim. */

import { describe, expect, it } from 'vitest';
import {
  compileJob,
  type Job,
  type MachineKind,
  readFlowValue,
  resolveFlow,
} from '../../src/flow/index.ts';
import {
  claimsOf,
  type formatClaims,
  type Problem,
  prove,
  walkPlainly,
} from '../../src/proof/index.ts';
import { cardNamed, latheKind } from '../flow/shipped.ts';
import { saying, withChart, withGuards, withoutAction } from './altered-job.ts';
import { jobOf } from './both-walks.ts';
import { tinyKind } from './tiny-kind.ts';

const kind = latheKind();
const card = cardNamed('metric-lathe');

const ready = {
  eyes: 'on',
  clothing: 'secure',
  'emergency-stop': 'released',
  spindle: 'stopped',
  work: 'clamped',
  'chuck-key': 'out',
  'turned-by-hand': 'free',
  'tool-lock': 'locked',
  'tool-place': 'clear',
  tailstock: 'back',
  guard: 'closed',
  hands: 'clear',
};
const still = { spindle: 'stopped' };
const step = (id: string, more: object) => ({ id, title: id, say: 'Do it.', ...more });
const rpm = (is: number) => ({ is, unit: 'rpm' });
const cut = (needs: object, speed = 100) =>
  step('cut', { kind: 'cut', needs, speed: rpm(speed), next: 'end' });
const without = (fact: string) =>
  Object.fromEntries(Object.entries(ready).filter(([one]) => one !== fact));

function latheJob(steps: readonly object[]): Job {
  const head = { followrest: 'flow', version: 1, id: 'small', revision: 1, title: 'S', about: '' };
  const value = JSON.parse(JSON.stringify({ ...head, machineKind: 'lathe', steps })) as unknown;
  const read = resolveFlow(readFlowValue('small', value), new Map([['lathe', kind]]));
  if (!read.ok) throw new Error(read.faults.map(({ message }) => message).join('\n'));
  const compiled = compileJob(read.flow, card);
  if (!compiled.ok) throw new Error(compiled.faults.join('\n'));
  return compiled.job;
}

const broken = (problems: readonly Problem[]) => new Set(problems.map(({ claim }) => claim));

/** Hazard → the smallest flow that meets it. */
const hazards: Readonly<Record<string, readonly object[]>> = {
  'LATHE-GUARD': [cut(without('guard'))],
  'LATHE-KEY': [cut(without('chuck-key'))],
  'LATHE-WORK': [cut(without('work'))],
  'LATHE-TOOL': [cut(without('tool-lock'))],
  'LATHE-EYES': [cut(without('eyes'))],
  'LATHE-CLOTHING': [cut(without('clothing'))],
  'LATHE-STOP': [cut(without('emergency-stop'))],
  'LATHE-HANDS': [cut(without('hands'))],
  'LATHE-TOUCHING': [cut(without('tool-place'))],
  'LATHE-BY-HAND': [cut(without('turned-by-hand'))],
  'LATHE-STANDSTILL': [cut(without('spindle'))],
  'LATHE-TAILSTOCK': [cut(without('tailstock'))],
  'LATHE-CHUCK-LIMIT': [cut(ready, 4_000)],
  'LATHE-CARD-LIMIT': [cut(ready, 4_000)],
  'LATHE-WORK-LIMIT': [{ ...cut(ready, 400), workLimit: rpm(300) }],
  'LATHE-HANDS-IN': [step('reach', { kind: 'tell', hands: true, next: 'end' })],
  'LATHE-MEASURE': [
    step('size', {
      kind: 'measure',
      next: 'end',
      reading: {
        id: 'size',
        label: 'Size',
        unit: 'mm',
        decimals: 2,
        min: { is: 5, unit: 'mm' },
        max: { is: 9, unit: 'mm' },
      },
    }),
  ],
  'LATHE-TAKE-OUT': [
    step('out', { kind: 'tell', hands: true, needs: still, moment: 'work-out', next: 'end' }),
  ],
  'LATHE-TURN-KEY': [
    step('turn', {
      kind: 'do',
      hands: true,
      needs: still,
      ends: { 'turned-by-hand': 'free' },
      next: 'end',
    }),
  ],
  'LATHE-HANDS-FORGET': [
    step('shut', { kind: 'check', facts: { guard: 'closed' } }),
    step('key', { kind: 'check', needs: still, facts: { 'chuck-key': 'out' }, next: 'end' }),
  ],
  'LATHE-LEAVE': [step('leave', { kind: 'tell', next: 'end' })],
};

/** Hazards that no flow can meet, since the compiler adds what they need → a chart that lacks it. */
const hazardCharts: Readonly<Record<string, () => Job>> = {
  'LATHE-SPEED-SET': () => withGuards(latheJob([cut(ready)]), { met: true, notMet: false }),
  'LATHE-CUT-STOPPED': () =>
    withGuards(latheJob([cut(ready)]), { answers: true, met: true, notMet: false }),
};

const mm = (is: number) => ({ is, unit: 'mm' });
const off = { needs: { motor: 'off' } };
const reading = { id: 'size', label: 'Size', unit: 'mm', decimals: 2, min: mm(5), max: mm(20) };
const inspect = (more: object) =>
  step('look', {
    kind: 'inspect',
    ...off,
    reading,
    side: 'outside',
    lower: mm(9),
    upper: mm(11),
    within: 'end',
    rework: 'look',
    lost: 'end',
    ...more,
  });
const tell = (id: string, more: object) => step(id, { kind: 'tell', ...off, ...more });

/** A job on the machine of four facts. */
function tiny(...steps: readonly object[]): Job {
  return tinyOf(tinyKind(), ...steps);
}

function tinyOf(kind: MachineKind, ...steps: readonly object[]): Job {
  const head = { followrest: 'flow', version: 1, id: 'tiny', revision: 1, title: 'T', about: '' };
  const kinds = new Map([['lathe', kind]]);
  const job = jobOf({ ...head, machineKind: 'lathe', steps }, undefined, kinds);
  if (!job) throw new Error('The reader refuses it.');
  return job;
}

/** The small machine on which an open guard cannot be reported. */
function unreported(): MachineKind {
  const kind = tinyKind();
  const quiet = (fact: MachineKind['facts'][number]) => ({
    ...fact,
    states: fact.states.map((state) => ({ ...state, loss: false })),
  });
  return { ...kind, facts: kind.facts.map((one) => (one.id === 'guard' ? quiet(one) : one)) };
}

/** The small machine whose fault walk has somebody look at the guard, and does not ask for it. */
function unasked(): MachineKind {
  const kind = tinyKind();
  const walks = kind.walks.map((walk) => ({
    ...walk,
    items: walk.items.map((item) => ({ ...item, needs: {} })),
  }));
  return { ...kind, walks };
}

const spin = step('spin', {
  kind: 'cut',
  needs: { motor: 'off', tool: 'clear', guard: 'closed' },
  speed: rpm(100),
  next: 'end',
});

const one = () => tiny(tell('only', { next: 'end' }));

/** Claim of the format → the smallest flow or chart that breaks it. */
const formats: Readonly<Record<keyof typeof formatClaims, () => Job>> = {
  'FORMAT-END': () => tiny(tell('round', { next: 'round' })),
  'FORMAT-REACH': () => tiny(tell('only', { next: 'end' }), tell('never', { next: 'end' })),
  'FORMAT-WAY-OUT': () => tiny(tell('a', { next: 'b' }), tell('b', { next: 'a' })),
  'FORMAT-STOP': () =>
    withChart(one(), ({ only }) => {
      delete only?.on?.stop;
    }),
  'FORMAT-NAMES': () =>
    withChart(one(), ({ only }) => {
      delete only?.states?.gate?.on?.fact;
      delete only?.on?.fact;
    }),
  'FORMAT-HOLD': () =>
    withChart(tiny(tell('a', { next: 'b' }), tell('b', { next: 'end' })), ({ a }) => {
      if (a?.states?.hold?.on) a.states.hold.on['carry-on'] = { target: '#flow.b' };
    }),
  'FORMAT-BACK': () =>
    withoutAction(
      tiny(
        tell('first', { next: 'both' }),
        step('both', {
          kind: 'check',
          ...off,
          facts: { guard: 'closed', tool: 'clear' },
          next: 'end',
        }),
      ),
      'undo',
    ),
  'FORMAT-SPOKEN': () => saying(one(), 'only', 'Cut {nothing} off.'),
  'FORMAT-RANGE': () =>
    withGuards(tiny(step('size', { kind: 'measure', ...off, reading, next: 'end' })), {
      plausible: true,
    }),
  'FORMAT-VERDICT': () => withGuards(tiny(inspect({})), { lost: false }),
  'FORMAT-LOST': () => tiny(inspect({ lost: 'look' })),
  'FORMAT-REWORK': () => tiny(inspect({ rework: 'look' })),
  'FORMAT-OWN-ASK': () => tiny(step('reach', { kind: 'tell', hands: true, next: 'end' })),
  'FORMAT-POWER': () =>
    withChart(one(), ({ only }) => {
      delete only?.states?.open?.always;
    }),
  'FORMAT-REPORT': () => tinyOf(unreported(), spin),
  'FORMAT-WALK': () => tinyOf(unasked(), spin),
  'FORMAT-RELEASE': () =>
    withGuards(tiny({ ...spin, release: true }), { met: true, notMet: false }),
  'FORMAT-SETTLES': () => withGuards(one(), { met: true, notMet: true }),
};

describe('each hazard of the lathe', () => {
  it.each(Object.entries(hazards))('[%s] is met by its smallest flow', (claim, steps) => {
    expect([...broken(prove(latheJob(steps)).problems)]).toContain(claim);
  });

  it.each(Object.entries(hazardCharts))(
    '[%s] is met by a chart without what is added',
    (claim, job) => {
      expect([...broken(walkPlainly(job(), 3_000).problems)]).toContain(claim);
    },
  );

  it('is not met by a cut that asks for everything', () => {
    const asks = [cut({ ...ready })];
    expect([...broken(prove(latheJob(asks)).problems)]).toEqual([]);
  });
});

describe('each claim of the format', () => {
  it.each(Object.entries(formats))('[%s] is broken by something small', (claim, job) => {
    expect([...broken(walkPlainly(job(), 3_000).problems)]).toContain(claim);
  });

  it('holds for a step that asks and is left', () => {
    expect([...broken(walkPlainly(one(), 3_000).problems)]).toEqual([]);
  });
});

describe('the table of claims', () => {
  it('has something that breaks every claim there is', () => {
    const shown = [...Object.keys(hazards), ...Object.keys(hazardCharts), ...Object.keys(formats)];
    expect(shown.sort()).toEqual(
      claimsOf(latheJob([cut(ready)]))
        .map(({ id }) => id)
        .sort(),
    );
  });
});
