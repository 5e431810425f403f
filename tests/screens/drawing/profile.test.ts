import { describe, expect, it } from 'vitest';
import type { Feature, Piece } from '../../../src/screens/drawing/piece.ts';
import { innerProfile, largestAt, outerProfile } from '../../../src/screens/drawing/profile.ts';
import { HINGE_PIN } from './parts.ts';

const block = (features: readonly Feature[]): Piece => ({
  stock: { diameter: 40, length: 60 },
  features: [{ kind: 'cylinder', id: 'body', from: 0, to: 50, diameter: 30 }, ...features],
});

describe('the outline', () => {
  it('lets the deepest cut rule at each place', () => {
    const path = outerProfile({ ...HINGE_PIN, features: HINGE_PIN.features.slice(0, 4) });
    expect(path.map(({ from, to, r1, feature }) => [from, to, r1, feature])).toEqual([
      [0, 22, 8, 'neck'],
      [22, 52, 10, 'shank'],
      [52, 55, 9.25, 'relief'],
      [55, 70, 14, 'head'],
    ]);
  });

  it('leaves bare stock where nothing is cut', () => {
    const path = outerProfile({
      stock: { diameter: 40, length: 60 },
      features: [
        { kind: 'cylinder', id: 'a', from: 0, to: 10, diameter: 30 },
        { kind: 'cylinder', id: 'b', from: 20, to: 30, diameter: 30 },
      ],
    });
    expect(path.map(({ r1, feature }) => [r1, feature])).toEqual([
      [15, 'a'],
      [20, null],
      [15, 'b'],
    ]);
  });

  // Source: common practice, no source: a 2 mm by 45 degree chamfer takes 2 mm along and 2 mm off the radius.
  it('slopes a corner by the chamfer, on the side it faces', () => {
    const path = outerProfile(
      block([{ kind: 'chamfer', id: 'c', at: 50, end: 'left', size: 2, angle: 45 }]),
    );
    expect(path.at(-1)).toMatchObject({ from: 48, to: 50, r1: 15, feature: 'c' });
    expect(path.at(-1)?.r2).toBeCloseTo(13, 9);
  });

  it('leaves out a chamfer that would eat the whole step', () => {
    const path = outerProfile(
      block([{ kind: 'chamfer', id: 'c', at: 0, end: 'right', size: 60, angle: 45 }]),
    );
    expect(path).toHaveLength(1);
  });

  it('knows the larger side of a shoulder', () => {
    expect(largestAt(outerProfile(HINGE_PIN), 55)).toBe(14);
    expect(largestAt(outerProfile(HINGE_PIN), 90)).toBe(0);
  });
});

describe('the inside', () => {
  // Source: from memory: Machinery's Handbook, point of a 118 degree drill is 0.300 of its diameter long.
  it('ends a drilled hole in a point 0.300 diameters long at 118 degrees', () => {
    const bored = innerProfile(
      block([{ kind: 'bore', id: 'b', from: 0, depth: 20, diameter: 10, pointAngle: 118 }]),
    );
    const cone = bored.filter(({ r1, r2 }) => r1 !== r2);
    expect(cone).toHaveLength(1);
    expect(cone[0]?.from).toBe(20);
    expect((cone[0]?.to ?? 0) - 20).toBeCloseTo(3.0, 1);
  });

  it('ends a bored hole flat, and a through bore at the other face', () => {
    const through = innerProfile(
      block([{ kind: 'bore', id: 'b', from: 0, depth: 50, diameter: 10 }]),
    );
    expect(through).toEqual([{ from: 0, to: 50, r1: 5, r2: 5, feature: 'b' }]);
  });

  it('bores from the left face when its mouth is there', () => {
    const bored = innerProfile(
      block([{ kind: 'bore', id: 'b', from: 50, depth: 20, diameter: 10, end: 'left' }]),
    );
    expect(bored.map(({ from, to, r1 }) => [from, to, r1])).toEqual([
      [0, 30, 0],
      [30, 50, 5],
    ]);
  });

  // Source: from memory: ISO 866 type A, size 3.15 has a 60 degree countersink of 6.70 mm.
  it('opens a 3.15 centre to 6.7 mm at 60 degrees', () => {
    const bored = innerProfile(
      block([{ kind: 'centre-drill', id: 'c', end: 'right', diameter: 3.15 }]),
    );
    const [cone] = bored;
    expect((cone?.r1 ?? 0) * 2).toBeCloseTo(6.7, 1);
    const half = Math.atan(((cone?.r1 ?? 0) - (cone?.r2 ?? 0)) / (cone?.to ?? Number.NaN));
    expect((half * 180) / Math.PI).toBeCloseTo(30, 6);
  });
});
