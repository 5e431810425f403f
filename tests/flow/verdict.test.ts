import { describe, expect, test } from 'vitest';
import { judge, type StepOf } from '../../src/flow/index.ts';
import { limitsOf, plausible, plausibleRange, verdictOf } from '../../src/flow/verdict.ts';
import { inspect, jobOf, smallFlow, tell } from './shipped.ts';

/** By definition of a limit of size (ISO 286-1): both limits belong to the tolerance interval. */
describe('a size against 19.95 to 20.05', () => {
  const limits = { lower: 19.95, upper: 20.05 };

  test.each([
    [19.95, 'within', 'within'],
    [20.05, 'within', 'within'],
    [20, 'within', 'within'],
    [20.06, 'rework', 'lost'],
    [19.94, 'lost', 'rework'],
    // A sum of hundredths that is a whisker off its limit is on it.
    [19.9 + 0.05, 'within', 'within'],
    [20.0500000001, 'within', 'within'],
    [20.0501, 'rework', 'lost'],
  ] as const)('%d is %s outside and %s inside', (size, outside, inside) => {
    expect(judge(size, limits, 'outside')).toBe(outside);
    expect(judge(size, limits, 'inside')).toBe(inside);
  });
});

describe('a reading in another unit than millimetres', () => {
  const um = (is: number) => ({ is, unit: 'um' });
  const reading = {
    id: 'finish',
    label: 'Finish',
    quantity: 'roughness',
    unit: 'um',
    decimals: 1,
    min: um(0),
    max: um(50),
  };
  const job = jobOf(
    smallFlow([inspect('feel', { reading, lower: um(0), upper: um(3.2) }), tell('good')]),
  );
  const step = job.flow.steps.get('feel') as StepOf<'inspect'>;

  test('is judged in the base unit of its own quantity, not of the likeliest', () => {
    // The base unit of roughness is the micrometre itself; as a length it would be 0.0032 mm.
    expect(limitsOf(step, job.numbers, {})).toEqual({ lower: 0, upper: 3.2 });
    expect(plausibleRange(step, job.numbers, {})).toEqual({ lower: 0, upper: 50 });
    expect(verdictOf(step, 1.6, job.numbers, {})).toBe('within');
    expect(verdictOf(step, 6.3, job.numbers, {})).toBe('rework');
  });

  test.each([Number.NaN, Number.POSITIVE_INFINITY, -0.1, 50.1])(
    '%d is not taken at all',
    (value) => {
      expect(plausible(step, value, job.numbers, {})).toBe(false);
    },
  );
});

test('a step without limits has no verdict, and one without a reading nothing to take', () => {
  const job = jobOf(smallFlow([tell('a')]));
  const [step] = job.flow.file.steps;
  if (!step) throw new Error('There is one step.');
  expect(verdictOf(step, 1, job.numbers, {})).toBeUndefined();
  expect(plausible(step, 1, job.numbers, {})).toBe(false);
});
