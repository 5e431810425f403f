/** The blade speed to set: the next lower one the saw's card has, never above any limit. */

import { worded } from '../../texts/index.ts';
import { aList, aNumber } from '../inputs.ts';
import { aLimit, cardLimit, limitsGiven, lowestOf, NEAR } from '../limits.ts';
import type { Rule, RuleValues, Worked } from '../rule.ts';
import { show } from '../show.ts';
import { PRACTICE } from '../sources.ts';
import { fault, listOf, numberOf } from '../values.ts';

/** Inputs that limit the speed, and what each limit is called. */
const limitNames = [
  ['cardLimit', "the saw's top speed"],
  ['workLimit', "the work's limit"],
] as const;

const MOST = 2000;

function work(values: RuleValues): Worked {
  const wanted = { name: 'the surface speed', speed: numberOf(values, 'surfaceSpeed') };
  const ceiling = lowestOf(wanted, limitsGiven(values, limitNames));
  const speeds = listOf(values, 'speeds');
  const allowed = speeds.filter((speed) => speed <= ceiling.speed * NEAR);
  if (allowed.length === 0) {
    return fault(
      worded`The slowest speed on the card is ${show(Math.min(...speeds))} m/min, and blade and work bear ${show(ceiling.speed, 3)}; no speed of this saw suits. Use another saw.`,
    );
  }
  const value = Math.max(...allowed);
  const top = value === Math.max(...speeds) && value < ceiling.speed / NEAR;
  const ruledBy = top ? "the saw's top speed" : ceiling.name;
  return {
    ok: true,
    value,
    ruledBy,
    working: worded`at most ${show(ceiling.speed, 3)} m/min; on the card: ${show(value, 3)} m/min (${ruledBy} rules)`,
  };
}

export const bandCardSpeed: Rule = {
  name: 'band-card-speed',
  title: "Blade speed to set on this saw's card",
  topic: 'other machines',
  inputs: [
    aNumber('surfaceSpeed', 'surfaceSpeed', [0, MOST], 'speed the blade and the work bear', {
      aboveMin: true,
    }),
    aList('speeds', 'surfaceSpeed', [1, MOST], "blade speeds on the saw's card"),
    cardLimit('surfaceSpeed', MOST),
    aLimit('workLimit', 'surfaceSpeed', MOST, 'highest speed the work allows'),
  ],
  output: { quantity: 'surfaceSpeed', meaning: 'blade speed to set' },
  formula: 'the highest card speed not above the one that blade, card and work bear',
  source: `the next lower step: ${PRACTICE}`,
  cautions: ['Set the speed as the manual of the saw says: some only stopped, some only running.'],
  work,
};
