/** A hole across the axis, seen along its own axis. Geometry; the look of a half section from memory: ISO 128-40. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { drawingSvg } from '../../../src/screens/drawing/drawing-svg.ts';
import { layOut } from '../../../src/screens/drawing/layout.ts';
import type { Label, Layout, Place } from '../../../src/screens/drawing/marks.ts';
import type { CrossHole, Piece } from '../../../src/screens/drawing/piece.ts';
import { anyPiece } from './parts.ts';

const SEED = { seed: 1812, numRuns: 40 };

const HOLE: CrossHole = {
  kind: 'cross-hole',
  id: 'hole',
  from: 6,
  diameter: 4,
  lower: 4,
  upper: 4.18,
};
const PIN: Piece = {
  stock: { diameter: 16, length: 70 },
  features: [{ kind: 'cylinder', id: 'pin', from: 0, to: 70, diameter: 16 }, HOLE],
};

/** Millimetres from the right-hand face and above the axis. */
function inPart({ scale, axis }: Layout, right: number, { x, y }: Place) {
  return { z: (right - x) / scale, r: (axis - y) / scale };
}

const rightOf = ({ section }: Layout) => Math.max(...section.map(({ x }) => x));
const overlap = (a: Label, b: Label) =>
  a.x < b.x + b.width && b.x < a.x + a.width && a.y < b.y + b.height && b.y < a.y + a.height;

describe('a hole across a pin', () => {
  const layout = layOut(PIN, { pin: { state: 'done' }, hole: { state: 'now' } });
  const right = rightOf(layout);

  it('is a whole circle of its diameter round the place where the axes cross', () => {
    const circle = layout.lines.find(({ pen, feature }) => pen === 'now' && feature === 'hole');
    const places = circle?.points.map((point) => inPart(layout, right, point)) ?? [];
    expect(places.length).toBeGreaterThan(40);
    for (const { z, r } of places) expect(Math.hypot(z - 6, r)).toBeCloseTo(2, 6);
    expect(Math.min(...places.map(({ r }) => r))).toBeCloseTo(-2, 6);
    expect(Math.max(...places.map(({ r }) => r))).toBeCloseTo(2, 6);
  });

  it('marks the metal that comes off now, and has a centre line across the pin', () => {
    expect(layout.areas.map(({ feature }) => feature)).toEqual(['hole']);
    const centre = layout.lines.find(({ pen, feature }) => pen === 'centre' && feature === 'hole');
    const ends = centre?.points.map((point) => inPart(layout, right, point)) ?? [];
    expect(ends.map(({ z }) => z)).toEqual([expect.closeTo(6, 6), expect.closeTo(6, 6)]);
    expect(ends.map(({ r }) => r)).toEqual([expect.closeTo(8, 6), expect.closeTo(-8, 6)]);
  });

  it('is dimensioned by a leader to its edge and by its distance from the right-hand face', () => {
    const note = layout.dimensions.find(
      ({ feature, kind }) => feature === 'hole' && kind === 'note',
    );
    expect(note?.label.parts[0]?.text).toBe('now: Ø4.00–4.18 through');
    const [tip] = note?.tips ?? [];
    expect(tip && inPart(layout, right, tip)).toEqual({
      z: expect.closeTo(6, 6),
      r: expect.closeTo(2, 6),
    });
    const place = layout.dimensions.find(
      ({ feature, kind }) => feature === 'hole' && kind === 'length',
    );
    const [from, to] = place?.tips.map(({ x }) => x) ?? [];
    expect(((to ?? 0) - (from ?? 0)) / layout.scale).toBeCloseTo(6, 6);
  });

  it('is told in words for who cannot see the drawing', () => {
    expect(drawingSvg(PIN, {}, { title: 'Pin' })).toContain('Ø4.00–4.18 through: not cut yet.');
  });
});

const drilled = fc
  .tuple(anyPiece, fc.integer({ min: 20, max: 60 }), fc.integer({ min: 30, max: 90 }))
  .map(([piece, size, share]): Piece => {
    const length = Math.max(...piece.features.map((one) => ('to' in one ? one.to : 0)));
    const hole = { ...HOLE, diameter: size / 10, from: (length * share) / 100 };
    return { ...piece, features: [...piece.features, hole] };
  });

describe('a hole across any turned part', () => {
  it('is never hatched', () => {
    fc.assert(
      fc.property(drilled, (piece) => {
        const layout = layOut(piece, {});
        const right = rightOf(layout);
        const hole = piece.features.at(-1) as CrossHole;
        for (const { pen, points } of layout.lines) {
          if (pen !== 'hatch') continue;
          const [a, b] = points.map((point) => inPart(layout, right, point));
          if (!a || !b) continue;
          const middle = { z: (a.z + b.z) / 2, r: (a.r + b.r) / 2 };
          const away = Math.hypot(middle.z - hole.from, middle.r);
          expect(away).toBeGreaterThan(0.99 * (hole.diameter / 2));
        }
      }),
      SEED,
    );
  });

  it('puts no label on another', () => {
    fc.assert(
      fc.property(drilled, fc.constantFrom(720, 344), (piece, width) => {
        const labels = layOut(piece, {}, { width }).dimensions.map(({ label }) => label);
        labels.forEach((label, index) => {
          expect(labels.slice(index + 1).filter((other) => overlap(label, other))).toEqual([]);
        });
      }),
      SEED,
    );
  });
});
