/** Words of a flow that the page's own ear cannot hear, since nobody told it how they sound. */

import { beginJob, type Card, compileJob, type Flow, saidList } from '../flow/index.ts';
import { missingPronunciations, type Pronunciations } from '../voice/shared/index.ts';
import { loadDictionary } from './hear-engine.ts';

/** The words, each once. The ear knows English only: in another language there is nothing to find. */
export function unpronounced(
  flow: Flow,
  cards: readonly Card[],
  dictionary: Pronunciations = ownDictionary(),
): readonly string[] {
  if (flow.language.code !== 'en') return [];
  const phrases = [...ownPhrases(flow), ...cards.flatMap((card) => phrasesAtBegin(flow, card))];
  return missingPronunciations(phrases, dictionary, flow.file.pronunciations);
}

let read: Pronunciations | undefined;

/** Read once for all flows. */
function ownDictionary(): Pronunciations {
  read ??= loadDictionary();
  return read;
}

/** All that its kind, its gates and its choices may ever want to be said. */
function ownPhrases({ kind, steps }: Flow): readonly string[] {
  const options = [...steps.values()].flatMap((step) =>
    step.kind === 'choose' ? step.options : [],
  );
  const named = [...kind.facts.flatMap((fact) => fact.states), ...kind.walks, ...options];
  return named.flatMap(({ word, also }) => [word, ...also]);
}

/** The words that are in force from the beginning, with those that work the numbers out again. */
function phrasesAtBegin(flow: Flow, card: Card): readonly string[] {
  const compiled = compileJob(flow, card);
  if (!compiled.ok) return [];
  const { job } = compiled;
  return saidList(job, beginJob(job)).items.flatMap((item) => item.phrases);
}
