/** Where on the chasing dial the half-nuts may be closed. */

import { type Worded, worded } from '../../texts/index.ts';
import { aCount } from '../inputs.ts';
import { part } from '../part.ts';
import type { Rule, RuleValues, Worked } from '../rule.ts';
import { show } from '../show.ts';
import { fault, numberOf } from '../values.ts';
import { leadInputs, leadOf } from './lead.ts';

/** Leads whose ratio needs a larger number than this are taken as never meeting. */
const LARGEST_RATIO = 2000;
const SAME = 1e-9;

function divisor(a: number, b: number): number {
  return b === 0 ? a : divisor(b, a % b);
}

/** Turns of the lead screw after which thread and screw stand as at the start, or undefined. */
export function turnsToMeet(lead: number, screw: number): number | undefined {
  const ratio = lead / screw;
  for (let below = 1; below <= LARGEST_RATIO; below += 1) {
    const above = ratio * below;
    if (above > SAME && Math.abs(above - Math.round(above)) < SAME * below) {
      return Math.round(above);
    }
  }
  return undefined;
}

/** Every how many marks the nuts may close; 0 when the dial never helps. */
export function marksApart(turns: number, dialTeeth: number, marks: number): number {
  if (dialTeeth % turns !== 0) return 0;
  return (turns * marks) / divisor(dialTeeth, turns * marks);
}

function wordFor(turns: number, apart: number, marks: number): Worded {
  if (turns === 1) return 'any place';
  if (apart === 0) return 'keep closed';
  if (apart === 1) return 'any mark';
  return apart >= marks ? 'same mark' : worded`every ${apart} marks`;
}

function work(values: RuleValues): Worked {
  const lead = leadOf(values, 'pitch', 'tpi');
  const screw = leadOf(values, 'screwPitch', 'screwTpi');
  if (typeof lead !== 'number') return fault(lead.fault);
  if (typeof screw !== 'number') return fault(screw.fault);
  const [teeth, marks] = [numberOf(values, 'dialTeeth'), numberOf(values, 'marks')];
  const turns = turnsToMeet(lead, screw);
  const apart = turns === undefined ? 0 : marksApart(turns, teeth, marks);
  const word = wordFor(turns ?? 0, apart, marks);
  const meet = turns === undefined ? 'never within reach' : worded`after ${turns} lead-screw turns`;
  const closed =
    word === 'keep closed'
      ? '; leave the half-nuts closed, stop, withdraw the tool and reverse the spindle'
      : '';
  return {
    ok: true,
    value: apart,
    word,
    working: worded`lead ${show(lead, 6)} ÷ screw ${show(screw, 6)} mm: they meet ${meet}; dial turns once in ${teeth}, ${marks} marks: ${word}${closed}`,
    parts: { turns: part(turns ?? 0, 'count', 'lead-screw turns between meetings; 0 is never') },
  };
}

export const chasingDial: Rule = {
  name: 'chasing-dial',
  title: 'When to close the half-nuts',
  topic: 'threads',
  inputs: [
    ...leadInputs('pitch', 'tpi', 'the thread to cut'),
    ...leadInputs('screwPitch', 'screwTpi', 'the lead screw'),
    aCount('dialTeeth', [4, 120], 'teeth of the gear that turns the dial'),
    aCount('marks', [1, 24], 'marks on the dial', { default: 8 }),
  ],
  output: {
    quantity: 'count',
    meaning: 'every how many marks the half-nuts may close; 0: keep them closed',
    parts: { turns: 'count' },
  },
  formula:
    'lead ÷ screw = p ÷ q in lowest terms: the nuts fit every p screw turns; the dial serves when its teeth are a multiple of p',
  source: 'arithmetic; the same as the usual even, odd, half and quarter thread rules (practice)',
  cautions: [
    'When the half-nuts stay closed, withdraw the tool before the spindle is reversed.',
    'A chuck on a threaded spindle nose can unscrew when the spindle is reversed.',
  ],
  work,
};
