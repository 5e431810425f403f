/** The parts of a horizontal metal-cutting band saw in words. */

export const SAW_PARTS = [
  'saw-frame',
  'blade',
  'blade-guides',
  'guard',
  'blade-tension',
  'down-feed',
  'coolant',
  'work',
  'vice',
  'vice-wheel',
  'selector',
  'emergency-stop',
  'base',
] as const;

export type SawPart = (typeof SAW_PARTS)[number];
