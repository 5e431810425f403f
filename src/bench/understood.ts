/** What a heard thing was taken for, in words, for the record. Pure. */

import { apprenticeTexts, type Language, tableIn } from '../texts/index.ts';
import { joinList, showNumber } from '../words/index.ts';
import type { BenchList } from './said-now.ts';
import type { Understood } from './understand.ts';

/**
 * The first phrase of the word that was meant ("where am i"), the question, or the number in the unit that is asked
 * for ("24.95 mm"); nothing where no word, question or number was.
 */
export function understoodAs(
  meant: Understood,
  list: BenchList,
  language: Language,
): string | undefined {
  switch (meant.kind) {
    case 'item':
      return meant.item.phrases[0];
    case 'about':
      return questionAbout(meant, language);
    case 'slate':
      return meant.question;
    case 'running':
      return showNumber(meant.speed, list.running ?? '', 0, language);
    case 'number':
      return (
        list.number && showNumber(meant.value, list.number.unit, list.number.decimals, language)
      );
    case 'several':
      return joinList(
        meant.items.map((item) => item.phrases[0] ?? ''),
        'or',
        language,
      );
    default:
      return undefined;
  }
}

function questionAbout(
  { ask, name }: Extract<Understood, { kind: 'about' }>,
  language: Language,
): string {
  const { askTerm, askPart } = tableIn(language, apprenticeTexts);
  const [head = ''] = ask === 'where' ? askPart : askTerm;
  return `${head} ${name}`;
}
