/** Which pulley step of a drill press to lay the belt on. */

import { worded } from '../../texts/index.ts';
import { aLength, aList, aNumber } from '../inputs.ts';
import { part } from '../part.ts';
import type { Rule, RuleValues, Worked } from '../rule.ts';
import { show } from '../show.ts';
import {
  spindleSpeed,
  spindleWorking,
  surfaceSpeed,
  surfaceSpeedInput,
} from '../turning/spindle-speed.ts';
import { listOf, numberIf, numberOf } from '../values.ts';

const NEAR = 1 + 1e-9;

interface Step {
  readonly speed: number;
  /** 1 is the slowest. */
  readonly number: number;
  readonly ruledBy?: string;
}

/** The fastest step that is not above the ideal speed; the slowest one when all are. */
export function pulleyStep(ideal: number, steps: readonly number[]): Step {
  const sorted = [...steps].sort((a, b) => a - b);
  const below = sorted.filter((speed) => speed <= ideal * NEAR).length;
  const number = Math.max(below, 1);
  const speed = sorted[number - 1] ?? Number.NaN;
  if (below === 0) return { speed, number, ruledBy: 'the slowest pulley step' };
  if (below < sorted.length) return { speed, number };
  return { speed, number, ruledBy: 'the fastest pulley step' };
}

function work(values: RuleValues): Worked {
  const [wanted, drill] = [numberOf(values, 'surfaceSpeed'), numberOf(values, 'drill')];
  const cap = numberIf(values, 'limit') ?? Number.POSITIVE_INFINITY;
  const ideal = spindleSpeed(wanted, drill);
  const steps = listOf(values, 'steps');
  const slowest = Math.min(...steps);
  if (slowest > cap * NEAR) {
    return {
      ok: false,
      fault: worded`The slowest step, ${show(slowest)} rev/min, is above the ${show(cap)} this tool or work allows; use another machine.`,
    };
  }
  const { speed, number, ruledBy } = pulleyStep(Math.min(ideal, cap), steps);
  const capped = cap < ideal ? worded`; the limit of ${show(cap)} rules` : '';
  const fast =
    speed > ideal * NEAR ? '; faster than the edge wants, ease the feed and cool it' : '';
  const ruled = cap < ideal ? 'the limit of tool or work' : ruledBy;
  return {
    ok: true,
    value: speed,
    word: worded`step ${number}`,
    working: worded`${spindleWorking(wanted, drill)}${capped}; steps ${[...steps]
      .sort((a, b) => a - b)
      .map((one) => show(one))
      .join(
        ', ',
      )}: step ${number} from the slowest, ${show(speed)} rev/min, ${show(surfaceSpeed(speed, drill), 3)} m/min${fast}`,
    ...(ruled === undefined ? {} : { ruledBy: ruled }),
    parts: {
      ideal: part(ideal, 'spindleSpeed', 'speed before any limit'),
      step: part(number, 'count', 'pulley step, 1 is the slowest'),
    },
  };
}

export const drillPressSpeed: Rule = {
  name: 'drill-press-step',
  title: 'Pulley step of a drill press',
  topic: 'other machines',
  inputs: [
    surfaceSpeedInput,
    aLength('drill', 100, 'diameter of the drill'),
    aList('steps', 'spindleSpeed', [20, 20_000], 'speeds of the pulley steps'),
    aNumber('limit', 'spindleSpeed', [0, 20_000], 'highest speed the tool or work allows', {
      aboveMin: true,
      optional: true,
    }),
  ],
  output: {
    quantity: 'spindleSpeed',
    meaning: 'speed of the step',
    parts: { ideal: 'spindleSpeed', step: 'count' },
  },
  formula: 'n = 1000 v ÷ (π D), then the next lower step',
  source: 'Groover, Fundamentals of Modern Manufacturing 4e',
  cautions: [
    'Move the belt only with the machine isolated, and close the cover before it runs.',
    'Hold the work in a vice or clamped; ease off as the drill breaks through; no gloves.',
  ],
  work,
};
