/** Which change gears cut a lead on this lead screw, and how far off it will be. */

import { type Worded, worded } from '../../texts/index.ts';
import { aList, aNumber } from '../inputs.ts';
import { lengthPart, part } from '../part.ts';
import type { Rule, RuleValues, Worked } from '../rule.ts';
import { show } from '../show.ts';
import { fault, listOf, numberOf } from '../values.ts';
import { nearestTrain, type Train } from './gear-trains.ts';
import { leadInputs, leadOf } from './lead.ts';

/** Ranged search: more gears than this take too long while somebody waits. */
const MOST_GEARS = 30;
/** Percent; a nut engages well within it. Common practice, no source. */
const FAIR_ERROR = 0.1;

const trainWord = ({ drivers, driven }: Train) =>
  drivers.map((driver, index) => `${driver}/${driven[index]}`).join(' × ');

function gearFault(gears: readonly number[]): Worded | undefined {
  if (gears.some((teeth) => !Number.isInteger(teeth))) return 'Gears have whole numbers of teeth.';
  if (gears.length < 2) return 'Two gears at least are needed; list every gear of the set.';
  if (gears.length > MOST_GEARS) return worded`List at most ${MOST_GEARS} gears at a time.`;
  return undefined;
}

function answer(lead: number, screw: number, stud: number, train: Train): Worked {
  const cut = train.ratio * stud * screw;
  const error = (cut / lead - 1) * 100;
  const fair = Math.abs(error) <= FAIR_ERROR ? '' : '; too far off for a nut, add gears to the set';
  const exact = Math.abs(error) < 1e-7 ? 'exact' : worded`${show(error, 3)} % off`;
  return {
    ok: true,
    value: cut,
    word: trainWord(train),
    working: worded`${show(lead, 6)} ÷ (${show(screw, 6)} × ${show(stud)}) = ${show(lead / (screw * stud), 6)}; drivers ${train.drivers.join(', ')}, driven ${train.driven.join(', ')}: ${show(train.ratio, 6)}, cuts ${show(cut, 6)} mm, ${exact}${fair}`,
    parts: {
      errorPercent: part(Math.abs(error) < 1e-7 ? 0 : error, 'percent', 'error of the lead'),
      errorOverInch: lengthPart((25.4 * error) / 100, 'error over 25.4 mm of thread'),
      drivers: part(train.drivers, 'count', 'teeth of the drivers, spindle side first'),
      driven: part(train.driven, 'count', 'teeth of the driven gears'),
    },
  };
}

function work(values: RuleValues): Worked {
  const lead = leadOf(values, 'pitch', 'tpi');
  const screw = leadOf(values, 'screwPitch', 'screwTpi');
  if (typeof lead !== 'number') return fault(lead.fault);
  if (typeof screw !== 'number') return fault(screw.fault);
  const gears = listOf(values, 'gears');
  const wrong = gearFault(gears);
  if (wrong !== undefined) return fault(wrong);
  const stud = numberOf(values, 'studRatio');
  const train = nearestTrain(lead / (screw * stud), gears);
  if (train === undefined) return fault('No train can be made of these gears.');
  return answer(lead, screw, stud, train);
}

export const changeGears: Rule = {
  name: 'change-gears',
  title: 'Change gears for a lead',
  topic: 'threads',
  inputs: [
    ...leadInputs('pitch', 'tpi', 'the thread to cut'),
    ...leadInputs('screwPitch', 'screwTpi', 'the lead screw'),
    aList('gears', 'count', [12, 150], 'teeth of every gear in the set, doubles twice'),
    aNumber('studRatio', 'ratio', [0.05, 20], 'turns of the first stud a spindle turn', {
      default: 1,
    }),
  ],
  output: {
    quantity: 'length',
    meaning: 'lead that these gears cut',
    parts: {
      errorPercent: 'percent',
      errorOverInch: 'length',
      drivers: 'count',
      driven: 'count',
    },
  },
  formula: 'drivers ÷ driven = lead ÷ (lead screw × stud ratio); simple before compound',
  source: 'geometry; stud clearance of 15 teeth: common practice, no source',
  cautions: [
    'Isolate the machine before the gear cover is opened, and close the cover before it runs.',
    'Turn the spindle by hand through one turn before power: the gears must not bind.',
  ],
  work,
};
