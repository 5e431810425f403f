/** In which unit and with how many decimals a value is shown and spoken on this machine. */

import type { Language } from '../texts/index.ts';
import { baseUnitOf, findRule, findUnit, fromBase, type Quantity } from '../trade/index.ts';
import { showNumber } from '../words/index.ts';
import type { Card } from './card.ts';
import { constantQuantity } from './constant.ts';
import type { Flow } from './resolve.ts';
import { meaningOf } from './scope.ts';
import type { ValueRef } from './words-shape.ts';

/** A number ready to be shown or spoken. */
export interface Shown {
  readonly value: number;
  readonly unit: string;
  readonly decimals: number;
}

interface Format {
  readonly unit: string;
  readonly decimals: number;
}

const usual: Partial<Record<Quantity, Format>> = {
  length: { unit: 'mm', decimals: 2 },
  spindleSpeed: { unit: 'rev/min', decimals: 0 },
  surfaceSpeed: { unit: 'm/min', decimals: 0 },
  feedPerRev: { unit: 'mm/rev', decimals: 2 },
  feedRate: { unit: 'mm/min', decimals: 0 },
  areaRate: { unit: 'cm²/min', decimals: 0 },
  time: { unit: 'min', decimals: 1 },
  angle: { unit: 'deg', decimals: 2 },
  power: { unit: 'kW', decimals: 2 },
  count: { unit: '', decimals: 0 },
};

/** What an inch shop reads instead. An inch is coarser than a millimetre and needs a decimal more; a foot is not. */
const inchFor: Readonly<Record<string, Format & { readonly more: number }>> = {
  mm: { unit: 'in', decimals: 3, more: 1 },
  'mm/rev': { unit: 'in/rev', decimals: 4, more: 1 },
  'm/min': { unit: 'ft/min', decimals: 0, more: 0 },
  'mm/min': { unit: 'in/min', decimals: 2, more: 1 },
  'cm²/min': { unit: 'in²/min', decimals: 1, more: 1 },
};

/** The format of a quantity, with the unit a file asks for, on a metric or inch machine. */
export function formatOf(
  quantity: Quantity,
  units: Card['units'],
  asked: { readonly unit?: string | undefined; readonly decimals?: number | undefined } = {},
): Format {
  const base = usual[quantity] ?? { unit: baseUnitOf(quantity), decimals: 3 };
  const format = { unit: asked.unit ?? base.unit, decimals: asked.decimals ?? base.decimals };
  const inch = units === 'inch' ? inchFor[format.unit] : undefined;
  if (!inch) return format;
  return { unit: inch.unit, decimals: Math.max(inch.decimals, format.decimals + inch.more) };
}

/** A base-unit number in a format. */
export function shownAs(value: number, quantity: Quantity, format: Format): Shown {
  return { value: fromBase(value, format.unit, quantity), ...format };
}

/** A base-unit number as text, in the usual unit and decimals of its quantity: "1600 rpm". */
export function shownText(
  value: number,
  quantity: Quantity,
  units: Card['units'],
  language: Language,
): string {
  const shown = shownAs(value, quantity, formatOf(quantity, units));
  return showNumber(shown.value, shown.unit, shown.decimals, language);
}

/** The quantity and format a value of this flow is shown in, or undefined for words and lists. */
export function displayOf(
  ref: ValueRef,
  flow: Flow,
  units: Card['units'],
): { readonly quantity: Quantity; readonly format: Format } | undefined {
  if ('is' in ref) return displayOfConstant(ref.is, ref.unit, units);
  const meaning = meaningOf(ref, flow.scope);
  if (typeof meaning === 'string' || meaning.kind !== 'number') return undefined;
  const { quantity } = meaning;
  return { quantity, format: formatOf(quantity, units, askedFor(ref, flow)) };
}

/** A constant keeps the unit and the decimals it is written with, and turns to inches on an inch machine. */
function displayOfConstant(
  value: number,
  unit: string,
  units: Card['units'],
): { readonly quantity: Quantity; readonly format: Format } | undefined {
  const quantity = constantQuantity(unit);
  const name = quantity && findUnit(unit, quantity)?.name;
  if (quantity === undefined || name === undefined) return undefined;
  const decimals = Math.min(4, (String(value).split('.')[1] ?? '').length);
  return { quantity, format: formatOf(quantity, units, { unit: name, decimals }) };
}

function askedFor(
  ref: ValueRef,
  flow: Flow,
): { unit?: string | undefined; decimals?: number | undefined } {
  if ('input' in ref) {
    const input = flow.scope.inputs.get(ref.input);
    return input && !('options' in input) ? input : {};
  }
  if ('reading' in ref) return flow.scope.readings.get(ref.reading)?.reading ?? {};
  if (!('working' in ref)) return {};
  const working = flow.scope.workings.get(ref.working);
  const output = working && findRule(working.rule)?.output.quantity;
  const own = ref.part === undefined || output === undefined || partIsAlike(ref, flow);
  return own && working ? working : {};
}

/** A part shares the unit its working asks for only when it is of the same quantity. */
function partIsAlike(ref: ValueRef, flow: Flow): boolean {
  const whole = 'working' in ref ? meaningOf({ working: ref.working }, flow.scope) : undefined;
  const part = meaningOf(ref, flow.scope);
  return (
    typeof whole === 'object' &&
    typeof part === 'object' &&
    whole.kind === 'number' &&
    part.kind === 'number' &&
    whole.quantity === part.quantity
  );
}
