/**
 * Words that are rarely said stand behind a lead word, for an ear that knows only listed phrases: "other material", and
 * then "brass". The first list stays small, and nothing is out of reach. Pure.
 */

import { commandPhrases, commandWord, positionOf } from '../flow/index.ts';
import {
  apprenticeTexts,
  benchTexts,
  type Language,
  sayIn,
  tableIn,
  voiceTexts,
} from '../texts/index.ts';
import { joinList, normalise } from '../words/index.ts';
import { asked } from './beside-run.ts';
import { withUnderstood } from './entry.ts';
import { type LeadList, leadListOf, restList } from './lead-lists.ts';
import type { Heard } from './ports.ts';
import { isRest } from './rest-words.ts';
import type { RunState, RunStep } from './run-state.ts';
import type { BenchItem } from './said-now.ts';

/** One item for each list that these items stand in. */
export function leadItems(state: RunState, items: readonly BenchItem[]): readonly BenchItem[] {
  if (positionOf(state.snapshot).phase === 'end') return [];
  const lists = new Set([...items.flatMap((item) => leadListOf(item) ?? []), restList]);
  return [...lists].map((list) => ({
    id: `lead:${list}`,
    kind: 'ask',
    phrases: leadPhrases(state, list),
    strict: false,
    opens: list,
  }));
}

/** Every way of saying that a list is meant. */
export function leadPhrases({ job }: RunState, list: LeadList): readonly string[] {
  const { language } = job.flow;
  const table = tableIn(language, voiceTexts);
  if (list === restList) return table.leadRest;
  if (list === 'terms') return table.leadTerms;
  if (list === 'parts') return table.leadParts;
  if (list === 'paces') return table.leadPaces;
  if (list === 'speeds') return table.leadSpeeds;
  const id = list.replace('input:', '');
  const input = job.flow.file.inputs.find((one) => one.id === id);
  const name = language.spoken ? input?.label : id.replaceAll('-', ' ');
  return table.leadInput.map((phrase) => phrase.replace('{name}', (name ?? id).toLowerCase()));
}

/** From the next word on, the words of the list count as well, until one is understood. */
export function openLead(state: RunState, heard: Heard, list: LeadList): RunStep {
  const line = sayIn(state.job.flow.language, voiceTexts)('leadAsks');
  return asked({ ...state, opened: list }, heard, line);
}

/**
 * "Never mind", or "wrong": the list is left, and nothing else is taken back. "What can I say" names its words and
 * leaves it open. Null for any other word.
 */
export function atLead(state: RunState, heard: Heard, items: readonly BenchItem[]): RunStep | null {
  const { language } = state.job.flow;
  const said = normalise(heard.text, language);
  if (state.opened === undefined) return null;
  if (leaveWords(state).includes(said)) {
    const left = asked(withoutLead(state), heard, sayIn(language, voiceTexts)('slateLeft'));
    return withUnderstood(left, said);
  }
  const words = phrasesBehind(state, items).map(([word]) => word);
  if (words.length === 0 || !commandPhrases(language, 'words').includes(said)) return null;
  const list = joinList(words, 'or', language);
  const told = asked(state, heard, sayIn(language, benchTexts)('youCanSay', { words: list }));
  return withUnderstood(told, commandWord(language, 'words'));
}

export function leaveWords({ job }: RunState): readonly string[] {
  const { language } = job.flow;
  return [...tableIn(language, voiceTexts).leaveSlate, ...commandPhrases(language, 'wrong')];
}

export function withoutLead({ opened: _over, ...state }: RunState): RunState {
  return state;
}

/** How the items of an open list may be said: what is left of the phrase behind its lead, the phrase, and its item. */
export function phrasesBehind(
  state: RunState,
  items: readonly BenchItem[],
): readonly (readonly [said: string, phrase: string, item: BenchItem])[] {
  const { opened, job } = state;
  if (opened === undefined) return [];
  if (opened === restList) {
    const rest = items.filter((item) => isRest(state, item));
    return rest.flatMap((item) => item.phrases.slice(0, 1).map((said) => [said, said, item]));
  }
  const heads = headsOf(opened, job.flow.language);
  return items
    .filter((item) => leadListOf(item) === opened)
    .flatMap((item) => item.phrases.map((all) => [withoutHead(all, heads), all, item]));
}

function headsOf(list: LeadList, language: Language): readonly string[] {
  const { askTerm, askPart } = tableIn(language, apprenticeTexts);
  if (list === 'terms') return askTerm;
  if (list === 'parts') return askPart;
  return list === 'speeds' ? commandPhrases(language, 'running') : [];
}

function withoutHead(phrase: string, heads: readonly string[]): string {
  const head = heads.find((one) => phrase.startsWith(`${one} `));
  return head === undefined ? phrase : phrase.slice(head.length + 1);
}
