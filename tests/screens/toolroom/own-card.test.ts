import { describe, expect, it } from 'vitest';
import { readCard } from '../../../src/flow/index.ts';
import { ownCopy, placeInText } from '../../../src/screens/toolroom/own-card.ts';
import { textOf } from '../../flow/shipped.ts';

const entry = {
  id: 'metric-lathe',
  title: 'Yard lathe, metric',
  machineKind: 'lathe',
  own: false,
  card: textOf('machines/metric-lathe.json'),
};

describe('a copied card', () => {
  it('is a whole card, the same but for its name', () => {
    const [copy, first] = [readCard('copy', ownCopy(entry, [])), readCard('first', entry.card)];
    if (!copy.ok || !first.ok) throw new Error('A card cannot be read.');
    expect(copy.value.values).toEqual(first.value.values);
    expect(copy.value).toMatchObject({ id: 'metric-lathe-own', title: 'Yard lathe, metric, ours' });
  });

  it('takes an id that no other card has', () => {
    const copy = readCard('copy', ownCopy(entry, ['metric-lathe-own', 'metric-lathe-own-2']));
    expect(copy.ok && copy.value.id).toBe('metric-lathe-own-3');
  });
});

describe('a place in a text', () => {
  const text = 'one\ntwo\n';

  it.each([
    [1, 1, 0],
    [2, 1, 4],
    [2, 3, 6],
    [0, 0, 0],
    [9, 9, 8],
  ])('line %i, column %i is character %i', (line, column, place) => {
    expect(placeInText(text, line, column)).toBe(place);
  });
});
