/** The numbers of the latch keeper, against published ones, and the feed that a table is given a minute. */

import { describe, expect, it } from 'vitest';
import { readFlowAt, shippedCards, shippedKinds } from '../../src/cli/flow-files.ts';
import {
  beginJob,
  figuresNow,
  type Job,
  type JobInputs,
  readFlowValue,
  resolveFlow,
} from '../../src/flow/index.ts';
import { cut, flowWith, jobOf, kinds } from './shipped.ts';

function keeper(inputs: JobInputs = {}): Job {
  const read = readFlowAt('flows/latch-keeper.json', shippedKinds());
  if (!read.ok) throw new Error(read.faults.map(({ message }) => message).join('\n'));
  return jobOf(
    read.flow,
    inputs,
    shippedCards().find(({ id }) => id === 'metric-mill'),
  );
}

const worked = (job: Job, working: string, part?: string) =>
  job.numbers.number(part === undefined ? { working } : { working, part }, {});

describe('the latch keeper', () => {
  // Carvill, Mechanical Engineer's Data Handbook, p. 187, and a workshop table: 21 to 37 m/min, steel, high-speed steel.
  it.each([
    ['faceSpeed', 32],
    ['slotSpeed', 10],
  ])('turns its cutters within the published surface speeds: %s of %d mm', (speed, cutter) => {
    const surface = (Math.PI * cutter * (worked(keeper(), speed) ?? 0)) / 1000;
    expect(surface).toBeGreaterThan(21);
    expect(surface).toBeLessThan(37);
  });

  // Groover, Fundamentals of Modern Manufacturing: vf = fz z n.
  it('feeds its table by teeth and turns', () => {
    expect(worked(keeper(), 'faceFeed')).toBeCloseTo(0.05 * 4 * 240, 9);
    expect(worked(keeper(), 'slotFeed')).toBeCloseTo(0.05 * 2 * 720, 9);
    const fine = keeper({ feedPerTooth: 0.02 });
    expect(worked(fine, 'slotFeed')).toBeCloseTo(0.02 * 2 * 720, 9);
  });

  // ISO 2768-1:1989, table 1, class m: over 6 up to 30 mm, 0.2; over 3 up to 6 mm, 0.1.
  it('judges height and depth by ISO 2768 m', () => {
    expect(worked(keeper(), 'high', 'lower')).toBeCloseTo(15.8, 9);
    expect(worked(keeper(), 'high', 'upper')).toBeCloseTo(16.2, 9);
    expect(worked(keeper(), 'deep', 'lower')).toBeCloseTo(5.9, 9);
    expect(worked(keeper(), 'deep', 'upper')).toBeCloseTo(6.1, 9);
  });

  // Groover: the cutter, centred on the work, runs up (D - sqrt(D² - w²)) ÷ 2.
  it('reckons the time of a cut with the run-up of the cutter', () => {
    const runUp = (32 - Math.sqrt(32 ** 2 - 25 ** 2)) / 2;
    expect(worked(keeper(), 'faceTime')).toBeCloseTo((60 + runUp) / 48, 9);
  });

  it('is not begun with a block wider than its end mill', () => {
    expect(() => keeper({ blockWidth: 40 })).toThrow('40 mm is more than the 32 mm cutter takes');
  });

  it('shows the feed of its table a minute', () => {
    const job = keeper();
    const value = { 'mill-slot': 'cutting' };
    const at = job.machine.resolveState({ value, context: beginJob(job).context });
    const feed = figuresNow(job, at).find(({ id }) => id === 'feed');
    expect(feed?.text).toBe('72\u00A0mm/min');
  });
});

describe('the feed of a cut', () => {
  const faultsOf = (feed: object) => {
    const read = resolveFlow(readFlowValue('small', flowWith([cut('a', { feed })])), kinds);
    return read.ok ? [] : read.faults.map(({ message }) => message);
  };

  it('is told a turn or a minute, and is nothing else', () => {
    expect(faultsOf({ is: 0.1, unit: 'mm/rev' })).toEqual([]);
    expect(faultsOf({ is: 48, unit: 'mm/min' })).toEqual([]);
    expect(faultsOf({ is: 300, unit: 'rpm' })).toEqual([
      expect.stringContaining('"rpm" is not a unit of feedPerRev'),
    ]);
  });
});
