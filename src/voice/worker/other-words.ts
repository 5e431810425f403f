/**
 * Words of everyday talk that nobody listens for: rivals of the said list. What sounds more like one of these
 * than like a word of ours was not said to us. The words are ours, picked so that every vowel and most
 * consonants stand at a beginning once.
 */
import { rowDistance } from '../shared/confusable.ts';

const WORDS =
  'coffee table number other morning window hammer water money people little about under after before never always maybe something nothing brother saturday match light garden weekend look give take good well who there here this that the and but come put fine yes okay right left two four six seven eight nine twenty thirty forty fifty monday yesterday question answer picture music weather lunch'.split(
    ' ',
  );
const TALK =
  'thank you|come here|look at that|i think so|you know|i see|all right|see you|not yet|of course|let me see|what was that|give me that|in a minute|later on|that one|the other one|good morning'.split(
    '|',
  );
/** Said to anything, and in a quick voice "next" is found in it: never left out. */
const ANSWER = 'yes';
/** Nearer to a phrase of ours than this (0 the same, 1 nothing in common), a word would steal it. */
const TOO_NEAR = { word: 0.5, talk: 0.3 };

/** Those of the words that are far enough from every phrase. */
export function otherWords(
  phrases: readonly string[],
  waysOf: (word: string) => readonly string[],
): readonly string[] {
  const ours = new Set(phrases.flatMap((phrase) => phrase.split(' ')));
  const short = phrases.map((phrase) => phonesOf(phrase, waysOf)).filter((row) => row.length <= 8);
  return [...WORDS, ...TALK].filter((word) => {
    const row = phonesOf(word, waysOf);
    if (row.length === 0 || ours.has(word) || phrases.includes(word)) return false;
    if (word === ANSWER) return true;
    const near = word.includes(' ') ? TOO_NEAR.talk : TOO_NEAR.word;
    return short.every((own) => rowDistance(row, own) > near);
  });
}

function phonesOf(phrase: string, waysOf: (word: string) => readonly string[]): readonly string[] {
  return phrase.split(' ').flatMap((word) => waysOf(word)[0]?.split(' ') ?? []);
}
