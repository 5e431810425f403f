/** Reads a question to a rule as a person writes it: names, "=", values with units. */

import { optionSaid } from './materials/said.ts';
import { parseMeasure, parseMeasures } from './measure.ts';
import { nearestName } from './nearest.ts';
import type { Rule, RuleInput, RuleValue, RuleValues } from './rule.ts';

type Read<T> = { readonly ok: true; readonly value: T } | { readonly ok: false; fault: string };

function readValue(input: RuleInput, text: string): Read<RuleValue> {
  switch (input.kind) {
    case 'number':
      return parseMeasure(text, input.quantity);
    case 'list':
      return parseMeasures(text, input.quantity);
    case 'choice':
      return { ok: true, value: optionSaid(text, input.said) };
    case 'text':
      return { ok: true, value: text.trim() };
  }
}

function unknownInput(rule: Rule, name: string): string {
  const names = rule.inputs.map((input) => input.name);
  const meant = nearestName(name, names);
  const hint = meant === undefined ? '' : ` Did you mean "${meant}"?`;
  return `"${rule.name}" has no input "${name}"; it has ${names.join(', ')}.${hint}`;
}

/**
 * Reads "diameter=1 3/8in" and the like into base units for this rule. The first thing that cannot
 * be read comes back as a fault. Range and presence are not looked at here: answerRule does that.
 */
export function readAsked(rule: Rule, words: readonly string[]): Read<RuleValues> {
  const values: Record<string, RuleValue> = {};
  for (const word of words) {
    const at = word.indexOf('=');
    if (at < 1)
      return { ok: false, fault: `"${word}" is not name=value; write for example diameter=25mm.` };
    const name = word.slice(0, at).trim();
    const input = rule.inputs.find((one) => one.name === name);
    if (input === undefined) return { ok: false, fault: unknownInput(rule, name) };
    if (name in values) return { ok: false, fault: `${name} is given twice; give it once.` };
    const read = readValue(input, word.slice(at + 1));
    if (!read.ok) return { ok: false, fault: `${name}: ${read.fault}` };
    values[name] = read.value;
  }
  return { ok: true, value: values };
}
