/** The other machines: never faster than allowed, never fewer than three teeth. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { pulleyStep } from '../../../src/trade/machines/drill-press.ts';
import { stockFactor } from '../../../src/trade/machines/saw-speed.ts';
import { wheelSurfaceSpeed, wheelTurns } from '../../../src/trade/machines/wheel-speed.ts';
import { answerOf, faultOf, given, numberOf, partOf } from '../asking.ts';

const settings = { seed: 215 };
const steps = fc.array(fc.integer({ min: 100, max: 5000 }), { minLength: 1, maxLength: 12 });

describe('pulley steps', () => {
  it('are never faster than the ideal, unless even the slowest is', () => {
    fc.assert(
      fc.property(fc.double({ min: 50, max: 6000, noNaN: true }), steps, (ideal, speeds) => {
        const { speed } = pulleyStep(ideal, speeds);
        expect(speeds).toContain(speed);
        const slowest = Math.min(...speeds);
        expect(speed <= ideal * (1 + 1e-6) || speed === slowest).toBe(true);
        expect(speeds.every((one) => one <= speed || one > ideal)).toBe(true);
      }),
      settings,
    );
  });

  it('keep below the limit of tool or work and say that it ruled', () => {
    const values = { surfaceSpeed: 60, drill: 6, steps: [500, 900, 1400, 2200], limit: 1000 };
    expect(given('drill-press-step', values)).toMatchObject({
      value: 900,
      ruledBy: 'the limit of tool or work',
    });
    expect(faultOf('drill-press-step', { ...values, limit: 400 })).toContain('another machine');
  });

  it('warn when the slowest step is too fast for the edge', () => {
    const slow = given('drill-press-step', { surfaceSpeed: 10, drill: 40, steps: [400, 800] });
    expect(slow.ruledBy).toBe('the slowest pulley step');
    expect(slow.working).toContain('faster than the edge wants');
  });
});

describe('saw blades', () => {
  it('always have three teeth in the cut', () => {
    fc.assert(
      fc.property(fc.double({ min: 2.5, max: 500, noNaN: true }), (thickness) => {
        expect(partOf('saw-pitch', 'inCut', { thickness })).toBeGreaterThanOrEqual(3 - 1e-9);
      }),
      settings,
    );
  });

  it('are refused for stock that is too thin for any', () => {
    expect(faultOf('saw-pitch', { thickness: 1 })).toContain('three in the cut');
    expect(faultOf('saw-pitch', { thickness: 6, blades: [4, 6] })).toContain('three in the cut');
  });

  it('run slower in thicker stock, dry, and with a carbon blade', () => {
    for (let thickness = 5; thickness < 300; thickness += 5) {
      expect(stockFactor(thickness + 5)).toBeLessThanOrEqual(stockFactor(thickness));
    }
    const base = { material: '1018', thickness: 50 };
    const wet = numberOf('saw-speed', base);
    expect(numberOf('saw-speed', { ...base, coolant: 'no' })).toBeLessThan(wet);
    expect(numberOf('saw-speed', { ...base, blade: 'carbon' })).toBeCloseTo(wet / 2, 9);
  });
});

describe('grinding wheels', () => {
  it('are answered at their mark and refused above it', () => {
    const wheel = fc.double({ min: 50, max: 600, noNaN: true });
    const mark = fc.double({ min: 20, max: 100, noNaN: true });
    fc.assert(
      fc.property(wheel, mark, (diameter, markedSpeed) => {
        const most = wheelTurns(diameter, markedSpeed);
        const at = (spindleSpeed: number) =>
          answerOf('grinding-wheel-speed', { wheel: diameter, spindleSpeed, markedSpeed }).ok;
        expect([at(most), at(most * 1.0001)]).toEqual([true, false]);
        expect(wheelSurfaceSpeed(diameter, most)).toBeCloseTo(markedSpeed, 9);
      }),
      settings,
    );
  });
});
