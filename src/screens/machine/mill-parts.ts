/** The parts of a knee mill with a vertical head. */

export const MILL_PARTS = [
  'head',
  'drawbar',
  'gear-levers',
  'selector',
  'emergency-stop',
  'quill',
  'quill-lever',
  'cutter',
  'guard',
  'work',
  'vice',
  'table',
  'table-wheel',
  'saddle',
  'cross-wheel',
  'knee',
  'knee-crank',
  'column',
] as const;

export type MillPart = (typeof MILL_PARTS)[number];
