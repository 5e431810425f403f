/** Cutting speeds by question, and what a missing fluid costs. */

import { describe, expect, it } from 'vitest';
import { findRule, materialTable, operations, tools } from '../../../src/trade/index.ts';
import { answerOf, given, numberOf } from '../asking.ts';

describe('cutting-speed', () => {
  it('answers every material and operation with high-speed steel', () => {
    for (const { name: material } of materialTable) {
      for (const operation of operations) {
        expect(numberOf('cutting-speed', { material, operation })).toBeGreaterThan(0);
      }
    }
  });

  it('never asks carbide to run slower than high-speed steel', () => {
    for (const { name: material } of materialTable) {
      for (const operation of operations) {
        const speeds = tools.flatMap((tool) => {
          const answer = answerOf('cutting-speed', { material, operation, tool });
          return answer.ok ? [answer.value] : [];
        });
        expect([...speeds].sort((a, b) => a - b)).toEqual(speeds);
      }
    }
  });

  // Common practice, no source: a quarter slower without fluid, unless the metal is cut dry.
  it.each([
    ['low-carbon-steel', 'hss', 0.75],
    ['low-carbon-steel', 'carbide', 1],
    ['grey-cast-iron', 'hss', 1],
    ['free-cutting-brass', 'hss', 1],
    ['aluminium-6061', 'hss', 0.75],
  ])('in %s with %s a dry cut keeps %d of the speed', (material, tool, share) => {
    const wet = numberOf('cutting-speed', { material, tool, operation: 'turn' });
    const dry = numberOf('cutting-speed', { material, tool, operation: 'turn', coolant: 'no' });
    expect(dry / wet).toBeCloseTo(share, 9);
  });

  it('names the source of the very row', () => {
    const answer = given('cutting-speed', { material: 'stainless-304', operation: 'drill' });
    expect(answer.source).toContain('NAVEDTRA');
  });

  it('has a source for every number of every row', () => {
    for (const row of materialTable) {
      for (const source of Object.values(row.sources)) expect(source.length).toBeGreaterThan(10);
    }
  });
});

describe('the names people say', () => {
  it('each mean one option that there is, and no two the same', () => {
    for (const name of ['material', 'tool', 'operation']) {
      const input = findRule('cutting-speed')?.inputs.find((one) => one.name === name);
      if (input?.kind !== 'choice') throw new Error(`${name} is no choice`);
      const said = Object.entries(input.said ?? {});
      for (const [option] of said) expect(input.options).toContain(option);
      const words = [...input.options, ...said.flatMap(([, names]) => names)];
      expect(new Set(words).size).toBe(words.length);
    }
  });
});
