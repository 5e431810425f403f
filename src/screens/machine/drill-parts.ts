/** The parts of a pillar drill press in words. */
import type { PartFacts } from './picture.ts';

export type DrillPart =
  | 'head'
  | 'belt-cover'
  | 'selector'
  | 'emergency-stop'
  | 'feed-handles'
  | 'depth-stop'
  | 'quill'
  | 'chuck'
  | 'key-hole'
  | 'drill'
  | 'guard'
  | 'work'
  | 'vice'
  | 'table'
  | 'table-crank'
  | 'column'
  | 'base';

/** Each part: its name, what it is and where it is. Machines differ; the sentences say what is usual. */
export const DRILL_PARTS: Readonly<Record<DrillPart, PartFacts>> = {
  head: { name: 'Head', what: 'The casting at the top of the column with spindle and controls.' },
  'belt-cover': {
    name: 'Belt cover',
    what: 'The lid on top of the head over belt and pulleys; it stays shut while the motor runs.',
    alsoCalled: ['pulley cover'],
  },
  selector: {
    name: 'Switch',
    what: 'The on and off switch on the front of the head.',
    alsoCalled: ['selector', 'motor switch', 'on off switch'],
  },
  'emergency-stop': {
    name: 'Emergency stop',
    what: 'The red mushroom button on the head; press it first when anything goes wrong.',
    alsoCalled: ['e stop', 'red button'],
  },
  'feed-handles': {
    name: 'Feed handles',
    what: 'The three spokes at the right of the head; pull them towards you and the drill goes down.',
    alsoCalled: ['feed handle', 'feed lever', 'quill handles'],
  },
  'depth-stop': {
    name: 'Depth stop',
    what: 'The threaded rod with two nuts at the left of the quill; it ends the travel at the set depth.',
  },
  quill: { name: 'Quill', what: 'The sleeve that carries the spindle down out of the head.' },
  chuck: {
    name: 'Drill chuck',
    what: 'The clamp at the lower end of the spindle that grips the drill.',
  },
  'key-hole': {
    name: 'Key hole',
    what: 'The hole in the side of the drill chuck for the chuck key; the key never stays in it.',
    alsoCalled: ['chuck key', 'chuck key hole'],
  },
  drill: { name: 'Drill', what: 'The twist drill in the chuck.', alsoCalled: ['drill bit', 'bit'] },
  guard: {
    name: 'Chuck guard',
    what: 'The clear shield round chuck and drill; closed, it hangs in front of them.',
    alsoCalled: ['guard', 'shield'],
  },
  work: {
    name: 'Work',
    what: 'The piece being drilled, clamped in the vice.',
    alsoCalled: ['workpiece'],
  },
  vice: {
    name: 'Vice',
    what: 'The clamp that holds the work; bolted or stopped against turning on the table.',
    alsoCalled: ['vise', 'drill vice'],
  },
  table: { name: 'Table', what: 'The plate on the column that carries vice and work.' },
  'table-crank': {
    name: 'Table crank',
    what: 'The crank at the right behind the table; it winds the table up and down the column.',
    alsoCalled: ['table handle'],
  },
  column: { name: 'Column', what: 'The round pillar from base to head.', alsoCalled: ['pillar'] },
  base: { name: 'Base', what: 'The heavy foot on the floor, bolted down.' },
};
