/** The numbers of a card under the names by which trade rules ask for them. */

import type { Rule, RuleValue } from '../trade/index.ts';
import type { Card } from './card.ts';

const speedNames: ReadonlySet<string> = new Set(['speeds', 'cardLimit']);

/** Speeds of a saw band are none of a spindle: a rule that asks for the others gets none of them. */
export function cardForRule(
  rule: Rule,
  { values, speedQuantity }: Pick<Card, 'values' | 'speedQuantity'>,
): Readonly<Record<string, RuleValue>> {
  const { topSpeed, ...others } = values;
  const named = topSpeed === undefined ? others : { ...others, cardLimit: topSpeed };
  const kept = Object.entries(named).filter(([name]) => {
    const input = rule.inputs.find((one) => one.name === name);
    if (!speedNames.has(name) || !input || !('quantity' in input)) return true;
    return input.quantity === speedQuantity;
  });
  return Object.fromEntries(kept);
}
