/** Short ways to describe what a rule takes. The shapes themselves stand in rule.ts. */

import type { ChoiceInput, ListInput, NumberInput, Quantity, TextInput } from './rule.ts';

type Span = readonly [min: number, max: number];
type NumberMore = Partial<Pick<NumberInput, 'aboveMin' | 'whole' | 'default' | 'optional'>>;
type WordMore = { readonly default?: string; readonly optional?: boolean };
type ChoiceMore = WordMore & Pick<ChoiceInput, 'said'>;

/** A number in the base unit of its quantity, within a span that includes both ends. */
export function aNumber(
  name: string,
  quantity: Quantity,
  [min, max]: Span,
  meaning: string,
  more: NumberMore = {},
): NumberInput {
  return { kind: 'number', name, quantity, min, max, meaning, ...more };
}

/** A length in mm, above zero and up to `max`. */
export function aLength(
  name: string,
  max: number,
  meaning: string,
  more: NumberMore = {},
): NumberInput {
  return aNumber(name, 'length', [0, max], meaning, { aboveMin: true, ...more });
}

/** A whole number of things. */
export function aCount(
  name: string,
  span: Span,
  meaning: string,
  more: NumberMore = {},
): NumberInput {
  return aNumber(name, 'count', span, meaning, { whole: true, ...more });
}

/** One word out of a list. */
export function aChoice(
  name: string,
  options: readonly string[],
  meaning: string,
  more: ChoiceMore = {},
): ChoiceInput {
  return { kind: 'choice', name, options, meaning, ...more };
}

/** A list of numbers, each within the span. */
export function aList(
  name: string,
  quantity: Quantity,
  [min, max]: Span,
  meaning: string,
  optional = false,
): ListInput {
  return { kind: 'list', name, quantity, min, max, meaning, optional };
}

/** A word written freely. */
export function aText(
  name: string,
  example: string,
  meaning: string,
  more: WordMore = {},
): TextInput {
  return { kind: 'text', name, example, meaning, ...more };
}
