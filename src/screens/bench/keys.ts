/** What a key means on the Bench. A foot switch is the space bar: alone it answers no gate and takes no reading. Pure. */

import { ANSWER_KEYS, ASK_KEYS, COMMAND_KEYS } from './fact-keys.ts';

export interface KeySituation {
  readonly held: boolean;
  /** A number may be typed now, in this unit. */
  readonly numberUnit: string | null;
  /** A number was read back and waits for its answer. */
  readonly waiting: boolean;
  readonly typed: string;
  /** Words of the shown choices, in their order: keys 1 to 9. */
  readonly choices: readonly string[];
  /** Key of a fact that is asked for now → the word that answers it. */
  readonly facts: ReadonlyMap<string, string>;
}

export type KeyMeaning =
  | { readonly kind: 'say'; readonly word: string }
  | { readonly kind: 'type'; readonly typed: string }
  /** What was typed is to be heard as a number. */
  | { readonly kind: 'take' }
  | null;

const LONGEST = 12;

export function meaningOfKey(key: string, now: KeySituation): KeyMeaning {
  if (key === 'Enter') return onward(now);
  if (key === ' ')
    return now.typed !== '' && now.numberUnit === 'in' ? type(now, ' ') : onward(now);
  if (now.numberUnit !== null) {
    const typing = meaningOfTyping(key, now);
    if (typing) return typing;
  }
  const choice = /^[1-9]$/.test(key) ? now.choices[Number(key) - 1] : undefined;
  if (choice !== undefined) return say(choice);
  const small = key.length === 1 ? key.toLowerCase() : key;
  const fact = now.facts.get(small);
  if (fact !== undefined) return say(fact);
  return meaningOfCommand(small, now);
}

function onward(now: KeySituation): KeyMeaning {
  if (now.typed !== '') return { kind: 'take' };
  if (now.waiting) return null;
  return say(now.held ? 'carry on' : 'next');
}

function meaningOfTyping(key: string, now: KeySituation): KeyMeaning {
  if (key === 'Backspace') return { kind: 'type', typed: now.typed.slice(0, -1) };
  if (key === 'Escape') return { kind: 'type', typed: '' };
  return /^[\d.,/-]$/.test(key) ? type(now, key === ',' ? '.' : key) : null;
}

/** A second point and a minus in the middle are slips of the finger. */
function type(now: KeySituation, sign: string): KeyMeaning {
  const { typed } = now;
  const slip =
    typed.length >= LONGEST ||
    (sign === '.' && typed.includes('.')) ||
    (sign === '-' && typed !== '') ||
    (sign === '/' && !/\d$/.test(typed));
  return { kind: 'type', typed: slip ? typed : typed + sign };
}

function meaningOfCommand(key: string, now: KeySituation): KeyMeaning {
  // As the space bar, but a size that is being typed is taken by Enter alone.
  if (key === 'n') return now.typed === '' ? onward(now) : null;
  if (key in COMMAND_KEYS) return say(COMMAND_KEYS[key as keyof typeof COMMAND_KEYS]);
  if (key in ASK_KEYS) return say(ASK_KEYS[key as keyof typeof ASK_KEYS]);
  if (!(key in ANSWER_KEYS)) return null;
  const answer = ANSWER_KEYS[key as keyof typeof ANSWER_KEYS];
  return now.waiting || answer === 'wrong' ? say(answer) : null;
}

function say(word: string): KeyMeaning {
  return { kind: 'say', word };
}
