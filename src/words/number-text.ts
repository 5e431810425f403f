/** A spoken or typed number made into a row of plain words and figures for the grammar to read. */
import { normalise, withoutEdges } from './plain-text.ts';

const VULGAR: Readonly<Record<string, string>> = {
  '½': '1/2',
  '¼': '1/4',
  '¾': '3/4',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
};

/** Nobody needs more words for one figure; longer rows are talk. */
const MOST_WORDS = 24;

/** What people say before a figure; it adds nothing. */
const RUN_UP =
  /^(?:it's|it is|that's|that is|it reads|it says|it measures|reads|reading is|reading|measures|i read|i get|i've got|i have|got|i make it)\s+/;

/**
 * A comma between digits is refused: "24,95" is a decimal to some and "1,250" a thousand to others, and a wrong
 * guess would be a thousandfold. So are two points, an exponent, and a range.
 */
const REFUSED = /\d,\d|\d\.\d*\.|\d\s*[-–—]\s*\d+(?![\d/])|\de[+-]?\d|±/;

/** "1,400" where a whole number is wanted has one meaning. */
const GROUPED = /(?<![\d,.])(\d{1,3})((?:,\d{3})+)(?![\d,.])/g;

function ungrouped(text: string): string {
  return text.replace(
    GROUPED,
    (_, head: string, groups: string) => head + groups.replaceAll(',', ''),
  );
}

/**
 * The row of words, or null when the text holds a figure nobody can be sure of. `wholeOnly` says that a whole number
 * is wanted, so that a comma can only part thousands.
 */
export function numberWords(text: string, wholeOnly = false): readonly string[] | null {
  const mixed = (wholeOnly ? ungrouped(text) : text).replace(
    /(\d?)\s*([½¼¾⅛⅜⅝⅞])/g,
    (_, before: string, sign: string) => `${before} ${VULGAR[sign] ?? ''} `,
  );
  const figures = mixed
    .toLowerCase()
    .replace(/⁄/g, '/')
    .replace(/(\d)\s*-\s*(\d+\/\d)/g, '$1 $2')
    .replace(/(\d)-(?=[a-z])|([a-z])-(?=\d)/g, '$1$2 ');
  if (REFUSED.test(figures)) return null;
  const spaced = figures
    // A sign before a word counts as much as before a figure: a minus is never swallowed.
    .replace(/(^|\s|[ø⌀])[-–—−](?=\s*\S)/g, ' minus ')
    .replace(/(^|\s)\+(?=\s*\S)/g, ' plus ')
    .replace(/[ø⌀]/g, ' ')
    .replace(/["″”]/g, ' inch ')
    .replace(/°\s*c\b/g, ' degrees celsius ')
    .replace(/°/g, ' degrees ')
    .replace(/[µμ]/g, 'u')
    .replace(/(\d)[′']/g, '$1 minutes ')
    .replace(/(\d)\s*%/g, '$1 percent ')
    .replace(/[·²]/g, (sign) => (sign === '²' ? '2' : ''))
    .replace(/(\d)(?!(?:th|ths|nd|nds|st|rd)\b)([a-z])/g, '$1 $2')
    .replace(/\b(\d{1,2}):(\d\d)\b/g, '$1 $2');
  const plain = withoutEdges(normalise(spaced).split(' ')).join(' ').replace(RUN_UP, '');
  const words = withoutEdges(plain.split(' ')).filter((word) => word !== '');
  return words.length > MOST_WORDS ? null : words;
}
