/** A person who does everything right: says the first thing asked, and measures what the cut should have made. */

import {
  beginJob,
  type FlowEvent,
  type FlowSnapshot,
  type Job,
  limitsOf,
  positionOf,
  type SaidList,
  saidList,
  stepJob,
} from '../../src/flow/index.ts';
import { type Quantity, toBase } from '../../src/trade/index.ts';

const mostTurns = 600;

/** Every snapshot from the first to the end; throws when it goes in circles. */
export function walkRight(job: Job): readonly FlowSnapshot[] {
  const path = [beginJob(job)];
  for (let at = path[0]; at && path.length < mostTurns; at = path.at(-1)) {
    if (positionOf(at).phase === 'end') return path;
    path.push(stepJob(job, at, rightEvent(job, at)));
  }
  const last = path.at(-1);
  throw new Error(`No end after ${mostTurns} turns: ${last && JSON.stringify(last.value)}`);
}

export function rightEvent(job: Job, at: FlowSnapshot): FlowEvent {
  const said = saidList(job, at);
  const fact = said.items.find((item) => item.kind === 'fact');
  if (fact?.event) return fact.event;
  if (said.number) return { type: 'reading', value: rightReading(job, at, said.number) };
  const choice = said.items.find((item) => item.kind === 'choice');
  return choice?.event ?? { type: 'next' };
}

/** As it is read off the gauge: rounded to the decimals that the machine is read in. */
function rightReading(job: Job, at: FlowSnapshot, number: NonNullable<SaidList['number']>): number {
  const step = job.flow.steps.get(positionOf(at).step);
  const limits =
    step?.kind === 'inspect' ? limitsOf(step, job.numbers, at.context.readings) : undefined;
  if (limits) return (limits.lower + limits.upper) / 2;
  const seen = number.expected ?? (number.min + number.max) / 2;
  return toBase(Number(seen.toFixed(number.decimals)), number.unit, number.quantity as Quantity);
}
