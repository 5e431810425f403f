/**
 * Every line the bench can say in a flow, with a state it is said in: each word that counts is said in each situation
 * of each step, at each pace; sizes are answered right, far off and impossibly. Flows are those of the folder.
 */
import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import {
  type BenchItem,
  beginRun,
  type Heard,
  hear,
  missed,
  type RunHead,
  type RunState,
  saidNow,
} from '../../src/bench/index.ts';
import { fittingJob, situationsOf } from '../../src/cli/hear-flow.ts';
import { type FlowSnapshot, type Job, type Pace, positionOf } from '../../src/flow/index.ts';

/** A line, and the run as it stands when it is said. */
export interface LineSaid {
  readonly line: string;
  readonly state: RunState;
}

const folder = new URL('../../flows/', import.meta.url).pathname;

export function flowFiles(): readonly string[] {
  return readdirSync(folder)
    .filter((name) => name.endsWith('.json'))
    .sort()
    .map((name) => join(folder, name));
}

/** At most one state a line: the first it was said in. */
export function linesOf(file: string): readonly LineSaid[] {
  const fitting = fittingJob(file);
  if ('fault' in fitting) throw new Error(fitting.fault);
  const { job } = fitting;
  const lines = new Map<string, RunState>();
  const say = ({ line, state }: LineSaid) => {
    if (line !== '' && !lines.has(line)) lines.set(line, state);
  };
  const situations = situationsOf(job);
  for (const pace of ['first-time', 'familiar', 'own-pace'] as const) {
    for (const state of unlike(job, pace, situations))
      for (const said of answersAt(state)) say(said);
  }
  return [...lines].map(([line, state]) => ({ line, state }));
}

/** The begun run, put into each situation in which something else may be said. */
function unlike(job: Job, pace: Pace, situations: readonly FlowSnapshot[]): readonly RunState[] {
  const seen = new Map<string, RunState>();
  const begun = beginRun(job, headOf(job, pace)).state;
  for (const snapshot of situations) {
    const state = { ...begun, snapshot };
    const { step, phase } = positionOf(snapshot);
    const words = saidNow(state).items.filter(isPlain);
    const key = [step, phase, ...words.map(({ id }) => id)].join();
    if (!seen.has(key)) seen.set(key, state);
  }
  return [...seen.values()];
}

/** What is said to each word that counts, and to sizes. */
function* answersAt(state: RunState): Generator<LineSaid> {
  const { items } = saidNow(state);
  const worksOut = positionOf(state.snapshot).phase === 'dial' && state.pace === 'first-time';
  for (const item of items) {
    const [phrase = ''] = item.phrases;
    if (isPlain(item) || worksOut) yield* answers(state, phrase);
  }
  yield* answers(state, 'yes');
  yield* linesFrom(missed(state, heardAs('')));
  for (const size of sizesAt(state)) {
    for (const { state: waiting, line } of answers(state, size)) {
      yield { state: waiting, line };
      for (const word of ['repeat', 'wrong', 'keep', 'correct']) yield* answers(waiting, word);
    }
  }
}

function isPlain({ kind }: BenchItem): boolean {
  return kind !== 'adjust';
}

function sizesAt(state: RunState): readonly string[] {
  const { number } = saidNow(state);
  if (!number) return [];
  const { min, max, expected = (min + max) / 2, decimals } = number;
  return [expected, min, max, 2 * max].map((size) => size.toFixed(decimals));
}

function answers(state: RunState, text: string): readonly LineSaid[] {
  return linesFrom(hear(state, heardAs(text)));
}

function linesFrom({ state, effects }: ReturnType<typeof hear>): readonly LineSaid[] {
  return effects.flatMap((effect) => (effect.kind === 'say' ? [{ line: effect.line, state }] : []));
}

function heardAs(text: string): Heard {
  return { text, alternatives: [], confidence: 1, from: 'script', at: 0 };
}

function headOf({ flow, card }: Job, pace: Pace): RunHead {
  const { id, title, version } = flow.file;
  return {
    ...{ id: 'lines', flowId: id, flowTitle: title, flowVersion: version, pace },
    ...{ sourceKey: '', operator: 'Ida', startedAt: 0, status: 'open', inputs: {} },
    cardId: card.id,
  };
}
