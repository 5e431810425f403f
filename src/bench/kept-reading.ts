/** A taken reading as the record keeps it: in the unit it was read in, with its limits and verdict. */

import {
  type FlowEvent,
  type FlowSnapshot,
  formatOf,
  type Job,
  judge,
  type Limits,
  limitsOf,
  planAt,
  shownAs,
} from '../flow/index.ts';
import type { Quantity } from '../trade/index.ts';
import type { KeptReading } from './ports.ts';

/** Nothing when the event is no reading of the step that `before` stands in. */
export function keptReading(
  job: Job,
  before: FlowSnapshot,
  event: FlowEvent,
  at: number,
): KeptReading | undefined {
  const step = planAt(job, before)?.step;
  if (event.type !== 'reading' || !step || !('reading' in step)) return undefined;
  const { reading } = step;
  const quantity = reading.quantity as Quantity;
  const format = formatOf(quantity, job.card.units, reading);
  const inUnit = (value: number) => shownAs(value, quantity, format).value;
  const judged = step.kind === 'inspect' || step.kind === 'passes';
  const limits = judged ? limitsOf(step, job.numbers, before.context.readings) : undefined;
  const verdict = judged && limits ? judge(event.value, limits, step.side) : undefined;
  return {
    step: step.id,
    reading: reading.id,
    label: reading.label,
    unit: format.unit,
    value: inUnit(event.value),
    at,
    ...(limits ? limitsIn(limits, inUnit) : {}),
    ...(verdict ? { verdict } : {}),
  };
}

function limitsIn(limits: Limits, inUnit: (value: number) => number): Limits {
  return { lower: inUnit(limits.lower), upper: inUnit(limits.upper) };
}
