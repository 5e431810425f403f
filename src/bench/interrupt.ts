/** The words that may break into what the mouth says. Pure. */

import { normalise } from '../words/index.ts';
import type { Meanwhile } from './ports.ts';
import type { RunState } from './run-state.ts';
import { alwaysFirst } from './said-now.ts';

/** Before the first line. */
export const silent: Meanwhile = { line: '', still: [] };

/**
 * "Stop" and "hold", where they count now; never one that the line itself says or begins a word with, since the
 * microphone hears the line as well. Cutting a line short is all that such a word can spoil: both only make the job wait.
 */
export function interrupts(state: RunState, line: string): Meanwhile {
  const sounding = normalise(line).split(' ');
  const still = alwaysFirst(state)
    .flatMap(({ phrases }) => phrases)
    .filter((phrase) => !phrase.split(' ').some((word) => isBegun(word, sounding)));
  return { line, still };
}

function isBegun(word: string, sounding: readonly string[]): boolean {
  return sounding.some((said) => said.startsWith(word));
}

/** Whether what was heard is one of the words that may break in. */
export function breaksIn({ still }: Meanwhile, text: string): boolean {
  return still.includes(normalise(text));
}
