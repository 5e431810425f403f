import { describe, expect, it } from 'vitest';
import type { FlowEvent } from '../../src/flow/index.ts';
import { askedStates, worthPlaying } from '../../src/proof/told-apart.ts';
import { check, tinyJob } from './tiny-walk.ts';

const job = tinyJob(check('first'), check('last', { facts: { speed: 'other' } }));
const asked = askedStates(job);
const told = (fact: string, state: string): FlowEvent => ({ type: 'fact', fact, state });

describe('the states that are told apart', () => {
  it('are those of roles, gates, answers, walks and hazards', () => {
    expect([...(asked.get('motor') ?? [])].sort()).toEqual(['off', 'on']);
    expect([...(asked.get('speed') ?? [])].sort()).toEqual(['other', 'set']);
  });

  it('leave out what no step asks for', () => {
    expect(askedStates(tinyJob(check('first'))).get('speed')).not.toContain('other');
    expect(asked.get('tool')).not.toContain('touching');
  });
});

describe('the words worth playing', () => {
  const kind = job.flow.kind;
  const worth = (...events: readonly FlowEvent[]) => worthPlaying(events, asked, kind);

  it('hold one loss of a fact whose lost states nothing asks for', () => {
    const lost = told('tool', 'touching');
    expect(worth(lost, lost)).toEqual([lost]);
  });

  it('hold every state that is asked for, and every word that is no report', () => {
    const events = [told('motor', 'off'), told('motor', 'on'), { type: 'next' } as const];
    expect(worth(...events)).toEqual(events);
  });

  it('leave out an answer that nobody asks for and that is no loss', () => {
    const unasked = askedStates(tinyJob(check('first')));
    expect(worthPlaying([told('speed', 'other')], unasked, kind)).toEqual([]);
  });
});
