/** Blade speed of a band saw. */

import { worded } from '../../texts/index.ts';
import { aChoice, aLength, aNumber } from '../inputs.ts';
import type { Rule, RuleValues, Worked } from '../rule.ts';
import { show } from '../show.ts';
import { numberOf, wordOf } from '../values.ts';

const FOOT = 0.3048;
const INCH = 25.4;

/**
 * ft/min for a bimetal blade, 4 in stock, coolant. Source: Machinery's Handbook 31 p. 1245; 12L14,
 * 1215 and 1117 confirmed by a second table, 304 by the page's example, the others by their order.
 */
const baseSpeeds: Readonly<Record<string, number>> = {
  '12L14': 425,
  '1215': 400,
  '1117': 340,
  '1008-1025': 320,
  '1018': 300,
  '1040': 270,
  '4130': 270,
  '304': 120,
};

/** Stock in inches and what it does to the speed. Source: Machinery's Handbook 31 p. 1245. */
const byStock: readonly (readonly [inches: number, factor: number])[] = [
  [0.25, 1.15],
  [0.75, 1.12],
  [1.25, 1.1],
  [4, 1],
  [8, 0.88],
];
/** Dry cutting loses 30 to 50 %; the middle. Same source. */
const DRY = 0.6;
const CARBON_BLADE = 0.5;

/** Between two rows in proportion, beyond the ends as the end. `thickness` in mm. */
export function stockFactor(thickness: number): number {
  const inches = thickness / INCH;
  const above = byStock.findIndex(([size]) => inches <= size);
  if (above <= 0) return above === 0 ? (byStock[0]?.[1] ?? 1) : (byStock.at(-1)?.[1] ?? 1);
  const [[low, from], [high, to]] = [byStock[above - 1] ?? [0, 1], byStock[above] ?? [1, 1]];
  return from + ((to - from) * (inches - low)) / (high - low);
}

function work(values: RuleValues): Worked {
  const [material, thickness] = [wordOf(values, 'material'), numberOf(values, 'thickness')];
  const base = baseSpeeds[material] ?? 0;
  const size = stockFactor(thickness);
  const dry = wordOf(values, 'coolant') === 'no' ? DRY : 1;
  const blade = wordOf(values, 'blade') === 'carbon' ? CARBON_BLADE : 1;
  const feet = base * size * dry * blade;
  return {
    ok: true,
    value: feet * FOOT,
    working: worded`${material}: ${base} ft/min × ${show(size, 3)} (stock) × ${dry} (coolant) × ${blade} (blade) = ${show(feet, 4)} ft/min = ${show(feet * FOOT, 4)} m/min`,
  };
}

export const sawSpeed: Rule = {
  name: 'saw-speed',
  title: 'Blade speed of a band saw',
  topic: 'other machines',
  inputs: [
    aChoice('material', Object.keys(baseSpeeds), 'steel by its AISI number', {
      said: {
        '12L14': ['leaded steel', 'free cutting steel'],
        '1018': ['mild steel', 'ten eighteen'],
        '1040': ['medium carbon steel', 'ten forty'],
        '304': ['stainless', 'stainless steel', 'three oh four'],
      },
    }),
    aLength('thickness', 500, 'thickness of the stock'),
    aChoice('coolant', ['yes', 'no'], 'with coolant or dry', {
      default: 'yes',
      said: { yes: ['wet', 'with coolant'], no: ['dry', 'no coolant', 'without coolant'] },
    }),
    aChoice('blade', ['bimetal', 'carbon'], 'blade', {
      default: 'bimetal',
      said: { bimetal: ['bi-metal', 'bi metal'], carbon: ['carbon steel'] },
    }),
  ],
  output: { quantity: 'surfaceSpeed', meaning: 'speed of the blade' },
  formula: 'table × stock factor (1.15 at 1/4 in to 0.88 at 8 in) × 0.6 dry × 0.5 carbon blade',
  source: "Machinery's Handbook 31 p. 1245",
  cautions: ['The blade guard covers all but the cut; stop the saw before swarf is cleared.'],
  work,
};

export const bandSpeed: Rule = {
  name: 'band-speed',
  title: 'Blade speed from the band wheel',
  topic: 'other machines',
  inputs: [
    aLength('wheel', 2000, 'diameter of the band wheel'),
    aNumber('wheelSpeed', 'spindleSpeed', [0, 5000], 'turns of the band wheel', { aboveMin: true }),
  ],
  output: { quantity: 'surfaceSpeed', meaning: 'speed of the blade' },
  formula: 'v = π D n ÷ 1000',
  source: 'geometry',
  cautions: ['Keep both wheel covers shut while the saw runs.'],
  work: (values) => {
    const [wheel, turns] = [numberOf(values, 'wheel'), numberOf(values, 'wheelSpeed')];
    const value = (Math.PI * wheel * turns) / 1000;
    const working = worded`π × ${show(wheel)} × ${show(turns)} ÷ 1000 = ${show(value, 4)} m/min`;
    return { ok: true, value, working };
  },
};
