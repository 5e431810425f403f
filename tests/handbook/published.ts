/** Checks the rules against published numbers: one line a check, each with its source. */

import { describe, expect, it } from 'vitest';
import { answerRule, baseUnitOf, findRule, fromBase, readAsked } from '../../src/trade/index.ts';

/**
 * What is asked, as on the command line ("drill-point diameter=10 pointAngle=118"; a part of the
 * answer as "drill-torque.kc ..."); the published number; its unit; how far off it may be (a number
 * in that unit, or "1%"); and where the number stands. "derived" means: the formula stands there,
 * the number was worked out outside this program.
 */
export type Published = readonly [
  asked: string,
  number: number,
  unit: string,
  within: number | `${number}%`,
  source: string,
];

interface Answered {
  readonly value: number;
  readonly word: string | undefined;
}

function ask(asked: string, unit: string): Answered {
  const [called = '', ...pairs] = asked.split(' ');
  const [name = '', partName] = called.split('.');
  const rule = findRule(name);
  if (rule === undefined) throw new Error(`no rule ${name}`);
  const read = readAsked(rule, pairs);
  if (!read.ok) throw new Error(read.fault);
  const answer = answerRule(rule, read.value);
  if (!answer.ok) throw new Error(answer.fault);
  const part = partName === undefined ? undefined : answer.parts?.[partName];
  if (partName !== undefined && part === undefined) throw new Error(`no part ${partName}`);
  const value = part?.value ?? answer.value;
  if (typeof value !== 'number') throw new Error(`${partName} is a list`);
  const quantity = part?.quantity ?? rule.output.quantity;
  return { value: fromBase(value, unit, quantity), word: answer.word };
}

function allowed(number: number, within: Published[3]): number {
  return typeof within === 'number' ? within : (Math.abs(number) * Number.parseFloat(within)) / 100;
}

/** One test for each line. */
export function published(topic: string, lines: readonly Published[]): void {
  describe(`${topic}, as published`, () => {
    it.each(lines.map((line) => [...line] as const))(
      '%s gives %d %s within %s [%s]',
      (asked, number, unit, within) => {
        const off = Math.abs(ask(asked, unit).value - number);
        expect(off).toBeLessThanOrEqual(allowed(number, within) * (1 + 1e-9) + 1e-12);
      },
    );
  });
}

/** What is asked, the published word, and its source. */
export type PublishedWord = readonly [asked: string, word: string, source: string];

/** One test for each line whose answer is a word. */
export function publishedWords(topic: string, lines: readonly PublishedWord[]): void {
  describe(`${topic}, as published in words`, () => {
    it.each(lines.map((line) => [...line] as const))('%s gives %s [%s]', (asked, word) => {
      expect(ask(asked, unitOf(asked)).word).toBe(word);
    });
  });
}

function unitOf(asked: string): string {
  const rule = findRule(asked.split(' ')[0] ?? '');
  if (rule === undefined) throw new Error(`no rule in "${asked}"`);
  return baseUnitOf(rule.output.quantity);
}
