import { describe, expect, it } from 'vitest';
import { idealSpeed, speedSteps, speedToSet } from '../../../src/screens/plots/speed-figures.ts';

const speeds = [45, 70, 110, 175, 280, 450, 710, 1120, 1800];

describe('the figures of a speed plot', () => {
  // Source: Groover, Fundamentals of Modern Manufacturing, turning example: 2.30 m/s on 200 mm is 3.66 rev/s.
  it('follow the surface speed', () => {
    expect(idealSpeed(138, 200)).toBeCloseTo(3.66 * 60, 0);
  });

  // Source: by hand: 1000 × 28 ÷ (π × 25) = 356.5, and the card has 280 below and 450 above.
  it('take the next lower speed of the card', () => {
    expect(speedToSet({ surfaceSpeed: 28, speeds }, 25)).toBe(280);
  });

  it("never pass the chuck's mark", () => {
    const steps = speedSteps({ surfaceSpeed: 120, speeds, chuckLimit: 1000 }, [10, 200]);
    expect(Math.max(...steps.map(({ speed }) => speed ?? 0))).toBe(710);
  });

  it('make stairs without a gap, each no faster than the curve and each lower than the one before', () => {
    const steps = speedSteps({ surfaceSpeed: 28, speeds }, [5, 100]);
    expect(steps.map(({ speed }) => speed)).toEqual([1120, 710, 450, 280, 175, 110, 70]);
    steps.forEach(({ from, to, speed }, index) => {
      expect(from).toBe(index === 0 ? 5 : steps[index - 1]?.to);
      // n = 1000 v ÷ (π D) at the largest diameter of the step
      expect(speed).toBeLessThanOrEqual((1000 * 28) / (Math.PI * to) + 1e-9);
    });
    expect(steps.at(-1)?.to).toBe(100);
  });

  it('have no speed where none of the card is safe', () => {
    const steps = speedSteps({ surfaceSpeed: 28, speeds: [450], chuckLimit: 300 }, [5, 50]);
    expect(steps).toEqual([{ from: 5, to: 50, speed: null }]);
  });
});
