/**
 * The drawing of any block, by geometry. Which view stands where, and what a dimension is made of, from memory:
 * ISO 5456-2 (first angle) and ISO 129-1 (extension lines from the edges, heads that end on them).
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Block } from '../../../../src/screens/drawing/block/block.ts';
import { type BlockLayout, layOutBlock } from '../../../../src/screens/drawing/block/layout.ts';
import type { Dimension, Label, Place } from '../../../../src/screens/drawing/marks.ts';
import { anyBlock, anyStateOf, JIG, KEEPER } from './blocks.ts';
import { endsOf, wallsOf } from './metal.ts';

const SEED = { seed: 20261130, numRuns: 40 };
const anyDrawing = anyBlock.chain((block) => anyStateOf(block).map((state) => ({ block, state })));

interface Area {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

const overlap = (a: Area, b: Area) =>
  a.x < b.x + b.width && b.x < a.x + a.width && a.y < b.y + b.height && b.y < a.y + a.height;

/** Where the stock of each view lies in the picture. */
function viewAreas({ stock }: Block, { at, scale }: BlockLayout): readonly Area[] {
  const area = ({ x, y }: Place, width: number, height: number) => ({
    ...{ x, y },
    ...{ width: width * scale, height: height * scale },
  });
  return [
    area(at.front(0, stock.height), stock.length, stock.height),
    area(at.top(0, stock.width), stock.length, stock.width),
    ...(at.end ? [area(at.end(stock.width, stock.height), stock.width, stock.height)] : []),
  ];
}

const tipsOf = ({ tips }: Dimension) => {
  const [one, other] = tips;
  if (!one || !other) throw new Error('a distance has two tips');
  return [one, other] as const;
};

/** True where the place lies on the straight line between both ends. */
function isOn({ x, y }: Place, a: Place, b: Place): boolean {
  const off = (b.x - a.x) * (y - a.y) - (b.y - a.y) * (x - a.x);
  const long = Math.hypot(b.x - a.x, b.y - a.y);
  const along = (x - a.x) * (b.x - a.x) + (y - a.y) * (b.y - a.y);
  return Math.abs(off) < 1e-6 * Math.max(long, 1) && along >= -1e-6 && along <= long * long + 1e-6;
}

function isDrawn({ lines }: BlockLayout, place: Place, pens: readonly string[]): boolean {
  return lines.some(
    ({ pen, points }) =>
      pens.includes(pen) && points.slice(1).some((b, index) => isOn(place, points[index] ?? b, b)),
  );
}

const outline = ['firm', 'now', 'planned', 'hidden', 'now-hidden', 'centre'];

describe('the drawing of any block', () => {
  it.each([720, 344])('puts no label on another, on a view, or outside, %i wide', (width) => {
    fc.assert(
      fc.property(anyDrawing, ({ block, state }) => {
        const layout = layOutBlock(block, state, { width });
        const labels: readonly Label[] = layout.dimensions.map(({ label }) => label);
        const views = viewAreas(block, layout);
        const wrong = labels.filter((label, index) => {
          const others = [...labels.slice(index + 1), ...views];
          const right = label.x + label.width;
          const isOut = label.x < 0 || label.y < 0 || right > layout.width + 1e-6;
          return (
            isOut ||
            label.y + label.height > layout.height ||
            others.some((one) => overlap(label, one))
          );
        });
        expect(wrong).toEqual([]);
      }),
      SEED,
    );
  });

  it.each([720, 344])('keeps every line and head within the picture, %i wide', (width) => {
    fc.assert(
      fc.property(anyDrawing, ({ block, state }) => {
        const layout = layOutBlock(block, state, { width });
        const { lines, heads, areas, height } = layout;
        const places = [
          ...[...lines, ...areas].flatMap(({ points }) => points),
          ...heads.map(({ tip }) => tip),
        ];
        const isOut = ({ x, y }: Place) =>
          x < -1e-6 || x > layout.width + 1e-6 || y < 0 || y > height;
        expect(places.filter(isOut)).toEqual([]);
      }),
      { ...SEED, examples: [[{ block: KEEPER, state: {} }]] },
    );
  });

  it.each([720, 344])(
    'leaves the views two fifths of the width, or all the height they may have, %i wide',
    (width) => {
      fc.assert(
        fc.property(anyDrawing, ({ block, state }) => {
          const layout = layOutBlock(block, state, { width });
          const { length, width: across, height } = block.stock;
          const wide = (length + (layout.at.end ? across : 0)) * layout.scale;
          const high = (height + across) * layout.scale;
          const enough = wide >= 0.4 * layout.width || high >= 0.45 * layout.width - 1e-6;
          expect(enough).toBe(true);
          expect(layout.width).toBeGreaterThanOrEqual(width);
        }),
        SEED,
      );
    },
  );

  it('ends every distance on the edges it names, by extension lines that begin at them', () => {
    fc.assert(
      fc.property(anyDrawing, ({ block, state }) => {
        const layout = layOutBlock(block, state);
        for (const dimension of layout.dimensions) {
          if (dimension.kind === 'note') continue;
          const tips = tipsOf(dimension);
          const lies = Math.abs(tips[0].y - tips[1].y) < 1e-9;
          dimension.edges.forEach((edge, index) => {
            const tip = tips[index] ?? tips[0];
            expect(lies ? tip.x : tip.y).toBeCloseTo(lies ? edge.x : edge.y, 6);
            expect(isDrawn(layout, edge, outline)).toBe(true);
            const joins = layout.lines.some(
              ({ pen, points: [a, b] }) =>
                pen === 'thin' && a?.x === edge.x && a.y === edge.y && b && isOn(tip, a, b),
            );
            expect(joins).toBe(true);
            // It goes away from the edge, not along it.
            const way = Math.hypot(tip.x - edge.x, tip.y - edge.y);
            const step = { x: (tip.x - edge.x) / way, y: (tip.y - edge.y) / way };
            const own = layout.lines.filter(({ feature }) => feature === dimension.feature);
            const next = { x: edge.x + step.x, y: edge.y + step.y };
            expect(isDrawn({ ...layout, lines: own }, next, outline)).toBe(false);
          });
          const middle = { x: (tips[0].x + tips[1].x) / 2, y: (tips[0].y + tips[1].y) / 2 };
          expect(isDrawn(layout, middle, ['thin'])).toBe(true);
        }
      }),
      SEED,
    );
  });

  it('names the edges of the feature, at its own numbers', () => {
    fc.assert(
      fc.property(anyBlock, (block) => {
        const layout = layOutBlock(block, {});
        const ends = endsOf(block);
        const drawn = spansOf(block, layout);
        const has = (axis: Axis, [low, high]: readonly [number, number]) =>
          drawn.some(
            (one) =>
              one.axis === axis &&
              Math.abs(one.low - low) < 1e-6 &&
              Math.abs(one.high - high) < 1e-6,
          );
        for (const axis of ['length', 'width', 'height'] as const)
          expect(has(axis, ends[axis])).toBe(true);
        for (const feature of block.features) {
          if (feature.kind === 'slot' || feature.kind === 'shoulder') {
            const isLong =
              feature.kind === 'slot'
                ? feature.along === 'length'
                : feature.edge === 'front' || feature.edge === 'back';
            const across = isLong ? 'width' : 'length';
            expect(has(across, wallsOf(feature, ends))).toBe(true);
            if (feature.kind === 'slot' && feature.from !== undefined) {
              const [low] = ends[across];
              expect(has(across, [low, low + feature.from])).toBe(true);
            }
            const [, top] = ends.height;
            expect(has('height', [top - feature.depth, top])).toBe(true);
          }
          if (feature.kind === 'hole') {
            expect(has('length', [ends.length[0], ends.length[0] + feature.fromLeft])).toBe(true);
            expect(has('width', [ends.width[0], ends.width[0] + feature.fromFront])).toBe(true);
          }
        }
      }),
      SEED,
    );
  });

  it('runs no line of a dimension through a strange label', () => {
    fc.assert(
      fc.property(anyDrawing, ({ block, state }) => {
        const { lines, dimensions } = layOutBlock(block, state);
        const crossed = lines
          .filter(({ pen }) => pen === 'thin')
          .flatMap(({ points, feature: id }) =>
            dimensions
              .filter(({ label }) =>
                points.slice(1).some((b, index) => runsThrough(points[index] ?? b, b, label)),
              )
              .map(({ feature }) => `${id} through ${feature}`),
          );
        expect(crossed).toEqual([]);
      }),
      SEED,
    );
  });

  it('leads every note to the edge of its hole, pointing at the middle', () => {
    fc.assert(
      fc.property(anyBlock, (block) => {
        const layout = layOutBlock(block, {});
        const { length, width } = endsOf(block);
        for (const hole of block.features) {
          if (hole.kind !== 'hole') continue;
          const note = layout.dimensions.find(
            ({ kind, feature }) => kind === 'note' && feature === hole.id,
          );
          const [tip] = note?.tips ?? [];
          const middle = layout.at.top(length[0] + hole.fromLeft, width[0] + hole.fromFront);
          if (!tip) throw new Error('a hole has a note');
          const [dx, dy] = [middle.x - tip.x, middle.y - tip.y];
          expect(Math.hypot(dx, dy)).toBeCloseTo((hole.diameter / 2) * layout.scale, 6);
          const head = layout.heads.find((one) => one.tip === tip);
          const turned = ((head?.turned ?? Number.NaN) * Math.PI) / 180;
          expect(Math.cos(turned) * dx + Math.sin(turned) * dy).toBeCloseTo(Math.hypot(dx, dy), 6);
        }
      }),
      SEED,
    );
  });
});

type Axis = 'length' | 'width' | 'height';

/** What each distance measures on the block, read back from the picture. */
function spansOf({ stock }: Block, { at, scale, dimensions }: BlockLayout) {
  const front = at.front(0, 0);
  const top = at.top(0, 0);
  const endLeft = at.end?.(stock.width, 0).x ?? Number.POSITIVE_INFINITY;
  return dimensions.flatMap((dimension) => {
    if (dimension.kind === 'note') return [];
    const [one, other] = tipsOf(dimension);
    const [edge] = dimension.edges;
    const lies = Math.abs(one.y - other.y) < 1e-9;
    const isEnd = (edge?.x ?? 0) >= endLeft - 1e-6;
    const isTop = !isEnd && (edge?.y ?? 0) > front.y + 1;
    const axis: Axis = lies ? (isEnd ? 'width' : 'length') : isTop ? 'width' : 'height';
    const values = [one, other].map(({ x, y }) => {
      if (!lies) return ((isTop ? top.y : front.y) - y) / scale;
      return isEnd ? stock.width - (x - endLeft) / scale : (x - front.x) / scale;
    });
    return [{ axis, low: Math.min(...values), high: Math.max(...values) }];
  });
}

/** Whether a straight line passes through the inside of a box. */
function runsThrough(a: Place, b: Place, box: Area): boolean {
  let [from, to] = [0, 1];
  const clip = (start: number, step: number, low: number, high: number) => {
    if (Math.abs(step) < 1e-12) {
      if (start <= low || start >= high) to = -1;
      return;
    }
    const [p, q] = [(low - start) / step, (high - start) / step];
    from = Math.max(from, Math.min(p, q));
    to = Math.min(to, Math.max(p, q));
  };
  clip(a.x, b.x - a.x, box.x, box.x + box.width);
  clip(a.y, b.y - a.y, box.y, box.y + box.height);
  return to - from > 1e-9;
}

describe('the views', () => {
  const layout = layOutBlock(JIG, {});
  const { at, scale } = layout;

  // Source: from memory: ISO 5456-2, first angle: from above underneath, from the left at the right.
  it('stand in first angle: from above underneath, from the left at the right', () => {
    expect(at.top(0, 44).y).toBeGreaterThan(at.front(0, 0).y);
    expect(at.top(30, 0).x).toBe(at.front(30, 0).x);
    expect(at.end?.(44, 0).x).toBeGreaterThan(at.front(82, 0).x);
    expect(at.end?.(0, 10).y).toBe(at.front(0, 10).y);
  });

  it('have the front of the block nearest to who reads: below from above, at the right from the left', () => {
    expect(at.top(0, 0).y - at.top(0, 44).y).toBeCloseTo(44 * scale, 6);
    expect((at.end?.(0, 0).x ?? 0) - (at.end?.(44, 0).x ?? 0)).toBeCloseTo(44 * scale, 6);
  });

  it('are two where nothing lies across the width', () => {
    const [top] = KEEPER.features;
    const plain: Block = { ...KEEPER, features: top ? [top] : [] };
    expect(layOutBlock(plain, {}).at.end).toBeUndefined();
    expect(layOutBlock(KEEPER, {}).at.end).toBeDefined();
  });
});

describe('the keeper as the run goes', () => {
  const state = {
    top: { state: 'done', reading: { value: 15.98, verdict: 'within' } },
    slot: { state: 'now' },
  } as const;
  const layout = layOutBlock(KEEPER, state);
  const pens = (id: string) =>
    new Set(layout.lines.filter(({ feature }) => feature === id).map(({ pen }) => pen));
  const texts = layout.dimensions.map(({ label }) => label.parts.map(({ text }) => text));

  it('writes sizes with limits, and readings beside them', () => {
    expect(texts).toContainEqual(['16 ±0.2', '15.98 within']);
    expect(texts).toContainEqual(['now: 6 ±0.1']);
    expect(texts.flat().sort()).toEqual(
      ['10', '15.98 within', '16 ±0.2', '25', '60', 'now: 6 ±0.1'].sort(),
    );
  });

  it('draws what is done firm, what is cut now broad, hidden edges dashed, the rest of the stock in its own line', () => {
    expect(pens('top')).toContain('firm');
    expect(pens('slot')).toContain('now');
    expect(pens('slot')).toContain('now-hidden');
    expect(pens('slot')).not.toContain('firm');
    const planned = layOutBlock(KEEPER, {}).lines.filter(({ feature }) => feature === 'slot');
    expect(planned.map(({ pen }) => pen)).toContain('hidden');
    expect(planned.map(({ pen }) => pen)).not.toContain('firm');
    const ghost = layout.lines.filter(({ pen }) => pen === 'stock');
    expect(ghost.length).toBeGreaterThan(0);
    const low = layout.at.front(0, 16).y;
    for (const { points } of ghost)
      for (const { y } of points) expect(y).toBeLessThanOrEqual(low + 1e-6);
  });

  it('marks the metal that comes off now in every view', () => {
    expect(layout.areas.map(({ feature }) => feature)).toEqual(['slot', 'slot', 'slot']);
    const sizes = layout.areas.map(({ points }) => {
      const [xs, ys] = [points.map(({ x }) => x), points.map(({ y }) => y)];
      return [xs, ys].map((all) => (Math.max(...all) - Math.min(...all)) / layout.scale);
    });
    const wanted = [
      [60, 6],
      [10, 6],
      [60, 10],
    ];
    sizes.forEach((pair, index) => {
      pair.forEach((size, at) => {
        expect(size).toBeCloseTo(wanted[index]?.[at] ?? Number.NaN, 6);
      });
    });
  });

  it('marks the middle of a slot that lies in the middle, from above and from the left', () => {
    const centres = layout.lines.filter(({ pen }) => pen === 'centre');
    expect(centres).toHaveLength(2);
    expect(
      layOutBlock(JIG, {}).lines.some(({ pen, feature }) => pen === 'centre' && feature === 'long'),
    ).toBe(false);
  });

  it('puts a reading of the width at the width', () => {
    const wide = {
      slot: { state: 'done', widthReading: { value: 10.03, verdict: 'within' } },
    } as const;
    const labels = layOutBlock(KEEPER, wide).dimensions.map(({ label }) =>
      label.parts.map(({ text }) => text),
    );
    expect(labels).toContainEqual(['10', '10.03 within']);
  });
});
