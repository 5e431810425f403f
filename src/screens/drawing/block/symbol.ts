/**
 * The symbol of first-angle projection: a cut-off cone from its side, right of it the cone from its small end
 * (from memory: ISO 5456-2, annex A: the ends are as 1 to 2, the cone as long as its large end is high).
 */

import { type Ink, lineInk } from '../ink.ts';
import type { Place } from '../marks.ts';

/** Between the two views, and how far a centre line goes on beyond each, in parts of the large end. */
const APART = 0.5;
const OVERRUN = 0.2;
const STRETCHES = 48;

/** `large` is the diameter of the large end; `at` the middle of the small end, all in units of the sheet. */
export function projectionSymbol({ x, y }: Place, large: number): readonly Ink[] {
  const small = large / 2;
  const middle = { x: x + large * (1.5 + APART), y };
  const more = OVERRUN * large;
  const cone = [
    { x, y: y - small / 2 },
    { x: x + large, y: y - large / 2 },
    { x: x + large, y: y + large / 2 },
    { x, y: y + small / 2 },
    { x, y: y - small / 2 },
  ];
  const reach = large / 2 + more;
  const centres = [
    [
      { x: x - more, y },
      { x: x + large + more, y },
    ],
    [
      { x: middle.x - reach, y },
      { x: middle.x + reach, y },
    ],
    [
      { x: middle.x, y: y - reach },
      { x: middle.x, y: y + reach },
    ],
  ];
  const breadth = large * 0.025;
  return [
    ...[cone, circle(middle, small / 2), circle(middle, large / 2)].map((points) =>
      lineInk({ pen: 'firm', points }, breadth),
    ),
    ...centres.map((points) => lineInk({ pen: 'centre', points }, breadth)),
  ];
}

/** Closed: it ends where it begins. */
function circle({ x, y }: Place, radius: number): readonly Place[] {
  return Array.from({ length: STRETCHES + 1 }, (_, index) => {
    const turned = (2 * Math.PI * (index % STRETCHES)) / STRETCHES;
    return { x: x + radius * Math.cos(turned), y: y + radius * Math.sin(turned) };
  });
}
