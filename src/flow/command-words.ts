/** The words that always mean the same, in every flow and on every machine: which there are, in the language of the flow. */

import { commandTexts, type Language, tableIn } from '../texts/index.ts';

/** Questions that change nothing in the chart: the bench answers them. */
export const askIds = [
  'repeat',
  'why',
  'whyThat',
  'where',
  'words',
  'speed',
  'feed',
  'depth',
  'left',
  'trouble',
] as const;
export type Ask = (typeof askIds)[number];

export type MoveId = 'next' | 'carry-on' | 'back' | 'hold' | 'stop';

/** Answers to a number that was read back; "wrong" also takes the last word back. */
export type AnswerId = 'correct' | 'keep' | 'wrong';

/** How much is told: a pace by name, or less or more of it. */
export const paceIds = ['first-time', 'familiar', 'own-pace', 'shorter', 'longer'] as const;

export type CommandId = keyof (typeof commandTexts)['texts'];

/** What may be said for a command; the first is the one that is shown. */
export function commandPhrases(language: Language, id: CommandId): readonly string[] {
  return tableIn(language, commandTexts)[id];
}

/** The word that is shown and told for a command. */
export function commandWord(language: Language, id: CommandId): string {
  return commandPhrases(language, id)[0] ?? id;
}

const reserved: readonly CommandId[] = [
  ...askIds,
  ...(['next', 'carry-on', 'back', 'hold', 'stop'] as const),
  ...(['correct', 'keep', 'wrong'] as const),
  ...paceIds,
  'bare',
];

/** Words that no fact, choice or walk may use for itself. */
export function commandWords(language: Language): ReadonlySet<string> {
  return new Set(reserved.flatMap((id) => commandPhrases(language, id)));
}

/** A command by its English word, as keys and buttons name it, in the words of the language; any other word as it is. */
export function commandSaid(language: Language, word: string): string {
  if (!language.spoken) return word;
  const small = word.toLowerCase();
  const all = Object.entries<readonly string[]>(commandTexts.texts);
  const [id] = all.find(([, phrases]) => phrases[0] === small) ?? [];
  return id === undefined ? word : commandWord(language, id as CommandId);
}
