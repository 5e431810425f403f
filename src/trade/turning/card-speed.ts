/** The speed to set: the next lower one the machine's card has, never above any limit. */

import { type Worded, worded } from '../../texts/index.ts';
import { aList } from '../inputs.ts';
import { aLimit, cardLimit, type Limit, limitsGiven, lowestOf, NEAR } from '../limits.ts';
import type { Rule, RuleInput, RuleValues, Worked } from '../rule.ts';
import { show, showList } from '../show.ts';
import { GROOVER } from '../sources.ts';
import { fault, listOf, numberOf } from '../values.ts';
import {
  diameterInput,
  spindleSpeed,
  spindleWorking,
  surfaceSpeed,
  surfaceSpeedInput,
} from './spindle-speed.ts';

const MOST = 60_000;

/** The inputs that describe the machine: its card and what else limits the speed. */
export const cardInputs = [
  aList('speeds', 'spindleSpeed', [1, MOST], "spindle speeds on the machine's card"),
  aLimit('chuckLimit', 'spindleSpeed', MOST, 'highest speed marked on the chuck'),
  cardLimit('spindleSpeed', MOST),
  aLimit(
    'workLimit',
    'spindleSpeed',
    MOST,
    'highest speed the work allows (overhang, balance, tool)',
  ),
] as const;

/** The same, for questions that may be asked away from a machine: the card may be left out. */
export const looseCardInputs: readonly RuleInput[] = cardInputs.map((input) => ({
  ...input,
  optional: true,
}));

/** Inputs that limit the speed, and what each limit is called. */
export const LIMIT_NAMES = [
  ['chuckLimit', "the chuck's mark"],
  ['cardLimit', "the card's top speed"],
  ['workLimit', "the work's limit"],
] as const;

function tooFast(slowest: number, limit: Limit): Worked {
  return fault(
    worded`The slowest speed on the card is ${show(slowest)} rev/min and ${limit.name} allows ${show(limit.speed)}; no speed of this machine is safe here. Use another machine, chuck or set-up.`,
  );
}

interface Choice {
  readonly speed: number;
  readonly ruledBy: string;
  readonly said: Worded;
}

function withoutCard(ceiling: Limit): Choice {
  return {
    speed: ceiling.speed,
    ruledBy: ceiling.name,
    said: worded`set at most ${show(ceiling.speed, 4)}`,
  };
}

function choose(ideal: Limit, speeds: readonly number[], ceiling: Limit): Choice {
  if (speeds.length === 0) return withoutCard(ceiling);
  const top = Math.max(...speeds);
  const allowed = speeds.filter((speed) => speed <= ceiling.speed * NEAR);
  if (allowed.length === 0) {
    const lowest = Math.min(...speeds);
    const said = worded`faster than the edge wants, the card's lowest: ${show(lowest)}`;
    return { speed: lowest, ruledBy: "the card's lowest speed", said };
  }
  const speed = Math.max(...allowed);
  if (ceiling.speed > top * NEAR) {
    return { speed, ruledBy: "the card's top speed", said: worded`top of the card: ${show(top)}` };
  }
  const capped = ceiling === ideal ? '' : worded`${ceiling.name} allows ${show(ceiling.speed)}; `;
  const step = speed * NEAR >= ceiling.speed ? 'on the card' : 'next lower on the card';
  return { speed, ruledBy: ceiling.name, said: worded`${capped}${step}: ${show(speed)}` };
}

/**
 * The card's speed in rev/min for a surface speed (m/min) on a diameter (mm), with the limit that
 * ruled. When even the lowest card speed is above the chuck, card or work limit there is none.
 * `values` holds the inputs named in `cardInputs`; without `speeds` the answer is the lowest limit.
 */
export function cardSpeed(wanted: number, diameter: number, values: RuleValues): Worked {
  const speeds = listOf(values, 'speeds');
  const ideal = { name: 'the surface speed', speed: spindleSpeed(wanted, diameter) };
  const limits = limitsGiven(values, LIMIT_NAMES);
  const slowest = Math.min(...speeds);
  const broken = limits.find((limit) => speeds.length > 0 && slowest > limit.speed * NEAR);
  if (broken !== undefined) return tooFast(slowest, broken);
  const { speed, ruledBy, said } = choose(ideal, speeds, lowestOf(ideal, limits));
  const real = surfaceSpeed(speed, diameter);
  return {
    ok: true,
    value: speed,
    ruledBy,
    working: worded`${spindleWorking(wanted, diameter)}; ${said} rev/min, ${show(real, 3)} m/min (${ruledBy} rules)`,
    parts: {
      ideal: { value: ideal.speed, quantity: 'spindleSpeed', meaning: 'speed before any limit' },
      surfaceSpeed: {
        value: real,
        quantity: 'surfaceSpeed',
        meaning: 'surface speed that results',
      },
    },
  };
}

export const cardSpeedRule: Rule = {
  name: 'card-speed',
  title: "Speed to set on this machine's card",
  topic: 'speeds and feeds',
  inputs: [diameterInput, surfaceSpeedInput, ...cardInputs],
  output: {
    quantity: 'spindleSpeed',
    meaning: 'speed to set',
    parts: { ideal: 'spindleSpeed', surfaceSpeed: 'surfaceSpeed' },
  },
  formula: 'the highest card speed not above 1000 v ÷ (π D), the chuck, the card or the work',
  source: `${GROOVER}; smallest of spindle, chuck and work limit: EN 1550, DIN 6386 and VDI 3106, as lathe and chuck manuals quote them (titles not kept)`,
  cautions: [
    'Out-of-balance work, long overhang or an open jaw needs less than this.',
    'Change belts or gears only with the spindle stopped and the machine isolated as local rules say.',
  ],
  work: (values) =>
    cardSpeed(numberOf(values, 'surfaceSpeed'), numberOf(values, 'diameter'), values),
};

export const nextCardSpeedRule: Rule = {
  name: 'card-steps',
  title: 'Diameters at which the card speed changes',
  topic: 'speeds and feeds',
  inputs: [surfaceSpeedInput, cardInputs[0]],
  output: {
    quantity: 'length',
    meaning: 'smallest diameter the lowest card speed suits',
    parts: { diameters: 'length' },
  },
  formula: 'D = 1000 v ÷ (π n) for each speed n on the card',
  source: GROOVER,
  cautions: [],
  work: (values) => {
    const speed = numberOf(values, 'surfaceSpeed');
    const speeds = [...listOf(values, 'speeds')].sort((a, b) => a - b);
    const diameters = speeds.map((one) => (1000 * speed) / (Math.PI * one));
    return {
      ok: true,
      value: diameters[0] ?? 0,
      working: worded`1000 × ${show(speed)} ÷ (π × n) for n = ${showList(speeds)}: ${showList(diameters, 4)} mm`,
      parts: {
        diameters: {
          value: diameters,
          quantity: 'length',
          meaning: 'at and below each diameter that card speed, lowest first, is not too fast',
        },
      },
    };
  },
};
