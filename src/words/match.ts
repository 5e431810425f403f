/** What was heard, held against what may be said now. */
import { wordsOfInteger } from './integer-words.ts';
import { denies, normalise, withoutEdges } from './plain-text.ts';
import { soundAlike } from './sound-alike.ts';

export interface Sayable {
  readonly id: string;
  readonly phrases: readonly string[];
  /** Words with one kind of consequence. A word is never taken for one of another group. */
  readonly group: string;
  /** A hazard gate: only one of its phrases, word for word, counts. */
  readonly strict?: boolean;
}

export type Match =
  | {
      readonly kind: 'one';
      readonly id: string;
      /** As the sayable writes it. */
      readonly phrase: string;
      /** 1 for word for word in the likeliest text; lower for other texts and for near sounds. */
      readonly sure: number;
    }
  | { readonly kind: 'several'; readonly ids: readonly string[] }
  | { readonly kind: 'none' };

interface Candidate {
  readonly sayable: Sayable;
  readonly phrase: string;
  readonly sure: number;
}

interface Phrase {
  readonly sayable: Sayable;
  readonly phrase: string;
  readonly words: readonly string[];
}

const NONE: Match = { kind: 'none' };
/** Each text further down the ear's list is this much less sure. */
const STEP_DOWN = 0.06;
/** Two candidates nearer than this are a tie, and the person is asked. */
const TIE = 0.12;
const LEAST_SURE = 0.72;
/** A word must sound at least this much like the one it is taken for; a phrase of one word, more. */
const LEAST_ALIKE = 0.6;
const LEAST_ALIKE_ALONE = 0.78;
/** How much nearer a word must sound to its own group than to any other. */
const CLEAR_OF_OTHERS = 0.2;

function plainWords(text: string): readonly string[] {
  const words = normalise(text)
    .split(' ')
    .flatMap((word) =>
      /^\d{1,4}$/.test(word) ? wordsOfInteger(Number(word)).split(/[ -]/) : [word],
    );
  return withoutEdges(words.filter((word) => word !== ''));
}

function same(a: readonly string[], b: readonly string[]): boolean {
  return a.length === b.length && a.every((word, at) => word === b[at]);
}

function allPhrases(sayables: readonly Sayable[]): Phrase[] {
  return sayables.flatMap((sayable) =>
    sayable.phrases.map((phrase) => ({ sayable, phrase, words: plainWords(phrase) })),
  );
}

/** Words that deny, sorted: what is heard and what is taken must deny alike. */
function denials(words: readonly string[]): string {
  return words.filter(denies).sort().join(' ');
}

function decided(candidates: readonly Candidate[]): Match {
  const best = new Map<string, Candidate>();
  for (const candidate of candidates) {
    const before = best.get(candidate.sayable.id);
    if (before === undefined || before.sure < candidate.sure)
      best.set(candidate.sayable.id, candidate);
  }
  const ranked = [...best.values()].sort((a, b) => b.sure - a.sure);
  const [first, ...others] = ranked;
  if (first === undefined) return NONE;
  const tied = others.filter((other) => first.sure - other.sure < TIE);
  if (tied.length > 0) return { kind: 'several', ids: [first, ...tied].map((c) => c.sayable.id) };
  return { kind: 'one', id: first.sayable.id, phrase: first.phrase, sure: first.sure };
}

/** Word for word. A strict phrase counts only in the likeliest text, and only if no text denies it. */
function exactly(heard: readonly (readonly string[])[], phrases: readonly Phrase[]): Candidate[] {
  return heard.flatMap((words, at) =>
    phrases
      .filter((phrase) => same(words, phrase.words))
      .filter((phrase) => !phrase.sayable.strict || (at === 0 && !anyDenies(heard, phrase)))
      .map(({ sayable, phrase }) => ({ sayable, phrase, sure: 1 - at * STEP_DOWN })),
  );
}

function anyDenies(heard: readonly (readonly string[])[], phrase: Phrase): boolean {
  const own = denials(phrase.words);
  return heard.some((words) => denials(words) !== own);
}

/** For each word in force, the groups whose phrases hold it. */
function groupsOfWords(phrases: readonly Phrase[]): ReadonlyMap<string, ReadonlySet<string>> {
  const groups = new Map<string, Set<string>>();
  for (const { sayable, words } of phrases) {
    for (const word of words) groups.set(word, (groups.get(word) ?? new Set()).add(sayable.group));
  }
  return groups;
}

/** How well `word` may stand for `wanted`: 0 when it may not. Words in force never stand for each other. */
function mayStandFor(
  word: string,
  wanted: string,
  group: string,
  alone: boolean,
  groups: ReadonlyMap<string, ReadonlySet<string>>,
): number {
  if (word === wanted) return 1;
  if (groups.has(word) || denies(word) || denies(wanted)) return 0;
  const alike = soundAlike(word, wanted);
  if (alike < (alone ? LEAST_ALIKE_ALONE : LEAST_ALIKE)) return 0;
  for (const [other, its] of groups) {
    if (!its.has(group) && alike - soundAlike(word, other) < CLEAR_OF_OTHERS) return 0;
  }
  return alike;
}

/**
 * How sure the words are the phrase, 0 to 1: the same number of words in the same order, or one small word lost
 * from a phrase of four or more. Words too many are other people's talk and never match.
 */
function nearness(
  words: readonly string[],
  phrase: Phrase,
  groups: ReadonlyMap<string, ReadonlySet<string>>,
): number {
  const wanted = phrase.words;
  const lost = wanted.length - words.length;
  if (lost < 0 || lost > 1 || (lost === 1 && wanted.length < 4)) return 0;
  if (denials(words) !== denials(wanted)) return 0;
  const skips = lost === 0 ? [-1] : wanted.map((_, at) => at);
  return Math.max(
    ...skips.map((skip) => alignment(words, wanted, skip, phrase.sayable.group, groups)),
  );
}

function alignment(
  words: readonly string[],
  wanted: readonly string[],
  skip: number,
  group: string,
  groups: ReadonlyMap<string, ReadonlySet<string>>,
): number {
  const kept = wanted.filter((_, at) => at !== skip);
  let sum = 0;
  for (const [at, want] of kept.entries()) {
    const stands = mayStandFor(words[at] ?? '', want, group, wanted.length === 1, groups);
    if (stands === 0) return 0;
    sum += stands;
  }
  return sum / wanted.length;
}

function nearly(heard: readonly (readonly string[])[], phrases: readonly Phrase[]): Candidate[] {
  const groups = groupsOfWords(phrases);
  return heard.flatMap((words, at) =>
    phrases
      .map(({ sayable, phrase, words: wanted }) => ({
        sayable,
        phrase,
        sure: nearness(words, { sayable, phrase, words: wanted }, groups) - at * STEP_DOWN - 0.02,
      }))
      .filter((candidate) => candidate.sure >= LEAST_SURE),
  );
}

/**
 * Which of the sayables was said, if any. `texts` are the ear's readings of one sound, likeliest first.
 * Word for word comes first (in the likeliest text it settles the matter); then near sounds, for sayables that are
 * not strict. A near tie is `several`. A phrase inside a longer sentence, or one that is denied, is never taken.
 */
export function matchHeard(texts: readonly string[], sayables: readonly Sayable[]): Match {
  const heard = texts.map(plainWords).filter((words) => words.length > 0);
  const [likeliest] = heard;
  if (likeliest === undefined) return NONE;
  const phrases = allPhrases(sayables);
  const settled = exactly([likeliest], phrases);
  const whole = exactly(heard, phrases);
  if (settled.length > 0) {
    const ofLikeliest = whole.filter((candidate) => candidate.sure === 1);
    return decided(ofLikeliest);
  }
  const candidates = [...whole, ...nearly(heard, phrases)];
  // A strict phrase takes part so that it can win and thereby refuse: near a gate's word is not the gate's word.
  const match = decided(candidates);
  const winner =
    match.kind === 'one' ? candidates.find((c) => c.sayable.id === match.id) : undefined;
  return winner?.sayable.strict === true ? NONE : match;
}
