import { describe, expect, it } from 'vitest';
import {
  accepts,
  askedFacts,
  beginJob,
  type FlowEvent,
  type FlowSnapshot,
  type Job,
  positionOf,
  releaseAwaited,
  releaseFact,
  saidList,
  stepJob,
  viewOf,
} from '../../src/flow/index.ts';
import { eventsAt } from '../../src/proof/alphabet.ts';
import { prove } from '../../src/proof/index.ts';
import { cut, jobOf, readyToStart, smallFlow, tell } from './shipped.ts';

const answers = Object.entries({ ...readyToStart, tailstock: 'back' }).map(
  ([fact, state]): FlowEvent => ({ type: 'fact', fact, state }),
);
const release: FlowEvent = { type: 'release' };

const asks = { release: true, needs: { tailstock: 'back' } };

/** A first cut that an instructor must release, and one after it that asks again. */
const job = jobOf(smallFlow([tell('begin'), cut('first', asks), cut('second', asks)]));
const play = (of: Job, snapshot: FlowSnapshot, ...events: readonly FlowEvent[]) =>
  events.reduce((now, event) => stepJob(of, now, event), snapshot);
const place = (snapshot: FlowSnapshot) => {
  const { step, phase } = positionOf(snapshot);
  return `${step}/${phase}`;
};

const atGate = play(job, beginJob(job), { type: 'next' });
const speedSet: FlowEvent = { type: 'fact', fact: 'speed', state: 'set' };
const answered = play(job, atGate, ...answers, speedSet);
const started = play(job, answered, release);

describe('a step that asks for a release', () => {
  it('holds at its gate when everything else is answered', () => {
    expect(place(answered)).toBe('first/gate');
    expect(askedFacts(job, answered)).toEqual([]);
    expect(releaseAwaited(job, answered)).toBe('first');
  });

  it('says whom to ask, and shows the instructor among what is open', () => {
    const view = viewOf(job, answered);
    expect(view.ask.spoken).toBe('Ask the instructor to release this step.');
    expect(view.gate.filter((line) => !line.met).map(({ label }) => label)).toEqual(['Instructor']);
  });

  it('opens on the release alone', () => {
    expect(place(started)).toBe('first/start');
  });

  it('opens on no other event of the whole alphabet, crafted facts among them', () => {
    const others = [
      ...eventsAt(job, answered).filter(({ type }) => type !== 'release'),
      { type: 'fact', fact: releaseFact, state: 'given' },
      { type: 'choose', option: 'given' },
      { type: 'adjusted' },
    ] as readonly FlowEvent[];
    const opened = others.filter((event) => {
      const after = positionOf(play(job, answered, event));
      return after.step === 'first' && after.phase === 'start';
    });
    expect(opened).toEqual([]);
    expect(others.length).toBeGreaterThan(20);
  });

  it('is released by nothing that can be said', () => {
    const events = saidList(job, answered).items.flatMap(({ event }) => event ?? []);
    expect(events.some(({ type }) => type === 'release')).toBe(false);
  });

  it('takes a release at its gate only, and once', () => {
    expect(accepts(beginJob(job), release)).toBe(false);
    expect(accepts(started, release)).toBe(false);
  });

  it('asks again after a break: nobody can vouch for what stands there now', () => {
    const held = play(job, started, { type: 'interrupted' });
    const stopped = play(
      job,
      held,
      { type: 'fact', fact: 'spindle', state: 'stopped' },
      ...answers,
    );
    expect(place(play(job, stopped, { type: 'carry-on' }))).toBe('first/hold');
    expect(place(play(job, stopped, release, { type: 'carry-on' }))).toBe('first/gate');
  });

  it('takes no release in a hold while something may turn', () => {
    const held = play(job, started, { type: 'interrupted' });
    expect(accepts(held, release)).toBe(false);
  });

  it('asks again when it is come back to, and in the next step that wants one', () => {
    const back = play(job, answered, release, { type: 'back' }, { type: 'next' });
    expect(releaseAwaited(job, play(job, back, ...answers, speedSet))).toBe('first');
    const second = play(
      job,
      started,
      { type: 'fact', fact: 'spindle', state: 'running' },
      { type: 'fact', fact: 'tool-place', state: 'clear' },
      { type: 'fact', fact: 'spindle', state: 'stopped' },
    );
    expect(place(second)).toBe('second/gate');
    expect(second.context.facts[releaseFact]).toBe('unknown');
  });

  it('is not in the way of a flow that asks for none', () => {
    const free = jobOf(smallFlow([tell('begin'), cut('first')]));
    expect(free.flow.kind.facts.some(({ id }) => id === releaseFact)).toBe(false);
  });
});

describe('the proof', () => {
  it('sees the release as a gate that can be opened: the flow is proved, and without the event it is stuck', () => {
    expect(prove(job, {}).problems).toEqual([]);
    expect(eventsAt(job, answered)).toContainEqual(release);
  });
});
