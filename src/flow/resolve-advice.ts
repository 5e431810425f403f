/** Checks the advice of a fault walk: its rule is there, and every input of the rule comes from somewhere. */

import { findRule, findUnit, ruleNames } from '../trade/index.ts';
import type { Path } from './fault.ts';
import type { WalkItem } from './kind-shape.ts';
import { listed, suggestion } from './nearest.ts';
import type { Complain } from './resolve-values.ts';

type Advice = NonNullable<WalkItem['advice']>;

export function checkAdvice(advice: Advice, path: Path, complain: Complain): void {
  const rule = findRule(advice.rule);
  if (!rule) {
    complain(
      [...path, 'rule'],
      `There is no trade rule "${advice.rule}".${suggestion(advice.rule, ruleNames())}`,
    );
    return;
  }
  const names = rule.inputs.map((input) => input.name);
  const said = rule.inputs.find((input) => input.name === advice.input);
  if (said?.kind !== 'number') {
    complain(
      [...path, 'input'],
      `The rule "${rule.name}" takes no number "${advice.input}". It takes: ${listed(names)}.`,
    );
  } else if (!findUnit(advice.unit, said.quantity)) {
    complain([...path, 'unit'], `"${advice.unit}" is no unit of ${said.quantity}.`);
  }
  for (const name of Object.keys(advice.given)) {
    if (!names.includes(name)) {
      complain(
        [...path, 'given', name],
        `The rule "${rule.name}" takes no "${name}".${suggestion(name, names)} It takes: ${listed(names)}.`,
      );
    }
  }
  for (const input of rule.inputs) {
    const given = input.name === advice.input || input.name in advice.given;
    const free = ('optional' in input && input.optional) || ('default' in input && input.default);
    if (!given && free === undefined) {
      complain(
        [...path, 'given'],
        `The rule "${rule.name}" needs "${input.name}", which nothing gives it.`,
      );
    }
  }
  if (!advice.say.includes('{answer}'))
    complain([...path, 'say'], 'The sentence does not tell {answer}.');
}
