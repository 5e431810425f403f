/** What a heard thing means here: one of the words that count, a number, or nothing. Decides nothing. */

import { commandPhrases } from '../flow/index.ts';
import { englishLanguage, type Language } from '../texts/index.ts';
import {
  matchHeard,
  normalise,
  readNumber,
  type Sayable,
  splitCorrection,
} from '../words/index.ts';
import { askedAbout, findTerm } from './glossary.ts';
import type { Heard } from './ports.ts';
import { restAfter } from './rest-after.ts';
import type { BenchItem, BenchList } from './said-now.ts';

export type Understood =
  | { readonly kind: 'item'; readonly item: BenchItem; readonly sure: number }
  | {
      readonly kind: 'number';
      readonly value: number;
      readonly fits: boolean;
      readonly corrects: boolean;
    }
  /** "I am running four hundred", in the unit that the list has. */
  | { readonly kind: 'running'; readonly speed: number; readonly sure: number }
  /** "What is a chuck?", "where is the tailstock?" */
  | { readonly kind: 'about'; readonly ask: 'what' | 'where'; readonly name: string }
  /** A question to the Slate, without the word that begins it. */
  | { readonly kind: 'slate'; readonly question: string }
  /** More than one word could be meant. */
  | { readonly kind: 'several'; readonly items: readonly BenchItem[] }
  /** A bare yes where the state must be named. */
  | { readonly kind: 'bare-yes' }
  | { readonly kind: 'nothing'; readonly words: number };

const bareYes = new Set(['yes', 'yeah', 'yep', 'okay', 'ok', 'sure', 'done', 'aye', 'right']);

export function understand(
  heard: Heard,
  list: BenchList,
  language: Language = englishLanguage,
): Understood {
  const texts = [heard.text, ...heard.alternatives];
  const exact = matchHeard(texts, list.items.map(sayable), language);
  if (exact.kind === 'one') {
    const item = list.items.find((one) => one.id === exact.id);
    if (item) return { kind: 'item', item, sure: exact.sure * heard.confidence };
  }
  const about = askedAbout(heard.text, language);
  if (about && (heard.from !== 'speech' || findTerm(about.name, language))) {
    return { kind: 'about', ...about };
  }
  const question = restAfter(heard.text.trim(), commandPhrases(language, 'slateHead'));
  if (question !== undefined) return { kind: 'slate', question };
  const speed = list.running && runningIn(heard.text, list.running, language);
  if (speed) return { kind: 'running', speed, sure: heard.confidence };
  const number = list.number && numberIn(texts, list.number, language);
  if (number) return number;
  if (exact.kind === 'several') {
    return { kind: 'several', items: list.items.filter((item) => exact.ids.includes(item.id)) };
  }
  const plain = normalise(heard.text, language);
  if (language.spoken ? language.spoken.bareYes.includes(plain) : bareYes.has(plain))
    return { kind: 'bare-yes' };
  return { kind: 'nothing', words: plain === '' ? 0 : plain.split(' ').length };
}

/** Only the likeliest text, and only the whole of it, tells the speed that runs. */
function runningIn(text: string, unit: string, language: Language): number | undefined {
  const said = restAfter(normalise(text, language), commandPhrases(language, 'runningHead'));
  const [best] = said === undefined ? [] : readNumber(said, { unit, decimals: 0 }, language);
  return best?.value;
}

/** Words of one kind have one sort of consequence: a near sound never crosses into another kind. */
function sayable(item: BenchItem): Sayable {
  return { id: item.id, phrases: item.phrases, group: item.kind, strict: item.strict };
}

function numberIn(
  texts: readonly string[],
  wanted: NonNullable<BenchList['number']>,
  language: Language,
): Extract<Understood, { kind: 'number' }> | undefined {
  for (const text of texts) {
    const corrected = splitCorrection(text, language);
    const [best] = readNumber(corrected?.rest ?? text, wanted, language);
    if (best) {
      const { value, fits } = best;
      return { kind: 'number', value, fits, corrects: corrected !== null };
    }
  }
  return undefined;
}
