/** What a thread may measure: 6g and 6H, 2A and 2B. */

import { type Worded, worded } from '../../texts/index.ts';
import { lengthPart } from '../part.ts';
import type { Rule, RuleValues, Worked, WorkedPart } from '../rule.ts';
import { show } from '../show.ts';
import { fault, wordOf } from '../values.ts';
import { parseThread, type Thread } from './designation.ts';
import { metricLimits } from './metric-limits.ts';
import { type Side, sideInput, sideOf, threadInput } from './profile.ts';
import type { ThreadLimits } from './thread-limit-values.ts';
import { unifiedLimits } from './unified-limits.ts';

const ISO_SOURCE =
  'from memory: ISO 965-1 tables (checked against printed 6g and 6H tables and ISO 965-4); the bare formulas give es 29 and 37 at P 1.25 and 2, TD1 425 at P 2.5 and TD2 170 for M10';
const ASME_SOURCE = 'from memory: ASME B1.1 formulas (checked against its printed limits)';

/** Limits in mm of the usual class of its system, or why there are none. */
export function limitsOfThread(
  thread: Thread,
  side: Side,
): ThreadLimits | { readonly fault: Worded } {
  return thread.system === 'metric' ? metricLimits(thread, side) : unifiedLimits(thread, side);
}

function partsOf(limits: ThreadLimits): Record<string, WorkedPart> {
  const { pitchMin, pitchMax, majorMin, majorMax, minorMin, minorMax } = limits;
  return {
    pitchMin: lengthPart(pitchMin, 'smallest pitch diameter'),
    pitchMax: lengthPart(pitchMax, 'largest pitch diameter'),
    majorMin: lengthPart(majorMin, 'smallest major diameter'),
    minorMax: lengthPart(minorMax, 'largest minor diameter'),
    ...(majorMax === undefined ? {} : { majorMax: lengthPart(majorMax, 'largest major diameter') }),
    ...(minorMin === undefined
      ? {}
      : { minorMin: lengthPart(minorMin, 'smallest minor diameter') }),
  };
}

const span = (low: number | undefined, high: number | undefined) =>
  worded`${low === undefined ? 'any' : show(low, 6)} to ${high === undefined ? 'any' : show(high, 6)}`;

function work(values: RuleValues): Worked {
  const thread = parseThread(wordOf(values, 'thread'));
  if ('fault' in thread) return fault(thread.fault);
  const limits = limitsOfThread(thread, sideOf(values));
  if ('fault' in limits) return fault(limits.fault);
  const { className, pitchMin, pitchMax, majorMin, majorMax, minorMin, minorMax } = limits;
  return {
    ok: true,
    value: pitchMax,
    working: worded`${thread.name} ${className}: pitch diameter ${span(pitchMin, pitchMax)}, major ${span(majorMin, majorMax)}, minor ${span(minorMin, minorMax)} mm`,
    source: thread.system === 'metric' ? ISO_SOURCE : ASME_SOURCE,
    parts: partsOf(limits),
  };
}

export const threadLimits: Rule = {
  name: 'thread-limits',
  title: 'Limits of a thread',
  topic: 'threads',
  inputs: [threadInput, sideInput],
  output: {
    quantity: 'length',
    meaning: 'largest pitch diameter',
    parts: { pitchMin: 'length', pitchMax: 'length', majorMin: 'length', minorMax: 'length' },
  },
  formula:
    'Metric: basic − es, then − Td, − Td2 (screw); basic + TD2, + TD1 (nut), by table. Unified: Td2 = 0.0015 ∛D + 0.0015 √LE + 0.015 ∛P² in; allowance 0.3 Td2; major 0.060 ∛P²; nut 1.3 Td2',
  source: `${ISO_SOURCE}; ${ASME_SOURCE}`,
  cautions: ['Stop the spindle before a ring, plug or wire touches the thread.'],
  work,
};
