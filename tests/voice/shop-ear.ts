/** Plays sounds to the offline ear as a microphone in a shop would, and counts what it makes of them. */
import type { ListenFor } from '../../src/bench/ports.ts';
import { type LoadedEngine, loadEngine } from '../../src/cli/hear-engine.ts';
import type { FromEar, Pronunciations } from '../../src/voice/shared/index.ts';
import type { KeptVoice } from '../../src/voice/shared/messages.ts';
import { EarBrain } from '../../src/voice/worker/index.ts';
import {
  activeLevel,
  babble,
  broadband,
  hammering,
  hum,
  mixed,
  type Random,
  random,
} from './shop-noise.ts';

export const NOISES = ['hum', 'broadband', 'hammering', 'babble'] as const;
export type Noise = (typeof NOISES)[number];

const RATE = 16_000;
const BEFORE = 1 * RATE;
const AFTER = 1.3 * RATE;
/** A quiet room: made speech has none of its own. */
const QUIET_ROOM = 42;

export interface Shop {
  readonly noise: Noise;
  /** Decibels of speech over noise; null for a quiet room. */
  readonly snr: number | null;
}

export class ShopEar {
  private told: FromEar[] = [];
  private readonly ear: EarBrain;

  private constructor(
    { engine, model, next }: LoadedEngine,
    dictionary: Pronunciations,
    private readonly shop: Shop,
    private readonly talk: readonly Int16Array[],
  ) {
    this.ear = new EarBrain(engine, model, dictionary, (message) => this.told.push(message), next);
  }

  /** Each ear has an engine of its own: one engine's memory is made for one ear. */
  static async open(
    dictionary: Pronunciations,
    shop: Shop,
    talk: readonly Int16Array[],
  ): Promise<ShopEar> {
    return new ShopEar(await loadEngine(), dictionary, shop, talk);
  }

  listenFor(words: ListenFor): void {
    this.ear.listenFor(words);
  }

  /** Every answer to this speech: a text, or null for "unclear". */
  hears(speech: Int16Array, seed: number): readonly (string | null)[] {
    this.told = [];
    this.ear.hear(this.inShop(speech, seed));
    return this.told.flatMap((message) => {
      if (message.kind === 'heard') return [message.text];
      return message.kind === 'unclear' ? [null] : [];
    });
  }

  enrols(phrase: string, speech: Int16Array, seed: number): void {
    this.told = [];
    this.ear.enrol(phrase);
    this.ear.hear(this.inShop(speech, seed));
    this.ear.stopEnrolling();
  }

  /** The patterns as the last enrolment gave them. */
  get voice(): KeptVoice | undefined {
    return this.told.flatMap((m) => (m.kind === 'enrolled' && m.voice ? [m.voice] : [])).at(-1);
  }

  close(): void {
    this.ear.dispose();
  }

  /** Plain sound, nothing added. */
  hearsPlain(sound: Int16Array): readonly string[] {
    this.told = [];
    this.ear.hear(sound);
    return this.told.flatMap((message) => (message.kind === 'heard' ? [message.text] : []));
  }

  private inShop(speech: Int16Array, seed: number): Int16Array {
    const { noise, snr } = this.shop;
    const whole = new Int16Array(BEFORE + speech.length + AFTER);
    whole.set(speech, BEFORE);
    const next = random(seed);
    const sound =
      snr === null
        ? broadband(whole.length, next)
        : makeNoise(noise, whole.length, next, this.talk);
    return mixed(whole, sound, snr ?? QUIET_ROOM, activeLevel(speech));
  }
}

/** Noise of one kind; babble is made of the given talk. */
export function makeNoise(
  kind: Noise,
  length: number,
  next: Random,
  talk: readonly Int16Array[],
): Float32Array {
  if (kind === 'hum') return hum(length, next);
  if (kind === 'broadband') return broadband(length, next);
  return kind === 'hammering' ? hammering(length, next) : babble(length, next, talk);
}
