import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { layOut } from '../../../src/screens/drawing/layout.ts';
import type { Dimension, Label, Layout, Place } from '../../../src/screens/drawing/marks.ts';
import type { Feature, Piece } from '../../../src/screens/drawing/piece.ts';
import { anyPiece, anyState, HINGE_PIN, STUD } from './parts.ts';

const SEED = { seed: 20261125, numRuns: 100 };
const anyDrawing = anyPiece.chain((piece) => anyState(piece).map((state) => ({ piece, state })));

function overlap(a: Label, b: Label): boolean {
  return a.x < b.x + b.width && b.x < a.x + a.width && a.y < b.y + b.height && b.y < a.y + a.height;
}

function feature(piece: Piece, id: string): Feature {
  const found = piece.features.find((one) => one.id === id);
  if (!found) throw new Error(`no feature ${id}`);
  return found;
}

/** The diameter that a drawing names for a feature, straight from the part's own numbers. */
function namedDiameter(one: Feature): number {
  if (one.kind === 'thread') return one.majorDiameter;
  return 'diameter' in one ? one.diameter : Number.NaN;
}

function of(layout: Layout, kind: Dimension['kind'], id: string): Dimension {
  const found = layout.dimensions.find((one) => one.kind === kind && one.feature === id);
  if (!found) throw new Error(`no ${kind} of ${id}`);
  return found;
}

function at(points: readonly Place[], index: number): Place {
  const found = points[index];
  if (!found) throw new Error(`no point ${index}`);
  return found;
}

describe('the layout of any turned part', () => {
  it.each([720, 344])('puts no label on another and none outside, %i wide', (width) => {
    fc.assert(
      fc.property(anyDrawing, ({ piece, state }) => {
        const { dimensions, height } = layOut(piece, state, { width });
        const labels = dimensions.map(({ label }) => label);
        labels.forEach((label, index) => {
          expect(labels.slice(index + 1).filter((other) => overlap(label, other))).toEqual([]);
          expect(label.x).toBeGreaterThanOrEqual(0);
          expect(label.y).toBeGreaterThanOrEqual(0);
          expect(label.x + label.width).toBeLessThanOrEqual(width);
          expect(label.y + label.height).toBeLessThanOrEqual(height);
        });
      }),
      SEED,
    );
  });

  it('keeps every label off the piece and its stock', () => {
    fc.assert(
      fc.property(anyDrawing, ({ piece, state }) => {
        const { dimensions, axis, scale } = layOut(piece, state);
        const half = (piece.stock.diameter / 2) * scale;
        for (const { label, kind } of dimensions) {
          if (kind === 'length') expect(label.y).toBeGreaterThanOrEqual(axis + half);
          else expect(label.y + label.height).toBeLessThanOrEqual(axis - half);
        }
      }),
      SEED,
    );
  });

  it('draws each diameter as long as it is, its extension lines from the edges it names', () => {
    fc.assert(
      fc.property(anyDrawing, ({ piece, state }) => {
        const { dimensions, axis, scale, lines } = layOut(piece, state);
        for (const { kind, feature: id, edges, tips } of dimensions) {
          if (kind !== 'diameter') continue;
          const radius = (namedDiameter(feature(piece, id)) / 2) * scale;
          edges.forEach((edge, index) => {
            const tip = at(tips, index);
            expect(Math.abs(edge.y - axis)).toBeCloseTo(radius, 6);
            expect(tip.y).toBeCloseTo(edge.y, 6);
            const joins = lines.some(
              ({ points: [a, b], pen }) =>
                pen === 'thin' &&
                a?.x === edge.x &&
                a.y === edge.y &&
                b !== undefined &&
                b.y === edge.y &&
                (b.x - tip.x) * (tip.x - edge.x) >= 0,
            );
            expect(joins).toBe(true);
          });
        }
      }),
      SEED,
    );
  });

  it('draws each length as long as it is, from the right-hand face', () => {
    fc.assert(
      fc.property(anyDrawing, ({ piece, state }) => {
        const { dimensions, scale } = layOut(piece, state);
        const lengths = dimensions.filter(({ kind }) => kind === 'length');
        const shoulders = piece.features.flatMap((one) =>
          'to' in one ? [one.from, one.to].filter((z) => z > 0) : [],
        );
        const wanted = [...new Set(shoulders.map((z) => z.toFixed(3)))].sort();
        const drawn = lengths.map(({ tips }) =>
          ((at(tips, 1).x - at(tips, 0).x) / scale).toFixed(3),
        );
        expect([...drawn].sort()).toEqual(wanted);
        for (const { edges, tips } of lengths) {
          expect(at(tips, 0).x).toBe(at(edges, 0).x);
          expect(at(tips, 1).x).toBe(at(edges, 1).x);
        }
      }),
      SEED,
    );
  });

  it('hatches only metal: between the bore and the outside, above the axis', () => {
    fc.assert(
      fc.property(anyPiece, (piece) => {
        const layout = layOut(piece, {});
        const right = Math.max(...layout.section.map(({ x }) => x));
        for (const { pen, points } of layout.lines) {
          if (pen !== 'hatch') continue;
          const [a, b] = [at(points, 0), at(points, 1)];
          expect(Math.abs(b.x - a.x)).toBeCloseTo(Math.abs(b.y - a.y), 6);
          for (const share of [0.02, 0.5, 0.98]) {
            const z = (right - (a.x + (b.x - a.x) * share)) / layout.scale;
            const r = (layout.axis - (a.y + (b.y - a.y) * share)) / layout.scale;
            expect(r).toBeLessThanOrEqual(outsideAt(piece, z) + 1e-6);
            expect(r).toBeGreaterThanOrEqual(boredAt(piece, z) - 1e-6);
          }
        }
      }),
      SEED,
    );
  });

  it('points one head at each tip', () => {
    fc.assert(
      fc.property(anyDrawing, ({ piece, state }) => {
        const { dimensions, heads } = layOut(piece, state);
        const tips = dimensions.flatMap((one) => one.tips);
        expect(heads.map(({ tip }) => tip)).toEqual(tips);
        for (const { turned } of heads) expect(Number.isFinite(turned)).toBe(true);
      }),
      SEED,
    );
  });

  it('runs no leader through a strange label', () => {
    fc.assert(
      fc.property(anyDrawing, ({ piece, state }) => {
        const { dimensions, lines, axis, scale } = layOut(piece, state);
        const top = axis - (piece.stock.diameter / 2) * scale;
        const upright = lines.flatMap(({ pen, points, feature: id }) => {
          const [first, last] = [at(points, 0), at(points, points.length - 1)];
          return pen === 'thin' && last.y < top && first.y > last.y ? [{ id, ...last }] : [];
        });
        expect(upright).toHaveLength(dimensions.filter(({ kind }) => kind !== 'length').length);
        for (const { id, x, y } of upright)
          for (const { feature: own, label, kind } of dimensions) {
            if (own === id || kind === 'length') continue;
            const crosses = x > label.x && x < label.x + label.width && y < label.y + label.height;
            expect(crosses ? `${id} through ${own}` : 'clear').toBe('clear');
          }
      }),
      SEED,
    );
  });
});

/** Outside radius straight from the part's numbers: the least of all that cover the place. */
function outsideAt(piece: Piece, z: number): number {
  const radii = piece.features.flatMap((one) => {
    if (!('to' in one) || z < one.from - 1e-9 || z > one.to + 1e-9) return [];
    if (one.kind !== 'taper') return [namedDiameter(one) / 2];
    const share = (z - one.from) / (one.to - one.from);
    return [(one.smallDiameter + (one.largeDiameter - one.smallDiameter) * share) / 2];
  });
  return Math.min(piece.stock.diameter / 2, ...radii);
}

/** Bored radius where the bores have their full diameter; 0 elsewhere, which only asks less. */
function boredAt(piece: Piece, z: number): number {
  return Math.max(
    0,
    ...piece.features.flatMap((one) =>
      one.kind === 'bore' && z >= one.from && z <= one.from + one.depth ? [one.diameter / 2] : [],
    ),
  );
}

describe('the layout of the hinge pin', () => {
  const state = {
    shank: { state: 'done', reading: { value: 19.99, verdict: 'within' } },
    neck: { state: 'now' },
  } as const;

  it('marks the metal that comes off now on both sides of the axis', () => {
    const { areas, axis, scale } = layOut(HINGE_PIN, state);
    expect(areas.map((one) => one.feature)).toEqual(['neck', 'neck']);
    const heights = areas.map(({ points }) => points.map(({ y }) => Math.abs(y - axis) / scale));
    for (const found of heights) {
      expect(Math.min(...found)).toBeCloseTo(8, 6); // neck 16 mm
      expect(Math.max(...found)).toBeCloseTo(10, 6); // the shank stands at 20 mm
    }
  });

  it('writes the limits, and the reading with its verdict beside them', () => {
    const { label } = of(layOut(HINGE_PIN, state), 'diameter', 'shank');
    expect(label.parts.map(({ text }) => text)).toEqual(['Ø19.98–20.00', '19.99 within']);
    const neck = of(layOut(HINGE_PIN, state), 'diameter', 'neck');
    expect(neck.label.parts.map(({ text }) => text)).toEqual(['now: Ø16 ±0.05']);
  });

  it('puts the reading under the size where the drawing is narrow', () => {
    const { label } = of(layOut(HINGE_PIN, state, { width: 340 }), 'diameter', 'shank');
    const [size, reading] = label.parts;
    expect(reading?.y).toBeGreaterThan(size?.y ?? Number.NaN);
  });

  it('draws done surfaces firm, others thin, and the stock in its own line', () => {
    const { lines } = layOut(HINGE_PIN, state);
    const pens = (id: string) =>
      new Set(lines.filter((one) => one.feature === id).map(({ pen }) => pen));
    expect(pens('shank')).toContain('firm');
    expect(pens('head')).not.toContain('firm');
    expect(pens('neck')).toContain('now');
    expect(lines.filter(({ pen }) => pen === 'stock').length).toBeGreaterThan(0);
  });

  it('takes the relief groove by a leader, since larger diameters stand on both sides of it', () => {
    expect(of(layOut(HINGE_PIN, {}), 'note', 'relief').tips).toHaveLength(1);
  });

  // Source: from memory: ISO 129-1, dimensions of half sections have one head and run past the axis.
  it('takes the bore with one head, from the half that is cut open', () => {
    const layout = layOut(HINGE_PIN, {});
    const bore = of(layout, 'diameter', 'hole');
    expect(bore.tips).toHaveLength(1);
    expect(at(bore.tips, 0).y).toBeLessThan(layout.axis);
  });
});

describe('the layout of the stud', () => {
  // Source: from memory: ISO 6410-1, crests firm, roots thin, full thread ended by a firm line.
  it('draws thread roots as thin lines at the minor diameter on both sides', () => {
    const { lines, axis, scale } = layOut(STUD, {});
    const thin = lines.filter(
      ({ pen, feature: id, points }) =>
        pen === 'thin' &&
        id === 'thread' &&
        points.length === 2 &&
        Math.abs(at(points, 0).y - axis) / scale < 6.95,
    );
    const radii = thin.map(({ points }) => (axis - at(points, 0).y) / scale).sort((a, b) => a - b);
    expect(radii).toHaveLength(2);
    expect(radii[0]).toBeCloseTo(-13.835 / 2, 6);
    expect(radii[1]).toBeCloseTo(13.835 / 2, 6);
  });

  it('takes the tail from the left, where nothing larger stands before it', () => {
    const layout = layOut(STUD, {});
    const body = of(layout, 'diameter', 'body');
    const tail = of(layout, 'diameter', 'tail');
    expect(at(tail.tips, 0).x).toBeLessThan(at(body.edges, 0).x);
    expect(at(tail.tips, 0).x).toBeLessThan(at(tail.edges, 0).x);
  });
});
