import { describe, expect, it } from 'vitest';
import { Memory, prove } from '../../src/proof/index.ts';
import { bigFlow } from './big-flow.ts';
import { jobOf, latheCards, toldShort } from './both-walks.ts';

const flow = (steps: readonly object[]) => ({ ...(bigFlow(10) as object), gates: {}, steps });
const base = (id: string) => ({ id, title: id, say: 'Do it.' });
const check = (id: string, needs: object) => ({
  ...base(id),
  kind: 'check',
  needs,
  facts: { motor: 'off' },
});
const tell = (id: string, needs: object) => ({ ...base(id), kind: 'tell', needs });
/** The checks of both flows have one shape; their next steps have gates, but not the same. */
const shut = [check('first', { motor: 'off' }), tell('then', { motor: 'on', guard: 'open' })];
const open = [check('first', { motor: 'off' }), tell('then', { tool: 'clear', speed: 'set' })];

const told = (steps: readonly object[], memory: Memory, card = latheCards[0]) => {
  const job = jobOf(flow(steps), card);
  if (!job) throw new Error('The flow cannot be read.');
  return toldShort(prove(job, { memory }));
};

describe('a memory that is kept', () => {
  it('gives the verdict of a new one, where steps of one shape lead to gates of another', () => {
    const memory = new Memory();
    told(shut, memory);
    expect(told(open, memory)).toBe(told(open, new Memory()));
    expect(told(shut, memory)).toBe(told(shut, new Memory()));
  });

  it('gives the verdict of a new one for another card', () => {
    const memory = new Memory();
    const good = { motor: 'off', tool: 'clear', guard: 'closed' };
    const cut = { ...base('cut'), kind: 'cut', needs: good, speed: { is: 100, unit: 'rpm' } };
    for (const card of latheCards) {
      const steps = [...open, cut];
      expect(told(steps, memory, card)).toBe(told(steps, new Memory(), card));
    }
  });

  it('runs nothing again for a flow that was proved before', () => {
    const memory = new Memory();
    const job = jobOf(flow(open));
    if (!job) throw new Error('The flow cannot be read.');
    expect(prove(job, { memory }).transitions).toBeGreaterThan(0);
    expect(prove(job, { memory }).transitions).toBe(0);
  });
});
