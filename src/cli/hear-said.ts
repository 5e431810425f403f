/** Reads the said list of the command line: "next|guard closed|number mm 24.8 25.2". */

import type { ListenFor, NumberWanted } from '../bench/ports.ts';
import { UNIT_IDS, unitOf } from '../words/index.ts';

/** The list, or a sentence that says what is wrong with it. */
export function readSaid(text: string): ListenFor | { readonly fault: string } {
  const entries = text
    .split('|')
    .map((entry) => entry.trim())
    .filter((entry) => entry !== '');
  if (entries.length === 0)
    return { fault: 'The said list is empty. Give words, like "next|stop".' };
  const numbers = entries.filter((entry) => /^number\b/.test(entry));
  if (numbers.length > 1) return { fault: 'The said list may hold one number, not more.' };
  const phrases = entries.filter((entry) => !/^number\b/.test(entry));
  const wordless = phrases.find((phrase) => !/\p{L}/u.test(phrase));
  if (wordless !== undefined) {
    return { fault: `"${wordless}" has no letters. Write the words that are said; ${FORM}` };
  }
  const [first] = numbers;
  if (first === undefined) return { phrases };
  const number = readWanted(first);
  return 'fault' in number ? number : { phrases, number };
}

const FORM = 'write a number as "number UNIT LEAST MOST", like "number mm 24.8 25.2".';

function readWanted(entry: string): NumberWanted | { readonly fault: string } {
  const [, unit, least, most, decimals, ...more] = entry.split(/\s+/);
  if (!unit || !least || !most || more.length > 0)
    return { fault: `"${entry}" is not a number; ${FORM}` };
  if (unitOf(unit) === null) {
    return { fault: `"${unit}" is not a unit numbers are read in: ${UNIT_IDS.join(', ')}.` };
  }
  const min = Number(least);
  const max = Number(most);
  if (!Number.isFinite(min) || !Number.isFinite(max) || min > max) {
    return { fault: `"${entry}" has no range; ${FORM}` };
  }
  const places = decimals === undefined ? usualDecimals(unit) : Number(decimals);
  if (!Number.isInteger(places) || places < 0 || places > 4) {
    return { fault: `"${entry}" asks for "${decimals}" decimals; 0 to 4 can be heard.` };
  }
  return { unit, min, max, decimals: places };
}

/** As shop drawings have them: hundredths of a millimetre, thousandths of an inch, else whole. */
function usualDecimals(unit: string): number {
  if (unit === 'in' || unit === 'inch') return 3;
  return unit === 'mm' ? 2 : 0;
}
