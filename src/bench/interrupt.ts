/** The words that may break into what the mouth says. Pure. */

import { normalise } from '../words/index.ts';
import type { RunState } from './run-state.ts';
import { alwaysFirst } from './said-now.ts';

/**
 * "Stop" and "hold", where they count now; never one that the line itself says or begins a word with, since the
 * microphone hears the line as well. Cutting a line short is all that such a word can spoil: both only make the job wait.
 */
export function interrupts(state: RunState, line: string): readonly string[] {
  const sounding = normalise(line).split(' ');
  return alwaysFirst(state)
    .flatMap(({ phrases }) => phrases)
    .filter((phrase) => !phrase.split(' ').some((word) => isBegun(word, sounding)));
}

function isBegun(word: string, sounding: readonly string[]): boolean {
  return sounding.some((said) => said.startsWith(word));
}
