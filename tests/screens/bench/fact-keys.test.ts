import { array, assert, property, record, string, uniqueArray } from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  ANSWER_KEYS,
  ASK_KEYS,
  COMMAND_KEYS,
  factKeys,
} from '../../../src/screens/bench/fact-keys.ts';
import { latheKind } from '../../flow/shipped.ts';

const taken = [...Object.keys(COMMAND_KEYS), ...Object.keys(ASK_KEYS), ...Object.keys(ANSWER_KEYS)];

describe('the keys of facts', () => {
  it('are one for each fact of the lathe', () => {
    const { facts } = latheKind();
    expect([...factKeys(facts).keys()].sort()).toEqual(facts.map(({ id }) => id).sort());
  });

  it('take a letter of the label where one is free', () => {
    expect(factKeys([{ id: 'guard', label: 'Guard' }]).get('guard')).toBe('g');
  });

  it('are never shared, never a command, and never the space bar, for any facts', () => {
    const facts = uniqueArray(record({ id: string(), label: string() }), {
      selector: ({ id }) => id,
      maxLength: 30,
    });
    assert(
      property(facts, (list) => {
        const keys = [...factKeys(list).values()];
        expect(new Set(keys).size).toBe(keys.length);
        expect(keys.filter((key) => taken.includes(key) || key === ' ' || key === 'Enter')).toEqual(
          [],
        );
      }),
      { seed: 7, numRuns: 100 },
    );
  });

  it('are given to the first eighteen facts at least', () => {
    const many = array(string(), { minLength: 18, maxLength: 18 });
    assert(
      property(many, (labels) => {
        const facts = labels.map((label, index) => ({ id: String(index), label }));
        expect(factKeys(facts).size).toBe(18);
      }),
      { seed: 8, numRuns: 50 },
    );
  });
});
