/** Counts what the offline ear makes of many utterances in a made shop, before and after enrolment. */
import { listenFor } from '../../src/bench/index.ts';
import type { ListenFor, NumberWanted } from '../../src/bench/ports.ts';
import type { Pronunciations } from '../../src/voice/shared/index.ts';
import { readNumber } from '../../src/words/index.ts';
import { begun, hears, toBar } from '../bench/scripted.ts';
import { speech, type VoiceName } from './made-speech.ts';
import { type Noise, ShopEar } from './shop-ear.ts';

export interface Count {
  said: number;
  right: number;
  /** Something else that counts was heard: the worst that can happen. */
  wrong: number;
  readonly mistakes: string[];
}

export const zero = (): Count => ({ said: 0, right: 0, wrong: 0, mistakes: [] });

export function added(counts: readonly Count[]): Count {
  return {
    said: counts.reduce((sum, count) => sum + count.said, 0),
    right: counts.reduce((sum, count) => sum + count.right, 0),
    wrong: counts.reduce((sum, count) => sum + count.wrong, 0),
    mistakes: counts.flatMap((count) => count.mistakes),
  };
}

export interface Place {
  readonly voice: VoiceName;
  readonly noise: Noise;
  /** Decibels of speech over noise; null in a quiet room. */
  readonly snr: number | null;
}

export interface Trial extends Place {
  /** All that counts, of which `phrases` are said. */
  readonly list: ListenFor;
  readonly phrases: readonly string[];
  /** What counts once a lead word has opened it: of these `phrases` stand there alone. */
  readonly behind?: ListenFor;
  /** How often each of them is said beforehand, with the noise on. */
  readonly enrolments: number;
  readonly numbers: readonly (readonly [text: string, wanted: NumberWanted])[];
}

export interface Outcome extends Place {
  readonly before: Count;
  readonly after: Count;
  readonly numbers: Count;
  /** "Wrong" said to a wrong number that was read back, and taken for "correct". */
  readonly keptWrong: number;
}

/** What counts while the bar is measured in the shipped flow, and while its size is read back. */
const measuring = hears(begun(), ...toBar);
const aroundNumbers = listenFor(measuring.state);
const { number: _size, ...readBack } = listenFor(hears(measuring, '25').state);
/** What is said before counting begins, so that the ear knows the room and the microphone. */
const WARM_UP = ['repeat', 'where am i', 'what can i say'];

/** One person at one machine with one ear: the words, then enrolment, the words again, then numbers. */
export async function tryEar(
  dictionary: Pronunciations,
  talk: readonly Int16Array[],
  trial: Trial,
): Promise<Outcome> {
  const { voice, noise, snr, list, behind } = trial;
  const ear = await ShopEar.open(dictionary, { noise, snr }, talk);
  const before = zero();
  const after = zero();
  const say = async (text: string) => ear.hears(await speech(voice, text), seedOf(text + voice));
  ear.listenFor({ phrases: WARM_UP });
  for (const phrase of WARM_UP) await say(phrase);
  const sayAll = async (count: Count) => {
    for (const phrase of trial.phrases) {
      ear.listenFor(behind && !list.phrases.includes(phrase) ? behind : list);
      score(count, `${voice} ${noise}: ${phrase}`, await say(phrase), (text) => text === phrase);
    }
  };
  await sayAll(before);
  if (trial.enrolments > 0) {
    await enrol(ear, trial);
    await sayAll(after);
  }
  const { numbers, keptWrong } = await sayNumbers(ear, trial);
  ear.close();
  return { voice, noise, snr, before, after, numbers, keptWrong };
}

async function sayNumbers(ear: ShopEar, { voice, noise, numbers: wanted }: Trial) {
  const numbers = zero();
  let keptWrong = 0;
  for (const [text, number] of wanted) {
    ear.listenFor({ ...aroundNumbers, number });
    // "No, twenty-five" is twenty-five.
    const value = (words: string) =>
      readNumber(words.replace(/^(no|wrong) /, ''), number)[0]?.value;
    const heard = ear.hears(await speech(voice, text), seedOf(text + voice));
    const wrongBefore = numbers.wrong;
    score(numbers, `${voice} ${noise}: ${text}`, heard, (words) => value(words) === value(text));
    if (numbers.wrong === wrongBefore) continue;
    ear.listenFor(readBack);
    const answer = ear.hears(await speech(voice, 'no wrong'), seedOf(`${text} no`));
    if (answer.some((words) => words?.includes('correct'))) keptWrong++;
  }
  return { numbers, keptWrong };
}

/** At other speeds than the word to be heard, since nobody says a word twice alike. */
async function enrol(ear: ShopEar, { voice, phrases, enrolments }: Trial) {
  for (const phrase of phrases) {
    for (let i = 0; i < enrolments; i++) {
      ear.enrols(
        phrase,
        await speech(atOtherSpeed(voice, i), phrase),
        seedOf(phrase + voice) + 100 + i,
      );
    }
  }
}

export function atOtherSpeed(voice: VoiceName, i: number): VoiceName {
  const faster = [1.12, 0.9, 1.05][i % 3] ?? 1;
  const [engine, name] = voice.split(':');
  if (engine === 'flite') return `flite:${name}:${faster}`;
  return `espeak:${name}:${Math.round(150 * faster)}`;
}

export function score(
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

export function seedOf(text: string): number {
  let seed = 7;
  for (const letter of text) seed = (Math.imul(seed, 31) + letter.charCodeAt(0)) | 0;
  return seed >>> 0;
}
