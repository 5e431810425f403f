/** What a value looks like on a metric and on an inch machine. Decimals: common practice, no source. */

import { describe, expect, test } from 'vitest';
import { displayOf } from '../../src/flow/display.ts';
import { formatOf, shownAs } from '../../src/flow/index.ts';
import { hingePin } from './shipped.ts';

describe.each([
  // 25.4 mm is 1 in; 0.2 mm ÷ 25.4 = 0.0079 in; 30 m/min ÷ 0.3048 = 98.4 ft/min; 100 mm/min ÷ 25.4 = 3.94 in/min.
  ['length', 25.4, '25.40 mm', '1.000 in'],
  ['feedPerRev', 0.2, '0.20 mm/rev', '0.0079 in/rev'],
  ['surfaceSpeed', 30, '30 m/min', '98 ft/min'],
  ['feedRate', 100, '100 mm/min', '3.94 in/min'],
  // 12 cm² ÷ 6.4516 = 1.86 in².
  ['areaRate', 12, '12 cm²/min', '1.9 in²/min'],
  ['spindleSpeed', 460, '460 rev/min', '460 rev/min'],
  ['angle', 5.74, '5.74 deg', '5.74 deg'],
  ['time', 1.25, '1.3 min', '1.3 min'],
  ['power', 1.5, '1.50 kW', '1.50 kW'],
] as const)('%s', (quantity, value, metric, inch) => {
  const told = (units: 'metric' | 'inch') => {
    const { value: shown, unit, decimals } = shownAs(value, quantity, formatOf(quantity, units));
    return `${shown.toFixed(decimals)} ${unit}`;
  };

  test(`is ${metric} on a metric machine and ${inch} on an inch machine`, () => {
    expect([told('metric'), told('inch')]).toEqual([metric, inch]);
  });
});

describe('a format that a file asks for', () => {
  test('keeps its decimals in millimetres and gets one more in inches', () => {
    expect(formatOf('length', 'metric', { unit: 'mm', decimals: 3 })).toEqual({
      unit: 'mm',
      decimals: 3,
    });
    expect(formatOf('length', 'inch', { unit: 'mm', decimals: 3 })).toEqual({
      unit: 'in',
      decimals: 4,
    });
  });

  test('stays in inches on a metric machine when the drawing is in inches', () => {
    expect(formatOf('length', 'metric', { unit: 'in', decimals: 3 })).toEqual({
      unit: 'in',
      decimals: 3,
    });
  });
});

describe('a value of the shipped flow', () => {
  const flow = hingePin();
  const format = (ref: Parameters<typeof displayOf>[0], units: 'metric' | 'inch' = 'metric') =>
    displayOf(ref, flow, units)?.format;

  test.each([
    // The working asks for three decimals; its parts are lengths too and share them.
    [{ working: 'shank' }, { unit: 'mm', decimals: 3 }],
    [
      { working: 'shank', part: 'upper' },
      { unit: 'mm', decimals: 3 },
    ],
    [{ input: 'barDiameter' }, { unit: 'mm', decimals: 2 }],
    [{ reading: 'holeDone' }, { unit: 'mm', decimals: 1 }],
    [{ card: 'chuckLimit' }, { unit: 'rev/min', decimals: 0 }],
    [
      { is: 0.5, unit: 'mm' },
      { unit: 'mm', decimals: 1 },
    ],
    [
      { is: 300, unit: 'rpm' },
      { unit: 'rev/min', decimals: 0 },
    ],
  ])('%j is shown as %j', (ref, wanted) => {
    expect(format(ref)).toEqual(wanted);
  });

  test('that is a constant in millimetres turns to inches on an inch machine', () => {
    expect(format({ is: 0.5, unit: 'mm' }, 'inch')).toEqual({ unit: 'in', decimals: 3 });
  });

  test.each([
    { input: 'material' },
    { card: 'speeds' },
    { card: 'crossReads' },
    { input: 'nothing' },
  ])('%j is no number and has no format', (ref) => {
    expect(format(ref)).toBeUndefined();
  });
});
