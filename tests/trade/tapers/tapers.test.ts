/** Tapers drawn first and measured after. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { faultOf, given, numberOf, partOf } from '../asking.ts';

const settings = { seed: 24 };
const DEGREE = Math.PI / 180;
const half = fc.double({ min: 1, max: 40, noNaN: true });

describe('tapers', () => {
  it('come back from their angle, their ratio and their taper a foot', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.6, max: 2000, noNaN: true }), (oneIn) => {
        const angle = numberOf('taper-angle', { oneIn });
        const perFoot = partOf('taper-angle', 'perFoot', { oneIn });
        expect(numberOf('taper-angle', { perFoot })).toBeCloseTo(angle, 9);
        const included = partOf('taper-angle', 'included', { oneIn });
        expect(partOf('taper-angle', 'oneIn', { included })).toBeCloseTo(oneIn, 6);
      }),
      settings,
    );
  });

  it('are the same in inches as in millimetres', () => {
    const size = fc.double({ min: 1, max: 30, noNaN: true });
    fc.assert(
      fc.property(size, size, size, (small, more, length) => {
        const mm = numberOf('compound-angle', { large: small + more, small, length });
        const scaled = { large: (small + more) * 25.4, small: small * 25.4, length: length * 25.4 };
        expect(numberOf('compound-angle', scaled)).toBeCloseTo(mm, 9);
      }),
      settings,
    );
  });

  it('that a tailstock out of line has turned give back how far it stands out', () => {
    const out = fc.double({ min: 0.001, max: 2, noNaN: true });
    const share = fc.double({ min: 0.1, max: 1, noNaN: true });
    fc.assert(
      fc.property(out, share, fc.double({ min: 20, max: 900, noNaN: true }), (off, part, whole) => {
        // Drawn first: at a share of the length the centre line lies off by that share, on both sides of the work.
        const values = {
          difference: 2 * off * part,
          measuredLength: whole * part,
          workLength: whole,
        };
        expect(numberOf('tailstock-correction', values)).toBeCloseTo(off, 9);
      }),
      settings,
    );
    const swapped = { difference: 0.1, measuredLength: 90, workLength: 80 };
    expect(faultOf('tailstock-correction', swapped)).toContain('check both');
  });

  it('are refused when the ends are swapped, the taper outgrows the work, or nothing names them', () => {
    expect(faultOf('compound-angle', { large: 20, small: 30, length: 10 })).toContain('swap');
    expect(
      faultOf('tailstock-offset', { large: 20, small: 10, taperLength: 90, workLength: 80 }),
    ).toContain('longer than the work');
    expect(faultOf('taper-angle', {})).toContain('one way');
    expect(faultOf('taper-angle', { oneIn: 10, included: 5 })).toContain('one way');
  });

  it('tell when the tailstock would be set over further than the centres bear', () => {
    const far = given('tailstock-offset', {
      large: 40,
      small: 30,
      taperLength: 50,
      workLength: 200,
    });
    expect(far.working).toContain('1/50');
    const near = given('tailstock-offset', {
      large: 31,
      small: 30,
      taperLength: 100,
      workLength: 200,
    });
    expect(near.working).not.toContain('1/50');
  });
});

describe('checking', () => {
  it('finds the angle and the small end of a cone over rollers', () => {
    const size = fc.double({ min: 5, max: 60, noNaN: true });
    fc.assert(
      fc.property(half, size, size, size, (angle, small, roller, height) => {
        // A roller of radius r beside a wall leaning by a stands r (1 + sin a) ÷ cos a off its foot.
        const [sine, cosine] = [Math.sin(angle * DEGREE), Math.cos(angle * DEGREE)];
        const off = (roller / 2) * ((1 + sine) / cosine + 1);
        const lowReading = small + 2 * off;
        const highReading = lowReading + 2 * height * Math.tan(angle * DEGREE);
        const values = { lowReading, highReading, height, roller };
        expect(numberOf('taper-over-rollers', values)).toBeCloseTo(angle, 6);
        expect(partOf('taper-over-rollers', 'small', values)).toBeCloseTo(small, 6);
      }),
      settings,
    );
  });

  it('finds the angle and the mouth of a hole with two balls', () => {
    const radius = fc.double({ min: 2, max: 10, noNaN: true });
    fc.assert(
      fc.property(half, radius, radius, (angle, small, more) => {
        // Balls touch a cone at radius ÷ sin a from its tip, measured along the axis.
        const sine = Math.sin(angle * DEGREE);
        const large = small + more;
        const face = large / sine + 5;
        const smallDepth = face - small / sine - small;
        const values = {
          largeBall: 2 * large,
          smallBall: 2 * small,
          largeDepth: 5 - large,
          smallDepth,
        };
        expect(numberOf('taper-with-balls', values)).toBeCloseTo(angle, 6);
        expect(partOf('taper-with-balls', 'mouth', values)).toBeCloseTo(
          2 * face * Math.tan(angle * DEGREE),
          5,
        );
      }),
      settings,
    );
  });

  it('sets a sine bar to an angle that reads back', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 59.9, noNaN: true }), (angle) => {
        const height = numberOf('sine-bar-height', { bar: 200, angle });
        expect(numberOf('sine-bar-angle', { bar: 200, height })).toBeCloseTo(angle, 6);
      }),
      settings,
    );
  });

  it('refuses balls and rollers that cannot lie so', () => {
    expect(
      faultOf('taper-with-balls', { largeBall: 10, smallBall: 20, largeDepth: 0, smallDepth: 50 }),
    ).toContain('do not fit');
    expect(
      faultOf('taper-over-rollers', { lowReading: 50, highReading: 49, height: 20, roller: 10 }),
    ).toContain('small end down');
    expect(faultOf('sine-bar-angle', { bar: 100, height: 95 })).toContain('steeper');
  });
});
