import { describe, expect, it } from 'vitest';
import type { FlowEvent, Job } from '../../src/flow/index.ts';
import { Arrows } from '../../src/proof/arrows.ts';
import { Memory } from '../../src/proof/memory.ts';
import { withChart } from './altered-job.ts';
import { check, cut, framesOf, step, tinyJob } from './tiny-walk.ts';

const memory = new Memory();
const fact = (id: string, state: string): FlowEvent => ({ type: 'fact', fact: id, state });
const next: FlowEvent = { type: 'next' };

function idOf(
  job: Job,
  id: string,
  state: string,
  event: FlowEvent | null,
  held: string | null = null,
) {
  const room = memory.roomFor(job);
  const spot = { inner: JSON.stringify(state), held, rests: event !== null };
  return new Arrows(job, framesOf(job, room.ids)(id), room).idOf(spot, event);
}

const needs = { guard: 'closed' };
const job = tinyJob(
  check('first', { needs }),
  check('second', { needs: { guard: 'closed', tool: 'clear' } }),
  cut('slow', 300),
  cut('fast', 460),
  step('last', {}),
);

describe('the arrows of a word have one text', () => {
  it('where they hold the same answer against gates that differ in other facts', () => {
    const closed = fact('guard', 'closed');
    expect(idOf(job, 'first', 'gate', closed)).toBe(idOf(job, 'second', 'gate', closed));
  });

  it('in cuts of other speeds, but for the word that sets the speed', () => {
    const [clear, set] = [fact('tool', 'clear'), fact('speed', 'set')];
    expect(idOf(job, 'slow', 'gate', clear)).toBe(idOf(job, 'fast', 'gate', clear));
    expect(idOf(job, 'slow', 'gate', set)).not.toBe(idOf(job, 'fast', 'gate', set));
  });

  it('whatever waits beyond the next gate', () => {
    const [one, other] = ['off', 'on'].map((motor) =>
      tinyJob(step('first', {}), step('then', { needs: { motor } })),
    ) as [Job, Job];
    expect(idOf(one, 'first', 'open', next)).toBe(idOf(other, 'first', 'open', next));
  });
});

describe('the arrows of a word have two texts', () => {
  it('where the answer is wanted in one step alone', () => {
    const clear = fact('tool', 'clear');
    expect(idOf(job, 'first', 'gate', clear)).not.toBe(idOf(job, 'second', 'gate', clear));
  });

  it('where the next step is entered by another state', () => {
    const [gated, bare] = [{ needs }, {}].map((more) =>
      tinyJob(step('first', {}), step('then', more)),
    );
    if (!gated || !bare) throw new Error('Two jobs were made.');
    expect(idOf(gated, 'first', 'open', next)).not.toBe(idOf(bare, 'first', 'open', next));
  });

  it('where a hold goes on elsewhere', () => {
    const on: FlowEvent = { type: 'carry-on' };
    expect(idOf(job, 'first', 'hold', on, 'gate')).not.toBe(idOf(job, 'first', 'hold', on, 'open'));
  });

  it('where one step of a chart was altered', () => {
    const altered = withChart(job, (steps) => {
      Object.assign(steps.first?.states?.gate ?? {}, { always: [] });
    });
    expect(idOf(altered, 'first', 'gate', null)).not.toBe(idOf(job, 'first', 'gate', null));
  });
});

describe('the arrows of a word have no text', () => {
  it('where the way back is judged by the steps between', () => {
    expect(idOf(job, 'second', 'gate', { type: 'back' })).toBeUndefined();
  });
});

describe('a word that no arrow hears', () => {
  it('is not among those that are heard', () => {
    const frame = framesOf(job)('last');
    const heard = new Arrows(job, frame, memory.roomFor(job)).heardAt({
      inner: JSON.stringify('open'),
      held: null,
      rests: true,
    });
    expect(heard).toContain('next');
    expect(heard).not.toContain('reading');
    expect(heard).not.toContain('carry-on');
  });
});
