/** The groove at the end of a thread: how deep and how wide. */

import { worded } from '../../texts/index.ts';
import { lengthPart } from '../part.ts';
import type { Rule, RuleValues, Worked } from '../rule.ts';
import { show } from '../show.ts';
import { fault, wordOf } from '../values.ts';
import { parseThread } from './designation.ts';
import { sideInput, sideOf, threadInput } from './profile.ts';

/** mm: pitch; screw groove below the major diameter, least straight width, most width; nut groove over it, least, most width; root radius. */
type Row = readonly [
  pitch: number,
  screwBelow: number,
  screwLeast: number,
  screwMost: number,
  nutOver: number,
  nutLeast: number,
  nutMost: number,
  radius: number,
];

/** Source: from memory: DIN 76-1, usual form; ISO 3508 and ISO 4755 are near. */
const rows: readonly Row[] = [
  [0.5, 0.8, 1.1, 1.75, 0.3, 2, 2.7, 0.2],
  [0.6, 1, 1.2, 2.1, 0.3, 2.4, 3.3, 0.4],
  [0.7, 1.1, 1.5, 2.45, 0.3, 2.8, 3.8, 0.4],
  [0.75, 1.2, 1.6, 2.6, 0.3, 3, 4, 0.4],
  [0.8, 1.3, 1.7, 2.8, 0.3, 3.2, 4.2, 0.4],
  [1, 1.6, 2.1, 3.5, 0.5, 4, 5.2, 0.6],
  [1.25, 2, 2.7, 4.4, 0.5, 5, 6.7, 0.6],
  [1.5, 2.3, 3.2, 5.2, 0.5, 6, 7.8, 0.8],
  [1.75, 2.6, 3.9, 6.1, 0.5, 7, 9.1, 1],
  [2, 3, 4.5, 7, 0.5, 8, 10.3, 1],
  [2.5, 3.6, 5.6, 8.7, 0.5, 10, 13, 1.2],
  [3, 4.4, 6.7, 10.5, 0.5, 12, 15.2, 1.6],
  [3.5, 5, 7.7, 12, 0.5, 14, 17.7, 1.6],
  [4, 5.7, 9, 14, 0.5, 16, 20, 2],
  [4.5, 6.4, 10.5, 16, 0.5, 18, 23, 2],
  [5, 7, 11.5, 17.5, 0.5, 20, 26, 2.5],
  [5.5, 7.7, 12.5, 19, 0.5, 22, 28, 3.2],
  [6, 8.3, 14, 21, 0.5, 24, 30, 3.2],
];

function work(values: RuleValues): Worked {
  const thread = parseThread(wordOf(values, 'thread'));
  if ('fault' in thread) return fault(thread.fault);
  const row = rows.find(([pitch]) => thread.pitch <= pitch + 1e-9);
  if (row === undefined || thread.pitch < 0.5) {
    return fault(
      worded`The relief table holds pitches from 0.5 to 6 mm, not ${show(thread.pitch)}; draw the groove a little under the root, three pitches wide.`,
    );
  }
  const [pitch, below, screwLeast, screwMost, over, nutLeast, nutMost, radius] = row;
  const outside = sideOf(values) === 'external';
  const diameter = outside ? thread.major - below : thread.major + over;
  const [least, most] = outside ? [screwLeast, screwMost] : [nutLeast, nutMost];
  const change = outside ? worded`− ${below}` : worded`+ ${over}`;
  return {
    ok: true,
    value: diameter,
    working: worded`${thread.name}, row for pitch ${pitch}: groove diameter ${show(thread.major, 6)} ${change} = ${show(diameter, 6)} mm; straight width at least ${least}, whole width at most ${most}, corner radius about ${radius} mm`,
    parts: {
      leastWidth: lengthPart(least, 'least straight width'),
      mostWidth: lengthPart(most, 'most width of the whole groove'),
      radius: lengthPart(radius, 'corner radius, about'),
    },
  };
}

export const threadRelief: Rule = {
  name: 'thread-relief',
  title: 'Relief groove of a thread',
  topic: 'threads',
  inputs: [threadInput, sideInput],
  output: {
    quantity: 'length',
    meaning: 'diameter of the groove',
    parts: { leastWidth: 'length', mostWidth: 'length', radius: 'length' },
  },
  formula: 'table by pitch; a pitch between two rows takes the larger',
  source: 'from memory: DIN 76-1',
  cautions: ['A relief groove weakens the work: keep long thin work supported while it is cut.'],
  work,
};
