/** The numbers of a job as they are typed and shown: "25", "1 1/8 in", "0.02 mm". */

import { type Card, type FlowInput, formatOf } from '../../flow/index.ts';
import { fromBase, parseMeasure, type Quantity, toBase } from '../../trade/index.ts';

export type ReadInput =
  | { readonly ok: true; readonly value: number | string; readonly readAs: string }
  | { readonly ok: false; readonly fault: string };

/** An input whose number is typed, against one that is picked from a list. */
export type TypedInput = Exclude<FlowInput, { options: string[] }>;

export function isTyped(input: FlowInput): input is TypedInput {
  return !('options' in input);
}

/** The unit a bare number is taken in: the flow's, or what an inch shop reads instead. */
export function unitOfInput(input: TypedInput, units: Card['units']): string {
  return formatOf(input.quantity as Quantity, units, input).unit;
}

/** A base-unit number as it would be typed here: no more digits than it needs. */
export function shownInput(input: TypedInput, base: number, units: Card['units']): string {
  return plain(fromBase(base, unitOfInput(input, units), input.quantity as Quantity));
}

/** "18 to 40 mm". */
export function rangeText(input: TypedInput, units: Card['units']): string {
  const quantity = input.quantity as Quantity;
  const unit = unitOfInput(input, units);
  const show = (value: number) =>
    plain(fromBase(toBase(value, input.unit, quantity), unit, quantity));
  return `${show(input.min)} to ${show(input.max)} ${unit}`;
}

/** Reads what was typed. A unit may stand behind it; without one it is in the unit of the field. */
export function readInput(input: FlowInput, text: string, units: Card['units']): ReadInput {
  if (!isTyped(input)) return { ok: true, value: text, readAs: '' };
  const quantity = input.quantity as Quantity;
  const unit = unitOfInput(input, units);
  const typed = text.trim();
  if (typed === '') return { ok: false, fault: `${input.label} is empty: type a number.` };
  const hasUnit = /[a-zµ"″'′°]/i.test(typed);
  const measure = parseMeasure(hasUnit ? typed : `${typed} ${unit}`, quantity);
  if (!measure.ok) return { ok: false, fault: `${input.label}: ${measure.fault}` };
  const [low, high] = [input.min, input.max].map((end) => toBase(end, input.unit, quantity));
  if (outside(measure.value, low, high)) {
    return { ok: false, fault: `${input.label} must be ${rangeText(input, units)}.` };
  }
  const readAs = `${plain(fromBase(measure.value, input.unit, quantity))} ${input.unit}`;
  return { ok: true, value: measure.value, readAs };
}

/** An end of the range that was typed in inches may miss by the last bit. */
function outside(value: number, low = -Infinity, high = Infinity): boolean {
  const slack = 1e-9 * Math.max(Math.abs(low), Math.abs(high));
  return value < low - slack || value > high + slack;
}

/** "low-carbon-steel" as "Low carbon steel", "hss" as it is written on the tool. */
export function optionText(option: string): string {
  if (option === 'hss') return 'HSS';
  const text = option.replaceAll('-', ' ');
  return text.charAt(0).toUpperCase() + text.slice(1);
}

function plain(value: number): string {
  return String(Number(value.toFixed(4)));
}
