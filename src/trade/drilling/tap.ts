/** The hole for a tap, and how much thread a hole leaves. */

import { type Worded, worded } from '../../texts/index.ts';
import { aLength, aNumber, aText } from '../inputs.ts';
import { part } from '../part.ts';
import type { Rule, Worked } from '../rule.ts';
import { show } from '../show.ts';
import { HANDBOOK_31 } from '../sources.ts';
import { parseThread, type Thread } from '../threads/designation.ts';
import { fault, numberIf, numberOf, wordOf } from '../values.ts';
import { metricTapDrills, unifiedTapDrills } from './tap-drills.ts';

/** Diameter taken by 100 % of thread in pitches: handbook (0.75 H a side) and ISO (5/8 H a side). */
const HANDBOOK_BASE = 1.29904;
const ISO_BASE = 1.08253;

/** Percent of thread on the handbook's base. */
function percentOf(thread: Thread, hole: number, base: number): number {
  return ((thread.major - hole) / (base * thread.pitch)) * 100;
}

/** The drill that charts print for a thread: its name and mm, or undefined. */
function chartDrill(thread: Thread): { readonly name: string; readonly size: number } | undefined {
  const metric = metricTapDrills[thread.name];
  if (metric !== undefined) return { name: show(metric), size: metric };
  const unified = unifiedTapDrills[thread.name];
  return unified && { name: unified[0], size: (unified[1] * 127) / 5 };
}

const PERCENT_SOURCE =
  `Tap maker "Technical formulas" and ${HANDBOOK_31}, p. 2155: 100 % = 1.299 P on the diameter. ` +
  'On the ISO basis (1.0825 P) the same hole reads 1.2 times as much';

const cautions = [
  'Tap torque rises steeply with the percent of thread: 60-75 % holds; 50-60 % in stainless and tough metal.',
  'Start the tap square, use fluid, and turn back to break the chip; a broken tap flies.',
];

const threadInput = aText('thread', 'M10x1.5', 'the thread as a drawing writes it');

function answer(thread: Thread, drill: number, name: string, how: Worded): Worked {
  const percent = percentOf(thread, drill, HANDBOOK_BASE);
  const iso = percentOf(thread, drill, ISO_BASE);
  return {
    ok: true,
    value: drill,
    word: name,
    working: worded`${thread.name}: ${how} = ${show(drill, 5)} mm; ${show(percent, 3)} % of thread (ISO basis ${show(iso, 3)} %)`,
    parts: {
      percent: part(percent, 'percent', 'thread that is left, 100 % = 1.299 P'),
      isoPercent: part(iso, 'percent', 'the same on the ISO basis, 100 % = 1.0825 P'),
    },
  };
}

function forPercent(thread: Thread, percent: number): Worked {
  const value = thread.major - HANDBOOK_BASE * thread.pitch * (percent / 100);
  const how = worded`${show(thread.major)} − 1.299 × ${show(thread.pitch, 4)} × ${show(percent)} %`;
  return answer(thread, value, show(value, 4), how);
}

function withoutPercent(thread: Thread): Worked {
  const chart = chartDrill(thread);
  if (chart !== undefined)
    return answer(thread, chart.size, chart.name, worded`chart drill ${chart.name}`);
  const value = thread.major - thread.pitch;
  return answer(
    thread,
    value,
    show(value, 4),
    worded`no chart drill; ${show(thread.major)} − ${show(thread.pitch, 4)} (nominal less pitch)`,
  );
}

export const tapDrillRule: Rule = {
  name: 'tap-drill',
  title: 'Drill for a tapped hole',
  topic: 'drilling',
  inputs: [
    threadInput,
    aNumber('percent', 'percent', [30, 100], 'percent of thread that is wanted, 100 % = 1.299 P', {
      optional: true,
    }),
  ],
  output: {
    quantity: 'length',
    meaning: 'drill diameter; the word is its name',
    parts: { percent: 'percent', isoPercent: 'percent' },
  },
  formula:
    'without a percent: the chart, else nominal − pitch; with one: d = D − 1.29904 P × percent ÷ 100',
  source: `${PERCENT_SOURCE}. Charts: metric hole chart, Tap drill chart, Tap drill selector chart`,
  cautions,
  work: (values) => {
    const thread = parseThread(wordOf(values, 'thread'));
    if ('fault' in thread) return fault(thread.fault);
    const percent = numberIf(values, 'percent');
    return percent === undefined ? withoutPercent(thread) : forPercent(thread, percent);
  },
};

export const threadPercentRule: Rule = {
  name: 'thread-percent',
  title: 'Percent of thread that a hole leaves',
  topic: 'drilling',
  inputs: [threadInput, aLength('hole', 300, 'diameter of the hole')],
  output: {
    quantity: 'percent',
    meaning: 'percent of thread, 100 % = 1.299 P',
    parts: { isoPercent: 'percent' },
  },
  formula: '% = (D − d) ÷ (1.29904 P) × 100',
  source: PERCENT_SOURCE,
  cautions,
  work: (values) => {
    const thread = parseThread(wordOf(values, 'thread'));
    if ('fault' in thread) return fault(thread.fault);
    const hole = numberOf(values, 'hole');
    if (hole >= thread.major) {
      return fault(
        worded`A hole of ${show(hole)} mm is as large as the thread (${show(thread.major)} mm); nothing is left to cut.`,
      );
    }
    const value = percentOf(thread, hole, HANDBOOK_BASE);
    const iso = percentOf(thread, hole, ISO_BASE);
    return {
      ok: true,
      value,
      working: worded`(${show(thread.major)} − ${show(hole)}) ÷ (1.299 × ${show(thread.pitch, 4)}) = ${show(value, 4)} %; ISO basis ${show(iso, 4)} %`,
      parts: { isoPercent: part(iso, 'percent', 'the same on the ISO basis, 100 % = 1.0825 P') },
    };
  },
};
