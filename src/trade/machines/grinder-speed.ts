/** The turns that a wheel's mark allows, and which speed of a grinder's plate they let run. */

import { worded } from '../../texts/index.ts';
import { aLength, aList, aNumber } from '../inputs.ts';
import { aLimit, cardLimit, limitsGiven, lowestOf, NEAR } from '../limits.ts';
import type { Rule, RuleValues, Worked } from '../rule.ts';
import { show } from '../show.ts';
import { fault, listOf, numberOf } from '../values.ts';
import { wheelTurns } from './wheel-speed.ts';

const MOST = 60_000;

const wheelInput = aLength('wheel', 1000, 'diameter of the wheel, new');
const markInput = aNumber(
  'markedSpeed',
  'wheelSpeed',
  [0, 200],
  'surface speed marked on the wheel',
  { aboveMin: true },
);

export const wheelTurnsRule: Rule = {
  name: 'wheel-turns',
  title: "Turns that a grinding wheel's mark allows",
  topic: 'other machines',
  inputs: [wheelInput, markInput],
  output: { quantity: 'spindleSpeed', meaning: 'highest spindle speed the mark allows' },
  formula: 'n = 60 000 v ÷ (π D)',
  source: 'reckoned; agrees with the table of wheel speeds of ANSI B7.1 (from memory)',
  cautions: ['Reckon with the new wheel: worn, it is slower at its rim, but its mark stays.'],
  work: (values) => {
    const [wheel, marked] = [numberOf(values, 'wheel'), numberOf(values, 'markedSpeed')];
    const value = wheelTurns(wheel, marked);
    return {
      ok: true,
      value,
      working: worded`60 000 × ${show(marked)} ÷ (π × ${show(wheel)}) = ${show(value, 4)} rev/min`,
    };
  },
};

/** Inputs that limit the speed, and what each limit is called. */
const limitNames = [
  ['chuckLimit', "the wheel's mark"],
  ['cardLimit', "the grinder's top speed"],
  ['workLimit', "the work's limit"],
] as const;

function work(values: RuleValues): Worked {
  const speeds = listOf(values, 'speeds');
  const turns = wheelTurns(numberOf(values, 'wheel'), numberOf(values, 'markedSpeed'));
  const ofMark = { name: 'the mark for a wheel of this size', speed: turns };
  const ceiling = lowestOf(ofMark, limitsGiven(values, limitNames));
  const allowed = speeds.filter((speed) => speed <= ceiling.speed * NEAR);
  if (allowed.length === 0) {
    return fault(
      worded`The slowest speed of this grinder is ${show(Math.min(...speeds))} rev/min, and ${ceiling.name} allows ${show(ceiling.speed, 4)}: the wheel can burst. It is not run; a trained person changes it.`,
    );
  }
  const value = Math.max(...allowed);
  return {
    ok: true,
    value,
    ruledBy: ceiling.name,
    working: worded`the mark allows ${show(turns, 4)} rev/min; on the plate: ${show(value)} rev/min (${ceiling.name} rules)`,
  };
}

export const grinderSpeed: Rule = {
  name: 'grinder-speed',
  title: 'Speed of a grinder that its wheels allow',
  topic: 'other machines',
  inputs: [
    wheelInput,
    markInput,
    aList('speeds', 'spindleSpeed', [1, MOST], "spindle speeds on the grinder's plate"),
    aLimit('chuckLimit', 'spindleSpeed', MOST, 'lowest of the speeds marked on its wheels'),
    cardLimit('spindleSpeed', MOST),
    aLimit('workLimit', 'spindleSpeed', MOST, 'highest speed the work allows'),
  ],
  output: { quantity: 'spindleSpeed', meaning: 'speed that it may run at' },
  formula: 'the highest speed on the plate not above any mark; refused where none is',
  source: '29 CFR 1910.215(d)(1): spindle speed not above the mark',
  cautions: [
    'Most grinders have one speed: it is the wheel that must suit, and trained people mount it.',
  ],
  work,
};
