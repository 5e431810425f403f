/** The numbers of the latch washer against published ones, and against what parting off asks for in any shop. */

import { describe, expect, it } from 'vitest';
import { readFlowAt, shippedCards, shippedKinds } from '../../src/cli/flow-files.ts';
import { compileJob, defaultInputs, type Flow, type Job } from '../../src/flow/index.ts';

const lathes = shippedCards().filter(({ machineKind }) => machineKind === 'lathe');

function washer(): Flow {
  const read = readFlowAt('flows/latch-washer.json', shippedKinds());
  if (!read.ok) throw new Error(read.faults.map(({ message }) => message).join('\n'));
  return read.flow;
}

const flow = washer();

const made = (card: (typeof lathes)[number], inputs = {}) => compileJob(flow, card, inputs);

function jobOf(card: (typeof lathes)[number], inputs = {}): Job {
  const { ok, ...rest } = made(card, inputs);
  if (!ok || !('job' in rest)) throw new Error('The washer makes no job.');
  return rest.job;
}

const worked = (job: Job, working: string, part?: string) =>
  job.numbers.number(part === undefined ? { working } : { working, part }, {}) ?? Number.NaN;

/** Every material with every tool on every shipped lathe. */
const jobs = lathes.flatMap((card) =>
  ['low-carbon-steel', 'free-machining-steel', 'aluminium-6061', 'free-cutting-brass'].flatMap(
    (material) => ['hss', 'carbide'].map((tool) => jobOf(card, { material, tool })),
  ),
);

describe('the latch washer', () => {
  // From memory: ISO 7089 (washer for M8: hole 8.4) and ISO 273 (M8, fine: 8.4).
  it('has the hole of a washer for an eight millimetre bolt', () => {
    expect(defaultInputs(flow).holeDiameter).toBe(8.4);
  });

  // ISO 2768-1:1989, table 1, class m: over 3 up to 6 mm, 0.1; over 6 up to 30 mm, 0.2.
  it('is judged by ISO 2768 m', () => {
    for (const job of jobs) {
      expect(worked(job, 'thin', 'lower')).toBeCloseTo(3.9, 9);
      expect(worked(job, 'thin', 'upper')).toBeCloseTo(4.1, 9);
      expect(worked(job, 'rim', 'lower')).toBeCloseTo(19.8, 9);
      expect(worked(job, 'rim', 'upper')).toBeCloseTo(20.2, 9);
    }
  });

  // Common practice, no source: half to six tenths of turning; a blade fed by hand is never run faster than the tool.
  it('is parted off more slowly than it is turned, whatever tool turns it', () => {
    for (const job of jobs) {
      expect(worked(job, 'partSpeed')).toBeLessThan(worked(job, 'turnSpeed'));
      expect(worked(job, 'partFeed')).toBeLessThan(worked(job, 'turnFeed'));
    }
  });

  // Carvill, Mechanical Engineer's Data Handbook, p. 187: steel with high-speed steel 21 to 37 m/min; half of it to part.
  it('is parted off in mild steel at half to six tenths of the published speeds', () => {
    const steel = jobs.filter(({ numbers }) => numbers.inputs.material === 'low-carbon-steel');
    expect(steel.length).toBe(4);
    for (const job of steel) {
      const surface = (Math.PI * 22 * worked(job, 'partSpeed', 'ideal')) / 1000;
      expect(surface).toBeGreaterThan(21 / 2);
      expect(surface).toBeLessThan(37 * 0.6);
      expect(worked(job, 'partSpeed')).toBeLessThanOrEqual(worked(job, 'partSpeed', 'ideal'));
    }
  });

  // Geometry: the point of a 118° drill is 0.3 of its diameter long (0.5 ÷ tan 59°), and half a millimetre goes beyond.
  it('is drilled so little deeper than it is thick that the rest goes into the groove of the blade', () => {
    const tip = 4 + 0.5 + 8.4 * 0.5 * Math.tan((31 * Math.PI) / 180);
    for (const job of jobs) {
      expect(worked(job, 'tip')).toBeCloseTo(tip, 6);
      expect(worked(job, 'tip') - worked(job, 'setOut', 'travel')).toBeLessThan(0.1);
    }
  });

  // Geometry: a centre that is wider than the drill stays in the washer as a countersink.
  it('is centred no wider than it is drilled, and not as deep as it is parted off', () => {
    for (const card of lathes)
      for (const holeDiameter of [4, 8.4, 9])
        for (const sizes of [{}, { rimDiameter: 36, barDiameter: 40, bladeWidth: 4 }]) {
          const job = jobOf(card, { ...sizes, holeDiameter });
          expect(worked(job, 'centre', 'centreDiameter')).toBeLessThan(holeDiameter);
          expect(worked(job, 'centre', 'depth')).toBeLessThan(worked(job, 'setOut', 'travel'));
        }
  });

  // Geometry: the washer falls where its hole is whole, half a millimetre behind it; a stump as long as the rest stays.
  it('leaves the jaws their gap from the blade when the stump of the last one is faced off', () => {
    for (const bladeWidth of [2, 3, 4])
      for (const card of lathes) {
        const job = jobOf(card, { bladeWidth, rimDiameter: 16 });
        const afterFacing = worked(job, 'setOut') - (bladeWidth - 0.5);
        expect(afterFacing - worked(job, 'setOut', 'travel')).toBeGreaterThanOrEqual(5);
      }
  });

  // Common practice, no source: a gap between blade and jaws, bar out at most one and a half diameters when it is faced.
  it('stands short out of the chuck, with the blade clear of the jaws', () => {
    const thickest = { thickness: 10, bladeWidth: 4, barDiameter: 16, rimDiameter: 14 };
    for (const job of [...jobs, ...lathes.map((card) => jobOf(card, thickest))]) {
      const [out, diameter] = [worked(job, 'setOut'), Number(job.numbers.inputs.barDiameter)];
      expect(out - worked(job, 'setOut', 'travel')).toBeGreaterThanOrEqual(5);
      expect(out).toBeLessThanOrEqual(1.5 * diameter);
    }
  });

  // Geometry: the holder stands over the bar beside the groove, which is as thick as it came.
  it('is parted off by a blade so far out that its holder does not meet the bar', () => {
    for (const card of lathes)
      for (const barDiameter of [22, 40]) {
        const job = jobOf(card, { barDiameter });
        expect(worked(job, 'bladeOut')).toBeGreaterThan((barDiameter - 8.4) / 2);
      }
  });

  it('is not begun with a bar thinner than its rim', () => {
    for (const card of lathes) {
      const thin = made(card, { barDiameter: 18 });
      expect(thin.ok ? [] : thin.faults).toContainEqual(
        expect.stringContaining('Bar of 18 mm cannot be turned to 20 mm'),
      );
    }
  });

  // Common practice, no source: a blade sticks out at most eight times its width.
  it('is not begun with a blade too thin to reach so deep', () => {
    for (const card of lathes) {
      const thin = made(card, { bladeWidth: 2, rimDiameter: 36, barDiameter: 40, holeDiameter: 4 });
      expect(thin.ok ? [] : thin.faults).toEqual([
        expect.stringContaining('take a wider blade, or part from both sides or saw'),
      ]);
    }
  });
});
