/**
 * Words that are rarely said stand behind a lead word, for an ear that knows only listed phrases: "other material", and
 * then "brass". The first list stays small, and nothing is out of reach. Pure.
 */

import { commandPhrases } from '../flow/index.ts';
import { apprenticeTexts, type Language, sayIn, tableIn, voiceTexts } from '../texts/index.ts';
import { normalise } from '../words/index.ts';
import { asked } from './beside-run.ts';
import type { Heard } from './ports.ts';
import type { RunState, RunStep } from './run-state.ts';
import type { BenchItem } from './said-now.ts';

/** "terms", "parts", "paces", "speeds", or "input:material". */
export type LeadList = string;

/** The list that an item stands in when it does not count by itself. */
export function leadListOf({ adjust, term, part, pace }: BenchItem): LeadList | undefined {
  if (adjust?.type === 'adjust') return `input:${adjust.input}`;
  if (adjust?.type === 'running') return adjust.toSet ? undefined : 'speeds';
  if (term !== undefined) return 'terms';
  if (part !== undefined) return 'parts';
  return pace ? 'paces' : undefined;
}

/** One item for each list that these items stand in. */
export function leadItems(state: RunState, items: readonly BenchItem[]): readonly BenchItem[] {
  const lists = new Set(items.flatMap((item) => leadListOf(item) ?? []));
  return [...lists].map((list) => ({
    id: `lead:${list}`,
    kind: 'ask',
    phrases: leadPhrases(state, list),
    strict: false,
    opens: list,
  }));
}

function leadPhrases({ job }: RunState, list: LeadList): readonly string[] {
  const { language } = job.flow;
  const table = tableIn(language, voiceTexts);
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

/** "Never mind", or "wrong": the list is left, and nothing else is taken back. Null for any other word. */
export function leaveLead(state: RunState, heard: Heard): RunStep | null {
  const { language } = state.job.flow;
  const said = normalise(heard.text, language);
  if (state.opened === undefined || !leaveWords(state).includes(said)) return null;
  return asked(withoutLead(state), heard, sayIn(language, voiceTexts)('slateLeft'));
}

export function leaveWords({ job }: RunState): readonly string[] {
  const { language } = job.flow;
  return [...tableIn(language, voiceTexts).leaveSlate, ...commandPhrases(language, 'wrong')];
}

export function withoutLead({ opened: _over, ...state }: RunState): RunState {
  return state;
}

/** How the items of an open list may be said: what is left of the phrase behind its lead, and the phrase. */
export function phrasesBehind(
  { opened, job }: Pick<RunState, 'opened' | 'job'>,
  items: readonly BenchItem[],
): readonly (readonly [said: string, phrase: string])[] {
  if (opened === undefined) return [];
  const heads = headsOf(opened, job.flow.language);
  return items
    .filter((item) => leadListOf(item) === opened)
    .flatMap(({ phrases }) => phrases.map((phrase) => [withoutHead(phrase, heads), phrase]));
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
