import { describe, expect, it } from 'vitest';
import { grownFor, newShared } from '../../src/proof/grown.ts';
import { Values, type Variable } from '../../src/proof/variables.ts';

const made = (key: string, level: number): Variable => {
  const values = new Values([null, 'yes', 'no']);
  return { kind: 'fact', key, name: key, level, token: {}, values };
};

/** A tree that looks at "a", at a spot where a few values can occur. */
function grown(
  tree: ReturnType<typeof newShared<boolean>>,
  lists: readonly (readonly number[])[],
  at = 0,
) {
  const a = made('a', at);
  let runs = 0;
  const one = grownFor(tree, {
    names: { variable: () => a, nameOf: ({ name }) => name },
    valuesAt: (level) => lists[level] ?? [],
    run: (look) => {
      runs += 1;
      return look(a) === 1;
    },
  });
  return { one, runs };
}

describe('what a tree was grown to', () => {
  const [few, many, others] = [
    [0, 1],
    [0, 1, 2],
    [0, 2],
  ];

  it('is one and the same where the same values can occur at what was looked at', () => {
    const tree = newShared<boolean>();
    const first = grown(tree, [few, many]);
    expect(first.runs).toBe(2);
    expect(grown(tree, [few, others]).one).toBe(first.one);
  });

  it('grows by the new values alone', () => {
    const tree = newShared<boolean>();
    grown(tree, [few]);
    const more = grown(tree, [many]);
    expect(more.runs).toBe(1);
    expect(more.one.groups.flatMap(([, leaves]) => leaves)).toHaveLength(3);
  });

  it('is another where the name stands for another variable', () => {
    const tree = newShared<boolean>();
    expect(grown(tree, [few, few], 1).one).not.toBe(grown(tree, [few, few], 0).one);
  });
});
