/** Speaks one piece with the browser's voice and knows when it is over, even when the browser does not. */
import type { Clock } from '../../bench/ports.ts';
import type { VoiceOffered } from '../shared/voice-choice.ts';
import type { Synthesis, Utterance, UtteranceConstructor } from './speech-synthesis.ts';

export interface SpeakingWorld {
  readonly synthesis: Synthesis;
  readonly Utterance: UtteranceConstructor;
  readonly clock: Clock;
}

export interface Manner {
  readonly rate?: number;
  readonly volume?: number;
  readonly pitch?: number;
}

/**
 * `said`: whole. `cut`: cancelled by us. `silent`: no sound came, another try is fair.
 * `stalled`: it began and never ended. `barred`: the browser wants a tap first.
 */
export type UtterEnd = 'said' | 'cut' | 'silent' | 'stalled' | 'barred';

/** Kept here because a browser may throw away an utterance nobody holds, in the middle of a word. */
const spoken = new Set<Utterance>();

/** Resolves once; a browser that fires nothing is given up after about twice the expected time. */
export function utter(
  world: SpeakingWorld,
  text: string,
  voice: VoiceOffered,
  manner: Manner,
): Promise<UtterEnd> {
  return new Promise((resolve) => {
    const utterance = makeUtterance(world, text, voice, manner);
    let began = false;
    const limit = patience(text, utterance.rate);
    const finish = (end: UtterEnd) => {
      cancelLimit();
      spoken.delete(utterance);
      utterance.onstart = null;
      utterance.onend = null;
      utterance.onerror = null;
      resolve(end);
    };
    const cancelLimit = world.clock.after(limit, () => finish(began ? 'stalled' : 'silent'));
    utterance.onstart = () => {
      began = true;
    };
    utterance.onend = () => finish('said');
    utterance.onerror = ({ error }) => finish(endOfError(error));
    spoken.add(utterance);
    world.synthesis.speak(utterance);
  });
}

function makeUtterance(
  world: SpeakingWorld,
  text: string,
  voice: VoiceOffered,
  manner: Manner,
): Utterance {
  const utterance = new world.Utterance(text);
  utterance.voice = voice;
  utterance.lang = voice.lang;
  utterance.rate = manner.rate ?? 1;
  utterance.pitch = manner.pitch ?? 1;
  utterance.volume = manner.volume ?? 1;
  return utterance;
}

/** Milliseconds to wait: twice a slow speaker's time, plus the time a voice takes to wake up. */
function patience(text: string, rate: number): number {
  return 2_000 + (180 * text.length) / rate;
}

function endOfError(error: string): UtterEnd {
  if (error === 'canceled' || error === 'interrupted') return 'cut';
  return error === 'not-allowed' ? 'barred' : 'silent';
}

const LET_GO_STEP_MS = 20;
const LET_GO_STEPS = 5;

/**
 * Empties the browser's queue and waits until it is empty: a line given at once after `cancel` is
 * lost in some browsers. `resume` follows since `cancel` does not end a pause, and lines queue up
 * silently behind one.
 */
export async function emptyQueue(world: SpeakingWorld, justCancelled = false): Promise<void> {
  const { synthesis, clock } = world;
  if (synthesis.speaking || synthesis.pending) {
    synthesis.cancel();
    synthesis.resume();
  } else if (!justCancelled) return;
  for (let i = 0; i < LET_GO_STEPS; i++) {
    await new Promise<void>((resolve) => {
      clock.after(LET_GO_STEP_MS, resolve);
    });
    if (!synthesis.speaking && !synthesis.pending && i > 0) return;
  }
}
