/** The other machines: never faster than allowed, never fewer than three teeth. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { pulleyStep } from '../../../src/trade/machines/drill-press.ts';
import { stockFactor } from '../../../src/trade/machines/saw-speed.ts';
import { wheelSurfaceSpeed, wheelTurns } from '../../../src/trade/machines/wheel-speed.ts';
import { answerOf, faultOf, given, numberOf, partOf } from '../asking.ts';

const settings = { seed: 215 };
const bands = fc.array(fc.integer({ min: 10, max: 150 }), { minLength: 1, maxLength: 8 });
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

describe('sawing to length', () => {
  it('takes no blade with fewer than three teeth in the cut, and says which one it needs', () => {
    expect(faultOf('teeth-in-cut', { thickness: 18, teeth: 4 })).toContain('at least 4.23 an inch');
    expect(numberOf('teeth-in-cut', { thickness: 18, teeth: 5 })).toBeGreaterThan(3);
    const packed = given('teeth-in-cut', { thickness: 40, teeth: 18 });
    expect(packed.working).toContain('pack the gullets');
  });

  it('takes the fastest speed of the card that is not too fast, and none where all are', () => {
    fc.assert(
      fc.property(fc.double({ min: 5, max: 200, noNaN: true }), bands, (surfaceSpeed, speeds) => {
        const answer = answerOf('band-card-speed', { surfaceSpeed, speeds });
        const slower = speeds.filter((one) => one <= surfaceSpeed);
        expect(answer.ok && answer.value).toBe(slower.length > 0 && Math.max(...slower));
      }),
      settings,
    );
  });

  it('says which limit ruled the speed', () => {
    const values = { surfaceSpeed: 100, speeds: [20, 40, 80] };
    expect(given('band-card-speed', values).ruledBy).toBe("the saw's top speed");
    const limited = given('band-card-speed', { ...values, workLimit: 50 });
    expect(limited).toMatchObject({ value: 40, ruledBy: "the work's limit" });
  });

  it('leaves of a bar less than one piece more would need', () => {
    const bars = fc.double({ min: 200, max: 6000, noNaN: true });
    fc.assert(
      fc.property(bars, fc.double({ min: 5, max: 100, noNaN: true }), (bar, length) => {
        const values = { length, allowance: 1, kerf: 1.5, bar, grip: 80 };
        const pieces = partOf('saw-blank', 'pieces', values);
        const left = partOf('saw-blank', 'left', values);
        expect(pieces * (length + 3.5) + left).toBeCloseTo(bar, 6);
        expect(left).toBeGreaterThanOrEqual(80 - 1e-6);
        expect(left).toBeLessThan(80 + length + 3.5);
      }),
      settings,
    );
    expect(faultOf('saw-blank', { length: 70, bar: 100 })).toContain('longer bar');
  });

  it('asks for the height of a flat bar, and takes longer for a larger section', () => {
    const flat = { section: 'flat-bar', width: 40, rate: 20 };
    expect(faultOf('saw-time', flat)).toContain('height');
    const time = numberOf('saw-time', { ...flat, height: 40 });
    expect(time).toBeGreaterThan(numberOf('saw-time', { width: 40, rate: 20 }));
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

  it('never run faster than any mark, and as fast as the plate then lets them', () => {
    const speeds = fc.array(fc.integer({ min: 500, max: 6000 }), { minLength: 1, maxLength: 4 });
    fc.assert(
      fc.property(speeds, fc.integer({ min: 1000, max: 5000 }), (plate, chuckLimit) => {
        const values = { wheel: 200, markedSpeed: 35, speeds: plate, chuckLimit };
        const most = Math.min(chuckLimit, wheelTurns(200, 35));
        const answer = answerOf('grinder-speed', values);
        const fitting = plate.filter((speed) => speed <= most);
        expect(answer.ok ? answer.value : undefined).toBe(
          fitting.length > 0 ? Math.max(...fitting) : undefined,
        );
      }),
      settings,
    );
  });
});
