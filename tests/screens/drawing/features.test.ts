import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { layOut } from '../../../src/screens/drawing/layout.ts';
import type { Label, Layout, Place } from '../../../src/screens/drawing/marks.ts';
import type { Piece } from '../../../src/screens/drawing/piece.ts';
import { anyPiece, anyState } from './parts.ts';

const SEED = { seed: 612, numRuns: 80 };

/** A point of the drawing in millimetres of the part: from the right-hand face, and from the axis. */
function inPart({ scale, axis }: Layout, right: number, { x, y }: Place) {
  return { z: (right - x) / scale, r: Math.abs(axis - y) / scale };
}

/** Where the right-hand face is drawn: lengths are measured from it. */
function faceOf(layout: Layout): number | undefined {
  const length = layout.dimensions.find(({ kind }) => kind === 'length');
  return length?.edges[1]?.x;
}

function near(a: number, b: number): boolean {
  return Math.abs(a - b) < 1e-6;
}

/** True when a line of the feature passes through both places, on the upper half. */
function hasLine(layout: Layout, id: string, from: { z: number; r: number }, to: typeof from) {
  const right = faceOf(layout);
  if (right === undefined) return false;
  return layout.lines.some(({ feature, points }) => {
    if (feature !== id) return false;
    const places = points.map((point) => inPart(layout, right, point));
    const on = (wanted: typeof from) =>
      places.some(({ z, r }) => near(z, wanted.z) && near(r, wanted.r));
    return on(from) && on(to);
  });
}

const overlap = (a: Label, b: Label) =>
  a.x < b.x + b.width && b.x < a.x + a.width && a.y < b.y + b.height && b.y < a.y + a.height;

/** A bore that lies within another one, its point with it, cuts nothing, so there is nothing of it to draw. */
function isWithin({ features }: Piece, id: string): boolean {
  const bores = features.filter((one) => one.kind === 'bore');
  const own = bores.find((one) => one.id === id);
  if (!own) return false;
  return bores.some(
    (other) =>
      other !== own && other.diameter >= own.diameter && other.depth + other.diameter >= own.depth,
  );
}

/** Parts without a groove or another feature over the one that is looked at. */
function alone(piece: Piece, id: string): boolean {
  const one = piece.features.find((feature) => feature.id === id);
  if (!one || !('to' in one)) return false;
  return !piece.features.some((other) => {
    if (other.id === id) return false;
    if (other.kind === 'chamfer') return near(other.at, one.from) || near(other.at, one.to);
    return 'to' in other && other.from < one.to - 1e-9 && other.to > one.from + 1e-9;
  });
}

describe('the features of any part', () => {
  it('tapers run from their small to their large diameter, where they begin and end', () => {
    let seen = 0;
    fc.assert(
      fc.property(anyPiece, (piece) => {
        const layout = layOut(piece, {});
        for (const one of piece.features) {
          if (one.kind !== 'taper' || !alone(piece, one.id)) continue;
          seen += 1;
          const from = { z: one.from, r: one.smallDiameter / 2 };
          const to = { z: one.to, r: one.largeDiameter / 2 };
          expect(hasLine(layout, one.id, from, to), `${one.id} of ${JSON.stringify(piece)}`).toBe(
            true,
          );
        }
      }),
      SEED,
    );
    expect(seen).toBeGreaterThan(20);
  });

  // Source: from memory: ISO 6410-1, roots of an outside thread are thin lines at its minor diameter.
  it('threads have thin roots at their minor diameter, above and below the axis', () => {
    let seen = 0;
    fc.assert(
      fc.property(anyPiece, (piece) => {
        const layout = layOut(piece, {});
        for (const one of piece.features) {
          if (one.kind !== 'thread') continue;
          seen += 1;
          const radii = layout.lines.flatMap(({ pen, feature, points: [a, b] }) =>
            pen === 'thin' && feature === one.id && a && b && a.y === b.y
              ? [(layout.axis - a.y) / layout.scale]
              : [],
          );
          for (const side of [1, -1]) {
            expect(radii.some((r) => near(r, (side * one.minorDiameter) / 2))).toBe(true);
          }
        }
      }),
      SEED,
    );
    expect(seen).toBeGreaterThan(20);
  });

  it('every feature is drawn, and every bore on the half that is cut open', () => {
    fc.assert(
      fc.property(anyPiece, (piece) => {
        const { lines, dimensions, axis } = layOut(piece, {});
        const drawn = new Set(
          [...lines, ...dimensions].flatMap(({ feature }) => (feature ? [feature] : [])),
        );
        const seen = piece.features.filter(({ id }) => !isWithin(piece, id));
        expect(seen.filter(({ id }) => !drawn.has(id)).map(({ id }) => id)).toEqual([]);
        for (const one of dimensions) {
          if (!one.feature?.startsWith('bore')) continue;
          for (const tip of one.tips) expect(tip.y).toBeLessThanOrEqual(axis);
        }
      }),
      SEED,
    );
  });
});

describe('labels', () => {
  it.each([
    [300, 20],
    [480, 14],
    [900, 18],
    [1300, 30],
  ])('do not lie on one another at %i wide with letters of %i', (width, textSize) => {
    const drawing = anyPiece.chain((piece) => anyState(piece).map((state) => ({ piece, state })));
    fc.assert(
      fc.property(drawing, ({ piece, state }) => {
        const { dimensions } = layOut(piece, state, { width, textSize });
        const labels = dimensions.map(({ label }) => label);
        const pairs = labels.flatMap((one, index) =>
          labels.slice(index + 1).filter((other) => overlap(one, other)),
        );
        expect(pairs).toEqual([]);
      }),
      { ...SEED, numRuns: 40 },
    );
  });
});
