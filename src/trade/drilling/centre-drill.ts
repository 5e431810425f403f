/** Which centre drill for a diameter of work, and how deep. */

import { worded } from '../../texts/index.ts';
import { aLength } from '../inputs.ts';
import { lengthPart } from '../part.ts';
import type { Rule } from '../rule.ts';
import { show } from '../show.ts';
import { PRACTICE } from '../sources.ts';
import { numberOf } from '../values.ts';

interface CentreDrill {
  /** mm */
  readonly pilot: number;
  readonly body: number;
  readonly pilotLength: number;
}

/** Form A, 60°; nominal longest pilots. */
export const centreDrills: readonly CentreDrill[] = [
  { pilot: 1, body: 3.15, pilotLength: 1.9 },
  { pilot: 1.25, body: 3.15, pilotLength: 2.2 },
  { pilot: 1.6, body: 4, pilotLength: 2.8 },
  { pilot: 2, body: 5, pilotLength: 3.3 },
  { pilot: 2.5, body: 6.3, pilotLength: 4.1 },
  { pilot: 3.15, body: 8, pilotLength: 4.9 },
  { pilot: 4, body: 10, pilotLength: 6.2 },
  { pilot: 5, body: 12.5, pilotLength: 7.5 },
  { pilot: 6.3, body: 16, pilotLength: 9.2 },
  { pilot: 8, body: 20, pilotLength: 11.5 },
  { pilot: 10, body: 25, pilotLength: 14.2 },
];

/** The centre is opened to about twice the pilot: room for the cone and none to spare. */
const OPENED = 2;
/** Largest share of the work's diameter that the opened centre takes. */
const SHARE_OF_WORK = 0.3;

function depthOf({ pilot, pilotLength }: CentreDrill): number {
  const cone = (OPENED * pilot - pilot) / 2 / Math.tan(Math.PI / 6);
  return pilotLength + cone;
}

/** The largest centre drill whose opened centre is at most 0.3 of the work; the smallest below that. */
function centreDrillFor(work: number): CentreDrill | undefined {
  const fitting = centreDrills.filter((one) => one.pilot * OPENED <= work * SHARE_OF_WORK + 1e-9);
  return fitting.at(-1) ?? centreDrills[0];
}

export const centreDrillRule: Rule = {
  name: 'centre-drill',
  title: 'Centre drill for a diameter of work',
  topic: 'drilling',
  inputs: [aLength('workDiameter', 1000, 'diameter of the work at that end', {})],
  output: {
    quantity: 'length',
    meaning: 'pilot diameter',
    parts: { body: 'length', centreDiameter: 'length', depth: 'length' },
  },
  formula:
    'largest form A pilot with 2 × pilot not above 0.3 × the work; depth = pilot + 60° cone to 2 × pilot',
  source: `sizes from memory: ISO 866 / DIN 333-A; choice by diameter: ${PRACTICE}`,
  cautions: [
    'Take the speed for the pilot diameter and hold it to what the lathe and the chuck allow.',
    'Heavy work wants a larger centre; light work between soft centres a smaller one.',
  ],
  work: (values) => {
    const work = numberOf(values, 'workDiameter');
    const drill = centreDrillFor(work);
    if (drill === undefined || drill.body >= work * 2) {
      return {
        ok: false,
        fault: worded`Work of ${show(work)} mm is too thin for the smallest centre drill (body 3.15 mm); hold it another way.`,
      };
    }
    const opened = drill.pilot * OPENED;
    const depth = depthOf(drill);
    return {
      ok: true,
      value: drill.pilot,
      word: worded`${show(drill.pilot)} × ${show(drill.body)}`,
      working: worded`0.3 × ${show(work)} = ${show(SHARE_OF_WORK * work, 3)} mm of centre at most: pilot ${show(drill.pilot)}, body ${show(drill.body)}; opened to ${show(opened)} at ${show(depth, 3)} mm deep`,
      parts: {
        body: lengthPart(drill.body, 'diameter of the body'),
        centreDiameter: lengthPart(opened, 'diameter of the opened centre'),
        depth: lengthPart(depth, 'depth of the tip'),
      },
    };
  },
};
