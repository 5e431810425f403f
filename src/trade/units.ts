/** Every unit of every quantity, with its exact factor to the base unit. */

import type { Quantity } from './rule.ts';

/**
 * One unit: base = value × times ÷ over + offset. The factor is kept as a fraction so that inches
 * stay exact (25.4 = 127 ÷ 5).
 */
export interface Unit {
  readonly name: string;
  readonly aliases: readonly string[];
  readonly times: number;
  readonly over: number;
  readonly offset: number;
}

function unit(name: string, times = 1, over = 1, ...aliases: readonly string[]): Unit {
  return { name, aliases, times, over, offset: 0 };
}

const mm = unit('mm');
const inch = unit('in', 127, 5, 'inch', 'inches', '"', '″');
const thou = unit('thou', 127, 5000, 'mil');
const micrometre = unit('um', 1, 1000, 'µm', 'μm', 'micron');

/** Sources: inch and pound, International Yard and Pound Agreement 1959; hp = 550 ft·lbf/s. */
const UNITS: Readonly<Record<Quantity, readonly Unit[]>> = {
  length: [
    mm,
    inch,
    thou,
    micrometre,
    unit('cm', 10),
    unit('m', 1000),
    unit('ft', 1524, 5, 'feet', "'", '′'),
  ],
  spindleSpeed: [unit('rev/min', 1, 1, 'rpm', '/min'), unit('rev/s', 60, 1, 'rps')],
  surfaceSpeed: [
    unit('m/min'),
    unit('ft/min', 381, 1250, 'fpm', 'sfm'),
    unit('m/s', 60),
    unit('in/min', 127, 5000),
  ],
  wheelSpeed: [unit('m/s'), unit('m/min', 1, 60), unit('ft/min', 381, 75000, 'fpm', 'sfm')],
  feedPerRev: [
    unit('mm/rev', 1, 1, 'mm'),
    unit('in/rev', 127, 5, 'in', 'ipr'),
    unit('thou/rev', 127, 5000, 'thou'),
  ],
  feedPerTooth: [
    unit('mm', 1, 1, 'mm/tooth'),
    unit('in', 127, 5, 'in/tooth'),
    unit('thou', 127, 5000, 'thou/tooth'),
  ],
  feedRate: [unit('mm/min'), unit('in/min', 127, 5, 'ipm'), unit('m/min', 1000), unit('mm/s', 60)],
  time: [unit('min'), unit('s', 1, 60, 'sec'), unit('h', 60, 1, 'hr')],
  angle: [
    unit('deg', 1, 1, '°', 'degrees'),
    unit('rad', 180, Math.PI),
    unit('arcmin', 1, 60),
    unit('arcsec', 1, 3600),
  ],
  roughness: [
    unit('um', 1, 1, 'µm', 'μm', 'micron'),
    unit('uin', 127, 5000, 'µin', 'μin'),
    unit('mm', 1000),
  ],
  force: [
    unit('N'),
    unit('kN', 1000),
    unit('lbf', 44482216152605, 1e13, 'lb'),
    unit('kgf', 980665, 1e5),
  ],
  torque: [
    unit('Nm', 1, 1, 'N·m', 'N*m'),
    unit('Nmm', 1, 1000, 'N·mm'),
    unit('lbf·ft', 13558179483314004, 1e16, 'lbf*ft', 'lbfft', 'ft·lbf', 'lb-ft', 'ft-lb'),
    unit('lbf·in', 1129848290276167, 1e16, 'lbf*in', 'lbfin', 'in·lbf', 'lb-in', 'in-lb'),
  ],
  power: [unit('kW'), unit('W', 1, 1000), unit('hp', 7456998715822702, 1e16)],
  stress: [
    unit('N/mm2', 1, 1, 'N/mm²', 'MPa'),
    unit('GPa', 1000, 1, 'kN/mm2', 'kN/mm²'),
    unit('psi', 6894757293168361, 1e18),
    unit('ksi', 6894757293168361, 1e15),
  ],
  volumeRate: [
    unit('mm3/min', 1, 1, 'mm³/min'),
    unit('cm3/min', 1000, 1, 'cm³/min'),
    unit('mm3/s', 60, 1, 'mm³/s'),
    unit('in3/min', 2048383, 125, 'in³/min'),
  ],
  areaRate: [
    unit('cm2/min', 1, 1, 'cm²/min'),
    unit('mm2/min', 1, 100, 'mm²/min'),
    unit('in2/min', 16129, 2500, 'in²/min'),
  ],
  area: [unit('mm2', 1, 1, 'mm²'), unit('cm2', 100, 1, 'cm²'), unit('in2', 16129, 25, 'in²')],
  temperature: [
    unit('degC', 1, 1, '°C', 'C'),
    { name: 'degF', aliases: ['°F', 'F'], times: 5, over: 9, offset: -160 / 9 },
    { name: 'K', aliases: [], times: 1, over: 1, offset: -273.15 },
  ],
  expansion: [
    unit('1e-6/K', 1, 1, 'um/m/K', 'µm/m/K', 'ppm/K'),
    unit('1e-6/degF', 9, 5, '1e-6/F', 'ppm/degF'),
  ],
  mass: [unit('kg'), unit('g', 1, 1000), unit('t', 1000), unit('lbm', 45359237, 1e8)],
  density: [unit('kg/m3', 1, 1, 'kg/m³'), unit('g/cm3', 1000, 1, 'g/cm³')],
  ratio: [unit('', 1, 1, ':1')],
  percent: [unit('%', 1, 1, 'percent'), unit('fraction', 100)],
  pitchCount: [
    unit('tpi', 1, 1, '/in', 'per-inch'),
    unit('teeth/in'),
    unit('/mm', 127, 5),
    unit('/cm', 127, 50),
  ],
  count: [unit('', 1, 1, 'off')],
};

/** The quantities, in the order in which an ambiguous unit is read. */
export const quantities = Object.keys(UNITS) as readonly Quantity[];

/** The name of the unit that every number of this quantity has inside the program ('' for plain numbers). */
export function baseUnitOf(quantity: Quantity): string {
  return UNITS[quantity].find((one) => one.times === one.over && one.offset === 0)?.name ?? '';
}

/** The names of all units of a quantity, the base unit first. */
export function unitsOf(quantity: Quantity): readonly string[] {
  return UNITS[quantity].map((one) => one.name);
}

/** The unit of that quantity with this name or alias, if there is one. */
export function findUnit(name: string, quantity: Quantity): Unit | undefined {
  return UNITS[quantity].find((one) => one.name === name || one.aliases.includes(name));
}

/** The first quantity that has this unit: "mm" is a length, although feed per tooth has it too. */
export function quantityOfUnit(name: string): Quantity | undefined {
  return quantities.find((quantity) => findUnit(name, quantity) !== undefined);
}

function knownUnit(name: string, quantity: Quantity): Unit {
  const found = findUnit(name, quantity);
  if (found === undefined) {
    throw new RangeError(`"${name}" is not a unit of ${quantity}: ${unitsOf(quantity).join(', ')}`);
  }
  return found;
}

/** Value in the base unit. Throws RangeError for a unit the quantity does not have: check with findUnit. */
export function toBase(value: number, unitName: string, quantity: Quantity): number {
  const { times, over, offset } = knownUnit(unitName, quantity);
  return (value * times) / over + offset;
}

/** Value in the named unit of a number held in the base unit. Throws like toBase. */
export function fromBase(value: number, unitName: string, quantity: Quantity): number {
  const { times, over, offset } = knownUnit(unitName, quantity);
  return ((value - offset) * over) / times;
}
