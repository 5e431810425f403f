/** How near what was heard is to a phrase that may be said, word by word and sound by sound. */
import { denies } from './plain-text.ts';
import { soundAlike, startsAlike } from './sound-alike.ts';

/** A phrase in force, in plain words. */
export interface PlainPhrase {
  readonly words: readonly string[];
  readonly group: string;
}

/** For each word in force, the groups whose phrases hold it. */
export type WordGroups = ReadonlyMap<string, ReadonlySet<string>>;

/** A word must sound at least this much like the one it is taken for; a phrase of one word, more. */
const LEAST_ALIKE = 0.6;
const LEAST_ALIKE_ALONE = 0.78;
/** How much nearer a word must sound to its own group than to any other. */
const CLEAR_OF_OTHERS = 0.2;
/** Only phrases this long may lose a word and still be known. */
const MAY_LOSE_A_WORD = 4;

export function groupsOfWords(phrases: readonly PlainPhrase[]): WordGroups {
  const groups = new Map<string, Set<string>>();
  for (const { group, words } of phrases) {
    for (const word of words) groups.set(word, (groups.get(word) ?? new Set()).add(group));
  }
  return groups;
}

/** Words that deny, in order: what is heard and what is taken must deny alike. */
export function denials(words: readonly string[]): string {
  return words.filter(denies).sort().join(' ');
}

/** Does the word sound nearly as much like a word of another group? Then it stands for neither. */
function pulledAway(word: string, alike: number, group: string, groups: WordGroups): boolean {
  for (const [other, its] of groups) {
    if (!its.has(group) && alike - soundAlike(word, other) < CLEAR_OF_OTHERS) return true;
  }
  return false;
}

/** How well `word` may stand for `wanted`, 0 when it may not. Words in force never stand for each other. */
function standsFor(
  word: string,
  wanted: string,
  alone: boolean,
  group: string,
  groups: WordGroups,
): number {
  if (word === wanted) return 1;
  if (groups.has(word) || denies(word) || denies(wanted)) return 0;
  const alike = soundAlike(word, wanted);
  if (alike < (alone ? LEAST_ALIKE_ALONE : LEAST_ALIKE)) return 0;
  if (alone && !startsAlike(word, wanted)) return 0;
  return pulledAway(word, alike, group, groups) ? 0 : alike;
}

/** The mean likeness of the words, with one wanted word left out (or none, -1). 0 when any pair may not stand. */
function likeness(
  words: readonly string[],
  phrase: PlainPhrase,
  leftOut: number,
  groups: WordGroups,
): number {
  const alone = phrase.words.length === 1;
  let sum = 0;
  for (const [at, wanted] of phrase.words.filter((_, place) => place !== leftOut).entries()) {
    const stands = standsFor(words[at] ?? '', wanted, alone, phrase.group, groups);
    if (stands === 0) return 0;
    sum += stands;
  }
  return sum / phrase.words.length;
}

/**
 * How near the words are to the phrase, 0 to 1: as many words in the same order, or one lost from a phrase of four
 * or more. Words too many are other people's talk and are never near.
 */
export function nearness(
  words: readonly string[],
  phrase: PlainPhrase,
  groups: WordGroups,
): number {
  const wanted = phrase.words;
  const lost = wanted.length - words.length;
  if (lost < 0 || lost > 1 || (lost === 1 && wanted.length < MAY_LOSE_A_WORD)) return 0;
  if (denials(words) !== denials(wanted)) return 0;
  const leaveOut = lost === 0 ? [-1] : wanted.map((_, at) => at);
  return Math.max(...leaveOut.map((at) => likeness(words, phrase, at, groups)));
}
