/** Which word is said next when a voice is learnt, and how far one has come. Pure. */

/** Twice is enough to have a say; a third time adds little (measured with made voices). */
export const takesWanted = 2;

export interface Lesson {
  readonly words: readonly string[];
  /** Word → how often it was learnt. */
  readonly known: Readonly<Record<string, number>>;
}

/** The first word after `word` that is not known well enough; from the start again at the end. Null when all are. */
export function nextWord({ words, known }: Lesson, word: string | null): string | null {
  const from = word === null ? 0 : words.indexOf(word) + 1;
  const inOrder = [...words.slice(from), ...words.slice(0, from)];
  return inOrder.find((one) => (known[one] ?? 0) < takesWanted) ?? null;
}

/** The same word until it was learnt often enough, then the next. */
export function wordAfter(lesson: Lesson, word: string): string | null {
  return (lesson.known[word] ?? 0) < takesWanted ? word : nextWord(lesson, word);
}

export function learnt({ words, known }: Lesson): number {
  return words.filter((word) => (known[word] ?? 0) >= takesWanted).length;
}
