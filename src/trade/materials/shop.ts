/** A shop's own materials beside the table's. */

import {
  englishLanguage,
  type Language,
  type Worded,
  worded,
  wordedIn,
} from '../../texts/index.ts';
import type { Rule, RuleInput } from '../rule.ts';
import { show } from '../show.ts';
import type { Material } from './material.ts';
import { knowing } from './named.ts';
import { materialNames } from './table.ts';
import type { SpeedCell } from './tool.ts';

const KEBAB = /^[a-z0-9]+(-[a-z0-9]+)*$/;

/** What the numbers of a row may be: m/min, N/mm², 1e-6 per kelvin, kg/m³, N/mm². */
export const shopRanges = {
  speed: [0.5, 3000],
  modulus: [100, 1_000_000],
  expansion: [0.1, 300],
  density: [100, 25_000],
  kc: [50, 10_000],
  mc: [0, 0.6],
} as const;

/** Allowed numbers of a row: what they are called, the value, low and high end. */
function bounds(row: Material): readonly (readonly [Worded, number | null, number, number])[] {
  const cells: readonly (readonly [string, SpeedCell])[] = Object.entries(row.speeds);
  const speeds = cells.flatMap(([column, cell]) =>
    cell.map((speed) => [worded`a ${column} speed`, speed, ...shopRanges.speed] as const),
  );
  return [
    ...speeds,
    ['the modulus', row.modulus, ...shopRanges.modulus],
    ['the expansion', row.expansion, ...shopRanges.expansion],
    ['the density', row.density, ...shopRanges.density],
    ['kc', row.force?.kc ?? null, ...shopRanges.kc],
    ['mc', row.force?.mc ?? null, ...shopRanges.mc],
  ];
}

function rowFaults(row: Material): readonly Worded[] {
  const numbers = bounds(row).flatMap(([what, value, low, high]) =>
    value === null || (value >= low && value <= high)
      ? []
      : [worded`${row.name}: ${what} is ${show(value)}; it must lie from ${low} to ${high}.`],
  );
  const sources = Object.entries(row.sources).flatMap(([what, source]) =>
    source.trim() === '' ? [worded`${row.name}: say where its ${what} numbers come from.`] : [],
  );
  return [...numbers, ...sources];
}

/** Everything wrong with a shop's rows, as sentences; none when they can be used. */
export function shopMaterialFaults(
  rows: readonly Material[],
  language: Language = englishLanguage,
): readonly string[] {
  const names = rows.flatMap((row, index): readonly Worded[] => {
    if (!KEBAB.test(row.name)) {
      return [worded`"${row.name}" is no name here; use small letters, figures and "-".`];
    }
    const earlier = rows.slice(0, index).some((other) => other.name === row.name);
    if (!earlier && !materialNames.includes(row.name)) return [];
    return [worded`There is a material "${row.name}" already; give yours another name.`];
  });
  return [...names, ...rows.flatMap(rowFaults)].map((fault) => wordedIn(language, fault));
}

function widened(input: RuleInput, rows: readonly Material[]): RuleInput {
  if (input.kind !== 'choice' || input.name !== 'material') return input;
  const titles = rows.map((row) => [row.name, [row.title.toLowerCase()]] as const);
  return {
    ...input,
    options: [...input.options, ...rows.map((row) => row.name)],
    said: { ...input.said, ...Object.fromEntries(titles) },
  };
}

/**
 * The same rules, knowing a shop's own materials as well. Check the rows with shopMaterialFaults
 * first: this does not look at them again.
 */
export function withShopMaterials(
  rules: readonly Rule[],
  rows: readonly Material[],
): readonly Rule[] {
  return rules.map((rule) => ({
    ...rule,
    inputs: rule.inputs.map((input) => widened(input, rows)),
    work: (values) => knowing(rows, () => rule.work(values)),
  }));
}
