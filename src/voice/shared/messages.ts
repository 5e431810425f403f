/** What the page and the ear's worker say to each other. */
import type { ListenFor, Meanwhile } from '../../bench/ports.ts';
import type { LevelAdvice } from './level-advice.ts';

/** Where the worker fetches its parts. */
export interface EarAddresses {
  readonly wasm: string;
  readonly dictionary: string;
  readonly model: Readonly<Record<string, string>>;
}

/** Patterns of one voice at one microphone, as plain data; each text is one saying. Never sound. */
export interface KeptVoice {
  readonly version: 1;
  readonly patterns: Readonly<Record<string, readonly string[]>>;
}

/** What ten seconds of the room told, as plain data. */
export interface KeptRoom {
  readonly version: 1;
  /** Decibels of full scale in the band of speech. */
  readonly decibels: number;
  /** Mean logarithm of the noise in each band of the ear. */
  readonly noise: readonly number[];
  /** How well the room's own sound fitted words of ours by accident, per frame; null: never. */
  readonly accident: number | null;
}

/** What an ear at the same microphone learnt before. Anything that cannot be read is left aside. */
export interface KeptEar {
  readonly channel?: string;
  readonly voice?: KeptVoice;
  readonly room?: KeptRoom;
}

export type ToEar =
  | {
      readonly kind: 'start';
      readonly addresses: EarAddresses;
      readonly channel?: string;
      /** Both may be old or damaged: what does not fit is dropped. */
      readonly voice?: KeptVoice;
      readonly room?: KeptRoom;
    }
  | { readonly kind: 'listen-for'; readonly words: ListenFor }
  /** Samples from -1 to 1 at the rate of the page's audio. */
  | { readonly kind: 'sound'; readonly samples: Float32Array; readonly rate: number }
  /** Nothing is learnt meanwhile. */
  | { readonly kind: 'shut'; readonly meanwhile?: Meanwhile }
  | { readonly kind: 'reopen' }
  /** The person is silent and the room is not; nothing is heard until it ends by itself. */
  | { readonly kind: 'measure-room'; readonly seconds?: number }
  | { readonly kind: 'enrol'; readonly phrase: string }
  | { readonly kind: 'stop-enrolling' }
  | { readonly kind: 'forget-voice' };

export type FromEar =
  | { readonly kind: 'ready' }
  | { readonly kind: 'failed'; readonly reason: string }
  | { readonly kind: 'heard'; readonly text: string; readonly confidence: number }
  | { readonly kind: 'unclear'; readonly text: string }
  | { readonly kind: 'noisy'; readonly noisy: boolean; readonly advice?: LevelAdvice }
  | { readonly kind: 'level'; readonly decibels: number; readonly advice?: LevelAdvice }
  /** Words of the said list that nobody told the ear how to say. */
  | { readonly kind: 'missing'; readonly words: readonly string[] }
  /** The channel's mean spectrum, to be handed back at the next start with the same microphone. */
  | { readonly kind: 'channel'; readonly channel: string }
  | {
      readonly kind: 'enrolled';
      readonly phrase: string;
      readonly times: number;
      /** All that is known of this voice, to be handed back at the next start. */
      readonly voice?: KeptVoice;
    }
  /** `unlike`: it does not resemble what was said for this phrase before. */
  | {
      readonly kind: 'not-enrolled';
      readonly phrase: string;
      readonly reason: 'too-quiet' | 'too-short' | 'too-long' | 'unlike';
    }
  | {
      readonly kind: 'room-measured';
      readonly decibels: number;
      readonly room: KeptRoom;
      readonly isSafe: boolean;
      readonly advice?: LevelAdvice;
    };

export type ToMouth =
  | { readonly kind: 'start'; readonly program: string }
  | {
      readonly kind: 'say';
      readonly id: number;
      readonly text: string;
      readonly voice: string;
      readonly rate: number;
    };

export type FromMouth =
  | { readonly kind: 'ready' }
  | { readonly kind: 'failed'; readonly reason: string }
  /** Samples from -1 to 1. */
  | {
      readonly kind: 'sound';
      readonly id: number;
      readonly samples: Float32Array<ArrayBuffer>;
      readonly rate: number;
    }
  | { readonly kind: 'no-sound'; readonly id: number; readonly reason: string };
