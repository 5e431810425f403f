/** Every tabulated thread tolerance against the formula behind it (from memory: ISO 965-1 annex). */

import { describe, expect, it } from 'vitest';
import { byPitch, diameterSteps, smallestStep } from '../../src/trade/threads/metric-tolerances.ts';
import { partOf } from '../trade/asking.ts';

/** The standard rounds to the R40 series, whose steps are 6 % apart. */
const WITHIN = 0.065;
/** es is rounded to whole µm, in some cells by more than a half. */
const ES_WITHIN = 2;

const near = (table: number, formula: number) => {
  expect(Math.abs(table / formula - 1)).toBeLessThanOrEqual(WITHIN);
};

const nutMinor = (pitch: number) =>
  pitch >= 1 ? 230 * pitch ** 0.7 : 433 * pitch - 190 * pitch ** 1.22;

const pitches = Object.entries(byPitch).map(([pitch, row]) => [Number(pitch), ...row] as const);

const steps = diameterSteps.flatMap(({ upTo, pitchDiameter }, index) => {
  const over = diameterSteps[index - 1]?.upTo ?? smallestStep;
  return Object.entries(pitchDiameter).map(
    ([pitch, [screw, nut]]) => [Number(pitch), Math.sqrt(over * upTo), screw, nut] as const,
  );
});

describe('ISO 965-1 tolerances, by their formulas', () => {
  it.each(pitches)('pitch %d: es %d, Td %d, TD1 %d µm', (pitch, es, td, td1) => {
    expect(Math.abs(es - (15 + 11 * pitch))).toBeLessThanOrEqual(ES_WITHIN);
    near(td, 180 * pitch ** (2 / 3) - 3.15 / Math.sqrt(pitch));
    near(td1, nutMinor(pitch));
  });

  it.each(steps)('pitch %d at %d mm: Td2 %d, TD2 %d µm', (pitch, diameter, screw, nut) => {
    near(screw, 90 * pitch ** 0.4 * diameter ** 0.1);
    near(nut, 1.32 * screw);
  });
});

describe('one profile for both systems', () => {
  it.each([
    ['1/4-20', 'M6.35x1.27'],
    ['1/2-20', 'M12.7x1.27'],
    ['1-8', 'M25.4x3.175'],
  ])('%s has the sizes of %s (ASME B1.1 and ISO 68-1 share the basic profile)', (inch, metric) => {
    for (const part of ['pitchDiameter', 'minor', 'root', 'major']) {
      const [one, other] = [inch, metric].map((thread) => partOf('thread-sizes', part, { thread }));
      expect(one).toBeCloseTo(other ?? Number.NaN, 9);
    }
  });
});
