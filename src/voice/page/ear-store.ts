/** What the ear of this page keeps on this device between visits: numbers about a microphone, a room, a voice. Never sound. */
import type { KeptRoom, KeptVoice } from '../shared/messages.ts';

/** Small texts by key, such as the browser's local storage. */
export interface Shelf {
  get(key: string): string | null;
  set(key: string, value: string): void;
  remove(key: string): void;
  keys(): readonly string[];
}

export interface EarStore {
  readonly channel: string | undefined;
  readonly room: KeptRoom | undefined;
  readonly voice: KeptVoice | undefined;
  /** Of this person at this microphone, as `voicesOn` names it. */
  readonly voiceKey: string;
  keepChannel(channel: string): void;
  keepRoom(room: KeptRoom): void;
  keepVoice(voice: KeptVoice): void;
  forgetVoice(): void;
}

/** A voice that is kept, for whoever wants it gone. */
export interface VoiceOnShelf {
  readonly key: string;
  readonly person: string;
  readonly microphone: string;
  readonly phrases: readonly string[];
}

const HEAD = 'followrest ear';
const NOBODY = 'nobody named';

/** All of it belongs to one microphone, since each colours sound in its own way; a voice also to one person. */
export function earStore(shelf: Shelf, microphone: string, person: string): EarStore {
  const key = (what: string) => JSON.stringify([HEAD, what, microphone]);
  const voiceKey = JSON.stringify([HEAD, 'voice', microphone, person.trim() || NOBODY]);
  return {
    get channel() {
      return shelf.get(key('channel')) ?? undefined;
    },
    get room() {
      return read<KeptRoom>(shelf, key('room'));
    },
    get voice() {
      return read<KeptVoice>(shelf, voiceKey);
    },
    voiceKey,
    keepChannel: (channel) => shelf.set(key('channel'), channel),
    keepRoom: (room) => shelf.set(key('room'), JSON.stringify(room)),
    keepVoice(voice) {
      if (Object.keys(voice.patterns).length === 0) shelf.remove(voiceKey);
      else shelf.set(voiceKey, JSON.stringify(voice));
    },
    forgetVoice: () => shelf.remove(voiceKey),
  };
}

/** The voices on this device, of whatever microphone. */
export function voicesOn(shelf: Shelf): readonly VoiceOnShelf[] {
  return shelf.keys().flatMap((key) => {
    const [head, what, microphone, person] = partsOf(key);
    const voice = read<KeptVoice>(shelf, key);
    if (head !== HEAD || what !== 'voice' || !microphone || !person || !voice) return [];
    return [{ key, person, microphone, phrases: Object.keys(voice.patterns) }];
  });
}

function partsOf(key: string): readonly string[] {
  const parts = parsed(key);
  return Array.isArray(parts) ? parts.map(String) : [];
}

/** Only the outside is looked at here: the engine drops what does not fit. */
function read<T extends { readonly version: 1 }>(shelf: Shelf, key: string): T | undefined {
  const value = parsed(shelf.get(key) ?? '') as Partial<KeptVoice & KeptRoom> | undefined;
  if (value?.version !== 1) return undefined;
  const isWhole = typeof value.patterns === 'object' || typeof value.decibels === 'number';
  return isWhole ? (value as unknown as T) : undefined;
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}

/** The browser's own store. Private windows may refuse it; then nothing is kept. */
export function browserShelf(): Shelf {
  const attempt = <T>(call: () => T): T | undefined => {
    try {
      return call();
    } catch {
      return undefined;
    }
  };
  return {
    get: (key) => attempt(() => localStorage.getItem(key)) ?? null,
    set: (key, value) => void attempt(() => localStorage.setItem(key, value)),
    remove: (key) => void attempt(() => localStorage.removeItem(key)),
    keys: () => attempt(() => Object.keys(localStorage)) ?? [],
  };
}
