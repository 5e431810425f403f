/** Values that a rule's own descriptions allow, and values they do not, for property tests. */

import fc from 'fast-check';
import type {
  ListInput,
  NumberInput,
  Rule,
  RuleInput,
  RuleValue,
  RuleValues,
} from '../../src/trade/index.ts';

/** The least above an excluded end that counts as above it. */
const SMALLEST = 1e-5;

type Ranged = NumberInput | ListInput;

function inRange(input: Ranged): fc.Arbitrary<number> {
  const { min, max } = input;
  const wholeOnly = input.kind === 'number' ? input.whole : input.quantity === 'count';
  if (wholeOnly) {
    const low = input.kind === 'number' && input.aboveMin ? Math.floor(min) + 1 : Math.ceil(min);
    return fc.integer({ min: low, max: Math.floor(max) });
  }
  const low = input.kind === 'number' && input.aboveMin ? min + SMALLEST : min;
  const wide = fc.double({ min: low, max, noNaN: true });
  // Most of a wide range is far from daily work: half of the samples stay near its lower end.
  const near = fc.double({ min: low, max: min + (max - min) / 50, noNaN: true });
  return fc.oneof(wide, near);
}

function allowed(input: RuleInput): fc.Arbitrary<RuleValue> {
  switch (input.kind) {
    case 'number':
      return inRange(input);
    case 'list':
      return fc.array(inRange(input), { minLength: 1, maxLength: 8 });
    case 'choice':
      return fc.constantFrom(...input.options);
    case 'text':
      return fc.oneof(fc.constant(input.example), fc.string({ minLength: 1, maxLength: 12 }));
  }
}

function mayBeLeftOut(input: RuleInput): boolean {
  return input.optional === true || (input.kind !== 'list' && input.default !== undefined);
}

/** Everything the rule takes, in range; what may be left out sometimes is. */
export function sampleValues(rule: Rule): fc.Arbitrary<RuleValues> {
  const shape = rule.inputs.map((input) => {
    const value = allowed(input);
    return [input.name, mayBeLeftOut(input) ? fc.option(value, { nil: undefined }) : value];
  });
  return fc.record(Object.fromEntries(shape));
}

/** For each input values that must be refused, with the name that the refusal must say. */
export function refusedValues(input: RuleInput): readonly RuleValue[] {
  switch (input.kind) {
    case 'number':
      return [
        Number.NaN,
        Number.POSITIVE_INFINITY,
        input.max * 1.01 + 1,
        input.aboveMin ? input.min : input.min - 1,
        'a word',
        ...(input.whole ? [input.min + 0.5] : []),
      ];
    case 'list':
      return [[], [input.max * 1.01 + 1], [Number.NaN], 3];
    case 'choice':
      return ['no such word', 3];
    case 'text':
      return ['', '  ', 3];
  }
}
