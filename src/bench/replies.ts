/** The short answers of the bench. One thing, then stop; the figure that matters comes last. */

import {
  type Ask,
  askedFacts,
  commandWord,
  joined,
  planAt,
  positionOf,
  releaseAwaited,
  type StepPlan,
  type View,
} from '../flow/index.ts';
import {
  apprenticeTexts,
  benchTexts,
  type Language,
  midSentence,
  sayIn,
  tableIn,
  voiceTexts,
} from '../texts/index.ts';
import { joinList, sayDigits, sayNumber } from '../words/index.ts';
import { joinLines } from './announce.ts';
import { mayBeMet } from './cut-shows.ts';
import type { RunState } from './run-state.ts';
import { type BenchItem, saidNow } from './said-now.ts';
import { sentence } from './sentence.ts';
import { answerState, type PendingNumber } from './talk-chart.ts';
import { viewNow } from './view-now.ts';
import { figureAsked, figureOfAsk, whyThat } from './why-that.ts';

/** The answer to a question that changes nothing. */
export function replyTo(ask: Ask, state: RunState): string {
  const view = viewNow(state);
  const { language } = state.job.flow;
  const say = sayIn(language, benchTexts);
  switch (ask) {
    case 'repeat':
      return repeatReply(state);
    case 'why':
      return whyReply(view) ?? say('noReason');
    case 'whyThat':
      return whyThatReply(state, view);
    case 'where':
      return whereReply(state, view);
    case 'words':
      return say('youCanSay', { words: joinList(wordsToSay(state), 'or', language) });
    case 'trouble':
      return troubleReply(state);
    case 'left':
      return figureReply(view, 'left', language) ?? say('noPass');
    default:
      return figureReply(view, ask, language) ?? say(noFigure[ask]);
  }
}

const noFigure = { speed: 'noSpeed', feed: 'noFeed', depth: 'noDepth' } as const;

/** The troubles that are written for this moment, by their words; where none counts, what comes first or where they do. */
export function troubleReply(state: RunState): string {
  const { language } = state.job.flow;
  const say = sayIn(language, apprenticeTexts);
  const listed = (words: readonly string[]) => ({ words: joinList(words, 'or', language) });
  if (positionOf(state.snapshot).phase === 'walk') return say('inTrouble');
  const plan = planAt(state.job, state.snapshot);
  const here = state.job.flow.kind.walks.filter(({ id }) => plan?.walks.includes(id));
  const tell = (key: 'whatTrouble' | 'troubleThen' | 'troubleOnceCut', isTold: boolean) => {
    const words = here.filter((one) => mayBeMet(state, one) === isTold).map(({ word }) => word);
    return words.length > 0 ? say(key, listed(words)) : '';
  };
  const counts = saidNow(state).items.some((item) => item.kind === 'trouble');
  if (here.length > 0)
    return joinLines([
      tell(counts ? 'whatTrouble' : 'troubleThen', true),
      tell('troubleOnceCut', false),
    ]);
  return say(cutBefore(state.job, plan) ? 'troubleAtCut' : 'noTrouble');
}

/** True where "back", said often enough, leads to a cut. */
function cutBefore(job: RunState['job'], plan: StepPlan | undefined): boolean {
  const before = plan?.back && job.plans.get(plan.back.to);
  return before !== undefined && (before.powered || cutBefore(job, before));
}

/** While a number waits for its answer, that is what is said again. */
function repeatReply(state: RunState): string {
  const { pending } = state.talk.context;
  if (!pending) return state.lastLine;
  const expected = saidNow(state).number?.expected;
  const questioned = answerState(state.talk) === 'questioned' && expected !== undefined;
  const { language } = state.job.flow;
  return questioned ? questionFar(pending, expected, language) : readBack(pending, language);
}

/** What the open condition guards against, or what can hurt in the step, with what the step is for. */
function whyReply(view: View): string | undefined {
  // While it cuts, the reason of a condition is over: it was why the start had to wait.
  const open = view.mood === 'cutting' ? [] : view.gate;
  const asked = open.find((line) => line.ask && line.why !== undefined);
  const reasons = [asked?.why, view.why, ...(asked ? [] : view.cautions)];
  const told = new Set(reasons.filter((reason) => reason !== undefined));
  return told.size === 0 ? undefined : [...told].join(' ');
}

function whyThatReply({ told, job }: RunState, view: View): string {
  const { language } = job.flow;
  if (told && 'why' in told) return told.why;
  const figure = figureAsked(view, told?.figure);
  return figure ? whyThat(figure, language) : sayIn(language, benchTexts)('noFigure');
}

function whereReply(state: RunState, view: View): string {
  const { language } = state.job.flow;
  const say = sayIn(language, benchTexts);
  const { index, of, title } = view.step;
  const asked = askedFacts(state.job, state.snapshot);
  const facts = asked.map(({ fact }) => midSentence(language, fact.label));
  const here = say('where', { index: index + 1, of, title });
  return facts.length > 0
    ? `${here} ${say('open', { facts: joinList(facts, 'and', language) })}`
    : here;
}

function figureReply(view: View, id: Ask, language: Language): string | undefined {
  const figure = view.figures.find((one) => one.id === figureOfAsk(id, view));
  if (!figure) return undefined;
  const ruled =
    id !== 'speed' || figure.ruledBy === undefined ? '' : ` ${rulesLine(figure.ruledBy, language)}`;
  return `${sentence(figure.spoken)}.${ruled}`;
}

/** "The chuck's mark rules." */
function rulesLine(ruledBy: string, language: Language): string {
  return sayIn(language, benchTexts)('rules', { limit: sentence(ruledBy) });
}

/** An ear of few words is led to the others by one of them. */
function wordsToSay(state: RunState): readonly string[] {
  const isOver = positionOf(state.snapshot).phase === 'end';
  if (state.hearsFreely || isOver) return wordsNow(state);
  const { leadRest } = tableIn(state.job.flow.language, voiceTexts);
  return [...wordsNow(state), ...leadRest.slice(0, 1)];
}

/** The words that move the job, without the questions. */
export function wordsNow(state: RunState): readonly string[] {
  const { items, number } = saidNow(state);
  const words = items.filter(movesTheJob).map((item) => item.phrases[0] ?? '');
  const size = sayIn(state.job.flow.language, benchTexts)('theSize');
  return number ? [size, ...words] : words;
}

/** Materials, tools and speeds would make the list too long to listen to. */
function movesTheJob({ kind }: BenchItem): boolean {
  return kind !== 'ask' && kind !== 'adjust' && kind !== 'trouble';
}

/** A refused "next" names what is missing and nothing else. */
export function refusal(state: RunState): string {
  const asked = askedFacts(state.job, state.snapshot);
  const { phase } = positionOf(state.snapshot);
  const waits = phase === 'start' || phase === 'cutting' || phase === 'stopping';
  const { language } = state.job.flow;
  const say = sayIn(language, benchTexts);
  const instructor =
    releaseAwaited(state.job, state.snapshot) === undefined ? [] : [say('instructor')];
  if (asked.length + instructor.length > 0 && !waits) {
    const labels = asked.map(({ fact }) => midSentence(language, fact.label));
    return say('notYet', { missing: joinList([...labels, ...instructor], 'and', language) });
  }
  const { items, number } = saidNow(state);
  if (number) return say('notYetSize');
  const words = items.filter((item) => item.kind === 'fact' || item.kind === 'choice');
  // With nothing to answer, the job waits for a word to go on.
  const onward = items.filter(({ id }) => id === 'carry-on' || id === 'next').slice(0, 1);
  const phrases = (words.length > 0 ? words : onward).map((item) => item.phrases[0] ?? '');
  return say('notYetSay', { words: joinList(phrases, 'or', language) });
}

/** A bare yes passes no gate: the state has to be named. */
export function nameTheState(state: RunState): string {
  const [first] = saidNow(state).items.filter(
    (item) => item.kind === 'fact' || item.kind === 'choice',
  );
  const say = sayIn(state.job.flow.language, benchTexts);
  return first ? say('nameIt', { word: first.phrases[0] ?? '' }) : refusal(state);
}

/** "Two four point nine five millimetres. Correct?" */
export function readBack(pending: PendingNumber, language: Language): string {
  const size = sayDigits(pending.value, pending.unit, pending.decimals, { language });
  return sayIn(language, benchTexts)('readBack', { size: sentence(size) });
}

export function questionFar(pending: PendingNumber, expected: number, language: Language): string {
  const inWords = (value: number) => sayNumber(value, pending.unit, pending.decimals, { language });
  return sayIn(language, benchTexts)('questionFar', {
    heard: inWords(pending.value),
    expected: inWords(expected),
    keep: commandWord(language, 'keep'),
  });
}

export function outOfRange(
  value: number,
  range: { min: number; max: number; unit: string; decimals: number },
  language: Language,
): string {
  const inWords = (one: number, unit = '') => sayNumber(one, unit, range.decimals, { language });
  return sayIn(language, benchTexts)('outOfRange', {
    heard: inWords(value),
    least: inWords(range.min),
    most: inWords(range.max, range.unit),
  });
}

/** The whole present line, as after a pause. */
export function presentLine(view: View): string {
  return joined(view.lead, view.ask).spoken;
}
