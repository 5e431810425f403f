/** Table feed of a milling cutter, and the speed it turns at. */

import { worded } from '../../texts/index.ts';
import { aCount, aLength, aList, aNumber } from '../inputs.ts';
import { part } from '../part.ts';
import type { Rule, RuleValues, Worked } from '../rule.ts';
import { show } from '../show.ts';
import { cardSpeed, looseCardInputs } from '../turning/card-speed.ts';
import { surfaceSpeedInput } from '../turning/spindle-speed.ts';
import { fault, listOf, numberOf } from '../values.ts';

const CAUTIONS = [
  'The next lower speed of the card, never above the marks on cutter, arbor or machine.',
  'Feed against the cutter on a machine without backlash take-up; climb milling can pull the work in.',
];

export const cutterSpeed: Rule = {
  name: 'cutter-speed',
  title: 'Spindle speed of a milling cutter',
  topic: 'milling',
  inputs: [
    surfaceSpeedInput,
    aLength('cutter', 1000, 'diameter of the cutter'),
    ...looseCardInputs,
  ],
  output: {
    quantity: 'spindleSpeed',
    meaning: 'speed to set',
    parts: { ideal: 'spindleSpeed', surfaceSpeed: 'surfaceSpeed' },
  },
  formula: 'n = 1000 v ÷ (π D), then the next lower speed of the card and no mark passed',
  source: 'Groover, Fundamentals of Modern Manufacturing 4e',
  cautions: CAUTIONS,
  work: (values) => cardSpeed(numberOf(values, 'surfaceSpeed'), numberOf(values, 'cutter'), values),
};

export const teethInput = aCount('teeth', [1, 100], 'teeth of the cutter');
export const perToothInput = aNumber('feedPerTooth', 'feedPerTooth', [0, 5], 'feed a tooth', {
  aboveMin: true,
});
export const spindleInput = aNumber(
  'spindleSpeed',
  'spindleSpeed',
  [0, 60_000],
  'spindle speed that is set',
  { aboveMin: true },
);

function work(values: RuleValues): Worked {
  const [perTooth, teeth] = [numberOf(values, 'feedPerTooth'), numberOf(values, 'teeth')];
  const spindle = numberOf(values, 'spindleSpeed');
  const ideal = perTooth * teeth * spindle;
  const sum = worded`${show(perTooth)} × ${show(teeth)} × ${show(spindle)} = ${show(ideal, 5)} mm/min`;
  const feeds = listOf(values, 'feeds');
  const idealPart = { ideal: part(ideal, 'feedRate', 'feed before the card') };
  if (feeds.length === 0) return { ok: true, value: ideal, working: sum, parts: idealPart };
  const allowed = feeds.filter((feed) => feed <= ideal * (1 + 1e-9));
  if (allowed.length === 0) {
    return fault(
      worded`The slowest table feed, ${show(Math.min(...feeds))} mm/min, is above the wanted ${show(ideal, 4)}; feed by hand, turn the cutter faster within its limits, or take less depth.`,
    );
  }
  const value = Math.max(...allowed);
  return {
    ok: true,
    value,
    working: worded`${sum}; next lower on the card: ${show(value)} mm/min, ${show(value / (teeth * spindle), 3)} mm a tooth`,
    ...(value < ideal ? { ruledBy: "the card's table feeds" } : {}),
    parts: idealPart,
  };
}

export const tableFeed: Rule = {
  name: 'table-feed',
  title: 'Table feed from the feed a tooth',
  topic: 'milling',
  inputs: [
    perToothInput,
    teethInput,
    spindleInput,
    aList('feeds', 'feedRate', [0.1, 20_000], 'table feeds on the card', true),
  ],
  output: { quantity: 'feedRate', meaning: 'table feed to set', parts: { ideal: 'feedRate' } },
  formula: 'vf = fz z n',
  source:
    'Groover, Fundamentals of Modern Manufacturing 4e; Tool-maker technical pages on milling (titles not kept)',
  cautions: CAUTIONS,
  work,
};
