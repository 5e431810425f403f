/** Says what is wrong with text that is no JSON, in words of somebody who writes it by hand. */

import { type Worded, worded } from '../texts/index.ts';

export interface Spot {
  readonly line: number;
  readonly column: number;
}

/** The sentence for text that a parser refused at `offset`. */
export function jsonSentence(text: string, offset: number): Worded {
  const sign = text[offset] ?? '';
  const before = text.slice(0, offset);
  const plain = before.trimEnd();
  const what =
    quoteFault(sign) ??
    escapeFault(text, offset) ??
    commaFault(sign, plain, plain !== before) ??
    wordFault(text, offset);
  return worded`This is not JSON yet. ${what}`;
}

function quoteFault(sign: string): Worded | undefined {
  if (sign === "'" || sign === '“' || sign === '”' || sign === '‘')
    return worded`Text stands in straight double quotes, "like this"; here is ${sign}.`;
  if (sign === '/' || sign === '#') return 'JSON has no comments: take the remark out.';
  return undefined;
}

function escapeFault(text: string, offset: number): Worded | undefined {
  if (/\\u[\da-f]{0,3}$/i.test(text.slice(0, offset))) return 'After \\u stand four digits.';
  if (text[offset] !== '\\') return undefined;
  return worded`"\\${text[offset + 1] ?? ''}" means nothing in JSON. For a backslash write two: "\\\\".`;
}

function commaFault(sign: string, before: string, gap: boolean): Worded | undefined {
  const last = before.at(-1) ?? '';
  if (sign === '}' || sign === ']') return closingFault(sign, last);
  if (sign === ',') return 'Nothing stands before this comma. Take it out.';
  if (!/["\w{[-]/.test(sign)) return undefined;
  if (last === '"') return 'A comma (or, after a key, a colon) is missing before this.';
  return /[}\]]/.test(last) || (gap && /[\w]/.test(last))
    ? 'A comma is missing before this.'
    : undefined;
}

function closingFault(sign: string, last: string): Worded | undefined {
  if (last === ',')
    return worded`A comma stands before this "${sign}" with nothing after it. Take the comma out.`;
  if (last === ':') return worded`A value is missing before this "${sign}".`;
  if (/[.e+-]/i.test(last)) return numberSentence;
  return worded`This "${sign}" closes nothing that is open here. Take it out, or open its pair.`;
}

const numberSentence = 'A number is written like 12, 0.5 or -3.';

function wordFault(text: string, offset: number): Worded {
  const sign = text[offset] ?? '';
  if (/[\d.+-]/.test(sign)) return numberSentence;
  const [word] = /^[\p{L}\w$]+/u.exec(text.slice(offset, offset + 60)) ?? [];
  if (word === undefined)
    return sign === '' ? 'It ends too early.' : worded`"${sign}" cannot stand here.`;
  return worded`Put "${word}" in double quotes, or write a number, true, false or null.`;
}

/** What brackets and quotes tell before anything is parsed. */
export type Brackets =
  | { readonly kind: 'fine' }
  | { readonly kind: 'deep' | 'newline'; readonly spot: Spot }
  /** Still open at `offset`, where its parent is closed or the text ends. */
  | { readonly kind: 'open'; readonly spot: Spot; readonly sign: string; readonly offset: number };

const pairs: Readonly<Record<string, string>> = { '{': '}', '[': ']', '"': '"' };

interface Opened {
  readonly sign: string;
  readonly spot: Spot;
}

/** Counts brackets without recursion, so that a bomb of them never reaches a recursive parser. */
export function lookAtBrackets(text: string, deepest: number): Brackets {
  const open: Opened[] = [];
  let quote: Opened | undefined;
  let line = 1;
  let lineStart = 0;
  for (let index = 0; index < text.length; index++) {
    const sign = text[index] ?? '';
    const spot = { line, column: index - lineStart + 1 };
    if (quote) {
      if (sign < ' ') return { kind: 'newline', spot: quote.spot };
      if (sign === '\\') index++;
      else if (sign === '"') quote = undefined;
    } else if (sign === '"') quote = { sign, spot };
    else if (sign === '{' || sign === '[') open.push({ sign, spot });
    else if (sign === '}' || sign === ']') {
      const top = open.pop();
      if (top && pairs[top.sign] !== sign) return { kind: 'open', ...top, offset: index };
    } else if (sign === '\n') {
      line++;
      lineStart = index + 1;
    }
    if (open.length > deepest) return { kind: 'deep', spot };
  }
  const last = quote ?? open.at(-1);
  return last ? { kind: 'open', ...last, offset: text.trimEnd().length - 1 } : { kind: 'fine' };
}

/** The sentence for a bracket or quote that is never closed. */
export function openSentence(sign: string): Worded {
  const what = sign === '"' ? 'The text that begins here' : worded`This "${sign}"`;
  return worded`This is not JSON yet. ${what} is never closed. Put ${pairs[sign] ?? ''} where it ends.`;
}
