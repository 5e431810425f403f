/** What is said after a step of the chart: the news first, then what is to be done, and no more. */

import { type FlowSnapshot, type Job, joined, type View, viewOf } from '../flow/index.ts';
import { joinList } from '../words/index.ts';
import type { KeptReading } from './ports.ts';

export function announce(
  job: Job,
  before: FlowSnapshot,
  after: FlowSnapshot,
  reading?: KeptReading,
): string {
  const was = viewOf(job, before);
  const is = viewOf(job, after);
  const news = [verdictLine(job, reading), lossLine(was, is)];
  const line = sameScene(was, is) ? onward(is) : joined(is.lead, is.ask).spoken;
  return [...news, line].filter((text) => text !== '').join(' ');
}

function sameScene(was: View, is: View): boolean {
  return was.step.id === is.step.id && was.phase === is.phase && was.step.title === is.step.title;
}

/** Within a scene only the next question is new. */
function onward(is: View): string {
  return is.ask.spoken === '' ? is.lead.spoken : is.ask.spoken;
}

function lossLine(was: View, is: View): string {
  if (was.phase === 'hold' || is.held?.by !== 'loss' || is.held.lost.length === 0) return '';
  return `Lost: ${joinList(is.held.lost.map((label) => label.toLowerCase()))}.`;
}

/** Between passes, what is left says more than a verdict. */
function verdictLine(job: Job, reading: KeptReading | undefined): string {
  if (reading?.verdict === 'within') return 'Within.';
  if (reading?.verdict === 'lost') return 'Outside its limits: lost.';
  const inspected = reading && job.flow.steps.get(reading.step)?.kind === 'inspect';
  return reading?.verdict === 'rework' && inspected ? 'More to take off.' : '';
}
