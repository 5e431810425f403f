/** "Slower", "louder": how the mouth speaks, changed by voice. Nothing in the job moves. Pure. */

import { type Language, sayIn, tableIn, voiceTexts } from '../texts/index.ts';
import { entryOf } from './entry.ts';
import type { Heard } from './ports.ts';
import type { RunState, RunStep } from './run-state.ts';
import type { BenchItem } from './said-now.ts';

/** Rate 1 is the voice as it is made; volume 1 is all there is. */
export interface SpeechManner {
  readonly rate: number;
  readonly volume: number;
}

export type MannerWish = 'slower' | 'faster' | 'louder' | 'quieter';

interface Step {
  readonly part: keyof SpeechManner;
  readonly by: number;
  readonly told: 'slowerTold' | 'fasterTold' | 'louderTold' | 'quieterTold';
  readonly already: 'slowest' | 'fastest' | 'loudest' | 'quietest';
}

const steps: Readonly<Record<MannerWish, Step>> = {
  slower: { part: 'rate', by: -0.2, told: 'slowerTold', already: 'slowest' },
  faster: { part: 'rate', by: 0.2, told: 'fasterTold', already: 'fastest' },
  louder: { part: 'volume', by: 0.2, told: 'louderTold', already: 'loudest' },
  quieter: { part: 'volume', by: -0.2, told: 'quieterTold', already: 'quietest' },
};

/** As on the sliders of the Toolroom: nothing that cannot be understood or heard. */
const limits: Readonly<Record<keyof SpeechManner, readonly [least: number, most: number]>> = {
  rate: [0.6, 1.8],
  volume: [0.2, 1],
};

export function mannerItems(language: Language): readonly BenchItem[] {
  return (Object.keys(steps) as MannerWish[]).map((wish) => ({
    id: `speech:${wish}`,
    kind: 'ask',
    phrases: tableIn(language, voiceTexts)[wish],
    strict: false,
    manner: wish,
  }));
}

/** Said back in the new manner, and kept as a setting by the shell. */
export function takeManner(state: RunState, heard: Heard, wish: MannerWish): RunStep {
  const { part, by, told, already } = steps[wish];
  const was = state.manner ?? { rate: 1, volume: 1 };
  const value = within(limits[part], was[part] + by);
  const line = sayIn(state.job.flow.language, voiceTexts)(value === was[part] ? already : told);
  const manner = { ...was, [part]: value };
  const event = { type: 'speech', part, value };
  return {
    state: { ...state, manner, seq: state.seq + 1 },
    effects: [
      { kind: 'append', entry: { ...entryOf(state, heard, event, 'note'), said: line } },
      { kind: 'manner', manner },
      { kind: 'say', line, urgent: true },
    ],
  };
}

/** In hundredths, so that steps up and down meet again. */
function within([least, most]: readonly [number, number], value: number): number {
  return Math.round(100 * Math.min(most, Math.max(least, value))) / 100;
}
