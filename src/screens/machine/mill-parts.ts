/** The parts of a knee mill with a vertical head, in words. */
import type { PartFacts } from './picture.ts';

export type MillPart =
  | 'head'
  | 'gear-levers'
  | 'selector'
  | 'emergency-stop'
  | 'quill'
  | 'quill-lever'
  | 'cutter'
  | 'guard'
  | 'work'
  | 'vice'
  | 'table'
  | 'table-wheel'
  | 'saddle'
  | 'cross-wheel'
  | 'knee'
  | 'knee-crank'
  | 'column';

/** Each part: its name, what it is and where it is. Machines differ; the sentences say what is usual. */
export const MILL_PARTS: Readonly<Record<MillPart, PartFacts>> = {
  head: {
    name: 'Head',
    what: 'The top of the mill, with motor, gears and spindle, over the table.',
  },
  'gear-levers': {
    name: 'Speed levers',
    what: 'The levers on the front of the head that set the spindle speed; move them only when the spindle stands still.',
    alsoCalled: ['gear levers', 'speed lever'],
  },
  selector: {
    name: 'Motor selector',
    what: 'The switch on the control box at the left of the head for forward, off and reverse.',
    alsoCalled: ['selector', 'motor switch'],
  },
  'emergency-stop': {
    name: 'Emergency stop',
    what: 'The red mushroom button on the control box; press it first when anything goes wrong.',
    alsoCalled: ['e stop', 'red button'],
  },
  quill: { name: 'Quill', what: 'The sleeve that carries the spindle down out of the head.' },
  'quill-lever': {
    name: 'Quill lever',
    what: 'The lever at the right of the head that brings the quill down, as for drilling.',
  },
  cutter: {
    name: 'Cutter',
    what: 'The milling cutter in its collet or chuck at the lower end of the spindle.',
    alsoCalled: ['end mill', 'tool', 'milling cutter'],
  },
  guard: {
    name: 'Cutter guard',
    what: 'The clear shield round the cutter; closed, it stands between you and the cutter.',
    alsoCalled: ['guard', 'shield'],
  },
  work: {
    name: 'Work',
    what: 'The piece being milled, held in the vice.',
    alsoCalled: ['workpiece'],
  },
  vice: {
    name: 'Vice',
    what: 'The clamp with two jaws, bolted on the table.',
    alsoCalled: ['vise'],
  },
  table: { name: 'Table', what: 'The long slotted plate that carries the work, left to right.' },
  'table-wheel': {
    name: 'Table handwheel',
    what: 'The wheel at the left end of the table; it winds the table left and right.',
    alsoCalled: ['table wheel'],
  },
  saddle: { name: 'Saddle', what: 'The slide under the table that moves it in and out.' },
  'cross-wheel': {
    name: 'Cross handwheel',
    what: 'The wheel at the front of the knee; it winds the table in and out.',
    alsoCalled: ['cross wheel', 'saddle handwheel'],
  },
  knee: {
    name: 'Knee',
    what: 'The bracket on the column that carries saddle and table up and down.',
  },
  'knee-crank': {
    name: 'Knee crank',
    what: 'The crank at the front right of the knee; it raises and lowers the table.',
    alsoCalled: ['knee handle'],
  },
  column: { name: 'Column', what: 'The upright casting at the back that everything hangs on.' },
};
