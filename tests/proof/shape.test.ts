import { describe, expect, it } from 'vitest';
import { Ids } from '../../src/proof/ids.ts';
import { check, cut, framesOf, gauge, mm, step, tinyJob } from './tiny-walk.ts';

/** The shapes of the first step of flows that differ in one thing. */
const ids = new Ids();
const shape = (...steps: readonly { id: string }[]) =>
  framesOf(tinyJob(...steps), ids)(steps[0]?.id ?? '').shape;
const last = step('last', {});

describe('steps have one shape', () => {
  it('whatever they and the steps after them are called, and whatever they say', () => {
    const named = check('other', { title: 'Other', say: 'Look again.' });
    expect(shape(named, step('end-step', {}))).toBe(shape(check('first'), last));
  });

  it('whatever a reading is called', () => {
    expect(shape(gauge('bar'), last)).toBe(shape(gauge('rod'), last));
  });

  it('whatever the gate of the next step wants, since no small step goes through it', () => {
    const [motor, guard] = [{ motor: 'off' }, { guard: 'closed' }];
    const shapeBefore = (needs: object) => shape(check('first'), step('last', { needs }));
    expect(shapeBefore(motor)).toBe(shapeBefore(guard));
  });
});

describe('steps have two shapes', () => {
  const first = check('first');
  const reading = { id: 'barSize', label: 'Bar', unit: 'mm', decimals: 2, min: mm(5), max: mm(41) };
  const pairs: readonly (readonly [string, number, number])[] = [
    [
      'where their gates differ',
      shape(check('first', { needs: { guard: 'closed' } }), last),
      shape(first, last),
    ],
    [
      'where they ask for other facts',
      shape(check('first', { facts: { tool: 'clear' } }), last),
      shape(first, last),
    ],
    [
      'where hands go in at one alone',
      shape(check('first', { hands: true }), last),
      shape(first, last),
    ],
    [
      'where a limit of a reading differs',
      shape(gauge('bar', { reading }), last),
      shape(gauge('bar'), last),
    ],
    ['where a speed differs', shape(cut('turn', 300), last), shape(cut('turn', 301), last)],
    [
      'where the next step begins by itself with something else',
      shape(
        first,
        step('last', { kind: 'do', begins: { tool: 'touching' }, ends: { tool: 'clear' } }),
      ),
      shape(
        first,
        step('last', { kind: 'do', begins: { guard: 'open' }, ends: { guard: 'closed' } }),
      ),
    ],
  ];
  for (const [where, one, other] of pairs) it(where, () => expect(one).not.toBe(other));
});
