/** The parts of a manual centre lathe. */

export const LATHE_PARTS = [
  'headstock',
  'gear-levers',
  'selector',
  'emergency-stop',
  'chuck',
  'key-hole',
  'guard',
  'work',
  'tool-post',
  'tool',
  'cross-slide',
  'cross-dial',
  'compound',
  'carriage',
  'carriage-wheel',
  'half-nut-lever',
  'feed-lever',
  'lead-screw',
  'tailstock',
  'quill',
  'tailstock-wheel',
  'bed',
  'ways',
] as const;

export type LathePart = (typeof LATHE_PARTS)[number];
