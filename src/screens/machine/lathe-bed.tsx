/** Drawings of the lathe's bed and of the tailstock on it. */
import type { LathePart } from './lathe-parts.ts';
import type { PartArt } from './picture.ts';
import { GROUND } from './picture.ts';

const THIN = 1.6;

/** Drawn first: everything else stands on it. */
export const LATHE_BED: readonly PartArt<LathePart>[] = [
  {
    id: 'bed',
    touch: () => [
      { x: 178, y: 364, width: 116, height: 44 },
      { x: 470, y: 364, width: 164, height: 44 },
    ],
    at: { x: 552, y: 376 },
    arrow: { x: 552, y: 440 },
    draw: () => (
      <>
        <path d="M170 350 H630 V446 Q630 452 624 452 H170 Z" />
        <path d="M182 396 H292 M476 396 H620" stroke-width={THIN} fill="none" />
      </>
    ),
  },
  {
    id: 'ways',
    touch: () => [{ x: 178, y: 318, width: 116, height: 46 }],
    at: { x: 232, y: 344 },
    arrow: { x: 232, y: 316 },
    draw: () => (
      <>
        <path d="M170 338 H630 V352 H170 Z" />
        <path d="M170 344 H630" stroke-width={THIN} fill="none" />
      </>
    ),
  },
  {
    id: 'lead-screw',
    touch: () => [
      { x: 178, y: 408, width: 116, height: 46 },
      { x: 470, y: 408, width: 164, height: 46 },
    ],
    at: { x: 552, y: 422 },
    arrow: { x: 552, y: 462 },
    turn: { x: 540, y: 422, rx: 24, ry: 34 },
    draw: () => (
      <>
        <path d="M172 415 H612 V429 H172 Z" />
        <path d={thread(180, 608, 415, 429)} stroke-width={THIN} fill="none" />
        <path d="M604 406 H628 V440 H604 Z" />
      </>
    ),
  },
];

/** The right end. The quill's centre stands on the spindle axis, y 212. */
export const LATHE_TAIL: readonly PartArt<LathePart>[] = [
  {
    id: 'quill',
    touch: () => [{ x: 444, y: 186, width: 64, height: 52 }],
    at: { x: 492, y: 206 },
    arrow: { x: 474, y: 160 },
    draw: () => (
      <>
        <path d="M476 196 H516 V228 H476 Z" />
        <path d="M444 212 L462 202 H478 V222 H462 Z" />
        <path d="M484 196 V204 M492 196 V204 M500 196 V204" stroke-width={THIN} fill="none" />
      </>
    ),
  },
  {
    id: 'tailstock',
    touch: () => [{ x: 510, y: 150, width: 76, height: 186 }],
    at: { x: 548, y: 196 },
    arrow: { x: 500, y: 290 },
    draw: () => (
      <>
        <path d="M498 312 H602 V338 H498 Z" />
        <path d="M510 184 Q510 176 518 176 H582 Q590 176 590 184 V244 Q586 262 592 312 H506 Q526 282 510 244 Z" />
        <path d="M526 232 H574" stroke-width={THIN} fill="none" />
        <path d="M525 176 V160 H535 V176 Z" />
        <path d="M531 156 L556 142 L561 149 L536 166 Z" />
        <circle cx="560" cy="144" r="7" />
        <path d="M506 326 H594" stroke-width={THIN} fill="none" />
        <rect x="552" y="284" width="14" height="30" rx="5" fill={GROUND} />
      </>
    ),
  },
  {
    id: 'tailstock-wheel',
    touch: () => [{ x: 588, y: 146, width: 48, height: 132 }],
    at: { x: 609, y: 170 },
    arrow: { x: 590, y: 292 },
    turn: { x: 596, y: 212, rx: 32, ry: 78 },
    draw: () => (
      <>
        <path d="M590 200 H604 V224 H590 Z" />
        <rect x="602" y="156" width="14" height="112" rx="6" />
        <path d="M609 164 V260" stroke-width={THIN} fill="none" />
        <rect x="616" y="168" width="18" height="11" rx="5" />
      </>
    ),
  },
];

/** Slanting strokes of a thread seen from the side. */
function thread(from: number, to: number, top: number, foot: number): string {
  const strokes: string[] = [];
  for (let x = from; x < to - 6; x += 9) strokes.push(`M${x} ${foot} L${x + 5} ${top}`);
  return strokes.join(' ');
}
