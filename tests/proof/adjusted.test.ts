import { describe, expect, it } from 'vitest';
import { readFlow } from '../../src/flow/index.ts';
import { proveAdjusted } from '../../src/proof/index.ts';
import { bigFlow } from './big-flow.ts';
import { latheCards } from './both-walks.ts';
import { tinyKind } from './tiny-kind.ts';

const good = { motor: 'off', tool: 'clear', guard: 'closed' };
const base = (id: string) => ({ id, title: id, say: 'Do it.', needs: { motor: 'off' } });

function flowWith(needs: object, say = 'Do it.') {
  const value = {
    ...(bigFlow(10) as object),
    gates: {},
    inputs: [
      { id: 'size', label: 'Size', quantity: 'length', unit: 'mm', min: 5, max: 20, default: 10 },
      { id: 'metal', label: 'Metal', options: ['low-carbon-steel'], default: 'low-carbon-steel' },
    ],
    steps: [
      { ...base('begin'), kind: 'check', needs: {}, facts: { motor: 'off' } },
      { ...base('cut'), kind: 'cut', needs, say, speed: { is: 100, unit: 'rpm' } },
      { ...base('leave'), kind: 'tell' },
    ],
  };
  const read = readFlow('adjusted', JSON.stringify(value), new Map([['lathe', tinyKind()]]));
  if (!read.ok) throw new Error(read.faults.map(({ message }) => message).join(' '));
  return read.flow;
}

const [card] = latheCards;
if (!card) throw new Error('There is no card.');

describe('a proof for other numbers', () => {
  it('names both ends of every size and every choice that it tried', () => {
    const { verdict, tried } = proveAdjusted(flowWith(good), card);
    expect(verdict).toBe('proved');
    expect(tried.map(({ name }) => name)).toEqual([
      '',
      'size 5 mm',
      'size 20 mm',
      'metal low-carbon-steel',
    ]);
  });

  it('is broken where the flow is, and says with which numbers', () => {
    const { verdict, problems } = proveAdjusted(flowWith({ ...good, guard: 'open' }), card);
    expect(verdict).toBe('broken');
    expect(problems).toContainEqual({ claim: 'TINY-GUARD', step: 'cut', numbers: 'size 20 mm' });
  });
});
