import { describe, expect, test } from 'vitest';
import { type Card, workOut } from '../../src/flow/index.ts';
import { cardNamed, passes, smallFlow } from './shipped.ts';

const mm = (is: number) => ({ is, unit: 'mm' });
const flowOf = (lower: number, upper: number, finish = (lower + upper) / 2) =>
  smallFlow([passes('turn', { lower: mm(lower), upper: mm(upper), finish: mm(finish) })]);

function cardOf(crossReads: 'diameter' | 'radius', crossDivision: number): Card {
  const card = cardNamed('metric-lathe');
  return { ...card, values: { ...card.values, crossReads, crossDivision } };
}

describe('limits against the cross dial', () => {
  // On a diameter dial half a division of 0.05 mm is 0.025 mm; on a radius dial it is 0.05 mm (geometry).
  test.each([
    ['diameter', 0.025, true],
    ['diameter', 0.024, false],
    ['radius', 0.05, true],
    ['radius', 0.049, false],
  ] as const)('a %s dial of 0.05 and limits %f apart: a job %s', (reads, width, good) => {
    const worked = workOut(flowOf(20, 20 + width), cardOf(reads, 0.05), {});
    expect(worked.ok).toBe(good);
  });

  test('too close are told with both figures and the finer means', () => {
    const worked = workOut(flowOf(20, 20.01), cardOf('radius', 0.05), {});
    const [fault = ''] = worked.ok ? [] : worked.faults;
    expect(fault.replaceAll('\u00a0', ' ')).toMatch(
      /^turn: the limits lie 0\.010 mm apart, .* is 0\.050 mm on the diameter.*compound set over/,
    );
  });
});
