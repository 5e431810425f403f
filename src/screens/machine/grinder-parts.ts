/** The parts of a pedestal grinder in words. */
import type { PartFacts } from './picture.ts';

export type GrinderPart =
  | 'wheels'
  | 'wheel-guard'
  | 'tongue-guard'
  | 'tool-rest'
  | 'guard'
  | 'motor'
  | 'selector'
  | 'emergency-stop'
  | 'water-pot'
  | 'pedestal';

/** Each part: its name, what it is and where it is. Machines differ; the sentences say what is usual. */
export const GRINDER_PARTS: Readonly<Record<GrinderPart, PartFacts>> = {
  wheels: {
    name: 'Wheels',
    what: 'The two abrasive wheels, one at each end of the motor: usually coarse and fine.',
    alsoCalled: ['wheel', 'grinding wheel', 'stone'],
  },
  'wheel-guard': {
    name: 'Wheel guards',
    what: 'The steel housings that close in the wheels except at the front; they hold the pieces if a wheel bursts.',
    alsoCalled: ['wheel guard', 'hood'],
  },
  'tongue-guard': {
    name: 'Tongue guard',
    what: 'The adjustable plate at the top of the wheel opening, set close to the wheel as it wears.',
    alsoCalled: ['spark arrester', 'tongue'],
  },
  'tool-rest': {
    name: 'Work rest',
    what: 'The small table in front of each wheel that the work lies on, set close to the wheel.',
    alsoCalled: ['tool rest', 'rest'],
  },
  guard: {
    name: 'Eye shield',
    what: 'The clear screen over the front of each wheel; safety glasses are worn behind it all the same.',
    alsoCalled: ['guard', 'shield', 'visor'],
  },
  motor: { name: 'Motor', what: 'The housing between the wheels.' },
  selector: {
    name: 'Switch',
    what: 'The on and off switch on the front of the pedestal.',
    alsoCalled: ['selector', 'on off switch', 'motor switch'],
  },
  'emergency-stop': {
    name: 'Emergency stop',
    what: 'The red mushroom button on the pedestal; press it first when anything goes wrong.',
    alsoCalled: ['e stop', 'red button'],
  },
  'water-pot': { name: 'Water pot', what: 'The cup on the pedestal for cooling the work.' },
  pedestal: {
    name: 'Pedestal',
    what: 'The column it stands on, bolted to the floor.',
    alsoCalled: ['stand'],
  },
};
