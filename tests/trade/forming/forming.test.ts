/** Knurls that close, radii that lie on their arc, packings that hold. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { packingFor } from '../../../src/trade/forming/eccentric-packing.ts';
import { plunges } from '../../../src/trade/forming/groove.ts';
import { arcStops, proudest } from '../../../src/trade/forming/radius-steps.ts';
import { faultOf, numberOf, partOf } from '../asking.ts';

const settings = { seed: 49 };
const size = fc.double({ min: 8, max: 200, noNaN: true });

describe('knurls', () => {
  it('close into whole pitches, within half a tooth of the wanted diameter', () => {
    const pitch = fc.double({ min: 0.3, max: 2, noNaN: true });
    fc.assert(
      fc.property(size, pitch, (diameter, normal) => {
        const values = { pitch: normal, diameter };
        const blank = numberOf('knurl-blank', values);
        const teeth = (Math.PI * blank) / normal;
        expect(teeth).toBeCloseTo(Math.round(teeth), 6);
        expect(Math.abs(blank - diameter)).toBeLessThanOrEqual(normal / (2 * Math.PI) + 1e-9);
        expect(numberOf('knurl-blank', { ...values, choose: 'smaller' })).toBeLessThanOrEqual(
          diameter + 1e-6,
        );
      }),
      settings,
    );
  });

  it('are refused when they are too coarse for the work', () => {
    expect(faultOf('knurl-blank', { pitch: 3, diameter: 5 })).toContain('finer knurl');
  });
});

describe('corner radii', () => {
  it('have every stop on the arc, from the face to the diameter', () => {
    const count = fc.integer({ min: 2, max: 40 });
    fc.assert(
      fc.property(fc.double({ min: 0.5, max: 50, noNaN: true }), count, (radius, steps) => {
        const { inward, along } = arcStops(radius, steps);
        inward.forEach((into, index) => {
          const distance = Math.hypot(radius - into, radius - (along[index] ?? Number.NaN));
          expect(distance).toBeCloseTo(radius, 9);
        });
        expect([inward[0], along.at(-1)]).toEqual([0, 0]);
        expect(inward.at(-1)).toBeCloseTo(radius, 9);
      }),
      settings,
    );
  });

  it('stand less proud with two steps more', () => {
    for (let steps = 2; steps < 30; steps += 1) {
      expect(proudest(10, steps + 2)).toBeLessThan(proudest(10, steps));
    }
  });

  it('are refused when the nose is larger than the hollow', () => {
    expect(faultOf('radius-steps', { radius: 2, nose: 2, shape: 'hollow' })).toContain(
      'smaller nose',
    );
  });
});

describe('eccentric packing', () => {
  it('brings the three jaws to one radius (checked by drawing the chuck)', () => {
    fc.assert(
      fc.property(size, fc.double({ min: 0.01, max: 0.5, noNaN: true }), (diameter, share) => {
        const radius = diameter / 2;
        const offset = share * radius;
        // Centre of the work at −offset along the packed jaw; the others at ±60° from the far side.
        const reach = (angle: number) => {
          const along = -offset * Math.cos(angle);
          const across = offset * Math.sin(angle);
          return along + Math.sqrt(radius ** 2 - across ** 2);
        };
        const others = reach((2 * Math.PI) / 3);
        const packed = reach(0) + packingFor(offset, radius, 'narrow');
        expect(packed).toBeCloseTo(others, 9);
      }),
      settings,
    );
  });

  it('is refused beyond a quarter of the work', () => {
    expect(faultOf('eccentric-packing', { diameter: 20, offset: 6 })).toContain('four jaws');
  });
});

describe('grooves', () => {
  it('start on one side, end on the other, and leave no ridge between plunges', () => {
    const blade = fc.double({ min: 1, max: 6, noNaN: true });
    const more = fc.double({ min: 0, max: 40, noNaN: true });
    fc.assert(
      fc.property(blade, more, (wide, rest) => {
        const places = plunges(wide + rest, wide);
        expect(places[0]).toBe(0);
        expect(places.at(-1)).toBeCloseTo(places.length > 1 ? rest : 0, 6);
        places.slice(1).forEach((place, index) => {
          expect(place - (places[index] ?? 0)).toBeLessThanOrEqual(0.8 * wide + 1e-6);
        });
      }),
      settings,
    );
  });

  it.each([
    [{ width: 2, depth: 3, blade: 3 }, 'narrower'],
    [{ width: 4, depth: 20, blade: 3 }, 'through'],
    [{ width: 4, depth: 19, blade: 2 }, 'stick out'],
  ])('%o is refused: %s', (values, told) => {
    expect(faultOf('groove-plan', { turningSpeed: 28, diameter: 40, ...values })).toContain(told);
  });

  it('show the bottom of the groove on the diameter', () => {
    const values = { turningSpeed: 28, diameter: 40, width: 4, depth: 3, blade: 3 };
    expect(partOf('groove-plan', 'bottom', values)).toBe(34);
  });
});
