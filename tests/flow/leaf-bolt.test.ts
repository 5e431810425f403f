/** The numbers of the leaf bolt, and when it is not begun: against published limits of grinders and their wheels. */

import { describe, expect, it } from 'vitest';
import { readFlowAt, shippedCards, shippedKinds } from '../../src/cli/flow-files.ts';
import type { Job, JobInputs } from '../../src/flow/index.ts';
import { jobOf } from './shipped.ts';

function bolt(inputs: JobInputs = {}): Job {
  const read = readFlowAt('flows/leaf-bolt.json', shippedKinds());
  if (!read.ok) throw new Error(read.faults.map(({ message }) => message).join('\n'));
  return jobOf(
    read.flow,
    inputs,
    shippedCards().find(({ id }) => id === 'metric-grinder'),
  );
}

const worked = (job: Job, working: string, part?: string, readings = {}) =>
  job.numbers.number(part === undefined ? { working } : { working, part }, readings);

describe('the leaf bolt', () => {
  // Reckoned by hand: 3.14159 × 0.2 m × 2850 ÷ 60 s = 29.85 m/s; 35 ÷ (3.14159 × 0.2) × 60 = 3342 rev/min.
  it('turns its wheel below the mark', () => {
    expect(worked(bolt(), 'wheel')).toBeCloseTo(29.85, 2);
    expect(worked(bolt(), 'most')).toBeCloseTo(3342, 0);
    expect(worked(bolt(), 'turns')).toBe(2850);
  });

  // 29 CFR 1910.215(d)(1): the spindle is not faster than the mark. 250 mm at 2850 rev/min is 37.3 m/s.
  it.each<JobInputs>([{ wheelDiameter: 250 }, { wheelMark: 25 }])(
    'is not begun with a wheel marked lower than the grinder runs: %j',
    (inputs) => {
      expect(() => bolt(inputs)).toThrow('the wheel can burst');
    },
  );

  // From memory: 29 CFR 1910.215(a)(4) and (b)(9): 1/8 in and 1/4 in; EN ISO 16089: 5 mm for the tongue guard.
  it('takes no wider gaps than the published ones', () => {
    const { inputs } = bolt().flow.file;
    const most = (id: string) =>
      inputs.flatMap((one) => (one.id === id && 'max' in one ? one.max : []));
    expect(most('restMost')).toEqual([3]);
    expect(most('tongueMost')).toEqual([5]);
    expect(worked(bolt(), 'gaps', undefined, { restGap: 3 })).toBeCloseTo(25.4 / 8 - 3, 9);
  });

  // ISO 2768-1:1989, table 1, class c: over 120 up to 400 mm, 1.2.
  it('judges its length by ISO 2768 c, and grinds off what was measured too much', () => {
    expect(worked(bolt(), 'limits', 'lower')).toBeCloseTo(248.8, 9);
    expect(worked(bolt(), 'limits', 'upper')).toBeCloseTo(251.2, 9);
    expect(worked(bolt(), 'left', 'left', { lengthNow: 252.4 })).toBeCloseTo(2.4, 9);
  });
});
