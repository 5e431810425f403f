/** One key for each fact of a machine kind, the same through the whole run, so that a hand can learn it. Pure. */

/** Letters that command, and letters that ask. No fact may have them. */
export const COMMAND_KEYS = {
  n: 'next',
  r: 'repeat',
  w: 'why',
  b: 'back',
  h: 'hold',
  s: 'stop',
} as const;
export const ASK_KEYS = {
  i: 'where am i',
  p: 'speed',
  f: 'feed',
  d: 'depth',
  l: 'how much is left',
  '=': 'why that',
  '?': 'what can i say',
} as const;
export const ANSWER_KEYS = { c: 'correct', x: 'wrong', k: 'keep' } as const;

/** Whoever presses it means a bare yes, which answers nothing where harm is possible. */
const NEVER = ['y'];

const TAKEN = new Set([
  ...NEVER,
  ...Object.keys(COMMAND_KEYS),
  ...Object.keys(ASK_KEYS),
  ...Object.keys(ANSWER_KEYS),
]);
const FREE = [...'abcdefghijklmnopqrstuvwxyz'].filter((letter) => !TAKEN.has(letter));
/** For kinds with more facts than letters; keys that no browser needs. */
const SPARE = ['F2', 'F4', 'F8', 'F9', 'F10', '*', ';', '#'];

interface Named {
  readonly id: string;
  readonly label: string;
}

/** Fact id → key. A letter of its own label where one is free, else any that is left. */
export function factKeys(facts: readonly Named[]): ReadonlyMap<string, string> {
  const keys = new Map<string, string>();
  const free = new Set([...FREE, ...SPARE]);
  const give = (fact: Named, key: string | undefined) => {
    if (key === undefined || keys.has(fact.id)) return;
    keys.set(fact.id, key);
    free.delete(key);
  };
  for (const fact of facts) {
    give(
      fact,
      [...fact.label.toLowerCase()].find((letter) => free.has(letter)),
    );
  }
  for (const fact of facts) give(fact, [...free][0]);
  return keys;
}

/** As it is printed on a button. */
export function shownKey(key: string): string {
  return key.length === 1 ? key.toUpperCase() : key;
}
