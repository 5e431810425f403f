/** The parts of a pillar drill press in words. */

export const DRILL_PARTS = [
  'head',
  'belt-cover',
  'selector',
  'emergency-stop',
  'feed-handles',
  'depth-stop',
  'quill',
  'chuck',
  'key-hole',
  'drill',
  'guard',
  'work',
  'vice',
  'table',
  'table-crank',
  'column',
  'base',
] as const;

export type DrillPart = (typeof DRILL_PARTS)[number];
