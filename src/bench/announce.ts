/** What is said after a step of the chart: the news first, then what is to be done, and no more. */

import {
  askedFacts,
  type FlowSnapshot,
  type Job,
  joined,
  type Pace,
  type View,
} from '../flow/index.ts';
import { benchTexts, midSentence, sayIn } from '../texts/index.ts';
import { joinList } from '../words/index.ts';
import type { KeptReading } from './ports.ts';
import { viewAt } from './view-now.ts';

/** A move of the chart, with what is seen on both sides of it: views are worked out once. */
export interface Move {
  readonly job: Job;
  readonly before: FlowSnapshot;
  readonly after: FlowSnapshot;
  readonly was: View;
  readonly is: View;
  readonly reading: KeptReading | undefined;
}

export function moveOf(
  job: Job,
  before: FlowSnapshot,
  after: FlowSnapshot,
  reading: KeptReading | undefined,
  pace: Pace,
): Move {
  const [was, is] = [viewAt(job, before, pace), viewAt(job, after, pace)];
  return { job, before, after, was, is, reading };
}

export function announce(
  job: Job,
  before: FlowSnapshot,
  after: FlowSnapshot,
  reading?: KeptReading,
  pace: Pace = 'familiar',
): string {
  const move = moveOf(job, before, after, reading, pace);
  const { lead, ask } = move.is;
  const line = isSameScene(move) ? onward(move, pace) : joined(lead, ask).spoken;
  return joinLines([newsOf(move), titleOf(move), line]);
}

/** A step whose gate is met already is named all the same, where its first line is only to start the machine. */
export function titleOf({ was, is }: Move): string {
  return is.phase === 'start' && was.step.id !== is.step.id ? `${is.step.title}.` : '';
}

/** The verdict on a size that was just taken, and what was just lost. */
export function newsOf({ job, was, is, reading }: Move): string {
  return joinLines([verdictLine(job, reading), lossLine(job, was, is)]);
}

/** True where only the next question is new. */
export function isSameScene({ was, is }: Move): boolean {
  return was.step.id === is.step.id && was.phase === is.phase && was.step.title === is.step.title;
}

export function joinLines(lines: readonly string[]): string {
  return lines.filter((line) => line !== '').join(' ');
}

/** Within a scene only the next question is new; what was asked for in one breath is not asked again. */
function onward(move: Move, pace: Pace): string {
  if (pace === 'own-pace' && asksNothingNew(move)) return '';
  const { lead, ask } = move.is;
  return ask.spoken === '' ? lead.spoken : ask.spoken;
}

function asksNothingNew({ job, before, after }: Move): boolean {
  const was = new Set(askedFacts(job, before).map(({ fact }) => fact.id));
  const is = askedFacts(job, after).map(({ fact }) => fact.id);
  return is.length > 0 && is.every((fact) => was.has(fact));
}

function lossLine({ flow }: Job, was: View, is: View): string {
  if (was.phase === 'hold' || is.held?.by !== 'loss' || is.held.lost.length === 0) return '';
  const { language } = flow;
  const facts = is.held.lost.map((label) => midSentence(language, label));
  return sayIn(language, benchTexts)('lost', { facts: joinList(facts, 'and', language) });
}

/** Between passes, what is left says more than a verdict. */
function verdictLine(job: Job, reading: KeptReading | undefined): string {
  const say = sayIn(job.flow.language, benchTexts);
  if (reading?.verdict === 'within') return say('within');
  if (reading?.verdict === 'lost') return say('outside');
  const inspected = reading && job.flow.steps.get(reading.step)?.kind === 'inspect';
  return reading?.verdict === 'rework' && inspected ? say('moreToTake') : '';
}
