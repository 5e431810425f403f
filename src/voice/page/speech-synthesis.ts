/** The part of the browser's speech output that we use. */
import type { VoiceOffered } from '../shared/voice-choice.ts';

export interface Utterance {
  text: string;
  lang: string;
  rate: number;
  pitch: number;
  volume: number;
  voice: VoiceOffered | null;
  onstart: (() => void) | null;
  onend: (() => void) | null;
  onerror: ((event: { readonly error: string }) => void) | null;
}

export type UtteranceConstructor = new (text: string) => Utterance;

export interface Synthesis {
  readonly speaking: boolean;
  readonly pending: boolean;
  getVoices(): readonly VoiceOffered[];
  speak(utterance: Utterance): void;
  cancel(): void;
  resume(): void;
  addEventListener?(type: 'voiceschanged', call: () => void): void;
  removeEventListener?(type: 'voiceschanged', call: () => void): void;
}
