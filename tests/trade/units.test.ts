/** The unit table against an independent library, and its own there and back. */

import { convert } from 'convert';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  baseUnitOf,
  fromBase,
  type Quantity,
  quantities,
  quantityOfUnit,
  toBase,
  unitsOf,
} from '../../src/trade/index.ts';

/** Ours: quantity, unit, base. Theirs: the same two units in the words of the npm library "convert". */
type Pair = readonly [quantity: Quantity, unit: string, theirs: string, theirBase: string];

const pairs: readonly Pair[] = [
  ['length', 'in', 'inches', 'millimeters'],
  ['length', 'ft', 'feet', 'millimeters'],
  ['length', 'um', 'micrometers', 'millimeters'],
  ['length', 'cm', 'centimeters', 'millimeters'],
  ['length', 'm', 'meters', 'millimeters'],
  ['surfaceSpeed', 'ft/min', 'feet', 'meters'],
  ['surfaceSpeed', 'in/min', 'inches', 'meters'],
  ['surfaceSpeed', 'm/s', 'hours', 'minutes'],
  ['feedPerRev', 'in/rev', 'inches', 'millimeters'],
  ['feedPerTooth', 'in', 'inches', 'millimeters'],
  ['feedRate', 'in/min', 'inches', 'millimeters'],
  ['time', 's', 'seconds', 'minutes'],
  ['time', 'h', 'hours', 'minutes'],
  ['angle', 'rad', 'radians', 'degrees'],
  ['angle', 'arcmin', 'arcminutes', 'degrees'],
  ['angle', 'arcsec', 'arcseconds', 'degrees'],
  ['force', 'kN', 'kilonewtons', 'newtons'],
  ['force', 'lbf', 'pound-force', 'newtons'],
  ['force', 'kgf', 'kilogram-force', 'newtons'],
  ['power', 'hp', 'horsepower', 'kilowatts'],
  ['power', 'W', 'watts', 'kilowatts'],
  ['stress', 'psi', 'psi', 'MPa'],
  ['stress', 'GPa', 'GPa', 'MPa'],
  ['area', 'in2', 'square inches', 'square millimeters'],
  ['area', 'cm2', 'square centimeters', 'square millimeters'],
  ['areaRate', 'in2/min', 'square inches', 'square centimeters'],
  ['areaRate', 'mm2/min', 'square millimeters', 'square centimeters'],
  ['volumeRate', 'in3/min', 'cubic inches', 'cubic millimeters'],
  ['volumeRate', 'cm3/min', 'cubic centimeters', 'cubic millimeters'],
  ['temperature', 'degF', 'fahrenheit', 'celsius'],
  ['temperature', 'K', 'kelvin', 'celsius'],
];

/** The library takes literal unit names; a table of them is asked by plain text. */
function theirs(value: number, from: string, to: string): number {
  const convertText = convert as unknown as (
    value: number,
    from: string,
  ) => { readonly to: (unit: string) => number };
  return convertText(value, from).to(to);
}

const everyUnit = quantities.flatMap((quantity) =>
  unitsOf(quantity).map((unit) => [quantity, unit] as const),
);

describe('units', () => {
  it.each(pairs)('%s in %s agrees with the library "convert"', (quantity, unit, from, to) => {
    for (const value of [0, 1, 12.5, 300]) {
      const other = theirs(value, from, to);
      expect(Math.abs(toBase(value, unit, quantity) - other)).toBeLessThanOrEqual(
        1e-6 * Math.max(1, Math.abs(other)),
      );
    }
  });

  // International Yard and Pound Agreement 1959; 550 ft lbf/s; SI Brochure (from memory).
  it.each([
    ['length', 'in', 25.4],
    ['length', 'thou', 0.0254],
    ['length', 'ft', 304.8],
    ['torque', 'lbf·ft', 1.3558179483314],
    ['torque', 'lbf·in', 0.1129848290276167],
    ['power', 'hp', 0.7456998715822702],
    ['force', 'lbf', 4.4482216152605],
    ['roughness', 'uin', 0.0254],
    ['pitchCount', '/mm', 25.4],
    ['expansion', '1e-6/degF', 1.8],
    ['spindleSpeed', 'rev/s', 60],
    ['surfaceSpeed', 'ft/min', 0.3048],
    ['wheelSpeed', 'ft/min', 0.00508],
  ] as const)('one %s unit %s is %d to the last digits', (quantity, unit, exact) => {
    expect(toBase(1, unit, quantity)).toBeCloseTo(exact, 14);
  });

  it.each(everyUnit)('%s goes to base from "%s" and back', (quantity, unit) => {
    fc.assert(
      fc.property(fc.double({ min: -1e6, max: 1e6, noNaN: true }), (value) => {
        const back = fromBase(toBase(value, unit, quantity), unit, quantity);
        expect(Math.abs(back - value)).toBeLessThanOrEqual(1e-9 * Math.max(1, Math.abs(value)));
      }),
      { seed: 5, numRuns: 20 },
    );
  });

  it.each(quantities)('the base unit of %s changes nothing', (quantity) => {
    expect(toBase(7.25, baseUnitOf(quantity), quantity)).toBe(7.25);
  });

  it('reads an ambiguous unit as the first quantity that has it', () => {
    expect(quantityOfUnit('mm')).toBe('length');
    expect(quantityOfUnit('rpm')).toBe('spindleSpeed');
    expect(quantityOfUnit('furlong')).toBeUndefined();
  });

  it('throws for a unit the quantity does not have', () => {
    expect(() => toBase(1, 'kW', 'length')).toThrow('"kW" is not a unit of length');
  });
});
