/** A flow on a card that brings the shop's own materials: they can be chosen wherever a material is asked for. */

import {
  answerRule,
  findRule,
  type Rule,
  type RuleAnswer,
  type RuleValues,
  withShopMaterials,
} from '../trade/index.ts';
import type { Card } from './card.ts';
import type { FlowInput } from './flow-shape.ts';
import type { Flow } from './resolve.ts';

/** The same flow, its choices of a material widened by those of the card. */
export function withOwnMaterials(flow: Flow, { materials = [] }: Pick<Card, 'materials'>): Flow {
  if (materials.length === 0) return flow;
  const names = materials.map(({ name }) => name);
  const inputs = flow.file.inputs.map((input) => widened(flow, input, names));
  const byId = new Map(inputs.map((input) => [input.id, input]));
  return {
    ...flow,
    file: { ...flow.file, inputs },
    scope: { ...flow.scope, inputs: byId },
  };
}

function widened(flow: Flow, input: FlowInput, names: readonly string[]): FlowInput {
  if (!('options' in input) || !isMaterial(flow, input.id)) return input;
  const more = names.filter((name) => !input.options.includes(name));
  return { ...input, options: [...input.options, ...more] };
}

/** True for a choice that is handed to a rule as its material. */
function isMaterial({ file }: Flow, id: string): boolean {
  return file.workings.some(
    ({ rule, given }) =>
      given.material !== undefined &&
      'input' in given.material &&
      given.material.input === id &&
      findRule(rule) !== undefined,
  );
}

/** The rule's answer, knowing the materials of the card as well. */
export function answerOn(
  { materials = [] }: Pick<Card, 'materials'>,
  rule: Rule,
  given: RuleValues,
): RuleAnswer {
  const [known = rule] = materials.length > 0 ? withShopMaterials([rule], materials) : [];
  return answerRule(known, given);
}
