/** One recording through the offline ear, as the page's worker would hear it. */

import type { ListenFor } from '../bench/ports.ts';
import {
  type FromEar,
  type Pronunciations,
  resampleSound,
  type Sound,
} from '../voice/shared/index.ts';
import { EarBrain } from '../voice/worker/index.ts';
import type { LoadedEngine } from './hear-engine.ts';

export interface HeardSound {
  /** What was heard, in order; an utterance that matched nothing is null. */
  readonly utterances: readonly (string | null)[];
  readonly missing: readonly string[];
  readonly ms: number;
  readonly audioMs: number;
}

const RATE = 16_000;
/** Quiet before and after: the ear needs to know the room, and that the person has finished. */
const BEFORE_S = 0.5;
const AFTER_S = 1.2;

/** Decodes the whole sound, as if it had come from the microphone. */
export function hearSound(
  { engine, model, next }: LoadedEngine,
  dictionary: Pronunciations,
  listenFor: ListenFor,
  sound: Sound,
): HeardSound {
  const told: FromEar[] = [];
  const ear = new EarBrain(engine, model, dictionary, (message) => told.push(message), next);
  ear.listenFor(listenFor);
  const samples = padded(resampleSound(sound.samples, sound.rate, RATE));
  const since = performance.now();
  ear.hear(samples);
  const ms = Math.round(performance.now() - since);
  ear.dispose();
  return {
    utterances: told.flatMap((message) => {
      if (message.kind === 'heard') return [message.text];
      return message.kind === 'unclear' ? [null] : [];
    }),
    missing: told.flatMap((message) => (message.kind === 'missing' ? message.words : [])),
    ms,
    audioMs: Math.round((1000 * sound.samples.length) / sound.rate),
  };
}

function padded(samples: Int16Array): Int16Array {
  const whole = new Int16Array(samples.length + (BEFORE_S + AFTER_S) * RATE);
  whole.set(samples, BEFORE_S * RATE);
  return whole;
}
