/** What every thread's limits keep. */

import { describe, expect, it } from 'vitest';
import { englishLanguage, wordedIn } from '../../../src/texts/index.ts';
import { parseThread } from '../../../src/trade/threads/designation.ts';
import { metricPitches, unifiedPitches } from '../../../src/trade/threads/standard-threads.ts';
import { limitsOfThread } from '../../../src/trade/threads/thread-limits.ts';
import { faultOf } from '../asking.ts';

const metric = metricPitches.flatMap(([size, coarse, fine]) =>
  [coarse, ...fine].filter((pitch) => pitch > 0).map((pitch) => `M${size}x${pitch}`),
);
const unified = unifiedPitches.flatMap(([size, coarse, fine]) =>
  [coarse, fine].filter((tpi) => tpi > 0).map((tpi) => `${size}-${tpi}`),
);

function limits(name: string, side: 'external' | 'internal') {
  const thread = parseThread(name);
  if ('fault' in thread) throw new Error(wordedIn(englishLanguage, thread.fault));
  return limitsOfThread(thread, side);
}

describe('thread limits', () => {
  const coarse = metricPitches.filter(([, pitch]) => pitch > 0).map(([size]) => `M${size}`);
  it.each([...coarse, ...unified])('%s: the largest screw goes into the smallest nut', (name) => {
    const [screw, nut] = [limits(name, 'external'), limits(name, 'internal')];
    if ('fault' in screw || 'fault' in nut) throw new Error('no limits');
    expect(screw.pitchMin).toBeLessThan(screw.pitchMax);
    expect(nut.pitchMin).toBeLessThan(nut.pitchMax);
    expect(screw.pitchMax).toBeLessThan(nut.pitchMin);
    expect(screw.majorMax).toBeLessThan(nut.majorMin);
    expect(screw.minorMax).toBeLessThan(nut.minorMin ?? Number.NaN);
    expect(nut.minorMin).toBeLessThan(nut.minorMax);
    expect(nut.minorMax).toBeLessThan(screw.majorMin);
  });

  it('stand in the tables for every ISO 261 pitch from 0.35 on, but for the extra-fine ones below M6', () => {
    const missing = metric.filter((name) => 'fault' in limits(name, 'external'));
    expect(missing).toEqual(['M1.6x0.2', 'M1.8x0.2', 'M2x0.25', 'M2.2x0.25']);
  });

  it('are refused for pitches that no table has', () => {
    expect(faultOf('thread-limits', { thread: 'M10x0.9' })).toContain('6g/6H tables');
    expect(faultOf('thread-limits', { thread: 'M120x6' })).toContain('6g/6H tables');
  });

  it('are looser by 1.25 to 1.4 on the nut than on the screw', () => {
    for (const name of [...coarse, ...unified]) {
      const [screw, nut] = [limits(name, 'external'), limits(name, 'internal')];
      if ('fault' in screw || 'fault' in nut) throw new Error('no limits');
      const ratio = (nut.pitchMax - nut.pitchMin) / (screw.pitchMax - screw.pitchMin);
      expect(ratio).toBeGreaterThan(1.24);
      expect(ratio).toBeLessThan(1.4);
    }
  });
});
