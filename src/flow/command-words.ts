/** The words that always mean the same, in every flow and on every machine. */

/** Questions that change nothing in the chart: the bench answers them. */
export const asks = {
  repeat: ['repeat', 'say again'],
  why: ['why'],
  whyThat: ['why that', 'why that number'],
  where: ['where am i'],
  words: ['what can i say'],
  speed: ['speed', 'what speed'],
  feed: ['feed', 'what feed'],
  depth: ['depth', 'what depth'],
  left: ['how much is left'],
  trouble: ['trouble'],
} as const;
export type Ask = keyof typeof asks;

export const moves = {
  next: ['next'],
  'carry-on': ['carry on'],
  back: ['back', 'go back'],
  hold: ['hold'],
  stop: ['stop', 'stop stop'],
} as const;

/** Answers to a number that was read back; "wrong" also takes the last word back. */
export const answers = {
  correct: ['correct', 'yes correct'],
  keep: ['keep', 'keep it'],
  wrong: ['wrong', 'no wrong'],
} as const;

/** How much is told: a pace by name, or less or more of it. */
export const paceWords = {
  'first-time': ['first time'],
  familiar: ['familiar'],
  'own-pace': ['own pace'],
  shorter: ['shorter'],
  longer: ['longer'],
} as const;

/** Too bare to answer anything. */
const bareWords = ['yes', 'no'];

/** Words that no fact, choice or walk may use for itself. */
export const commandWords: ReadonlySet<string> = new Set([
  ...Object.values(asks).flat(),
  ...Object.values(moves).flat(),
  ...Object.values(answers).flat(),
  ...Object.values(paceWords).flat(),
  ...bareWords,
]);
