/** A fault found in a file: where it stands, what was wrong, and the next move. */

import { englishLanguage, type Language, type Worded, wordedIn } from '../texts/index.ts';

export type Path = readonly (string | number)[];

export interface Fault {
  /** The file the fault is in, when more than one is read. */
  readonly file: string;
  /** JSON path from the root: "$.steps[3].needs.guard". */
  readonly path: string;
  /** Both count from 1; 0 where there is no text to point into. */
  readonly line: number;
  readonly column: number;
  /** One sentence: what came, what was allowed, and a near name where there is one. */
  readonly message: string;
  /** The same with its values apart, so that another language can tell it. */
  readonly worded?: Worded;
}

/** The two forms of what a fault says. */
export function saying(worded: Worded): Pick<Fault, 'message' | 'worded'> {
  const message = wordedIn(englishLanguage, worded);
  return typeof worded === 'string' ? { message } : { message, worded };
}

/** What a fault says, in a language; in English where the language has no words for it. */
export function faultMessage({ message, worded = message }: Fault, language: Language): string {
  return wordedIn(language, worded);
}

/** "$.steps[3].id" from ["steps", 3, "id"]; keys that are no plain words are quoted. */
export function pathText(path: Path): string {
  return `$${path.map(partText).join('')}`;
}

function partText(part: string | number): string {
  if (typeof part === 'number') return `[${part}]`;
  return /^[A-Za-z_][\w]*$/.test(part) ? `.${part}` : `[${JSON.stringify(part)}]`;
}

/** One line for people: "gate-hinge-pin.json:12:5 $.steps[3].next — Step … goes to …". */
export function faultText(fault: Fault): string {
  return faultTextIn(englishLanguage)(fault);
}

/** The same in a language. */
export function faultTextIn(language: Language): (fault: Fault) => string {
  return (fault) => {
    const place = fault.line > 0 ? `:${fault.line}:${fault.column}` : '';
    return `${fault.file}${place} ${fault.path} — ${faultMessage(fault, language)}`;
  };
}
