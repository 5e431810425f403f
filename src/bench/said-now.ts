/** The said list with the turn of talk laid over it: while a number is read back, its answers come first. */

import {
  type AnswerId,
  commandPhrases,
  type SaidItem,
  type SaidList,
  saidList,
  speedUnit,
  speedWorking,
} from '../flow/index.ts';
import type { Language } from '../texts/index.ts';
import { adviceNumber } from './advice.ts';
import { slateItem } from './ask-slate.ts';
import { countsByCut } from './cut-shows.ts';
import type { LeadList } from './lead-lists.ts';
import { leadItems } from './lead-words.ts';
import { learnItems } from './learn-words.ts';
import { type MannerWish, mannerItems } from './manner-run.ts';
import type { PaceWish } from './pace-run.ts';
import type { RunState } from './run-state.ts';
import { answerState } from './talk-chart.ts';

/** Answers of the talk itself; they are no events of the flow. */
export type TalkAnswer = AnswerId;

export interface BenchItem extends Omit<SaidItem, 'kind'> {
  readonly kind: SaidItem['kind'] | 'answer' | 'question';
  readonly answer?: TalkAnswer;
  /** Asks for the keyboard, or for the words of a note. */
  readonly note?: true;
  /** How the mouth speaks. */
  readonly manner?: MannerWish;
  /** Opens a question to the Slate. */
  readonly slate?: true;
  /** Opens a list of rare words. */
  readonly opens?: LeadList;
  readonly pace?: PaceWish;
  /** Name of a trade word that is asked for. */
  readonly term?: string;
  /** Name of a part of the machine that is asked for. */
  readonly part?: string;
  /** An answer to the check question; null passes it on. */
  readonly option?: string | null;
}

export interface BenchList {
  readonly items: readonly BenchItem[];
  readonly number?: NonNullable<SaidList['number']>;
  /** The speed that runs may be told, in this unit: "I am running four hundred". */
  readonly running?: string;
  /** The number is asked for as advice: nothing waits for it. */
  readonly advice?: boolean;
}

function noteItem(language: Language): BenchItem {
  const phrases = commandPhrases(language, 'note');
  return { id: 'note', kind: 'ask', phrases, strict: false, note: true };
}

function answerItem(language: Language, name: TalkAnswer): BenchItem {
  const phrases = commandPhrases(language, name);
  return { id: `answer:${name}`, kind: 'answer', phrases, strict: true, answer: name };
}

/** What counts now. While a number waits, moves and gates do not: only its answers, questions, hold and stop. */
export function saidNow(state: RunState): BenchList {
  const old = said.get(state);
  if (old) return old;
  const list = listOf(state);
  said.set(state, list);
  return list;
}

/** One state is asked by the ear, the screen and the bench itself. */
const said = new WeakMap<RunState, BenchList>();

function listOf(state: RunState): BenchList {
  const list = withAdvice(state);
  const waiting = answerState(state.talk);
  const { language } = state.job.flow;
  const wrong = answerItem(language, 'wrong');
  if (waiting === 'none') {
    const runs = speedWorking(state.job, state.snapshot) !== undefined;
    const own = [...(state.undo ? [wrong] : []), noteItem(language), slateItem(language)];
    const items = [...list.items, ...own, ...mannerItems(language), ...learnItems(state)];
    const all = [...items, ...leadItems(state, items)];
    return { ...list, items: all, ...(runs ? { running: speedUnit(state.job) } : {}) };
  }
  const still = list.items.filter(
    (item) => item.kind === 'ask' || item.kind === 'drill' || item.id === 'hold',
  );
  return {
    ...list,
    items: [answerItem(language, waiting === 'readBack' ? 'correct' : 'keep'), wrong, ...still],
  };
}

function withAdvice(state: RunState): BenchList {
  const said = saidList(state.job, state.snapshot);
  const list = { ...said, items: said.items.filter(countsByCut(state)) };
  const number = list.number ? undefined : adviceNumber(state);
  return number ? { ...list, number, advice: true } : list;
}

/** The drill and the hold go before everything, whatever else is asked. */
export function alwaysFirst(state: RunState): readonly BenchItem[] {
  return saidNow(state).items.filter(({ kind, id }) => kind === 'drill' || id === 'hold');
}
