/** What the page and the ear's worker say to each other. */
import type { ListenFor } from '../../bench/ports.ts';

/** Where the worker fetches its parts. */
export interface EarAddresses {
  readonly wasm: string;
  readonly dictionary: string;
  readonly model: Readonly<Record<string, string>>;
}

export type ToEar =
  | { readonly kind: 'start'; readonly addresses: EarAddresses; readonly channel?: string }
  | { readonly kind: 'listen-for'; readonly words: ListenFor }
  /** Samples from -1 to 1 at the rate of the page's audio. */
  | { readonly kind: 'sound'; readonly samples: Float32Array; readonly rate: number }
  | { readonly kind: 'shut' }
  | { readonly kind: 'reopen' }
  | { readonly kind: 'enrol'; readonly phrase: string }
  | { readonly kind: 'forget-voice' };

export type FromEar =
  | { readonly kind: 'ready' }
  | { readonly kind: 'failed'; readonly reason: string }
  | { readonly kind: 'heard'; readonly text: string; readonly confidence: number }
  | { readonly kind: 'unclear'; readonly text: string }
  | { readonly kind: 'noisy'; readonly noisy: boolean }
  | { readonly kind: 'level'; readonly decibels: number; readonly advice?: string }
  /** Words of the said list that nobody told the ear how to say. */
  | { readonly kind: 'missing'; readonly words: readonly string[] }
  /** The channel's mean spectrum, to be handed back at the next start with the same microphone. */
  | { readonly kind: 'channel'; readonly channel: string }
  | { readonly kind: 'enrolled'; readonly phrase: string; readonly times: number };

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
