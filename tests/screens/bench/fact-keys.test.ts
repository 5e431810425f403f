import { array, assert, property, record, string, uniqueArray } from 'fast-check';
import { describe, expect, it } from 'vitest';
import { shippedKinds } from '../../../src/cli/flow-files.ts';
import {
  ANSWER_KEYS,
  ASK_KEYS,
  COMMAND_KEYS,
  factKeys,
} from '../../../src/screens/bench/fact-keys.ts';
import { latheKind } from '../../flow/shipped.ts';

// "n" is next and "y" a bare yes to whoever presses them: neither answers a gate.
const commands = [COMMAND_KEYS, ASK_KEYS, ANSWER_KEYS].flatMap((keys) => Object.keys(keys));
const taken = [...commands, 'n', 'y'];

describe('the keys of facts', () => {
  it('are one for each fact of the lathe', () => {
    const { facts } = latheKind();
    expect([...factKeys(facts).keys()].sort()).toEqual(facts.map(({ id }) => id).sort());
  });

  it('have one meaning each: no letter stands in two of the tables', () => {
    expect(new Set(commands).size).toBe(commands.length);
  });

  it.each([...shippedKinds().values()])(
    'are one for each fact of the $id, none of them n or y',
    ({ facts }) => {
      const keys = factKeys(facts);
      expect(keys.size).toBe(facts.length);
      expect([...keys.values()].filter((key) => key === 'n' || key === 'y')).toEqual([]);
    },
  );

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

  it('are given to the first nineteen facts at least', () => {
    const many = array(string(), { minLength: 19, maxLength: 19 });
    assert(
      property(many, (labels) => {
        const facts = labels.map((label, index) => ({ id: String(index), label }));
        expect(factKeys(facts).size).toBe(19);
      }),
      { seed: 8, numRuns: 50 },
    );
  });
});
