/** Threads as people write them. */

import { describe, expect, it } from 'vitest';
import { englishLanguage, type Worded, wordedIn } from '../../../src/texts/index.ts';
import { parseThread } from '../../../src/trade/threads/designation.ts';
import { metricPitches, unifiedPitches } from '../../../src/trade/threads/standard-threads.ts';

const inEnglish = (said: Worded) => wordedIn(englishLanguage, said);

function read(text: string) {
  const thread = parseThread(text);
  if ('fault' in thread) throw new Error(inEnglish(thread.fault));
  return thread;
}

const faultIn = (text: string) => {
  const thread = parseThread(text);
  return 'fault' in thread ? inEnglish(thread.fault) : `read as ${thread.name}`;
};

describe('thread designations', () => {
  it.each([
    ['M10', 'M10x1.5', 10, 1.5],
    ['M10x1.5', 'M10x1.5', 10, 1.5],
    ['m10 × 1.25', 'M10x1.25', 10, 1.25],
    ['M10x1.5-6g', 'M10x1.5', 10, 1.5],
    ['M10 x 1.5 - 6H', 'M10x1.5', 10, 1.5],
    ['M1.6', 'M1.6x0.35', 1.6, 0.35],
    ['1/4-20', '1/4-20 UNC', 6.35, 1.27],
    ['1/4-20 UNC', '1/4-20 UNC', 6.35, 1.27],
    ['1/4 UNF', '1/4-28 UNF', 6.35, 25.4 / 28],
    ['3/8-16 UNC 2A', '3/8-16 UNC', 9.525, 1.5875],
    ['3/8-16 UNC-2B', '3/8-16 UNC', 9.525, 1.5875],
    ['#10-24', '#10-24 UNC', 4.826, 25.4 / 24],
    ['10-32', '#10-32 UNF', 4.826, 25.4 / 32],
    ['1-8', '1-8 UNC', 25.4, 3.175],
    ['1-1/2-6', '1 1/2-6 UNC', 38.1, 25.4 / 6],
    ['1 1/8-7 UNC', '1 1/8-7 UNC', 28.575, 25.4 / 7],
    ['1-14', '1-14 UNS', 25.4, 25.4 / 14],
    ['.250-20', '1/4-20 UNC', 6.35, 1.27],
  ])('%s is read as %s', (text, name, major, pitch) => {
    const thread = read(text);
    expect(thread.name).toBe(name);
    expect(thread.major).toBeCloseTo(major, 9);
    expect(thread.pitch).toBeCloseTo(pitch, 9);
  });

  it.each([
    ['banana', 'no thread known'],
    ['M15', 'no coarse pitch'],
    ['M10x9', 'not possible'],
    ['M0.5x0.1', 'not possible'],
    ['1/4-28 UNC', 'not 28'],
    ['11/16 UNC', 'how many threads'],
    ['2-12 UNF', 'no such series'],
    ['1/0-20', 'not possible'],
  ])('%s is refused: %s', (text, told) => {
    expect(faultIn(text)).toContain(told);
  });

  it('reads every standard thread back from its own name', () => {
    for (const [size, coarse, fine] of metricPitches) {
      for (const pitch of [coarse, ...fine].filter((one) => one > 0)) {
        const { name, major, pitch: got } = read(`M${size}x${pitch}`);
        expect([read(name).major, read(name).pitch]).toEqual([major, got]);
      }
    }
    for (const [size, coarse, fine] of unifiedPitches) {
      for (const tpi of [coarse, fine].filter((one) => one > 0)) {
        const { name } = read(`${size}-${tpi}`);
        expect(read(name).name).toBe(name);
      }
    }
  });
});
