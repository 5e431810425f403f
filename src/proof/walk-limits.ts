/** Why a walk ends before it is done. */

import { englishLanguage, type Worded, wordedIn } from '../texts/index.ts';

/** Thrown when the walk was stopped from outside. */
export class Cancelled extends Error {}

/** Thrown where nothing may be concluded; told in the language of the flow, its own `message` is English. */
export class NoVerdict extends Error {
  constructor(readonly said: Worded) {
    super(wordedIn(englishLanguage, said));
  }
}

/** It would need more room than it may have; the sentence is the limit. */
export class TooLarge extends NoVerdict {}

/** Something was looked at that no variable stands for. */
export class Unseeable extends NoVerdict {}
