/** Words put in a row for speech, and long lines cut where a speaker would breathe. */

import type { Language } from '../texts/index.ts';

/** ["guard", "chuck key", "work"] → "guard, chuck key and work". */
export function joinList(
  items: readonly string[],
  last: 'and' | 'or' = 'and',
  language?: Language,
): string {
  const word = language?.spoken?.[last] ?? last;
  const head = items.slice(0, -1);
  const end = items.at(-1) ?? '';
  return head.length === 0 ? end : `${head.join(', ')} ${word} ${end}`;
}

/** Where a line may be cut, best first: after a sentence, after a clause, before a joining word. */
const BREATHS: readonly RegExp[] = [
  /(?<=[.!?])\s+/,
  /(?<=[;:,–—])\s+/,
  /(?<!\band)\s+(?=(?:and then|then|but|or|because|so that|until|before|after|when|while)\s)/,
];

const SPACE = /\s+/;

/**
 * The line in pieces of at most `maxChars`, cut at sentences, then clauses, then joining words, and between words
 * only when nothing else helps; a number is not parted unless it is longer than a piece. A single word longer than
 * `maxChars` stays whole. Nothing is lost but the space at a cut.
 */
export function clauses(text: string, maxChars: number): string[] {
  const line = text.trim().replace(/\s+/g, ' ');
  return line === '' ? [] : cut(line, maxChars, [...BREATHS, NUMBER_EDGE, SPACE]);
}

const NUMBER_WORD =
  '(?:minus|plus|point|and|zero|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|\\w+teen|(?:twen|thir|for|fif|six|seven|eigh|nine)ty\\S*|hundred|thousand|millimetres?|inch(?:es)?|thou|microns?|degrees?|metres?|a|rev|minute)';
const NUMBER_EDGE = new RegExp(`(?<!\\b${NUMBER_WORD})\\s+|\\s+(?!${NUMBER_WORD}\\b)`);

function cut(line: string, maxChars: number, breaths: readonly RegExp[]): string[] {
  const [breath, ...finer] = breaths;
  if (line.length <= maxChars || breath === undefined) return [line];
  const parts = line.split(breath).flatMap((part) => cut(part, maxChars, finer));
  return packed(parts, maxChars);
}

/** Puts neighbours together again as long as they fit. */
function packed(parts: readonly string[], maxChars: number): string[] {
  const lines: string[] = [];
  for (const part of parts) {
    const before = lines.at(-1);
    if (before !== undefined && before.length + 1 + part.length <= maxChars) {
      lines[lines.length - 1] = `${before} ${part}`;
    } else lines.push(part);
  }
  return lines;
}
