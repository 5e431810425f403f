/** Edges seen and hidden, against rays through the block's own numbers. Source: geometry; no table is needed. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Block } from '../../../../src/screens/drawing/block/block.ts';
import {
  type Edge,
  edgesOf,
  SIGHTS,
  type Sight,
  type ViewName,
} from '../../../../src/screens/drawing/block/project.ts';
import { solidOf } from '../../../../src/screens/drawing/block/solid.ts';
import { anyBlock, KEEPER } from './blocks.ts';
import { isMetal, type Spot } from './metal.ts';

const SEED = { seed: 1930, numRuns: 40 };
const names: readonly ViewName[] = ['front', 'top', 'end'];
/** Less than any two edges lie apart. */
const CLOSE = 0.01;

/** Metal along the ray through a place of a view, the nearest first, in steps finer than any feature. */
function ray(block: Block, sight: Sight, across: number, up: number): readonly boolean[] {
  const marks = new Set<number>();
  const { cuts, finished } = solidOf(block);
  for (const box of [finished, ...cuts.map((cut) => cut.box)])
    for (const end of box[sight.deep]) marks.add(end);
  const rising = [...marks].sort((a, b) => a - b);
  const middles = rising.slice(1).map((mark, index) => ((rising[index] ?? mark) + mark) / 2);
  const along = middles.map((deep) => {
    const at = { [sight.across]: across, [sight.up]: up, [sight.deep]: deep };
    return isMetal(block, at as unknown as Spot);
  });
  return sight.fromHigh ? along.reverse() : along;
}

/** The rays close beside the middle of an edge. */
function beside(block: Block, sight: Sight, { runs, at, stretch }: Edge) {
  const middle = (stretch[0] + stretch[1]) / 2;
  return [-CLOSE, CLOSE].map((off) =>
    runs === 'up' ? ray(block, sight, at + off, middle) : ray(block, sight, middle, at + off),
  );
}

describe('the edges of any block', () => {
  it.each(names)('stand where the metal behind them differs, seen from the %s', (name) => {
    const sight = SIGHTS[name];
    fc.assert(
      fc.property(anyBlock, (block) => {
        for (const edge of edgesOf(solidOf(block), sight)) {
          const [one = [], other = []] = beside(block, sight, edge);
          expect(one).not.toEqual(other);
          expect(edge.hidden).toBe(one.indexOf(true) === other.indexOf(true));
        }
      }),
      SEED,
    );
  });

  it.each(names)('are none too few, seen from the %s', (name) => {
    const sight = SIGHTS[name];
    fc.assert(
      fc.property(anyBlock, fc.double({ min: 0.01, max: 0.99, noNaN: true }), (block, part) => {
        const solid = solidOf(block);
        const [low, high] = solid.finished[sight.up];
        const up = low + part * (high - low);
        const crossed = edgesOf(solid, sight).filter(
          ({ runs, stretch }) => runs === 'up' && stretch[0] <= up && up <= stretch[1],
        );
        const places = new Set(
          [solid.finished, ...solid.cuts.map(({ box }) => box)].flatMap((box) => box[sight.across]),
        );
        for (const at of places) {
          const [one, other] = [-CLOSE, CLOSE].map((off) => ray(block, sight, at + off, up));
          const drawn = crossed.some((edge) => edge.at === at);
          expect(drawn).toBe(JSON.stringify(one) !== JSON.stringify(other));
        }
      }),
      SEED,
    );
  });
});

describe('the edges of the keeper', () => {
  const of = (name: ViewName) => edgesOf(solidOf(KEEPER), SIGHTS[name]);

  it('hide the floor of the slot from the front, and show it from the left and from above', () => {
    const floor = of('front').filter(({ feature }) => feature === 'slot');
    expect(floor).toEqual([
      { runs: 'across', at: 10, stretch: [0, 60], hidden: true, feature: 'slot' },
    ]);
    const fromLeft = of('end').filter(({ feature }) => feature === 'slot');
    expect(fromLeft.map(({ at, stretch, hidden }) => [at, ...stretch, hidden])).toEqual([
      [7.5, 10, 16, false],
      [17.5, 10, 16, false],
      [10, 7.5, 17.5, false],
    ]);
    const fromAbove = of('top').filter(({ feature }) => feature === 'slot');
    expect(fromAbove.map(({ at, stretch, hidden }) => [at, ...stretch, hidden])).toEqual([
      [7.5, 0, 60, false],
      [17.5, 0, 60, false],
    ]);
  });

  it('are made by the face where it is seen edge on', () => {
    const milled = of('end').filter(({ feature }) => feature === 'top');
    expect(milled.map(({ at, stretch }) => [at, ...stretch])).toEqual([
      [16, 0, 7.5],
      [16, 17.5, 25],
    ]);
  });
});
