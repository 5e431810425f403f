/** What a run looks like now, in one value: the screen only draws it. Pure. */

import {
  answerState,
  type BenchItem,
  type BenchList,
  questionLine,
  type RunState,
  saidNow,
  viewNow,
} from '../../bench/index.ts';
import { type Pace, positionOf, type View } from '../../flow/index.ts';
import { apprenticeTexts, sayIn, tableIn } from '../../texts/index.ts';

/** The number that was heard and waits for its answer. */
export interface Waiting {
  readonly value: number;
  readonly unit: string;
  readonly decimals: number;
  /** Far from what was expected: only "keep" takes it. */
  readonly far: boolean;
}

/** How the screen is laid out. Measuring cuts across the moods: it needs the pad. */
export type Layout = 'doing' | 'gate' | 'measuring' | 'cutting' | 'held' | 'done';

export interface Scene {
  readonly view: View;
  readonly list: BenchList;
  readonly layout: Layout;
  readonly waiting: Waiting | null;
  /** Conditions in force, met and open, in an order that never changes while the step lasts. */
  readonly gate: View['gate'];
  readonly choices: readonly BenchItem[];
  /** The speed that a fault walk offers. */
  readonly offers: readonly BenchItem[];
  /** The choices answer a check question, on which nothing depends. */
  readonly question: boolean;
  readonly pace: Pace;
  /** What is said before a trade word or a part to ask about it. */
  readonly heads: { readonly term: string; readonly part: string };
  /** Facts that are asked for and stand in no gate line. */
  readonly answers: readonly BenchItem[];
  readonly losses: readonly BenchItem[];
  readonly troubles: readonly BenchItem[];
  /** Troubles of the very moment, to be seen at once: the start that does not come. */
  readonly urgent: readonly BenchItem[];
  /** What works the numbers out again; what is so already is left out. */
  readonly adjusts: readonly BenchItem[];
  /** True when "next" would lead on. */
  readonly ready: boolean;
  readonly open: number;
}

export function sceneOf(state: RunState): Scene {
  const question = state.question !== null;
  const view = asQuestion(state);
  const list = withoutPad(saidNow(state), question);
  const waiting = waitingIn(state);
  const of = (kind: BenchItem['kind']) => list.items.filter((item) => item.kind === kind);
  const asked = new Set(view.gate.map((line) => line.ask?.word));
  const answers = question ? [] : of('fact').filter((item) => !asked.has(wordOf(item)));
  const open = view.gate.filter((line) => !line.met).length + answers.length;
  const choices = of(question ? 'question' : 'choice');
  const size = list.number !== undefined && list.advice !== true;
  const asks = open > 0 || choices.length > 0 || size || waiting !== null;
  const blocked = asks && !question;
  return {
    view,
    list,
    layout: layoutOf(state, view, list, waiting),
    waiting,
    gate: view.gate,
    choices,
    question,
    pace: state.pace,
    heads: headsOf(state),
    answers,
    losses: of('loss'),
    troubles: of('trouble'),
    urgent:
      positionOf(state.snapshot).phase === 'start' ? of('trouble').filter(isUrgent(state)) : [],
    offers: of('adjust').filter(isOffer),
    adjusts: of('adjust').filter((item) => !isSo(state, item) && !isOffer(item)),
    ready: !blocked,
    open,
  };
}

/** While a check question waits, it is the one thing to be read. */
function asQuestion(state: RunState): View {
  const view = viewNow(state);
  if (!state.question) return view;
  const hint = sayIn(state.job.flow.language, apprenticeTexts)('questionHint');
  // What was said ends with the question, so that it is not shown twice.
  const lead = {
    shown: state.question.asked.ask,
    spoken: questionLine(state.question, state.job.flow.language),
  };
  return { ...view, lead, ask: { shown: hint, spoken: '' }, gate: [] };
}

function headsOf({ job }: RunState): Scene['heads'] {
  const { askTerm, askPart } = tableIn(job.flow.language, apprenticeTexts);
  return { term: askTerm.at(-1) ?? '', part: askPart.at(-1) ?? '' };
}

function withoutPad({ number, ...list }: BenchList, question: boolean): BenchList {
  return number && !question ? { ...list, number } : list;
}

function isUrgent({ job }: RunState) {
  const everywhere = new Set(
    job.flow.kind.walks.filter((walk) => walk.everywhere).map((walk) => `trouble:${walk.id}`),
  );
  return ({ id }: BenchItem) => everywhere.has(id);
}

function isOffer({ adjust }: BenchItem): boolean {
  return adjust?.type === 'feeding' || (adjust?.type === 'running' && adjust.toSet === true);
}

function isSo({ job }: RunState, { adjust }: BenchItem): boolean {
  return adjust?.type === 'adjust' && job.numbers.inputs[adjust.input] === adjust.value;
}

/** The phrase that is shown for an item. */
export function wordOf(item: BenchItem): string {
  return item.phrases[0] ?? '';
}

/** True when this may be said now. */
export function offers(scene: Scene, id: string): boolean {
  return scene.list.items.some((item) => item.id === id);
}

function waitingIn(state: RunState): Waiting | null {
  const { pending } = state.talk.context;
  const answer = answerState(state.talk);
  if (!pending || answer === 'none') return null;
  const { value, unit, decimals } = pending;
  return { value, unit, decimals, far: answer === 'questioned' };
}

function layoutOf(state: RunState, view: View, list: BenchList, waiting: Waiting | null): Layout {
  if (view.mood === 'done' || state.head.status === 'given-up') return 'done';
  if (view.mood === 'held') return 'held';
  if (list.number || waiting) return 'measuring';
  if (view.mood === 'cutting') return 'cutting';
  return view.phase === 'gate' ? 'gate' : 'doing';
}
