import { describe, expect, it } from 'vitest';
import { explore, type Names, type Tree } from '../../src/proof/tree.ts';
import { type Row, type ValueSet, ValueSets } from '../../src/proof/value-sets.ts';
import { Values, type Variable } from '../../src/proof/variables.ts';

const variables = ['a', 'b', 'c'].map((key, level): Variable => {
  const values = new Values([null, 'yes']);
  return { kind: 'fact', key, name: key, level, token: {}, values };
});
const names: Names = {
  variable: (name) => variables.find((one) => one.name === name) ?? (variables[0] as Variable),
  nameOf: ({ name }) => name,
};
const [a, b] = variables as [Variable, Variable, Variable];

describe('a tree of what was looked at', () => {
  const sets = new ValueSets(3);
  const rows = ([[[0, 1]], [[1, 1]], [[2, 1]], []] as Row[])
    .map((row) => sets.only(row))
    .reduce((sum, one) => sets.union(sum, one));

  const seen = (tree: Tree<boolean>, set: ValueSet) => {
    const found: ValueSet[] = [];
    let runs = 0;
    explore(tree, set, {
      sets,
      names,
      run: (look) => {
        runs += 1;
        return look(a) === 1 || look(b) === 1;
      },
      dull: (value) => !value,
      visit: (_, some) => found.push(some),
    });
    return { runs, rows: found.reduce((sum, one) => sets.union(sum, one), 0) };
  };

  it('parts rows by what was looked at, and runs once for all that agree', () => {
    const tree: Tree<boolean> = {};
    const first = seen(tree, rows);
    expect(first.rows).toBe(sets.union(sets.where(rows, 0, 1), sets.where(rows, 1, 1)));
    expect(first.runs).toBe(3);
  });

  it('runs nothing again that was run before', () => {
    const tree: Tree<boolean> = {};
    seen(tree, rows);
    expect(seen(tree, rows).runs).toBe(0);
  });

  it('runs nothing for values that never stand together', () => {
    expect(seen({}, sets.where(rows, 0, 1)).runs).toBe(1);
  });
});
