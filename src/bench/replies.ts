/** The short answers of the bench. One thing, then stop; the figure that matters comes last. */

import {
  type Ask,
  askedFacts,
  joined,
  positionOf,
  releaseAwaited,
  type View,
} from '../flow/index.ts';
import { apprenticeTexts, englishLanguage, sayIn } from '../texts/index.ts';
import { joinList, sayDigits, sayNumber } from '../words/index.ts';
import type { RunState } from './run-state.ts';
import { type BenchItem, saidNow } from './said-now.ts';
import { sentence } from './sentence.ts';
import { answerState, type PendingNumber } from './talk-chart.ts';
import { viewNow } from './view-now.ts';
import { figureAsked, whyThat } from './why-that.ts';

/** The answer to a question that changes nothing. */
export function replyTo(ask: Ask, state: RunState): string {
  const view = viewNow(state);
  switch (ask) {
    case 'repeat':
      return repeatReply(state);
    case 'why':
      return whyReply(view);
    case 'whyThat':
      return whyThatReply(state, view);
    case 'where':
      return whereReply(state, view);
    case 'words':
      return `You can say: ${joinList(wordsNow(state), 'or')}.`;
    case 'trouble':
      return troubleReply(state);
    case 'left':
      return figureReply(view, 'left', 'No pass is being cut.');
    default:
      return figureReply(view, ask, `No ${ask} at this step.`);
  }
}

/** The troubles that are written for this moment, by their words. */
function troubleReply(state: RunState): string {
  const say = sayIn(englishLanguage, apprenticeTexts);
  const troubles = saidNow(state).items.filter((item) => item.kind === 'trouble');
  const words = troubles.map((item) => item.phrases[0] ?? '');
  return words.length === 0
    ? say('noTrouble')
    : say('whatTrouble', { words: joinList(words, 'or') });
}

/** While a number waits for its answer, that is what is said again. */
function repeatReply(state: RunState): string {
  const { pending } = state.talk.context;
  if (!pending) return state.lastLine;
  const expected = saidNow(state).number?.expected;
  const questioned = answerState(state.talk) === 'questioned' && expected !== undefined;
  return questioned ? questionFar(pending, expected) : readBack(pending);
}

function whyReply(view: View): string {
  const asked = view.gate.find((line) => line.ask && line.why !== undefined);
  return asked?.why ?? view.why ?? 'No reason is written for this step.';
}

function whyThatReply({ told }: RunState, view: View): string {
  if (told && 'why' in told) return told.why;
  const figure = figureAsked(view, told?.figure);
  return figure ? whyThat(figure) : 'No figure was told.';
}

/** The figure an answered question was about. */
export function figureOfAsk(ask: Ask, view: View): string | undefined {
  const id = ask === 'depth' && view.figures.some((one) => one.id === 'cut') ? 'cut' : ask;
  return view.figures.find((one) => one.id === id)?.id;
}

function whereReply(state: RunState, view: View): string {
  const facts = askedFacts(state.job, state.snapshot).map(({ fact }) => fact.label.toLowerCase());
  const open = facts.length > 0 ? ` Open: ${joinList(facts)}.` : '';
  return `Step ${view.step.index + 1} of ${view.step.of}: ${view.step.title}.${open}`;
}

function figureReply(view: View, id: Ask, none: string): string {
  const figure = view.figures.find((one) => one.id === figureOfAsk(id, view));
  if (!figure) return none;
  const ruled =
    id !== 'speed' || figure.ruledBy === undefined ? '' : ` ${sentence(figure.ruledBy)} rules.`;
  return `${sentence(figure.spoken)}.${ruled}`;
}

/** The words that move the job, without the questions. */
export function wordsNow(state: RunState): readonly string[] {
  const { items, number } = saidNow(state);
  const words = items.filter(movesTheJob).map((item) => item.phrases[0] ?? '');
  return number ? ['the size', ...words] : words;
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
  const instructor = releaseAwaited(state.job, state.snapshot) === undefined ? [] : ['instructor'];
  if (asked.length + instructor.length > 0 && !waits) {
    const open = [...asked.map(({ fact }) => fact.label.toLowerCase()), ...instructor];
    return `Not yet: ${joinList(open)}.`;
  }
  const { items, number } = saidNow(state);
  if (number) return 'Not yet: say the size.';
  const words = items.filter((item) => item.kind === 'fact' || item.kind === 'choice');
  return `Not yet: say ${joinList(
    words.map((item) => item.phrases[0] ?? ''),
    'or',
  )}.`;
}

/** A bare yes passes no gate: the state has to be named. */
export function nameTheState(state: RunState): string {
  const [first] = saidNow(state).items.filter(
    (item) => item.kind === 'fact' || item.kind === 'choice',
  );
  return first ? `Name it: say ${first.phrases[0]}.` : refusal(state);
}

/** "Two four point nine five millimetres. Correct?" */
export function readBack(pending: PendingNumber): string {
  return `${sentence(sayDigits(pending.value, pending.unit, pending.decimals))}. Correct?`;
}

export function questionFar(pending: PendingNumber, expected: number): string {
  const say = (value: number) => sayNumber(value, pending.unit, pending.decimals);
  return `Heard ${say(pending.value)}. Expected near ${say(expected)}. Say it again, or say keep.`;
}

export function outOfRange(
  value: number,
  range: { min: number; max: number; unit: string; decimals: number },
): string {
  const say = (one: number, unit = '') => sayNumber(one, unit, range.decimals);
  return `Heard ${say(value)}. It must be between ${say(range.min)} and ${say(range.max, range.unit)}. Measure again.`;
}

/** The whole present line, as after a pause. */
export function presentLine(view: View): string {
  return joined(view.lead, view.ask).spoken;
}
