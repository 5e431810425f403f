/** The talk chart and the sound chart, walked whole by the model-based tool. */

import { createTestModel } from '@xstate/test';
import { describe, expect, test } from 'vitest';
import { soundChart, talkChart } from '../../src/bench/index.ts';
import { earOpen, type SoundSnapshot } from '../../src/bench/sound-chart.ts';

const deafness = { kind: 'refused', sentence: 'No microphone.' } as const;
const pending = { value: 1, unit: 'mm', decimals: 2, base: 1, heard: 'one' };

describe('the sound chart', () => {
  const paths = createTestModel(soundChart).getShortestPaths({
    events: [
      { type: 'say' },
      { type: 'said' },
      { type: 'quiet' },
      { type: 'hearing' },
      { type: 'deaf', deafness },
    ],
  });

  test('[SOUND-HALF-DUPLEX] the ear is never open while the mouth speaks or echoes', () => {
    const snapshots = paths.flatMap((path) =>
      path.steps.map((step) => step.state as SoundSnapshot),
    );
    expect(snapshots.length).toBeGreaterThan(10);
    for (const snapshot of snapshots) {
      if (snapshot.value.mouth !== 'silent') expect(earOpen(snapshot)).toBe(false);
    }
  });

  test('reaches every combination of mouth and ear', () => {
    const reached = new Set(paths.map((path) => JSON.stringify(path.state.value)));
    expect(reached.size).toBe(6);
  });

  test.each(paths.map((path) => [path.description, path] as const))('%s', async (_, path) => {
    await path.test({
      states: {
        'mouth.speaking': (state: unknown) => expect(earOpen(state as SoundSnapshot)).toBe(false),
      },
      events: {
        say: () => undefined,
        said: () => undefined,
        quiet: () => undefined,
        hearing: () => undefined,
        deaf: () => undefined,
      },
    });
  });
});

describe('the talk chart', () => {
  const paths = createTestModel(talkChart).getShortestPaths({
    events: [
      { type: 'number', pending, far: false },
      { type: 'number', pending, far: true },
      { type: 'answered' },
      { type: 'understood' },
      { type: 'missed' },
    ],
  });

  test('[TALK-PENDING] a number waits exactly while an answer is awaited', () => {
    for (const { state } of paths) {
      const waiting = (state.value as { answer: string }).answer !== 'none';
      expect((state.context as { pending: unknown }).pending !== null).toBe(waiting);
    }
  });

  test('[TALK-LIMIT] misses never grow past the limit, so the chart is finite', () => {
    const misses = paths.map(({ state }) => (state.context as { misses: number }).misses);
    expect(Math.max(...misses)).toBe(3);
  });
});
