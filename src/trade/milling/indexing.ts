/** Crank turns and plate holes of a dividing head. */

import { sequence, type Worded, worded } from '../../texts/index.ts';
import { aCount, aList, aNumber } from '../inputs.ts';
import { part } from '../part.ts';
import type { Rule, RuleInput, RuleValues, Worked } from '../rule.ts';
import { show } from '../show.ts';
import { fault, listOf, numberOf } from '../values.ts';

/** Holes of the circles. Source: from memory: three plates of an American 40 : 1 head. */
const usualCircles = [15, 16, 17, 18, 19, 20, 21, 23, 27, 29, 31, 33, 37, 39, 41, 43, 47, 49];
/** Turns that differ by less than this are the same: far below one hole of any plate. */
const SAME = 1e-7;

export interface Setting {
  readonly turns: number;
  readonly holes: number;
  readonly circle: number;
}

/**
 * Every way to make this part of a turn on these circles, smallest circle first. A whole number of
 * turns needs no circle: holes 0 on circle 0.
 */
export function settings(crank: number, circles: readonly number[]): readonly Setting[] {
  const turns = Math.floor(crank + SAME);
  const rest = crank - turns;
  if (Math.abs(rest) < SAME) return [{ turns, holes: 0, circle: 0 }];
  return [...circles]
    .sort((a, b) => a - b)
    .flatMap((circle) => {
      const holes = Math.round(rest * circle);
      return Math.abs(holes / circle - rest) < SAME ? [{ turns, holes, circle }] : [];
    });
}

export const settingWord = ({ turns, holes, circle }: Setting) =>
  sequence(
    [
      ...(turns > 0 || holes === 0 ? [turns === 1 ? '1 turn' : worded`${turns} turns`] : []),
      ...(holes > 0 ? [worded`${holes} holes on ${circle}`] : []),
    ],
    ' + ',
  );

/** The nearest that these circles can do, for the refusal. */
function nearest(crank: number, circles: readonly number[]): Setting | undefined {
  const rest = crank - Math.floor(crank);
  const tries = circles.map((circle) => ({
    turns: Math.floor(crank),
    holes: Math.round(rest * circle),
    circle,
  }));
  const off = ({ holes, circle }: Setting) => Math.abs(holes / circle - rest);
  return tries.sort((a, b) => off(a) - off(b))[0];
}

const circlesOf = (values: RuleValues) => {
  const own = listOf(values, 'circles');
  return own.length > 0 ? own : usualCircles;
};

function noSetting(what: Worded, crank: number, ratio: number, circles: readonly number[]): Worked {
  const close = nearest(crank, circles);
  const off = close === undefined ? 0 : close.turns + close.holes / close.circle - crank;
  const hint =
    close === undefined
      ? ''
      : worded` Nearest: ${settingWord(close)}, off by ${show((off * 360) / ratio, 3)}° a division.`;
  return fault(worded`${what} cannot be made by plain indexing with these plates.${hint}`);
}

function answer(what: Worded, sum: Worded, crank: number, values: RuleValues): Worked {
  const circles = circlesOf(values);
  const broken = circles.find((circle) => !Number.isInteger(circle));
  if (broken !== undefined)
    return fault(worded`A circle cannot have ${show(broken)} holes; list whole counts.`);
  const found = settings(crank, circles);
  const [first, ...others] = found;
  if (first === undefined) return noSetting(what, crank, numberOf(values, 'ratio'), circles);
  const also = others.length > 0 ? worded`; also ${sequence(others.map(settingWord), ', ')}` : '';
  const word = settingWord(first);
  return {
    ok: true,
    value: crank,
    word,
    working: worded`${sum} = ${show(crank, 6)} turns: ${word}${also}`,
    parts: {
      turns: part(first.turns, 'count', 'whole turns of the crank'),
      holes: part(first.holes, 'count', 'holes beyond them; the sector arms span one more'),
      circle: part(first.circle, 'count', 'hole circle; 0 when whole turns do'),
    },
  };
}

const headInputs: readonly RuleInput[] = [
  aNumber('ratio', 'ratio', [1, 360], 'crank turns for one turn of the spindle', { default: 40 }),
  aList('circles', 'count', [2, 500], 'holes of the circles you have', true),
];

const OUTPUT = {
  quantity: 'ratio',
  meaning: 'turns of the crank for one division',
  parts: { turns: 'count', holes: 'count', circle: 'count' },
} as const;

const CAUTIONS = [
  'Always turn the crank the same way; when it overshoots, go back more than the backlash.',
  'Lock the spindle before the cut and unlock it before the crank; keep clear of the cutter: it is stopped first.',
];

export const indexing: Rule = {
  name: 'indexing',
  title: 'Dividing head for a count',
  topic: 'milling',
  inputs: [aCount('divisions', [2, 5000], 'divisions round the work'), ...headInputs],
  output: OUTPUT,
  formula: 'turns = ratio ÷ divisions; the rest as holes on a circle that the fraction divides',
  source: 'US Army OD1644, indexing; plates from memory',
  cautions: CAUTIONS,
  work: (values) => {
    const [divisions, ratio] = [numberOf(values, 'divisions'), numberOf(values, 'ratio')];
    const sum = worded`${show(ratio)} ÷ ${divisions}`;
    return answer(worded`${divisions} divisions`, sum, ratio / divisions, values);
  },
};

export const indexAngle: Rule = {
  name: 'indexing-angle',
  title: 'Dividing head for an angle',
  topic: 'milling',
  inputs: [aNumber('angle', 'angle', [0, 360], 'angle to turn', { aboveMin: true }), ...headInputs],
  output: OUTPUT,
  formula: 'turns = angle × ratio ÷ 360; 9° a turn at 40 : 1',
  source: 'Fox Valley Technical College, angular indexing; Machinery’s Handbook 1916',
  cautions: CAUTIONS,
  work: (values) => {
    const [angle, ratio] = [numberOf(values, 'angle'), numberOf(values, 'ratio')];
    const sum = worded`${show(angle, 7)} × ${show(ratio)} ÷ 360`;
    return answer(worded`${show(angle, 7)}°`, sum, (angle * ratio) / 360, values);
  },
};
