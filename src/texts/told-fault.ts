/** A fault that is told to a person: its sentence waits until one knows in which language. */

import { englishLanguage, type Language } from './language.ts';

export class ToldFault extends Error {
  /** Its own `message` is English, for the console and for tests. */
  constructor(
    readonly told: (language: Language) => string,
    cause?: unknown,
  ) {
    super(told(englishLanguage), cause === undefined ? {} : { cause });
  }
}

/** What went wrong, in one sentence; what others threw is told as they wrote it. */
export function sentenceOf(error: unknown, language: Language): string {
  if (error instanceof ToldFault) return error.told(language);
  return error instanceof Error ? error.message : String(error);
}
