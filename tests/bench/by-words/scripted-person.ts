/** A scripted person who can take one arrow of a step's chart by saying words that count. */

import { comeBack, hear, type RunState, saidNow } from '../../../src/bench/index.ts';
import { limitsOf, planAt, plausibleRange, positionOf } from '../../../src/flow/index.ts';
import type { ChartArrow } from './step-chart.ts';

/** Where a run stands within a step: "gate", "will-not-start.levers", or "out:STEP". */
export function placeIn(state: RunState, step: string): string {
  const at = positionOf(state.snapshot);
  if (at.step !== step) return `out:${at.step}`;
  return at.walk ? `${at.walk.id}.${at.walk.item}` : at.phase;
}

/** Called with every state that is come to, what was said, and the state before it. */
export type Look = (state: RunState, word: string, before: RunState) => void;

const mostWords = 30;
const opensAtOnce: ReadonlySet<string> = new Set(['open', 'start', 'dial']);

/** A gate whose facts are all known is passed in the same breath. */
function isAt({ to }: ChartArrow, place: string): boolean {
  return place === to || (to === 'gate' && opensAtOnce.has(place));
}

/** Takes the arrow; undefined when no word leads that way from here. */
export function take(
  state: RunState,
  step: string,
  arrow: ChartArrow,
  look: Look,
): RunState | undefined {
  const arrived = (next: RunState) => next !== state && isAt(arrow, placeIn(next, step));
  const attempts = [
    () => directly(state, arrow, look),
    () => afterAnswers(state, step, arrow, look),
  ];
  for (const attempt of attempts) {
    const next = attempt();
    if (next && arrived(next)) return next;
  }
  return undefined;
}

/** Answers what is asked, one after another, trying the arrow before each. */
function afterAnswers(
  state: RunState,
  step: string,
  arrow: ChartArrow,
  look: Look,
): RunState | undefined {
  let at = state;
  for (let words = 0; words < mostWords; words++) {
    const asked = saidNow(at).items.find((item) => item.kind === 'fact');
    if (!asked) return directly(at, arrow, look);
    const before = placeIn(at, step);
    at = says(at, asked.phrases[0] ?? '', look);
    if (isAt(arrow, placeIn(at, step))) return at;
    if (placeIn(at, step) !== before) return undefined;
    const tried = directly(at, arrow, look);
    if (tried && isAt(arrow, placeIn(tried, step))) return tried;
  }
  return undefined;
}

function directly(state: RunState, arrow: ChartArrow, look: Look): RunState | undefined {
  if (arrow.event === 'interrupted') {
    const { state: next } = comeBack(state, 3_000);
    look(next, 'interrupted', state);
    return next;
  }
  if (arrow.event === 'reading') return readsOff(state, arrow, look);
  const words = wordsFor(state, arrow);
  for (const word of words) {
    const next = says(state, word, look);
    if (isAt(arrow, placeIn(next, positionOf(state.snapshot).step))) return next;
  }
  return undefined;
}

/** Words of the said list whose event could be this arrow's. A loss leads along the arrows that need no event. */
function wordsFor(state: RunState, { event }: ChartArrow): readonly string[] {
  const wanted = event === 'always' ? 'fact' : event;
  return saidNow(state)
    .items.filter((item) => item.event?.type === wanted)
    .map((item) => item.phrases[0] ?? '');
}

export function says(state: RunState, word: string, look: Look): RunState {
  const heard = { text: word, alternatives: [], confidence: 1, from: 'script', at: 2_000 } as const;
  const { state: next } = hear(state, heard);
  look(next, word, state);
  return next;
}

function readsOff(state: RunState, { guard }: ChartArrow, look: Look): RunState | undefined {
  const value = valueFor(state, guard);
  if (value === undefined) return undefined;
  const said = says(state, String(value), look);
  const answer = saidNow(said).items.find(
    (item) => item.answer === 'correct' || item.answer === 'keep',
  );
  return answer && says(said, answer.phrases[0] ?? '', look);
}

function valueFor(state: RunState, guard: string): number | undefined {
  const step = planAt(state.job, state.snapshot)?.step;
  const number = saidNow(state).number;
  if (!step || !number) return undefined;
  const { readings } = state.snapshot.context;
  const range = plausibleRange(step, state.job.numbers, readings);
  if (!range) return undefined;
  if (step.kind !== 'inspect' && step.kind !== 'passes') {
    return round(number.expected ?? (range.lower + range.upper) / 2, number.decimals);
  }
  const limits = limitsOf(step, state.job.numbers, readings);
  if (!limits) return undefined;
  const clear = 20 * 10 ** -number.decimals;
  const large = guard === 'rework' ? step.side === 'outside' : step.side === 'inside';
  if (guard === 'within') return round((limits.lower + limits.upper) / 2, number.decimals);
  return round(large ? limits.upper + clear : limits.lower - clear, number.decimals);
}

function round(value: number, decimals: number): number {
  return Number(value.toFixed(decimals));
}
