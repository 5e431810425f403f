/** "No, twenty-four point nine": a read-back denied and corrected in one breath. */
import type { Language, Spoken } from '../texts/index.ts';
import { normalise, withoutEdges } from './plain-text.ts';
import { plainIn } from './spoken-plain.ts';

const DENIALS =
  /^(?:(?:no|nope|know|wrong|sorry|correction|incorrect|not right|that's wrong|that isn't right|that's not right|not that|i mean|i meant|i said|make that|make it|it's|should be|it should be)\s+)+/;

/** A denial that is only a lead-in cannot stand alone at the head: "it's twenty" corrects nothing. */
const HEADS =
  /^(?:no|nope|know|wrong|sorry|correction|incorrect|not right|that's wrong|that isn't right|that's not right|not that|i mean|i meant)\b/;

/** The words that follow a leading denial, or null when there is no denial or nothing follows it. */
export function splitCorrection(
  text: string,
  language?: Language,
): { readonly rest: string } | null {
  if (language?.spoken) return splitIn(language.spoken, text);
  const plain = withoutEdges(normalise(text).split(' ')).join(' ');
  if (!HEADS.test(plain)) return null;
  const rest = plain.replace(DENIALS, '');
  return rest === plain || rest === '' || DENIALS.test(`${rest} `) ? null : { rest };
}

function splitIn(spoken: Spoken, text: string): { readonly rest: string } | null {
  const plain = plainIn(spoken, text);
  let rest = plain;
  for (let head = leadIn(spoken, rest); head !== undefined; head = leadIn(spoken, rest)) {
    rest = rest.slice(head.length + 1);
  }
  return rest === plain || rest === '' ? null : { rest };
}

function leadIn({ denials }: Spoken, text: string): string | undefined {
  return denials.find((head) => text.startsWith(`${head} `));
}
