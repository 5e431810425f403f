/** The app's own charts, walked whole and held against their claims. */

import { describe, expect, test } from 'vitest';
import {
  beginSound,
  beginTalk,
  type SoundEvent,
  soundChart,
  stepSound,
  stepTalk,
  type TalkEvent,
  talkChart,
} from '../../src/bench/index.ts';
import { sourcesIn } from '../house/sources.ts';
import { type ChartClaim, soundClaims, talkClaims } from './chart-claims.ts';
import { type Tried, walkChart } from './walk-chart.ts';

const deafness = { kind: 'refused', sentence: 'No microphone.' } as const;
const pending = { value: 1, unit: 'mm', decimals: 2, base: 1, heard: 'one' };

const soundEvents: readonly Tried<SoundEvent>[] = [
  { name: 'say', event: { type: 'say' } },
  { name: 'said', event: { type: 'said' } },
  { name: 'quiet', event: { type: 'quiet' } },
  { name: 'hearing', event: { type: 'hearing' } },
  { name: 'deaf', event: { type: 'deaf', deafness } },
];

const talkEvents: readonly Tried<TalkEvent>[] = [
  { name: 'number, near', event: { type: 'number', pending, far: false } },
  { name: 'number, far', event: { type: 'number', pending, far: true } },
  { name: 'answered', event: { type: 'answered' } },
  { name: 'understood', event: { type: 'understood' } },
  { name: 'missed', event: { type: 'missed' } },
];

const sound = { machine: soundChart, begin: beginSound, step: stepSound };
const talk = { machine: talkChart, begin: beginTalk, step: stepTalk };

describe('the sound chart', () => {
  const walked = walkChart(sound, soundEvents, soundClaims);

  test.each(soundClaims.map(({ id, sentence }) => [id, sentence] as const))('[%s] %s', (id) => {
    expect(walked.broken.filter((one) => one.startsWith(`${id}:`))).toEqual([]);
  });

  test('is walked whole: every combination of mouth and ear, and every path', () => {
    console.info('sound chart', walked.row);
    expect(walked.values.size).toBe(6);
    expect(walked.row.paths).toBeGreaterThanOrEqual(walked.row.states);
    expect(walked.row.percent).toBe(100);
  });
});

describe('the talk chart', () => {
  const walked = walkChart(talk, talkEvents, talkClaims);

  test.each(talkClaims.map(({ id, sentence }) => [id, sentence] as const))('[%s] %s', (id) => {
    expect(walked.broken.filter((one) => one.startsWith(`${id}:`))).toEqual([]);
  });

  test('is walked whole: three answers awaited, with none to three misses', () => {
    console.info('talk chart', walked.row);
    expect([walked.values.size, walked.row.states]).toEqual([3, 12]);
    expect(walked.row.paths).toBeGreaterThanOrEqual(walked.row.states);
    expect(walked.row.percent).toBe(100);
  });
});

describe('the walk of a chart', () => {
  const never = <S>(id: string): ChartClaim<S> => ({ id, sentence: '', holds: () => false });

  test('sees a claim that does not hold, of each chart', () => {
    expect(walkChart(sound, soundEvents, [never('NEVER')]).broken.length).toBeGreaterThan(6);
    expect(walkChart(talk, talkEvents, [never('NEVER')]).broken.length).toBeGreaterThan(12);
  });

  test('is given every chart there is: one that is new must be walked here, too', () => {
    const made = Object.entries(sourcesIn('src')).filter(
      ([, text]) => /from 'xstate'/.test(text) && /\b(createMachine|setup)\(/.test(text),
    );
    expect(made.map(([path]) => path)).toEqual([
      'bench/sound-chart.ts',
      'bench/talk-chart.ts',
      // The chart of a flow: walked by the proof, tests/model and tests/bench/by-words.
      'flow/chart-actions.ts',
      // The same chart, with only the steps near one.
      'proof/nearby-chart.ts',
      // An empty chart, whose idle actor steps all others.
      'proof/stepper.ts',
    ]);
  });
});
