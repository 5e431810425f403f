/** Counts what the offline ear makes of many utterances in a made shop. */
import type { ListenFor, NumberWanted } from '../../src/bench/ports.ts';
import type { Pronunciations } from '../../src/voice/shared/index.ts';
import { readNumber } from '../../src/words/index.ts';
import { speech, type VoiceName } from './made-speech.ts';
import { NOISES, type Noise, ShopEar } from './shop-ear.ts';

export interface Count {
  said: number;
  right: number;
  /** Something else that counts was heard: the worst that can happen. */
  wrong: number;
  readonly mistakes: string[];
}

export interface Trial {
  readonly voices: readonly VoiceName[];
  readonly snr: number | null;
  readonly lists: readonly ListenFor[];
  readonly numbers: readonly (readonly [text: string, wanted: NumberWanted])[];
  /** How often the person says each phrase beforehand, with the noise on. */
  readonly enrolments: number;
}

export interface Outcome {
  readonly commands: Count;
  readonly numbers: Count;
  readonly byNoise: ReadonlyMap<Noise, Count>;
}

const zero = (): Count => ({ said: 0, right: 0, wrong: 0, mistakes: [] });

/** Words around numbers: a reading is asked for while these count too. */
const AROUND_NUMBERS = ['next', 'repeat', 'hold', 'stop', 'where am i'];
/** What is said before counting begins, so that the ear knows the room and the microphone. */
const WARM_UP = ['repeat', 'where am i', 'what can i say'];

/** Each voice goes through every list in every kind of noise, each phrase in one of them. */
export async function tryEar(
  dictionary: Pronunciations,
  talk: readonly Int16Array[],
  trial: Trial,
): Promise<Outcome> {
  const commands = zero();
  const numbers = zero();
  const byNoise = new Map(NOISES.map((noise) => [noise, zero()]));
  for (const [v, voice] of trial.voices.entries()) {
    for (const [n, noise] of NOISES.entries()) {
      const ear = await ShopEar.open(dictionary, { noise, snr: trial.snr }, talk);
      const mine = <T>(all: readonly T[]) => all.filter((_, i) => (i + v) % NOISES.length === n);
      await warmUp(ear, voice);
      for (const list of trial.lists) {
        ear.listenFor(list);
        for (const phrase of mine(list.phrases)) {
          await enrol(ear, voice, list, trial.enrolments);
          const heard = ear.hears(await speech(voice, phrase), seedOf(phrase, voice));
          for (const count of [commands, byNoise.get(noise) ?? zero()]) {
            score(count, `${voice} ${noise}: ${phrase}`, heard, (text) => text === phrase);
          }
        }
      }
      for (const [text, number] of mine(trial.numbers)) {
        ear.listenFor({ phrases: AROUND_NUMBERS, number });
        const value = (words: string) => readNumber(words, number)[0]?.value;
        const heard = ear.hears(await speech(voice, text), seedOf(text, voice));
        score(
          numbers,
          `${voice} ${noise}: ${text}`,
          heard,
          (words) => value(words) === value(text),
        );
      }
    }
  }
  return { commands, numbers, byNoise };
}

async function warmUp(ear: ShopEar, voice: VoiceName): Promise<void> {
  ear.listenFor({ phrases: WARM_UP });
  for (const phrase of WARM_UP) ear.hears(await speech(voice, phrase), seedOf(phrase, voice));
}

const enrolled = new WeakMap<ShopEar, Set<string>>();

/** At other speeds than the word to be heard, since nobody says a word twice alike. */
async function enrol(ear: ShopEar, voice: VoiceName, list: ListenFor, times: number) {
  const known = enrolled.get(ear) ?? new Set<string>();
  enrolled.set(ear, known);
  for (const phrase of list.phrases) {
    if (known.has(phrase)) continue;
    known.add(phrase);
    for (let i = 0; i < times; i++) {
      const sound = await speech(atOtherSpeed(voice, i), phrase);
      ear.enrols(phrase, sound, seedOf(phrase, voice) + 100 + i);
    }
  }
}

function atOtherSpeed(voice: VoiceName, i: number): VoiceName {
  const faster = [1.12, 0.9, 1.05][i % 3] ?? 1;
  const [engine, name] = voice.split(':');
  if (engine === 'flite') return `flite:${name}:${faster}`;
  return `espeak:${name}:${Math.round(150 * faster)}`;
}

function score(
  count: Count,
  said: string,
  heard: readonly (string | null)[],
  isRight: (text: string) => boolean,
): void {
  const words = heard.filter((text) => text !== null);
  count.said++;
  if (words.length > 0 && words.every(isRight)) count.right++;
  else if (words.length > 0) {
    count.wrong++;
    count.mistakes.push(`${said} > ${words.join(' + ')}`);
  }
}

function seedOf(text: string, voice: string): number {
  let seed = 7;
  for (const letter of text + voice) seed = (Math.imul(seed, 31) + letter.charCodeAt(0)) | 0;
  return seed >>> 0;
}
