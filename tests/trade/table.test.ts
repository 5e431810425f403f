/** What every rule in the table keeps, whichever it is. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  answerRule,
  baseUnitOf,
  findRule,
  nearestRule,
  type Rule,
  type RuleAnswer,
  type RuleValues,
  ruleNames,
  rules,
} from '../../src/trade/index.ts';
import { refusedValues, sampleValues } from './sample-values.ts';

/** Questions for rules whose answers random values hardly ever reach. */
const RARELY_HIT: Readonly<Record<string, RuleValues>> = {
  'change-gears': { pitch: 1.5, screwPitch: 3, gears: [20, 30, 40, 60, 80] },
};

const named = rules.map((rule) => [rule.name, rule] as const);

function finite(value: number | readonly number[]): boolean {
  return typeof value === 'number' ? Number.isFinite(value) : value.every(Number.isFinite);
}

function expectSound(rule: Rule, answer: RuleAnswer): void {
  if (!answer.ok) {
    expect(answer.fault.length).toBeGreaterThan(20);
    expect(answer.fault).not.toMatch(/NaN|undefined|Infinity/);
    return;
  }
  expect(finite(answer.value)).toBe(true);
  expect(answer.working).not.toMatch(/NaN|undefined|Infinity/);
  for (const [name, quantity] of Object.entries(rule.output.parts ?? {})) {
    expect(answer.parts?.[name]?.quantity).toBe(quantity);
    expect(finite(answer.parts?.[name]?.value ?? Number.NaN)).toBe(true);
  }
}

describe('the table of rules', () => {
  it('names every rule once, in kebab-case', () => {
    expect(new Set(ruleNames()).size).toBe(rules.length);
    for (const name of ruleNames()) expect(name).toMatch(/^[a-z0-9]+(-[a-z0-9]+)*$/);
  });

  it('finds a rule by its name and guesses a misspelt one', () => {
    expect(findRule('card-speed')?.title).toContain('card');
    expect(findRule('card-sped')).toBeUndefined();
    expect(nearestRule('spindel-speed')).toBe('spindle-speed');
    expect(nearestRule('xyzzy-plugh-frotz')).toBeUndefined();
  });

  it.each(named)(
    '%s has a title, topic, formula and source, and describes its inputs',
    (_, rule) => {
      for (const text of [rule.title, rule.topic, rule.formula, rule.source, rule.output.meaning]) {
        expect(text.trim().length).toBeGreaterThan(2);
      }
      expect(new Set(rule.inputs.map((input) => input.name)).size).toBe(rule.inputs.length);
      for (const input of rule.inputs) expect(input.meaning.length).toBeGreaterThan(2);
      expect(baseUnitOf(rule.output.quantity)).toBeTypeOf('string');
    },
  );

  it.each(named)('%s answers or refuses whatever its inputs allow', (_, rule) => {
    fc.assert(
      fc.property(sampleValues(rule), (values) => expectSound(rule, answerRule(rule, values))),
      { seed: 5, numRuns: 60 },
    );
  });

  it.each(named)('%s answers at least one sample with a number', (name, rule) => {
    const samples = fc.sample(sampleValues(rule), { seed: 7, numRuns: 600 });
    const tried = [RARELY_HIT[name] ?? {}, ...samples];
    expect(tried.some((values) => answerRule(rule, values).ok)).toBe(true);
  });

  it.each(named)('%s refuses each input that is out of range and names it', (_, rule) => {
    const [good = {}] = fc.sample(sampleValues(rule), { seed: 3, numRuns: 1 });
    for (const input of rule.inputs) {
      for (const wrong of refusedValues(input)) {
        const answer = answerRule(rule, { ...good, [input.name]: wrong });
        expect(answer.ok ? 'answered' : answer.fault).toContain(input.name);
      }
    }
  });

  it.each(named)('%s says what is missing when nothing is given', (_, rule) => {
    const needed = rule.inputs.find(
      (input) => !input.optional && (input.kind === 'list' || input.default === undefined),
    );
    const answer = answerRule(rule, {});
    expect(
      needed === undefined || (!answer.ok && answer.fault.includes(`${needed.name} is missing`)),
    ).toBe(true);
  });
});
