/** The parts of a pedestal grinder in words. */

export const GRINDER_PARTS = [
  'wheels',
  'wheel-guard',
  'tongue-guard',
  'tool-rest',
  'guard',
  'motor',
  'selector',
  'emergency-stop',
  'water-pot',
  'pedestal',
] as const;

export type GrinderPart = (typeof GRINDER_PARTS)[number];
