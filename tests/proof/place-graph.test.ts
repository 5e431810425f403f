import { describe, expect, it } from 'vitest';
import { PlaceGraph } from '../../src/proof/place-graph.ts';
import { check, placeIn, step, walked } from './tiny-walk.ts';

const walk = walked(check('first'), step('last', {}));
const graph = new PlaceGraph(walk);
const [first, last] = [placeIn(walk, 'first', 'open'), placeIn(walk, 'last', 'open')];
for (const place of [first, last]) graph.saidAt(place);

describe('which places lead to which', () => {
  it('is told by the words that do anything', () => {
    const said = graph.saidAt(first).map(({ key }) => key);
    expect(said).toContain('fact motor off');
    expect(said).toContain('hold');
    expect(said).not.toContain('next');
  });

  it('goes through what follows by itself, to where it comes to rest', () => {
    const into = graph.before(last).filter(({ place }) => place === first);
    const said = into.map(({ said: { key } }) => key);
    expect(said).toContain('fact motor off');
    expect(said).not.toContain('hold');
  });

  it('is not told of places that were never looked at', () => {
    expect(new PlaceGraph(walk).before(last)).toEqual([]);
  });

  it('knows every word that leads to the end', () => {
    const [spot] = walk.end.rows.keys();
    if (!spot) throw new Error('The end is never come to.');
    const into = graph.before(walk.place('end', spot));
    expect(into.map(({ place, said }) => [place, said.key])).toEqual([[last, 'next']]);
  });
});
