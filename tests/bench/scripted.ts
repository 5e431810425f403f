/** A scripted person at the shipped job: words in, what the bench says out. */

import {
  beginRun,
  type Heard,
  hear,
  type RunEntry,
  type RunHead,
  type RunState,
  startJob,
} from '../../src/bench/index.ts';
import { positionOf } from '../../src/flow/index.ts';
import { textOf } from '../flow/shipped.ts';

export const sources = (card = 'metric-lathe') => ({
  flow: textOf('gate-hinge-pin.json'),
  kind: textOf('kinds/lathe.json'),
  card: textOf(`machines/${card}.json`),
});

export const head: RunHead = {
  id: 'run-1',
  flowId: 'gate-hinge-pin',
  flowTitle: 'Gate hinge pin',
  flowVersion: 1,
  sourceKey: 'key',
  operator: 'Ida',
  startedAt: 1_000,
  status: 'open',
  inputs: {},
  cardId: 'metric-lathe',
};

export function shippedJob(card?: string) {
  const started = startJob(sources(card), {});
  if (!started.ok) throw new Error(started.faults.join('\n'));
  return started.job;
}

export interface Turn {
  readonly state: RunState;
  /** "step/phase" after the last word. */
  readonly at: string;
  /** What was said to the last word. */
  readonly line: string;
  readonly entries: readonly RunEntry[];
}

export function begun(card?: string): Turn {
  const { state, effects } = beginRun(shippedJob(card), head);
  return turnOf(state, effects, []);
}

export function heardAs(text: string, more: Partial<Heard> = {}): Heard {
  return { text, alternatives: [], confidence: 1, from: 'script', at: 2_000, ...more };
}

/** Says words one after another; a Heard can be given for anything unusual. */
export function hears(turn: Turn, ...words: readonly (string | Heard)[]): Turn {
  return words.reduce<Turn>((now, word) => {
    const step = hear(now.state, typeof word === 'string' ? heardAs(word) : word);
    return turnOf(step.state, step.effects, now.entries);
  }, turn);
}

function turnOf(
  state: RunState,
  effects: ReturnType<typeof hear>['effects'],
  before: readonly RunEntry[],
): Turn {
  const { step, phase } = positionOf(state.snapshot);
  const lines = effects.flatMap((effect) => (effect.kind === 'say' ? [effect.line] : []));
  const entries = effects.flatMap((effect) => (effect.kind === 'append' ? [effect.entry] : []));
  return { state, at: `${step}/${phase}`, line: lines.join(' '), entries: [...before, ...entries] };
}

/** Words that lead from the first step to the bar's measurement. */
export const toBar = [
  'next',
  'glasses on',
  'nothing loose',
  'stop released',
  'spindle stopped',
  'card agrees',
];
/** From there to the gate of the first cut. */
export const toFirstGate = [
  '25',
  'correct',
  'work clamped',
  'key out',
  'tool locked',
  'tailstock back',
  'turns free',
];
export const throughGate = ['tool clear', 'speed set', 'guard closed', 'hands clear'];
