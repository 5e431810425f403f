/** The numbers of a job as they are typed and shown: "25", "1 1/8 in", "0.02 mm". */

import { type Card, type FlowInput, formatOf } from '../../flow/index.ts';
import {
  beginTexts,
  figureIn,
  type Language,
  optionText,
  sayIn,
  typedIn,
  unitIn,
} from '../../texts/index.ts';
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
export function shownInput(
  input: TypedInput,
  base: number,
  units: Card['units'],
  language: Language,
): string {
  return plain(fromBase(base, unitOfInput(input, units), input.quantity as Quantity), language);
}

/** "18 to 40 mm". */
export function rangeText(input: TypedInput, units: Card['units'], language: Language): string {
  const quantity = input.quantity as Quantity;
  const unit = unitOfInput(input, units);
  const show = (value: number) =>
    plain(fromBase(toBase(value, input.unit, quantity), unit, quantity), language);
  const [low, high] = [show(input.min), show(input.max)];
  return sayIn(language, beginTexts)('range', { low, high, unit: unitIn(language, unit) });
}

/** Reads what was typed. A unit may stand behind it; without one it is in the unit of the field. */
export function readInput(
  input: FlowInput,
  text: string,
  units: Card['units'],
  language: Language,
): ReadInput {
  if (!isTyped(input)) return { ok: true, value: text, readAs: '' };
  const { label } = input;
  const say = sayIn(language, beginTexts);
  const quantity = input.quantity as Quantity;
  const unit = unitOfInput(input, units);
  const typed = typedIn(language, text.trim());
  if (typed === '') return { ok: false, fault: say('empty', { label }) };
  const hasUnit = /[a-zµ"″'′°]/i.test(typed);
  const measure = parseMeasure(hasUnit ? typed : `${typed} ${unit}`, quantity, language);
  if (!measure.ok) return { ok: false, fault: say('wrong', { label, fault: measure.fault }) };
  const [low, high] = [input.min, input.max].map((end) => toBase(end, input.unit, quantity));
  if (outside(measure.value, low, high)) {
    const range = rangeText(input, units, language);
    return { ok: false, fault: say('outOfRange', { label, range }) };
  }
  const size = plain(fromBase(measure.value, input.unit, quantity), language);
  return { ok: true, value: measure.value, readAs: `${size} ${unitIn(language, input.unit)}` };
}

/** An end of the range that was typed in inches may miss by the last bit. */
function outside(value: number, low = -Infinity, high = Infinity): boolean {
  const slack = 1e-9 * Math.max(Math.abs(low), Math.abs(high));
  return value < low - slack || value > high + slack;
}

/** A choice at the head of a line: "Low carbon steel". */
export function choiceText(language: Language, option: string): string {
  const text = optionText(language, option);
  return text.charAt(0).toUpperCase() + text.slice(1);
}

function plain(value: number, language: Language): string {
  return figureIn(language, String(Number(value.toFixed(4))));
}
