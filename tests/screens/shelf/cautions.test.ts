import { describe, expect, it } from 'vitest';
import { cautionsOf } from '../../../src/screens/shelf/cautions.ts';

const kind = (machineKind: string, ...cautions: readonly string[]) => ({
  machineKind,
  kindTitle: machineKind.toUpperCase(),
  cautions,
});

describe('the cautions of the Shelf', () => {
  it('stand once where two machines have the same, and else under the name of their machine', () => {
    expect(
      cautionsOf([
        kind('lathe', 'rules first', 'a hook, no hands'),
        kind('saw', 'rules first', 'stop first'),
        kind('drill', 'rules first'),
      ]),
    ).toEqual({
      shared: ['rules first'],
      own: [
        { title: 'LATHE', lines: ['a hook, no hands'] },
        { title: 'SAW', lines: ['stop first'] },
      ],
    });
  });

  it('do not count two flows of one machine as two machines', () => {
    const lathe = kind('lathe', 'a hook, no hands');
    expect(cautionsOf([lathe, lathe])).toEqual({
      shared: [],
      own: [{ title: 'LATHE', lines: ['a hook, no hands'] }],
    });
  });
});
