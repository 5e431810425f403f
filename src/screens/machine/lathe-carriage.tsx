/** Drawings of the lathe's carriage: saddle, apron, slides, tool post, and their handles. */
import type { LathePart } from './lathe-parts.ts';
import type { PartArt } from './picture.ts';
import { GROUND } from './picture.ts';

const THIN = 1.6;

/** Back to front. The tool edge stands on the spindle axis, y 212. */
export const LATHE_CARRIAGE: readonly PartArt<LathePart>[] = [
  {
    id: 'carriage',
    touch: () => [
      { x: 296, y: 328, width: 64, height: 46 },
      { x: 418, y: 328, width: 48, height: 46 },
    ],
    at: { x: 316, y: 332 },
    arrow: { x: 246, y: 372 },
    draw: () => (
      <>
        <path d="M288 346 V330 Q288 318 300 318 H462 Q474 318 474 330 V346 Z" />
        <path d="M302 344 H466 V442 Q466 452 456 452 H312 Q302 452 302 442 Z" />
      </>
    ),
  },
  {
    id: 'cross-slide',
    touch: () => [{ x: 330, y: 284, width: 124, height: 44 }],
    at: { x: 352, y: 302 },
    arrow: { x: 298, y: 272 },
    draw: () => (
      <>
        <path d="M338 284 H446 V308 L438 318 H346 L338 308 Z" />
        <path d="M338 296 H446" stroke-width={THIN} fill="none" />
      </>
    ),
  },
  {
    id: 'compound',
    touch: () => [{ x: 336, y: 240, width: 146, height: 44 }],
    at: { x: 430, y: 258 },
    arrow: { x: 520, y: 290 },
    turn: { x: 474, y: 263, rx: 26, ry: 48 },
    draw: () => (
      <>
        <path d="M352 272 H436 V284 H352 Z" />
        <path d="M330 246 H444 V266 L436 274 H338 L330 266 Z" />
        <path d="M330 256 H444" stroke-width={THIN} fill="none" />
        <rect x="444" y="250" width="16" height="26" rx="2" />
        <path d="M449 250 V258 M454 250 V256 M459 250 V258" stroke-width={THIN} fill="none" />
        <path d="M460 259 H467 V267 H460 Z" />
        <path d="M466 236 H474 L476 290 H464 Z" />
        <circle cx="470" cy="234" r="7" />
        <circle cx="470" cy="292" r="9" />
      </>
    ),
  },
  {
    id: 'tool-post',
    touch: () => [{ x: 352, y: 152, width: 74, height: 88 }],
    at: { x: 388, y: 184 },
    arrow: { x: 466, y: 176 },
    turn: { x: 387, y: 190, rx: 62, ry: 30 },
    draw: () => (
      <>
        <path d="M352 182 H422 V246 H352 Z" />
        <path d="M352 196 H422 M352 228 H422" stroke-width={THIN} fill="none" />
        <rect x="362" y="174" width="9" height="9" fill={GROUND} />
        <rect x="403" y="174" width="9" height="9" fill={GROUND} />
        <path d="M376 182 V170 H398 V182 Z" />
        <path d="M382 172 L424 152 L428 160 L392 178 Z" />
        <circle cx="429" cy="154" r="8" />
      </>
    ),
  },
  {
    id: 'tool',
    touch: () => [{ x: 306, y: 190, width: 46, height: 48 }],
    at: { x: 344, y: 212 },
    arrow: { x: 300, y: 264 },
    draw: () => (
      <>
        <path d="M372 202 H340 L324 209 Q321 212 324 215 L333 224 H372 Z" />
        <path d="M340 202 L346 212 L333 224" stroke-width={THIN} fill="none" />
      </>
    ),
  },
  {
    id: 'cross-dial',
    touch: () => [{ x: 362, y: 328, width: 54, height: 48 }],
    at: { x: 389, y: 338 },
    arrow: { x: 492, y: 362 },
    turn: { x: 389, y: 352, rx: 42, ry: 42 },
    draw: () => <CrossDial />,
  },
  {
    id: 'carriage-wheel',
    touch: () => [{ x: 298, y: 376, width: 72, height: 68 }],
    at: { x: 335, y: 384 },
    arrow: { x: 335, y: 478 },
    turn: { x: 335, y: 409, rx: 46, ry: 46 },
    draw: () => <CarriageWheel />,
  },
  {
    id: 'feed-lever',
    touch: () => [{ x: 370, y: 376, width: 44, height: 70 }],
    at: { x: 391, y: 396 },
    arrow: { x: 391, y: 482 },
    draw: () => (
      <>
        <circle cx="391" cy="396" r="10" />
        <path d="M387 404 H395 L396 422 H386 Z" />
        <rect x="382" y="420" width="18" height="24" rx="7" />
      </>
    ),
  },
  {
    id: 'half-nut-lever',
    touch: () => [{ x: 416, y: 376, width: 52, height: 70 }],
    at: { x: 434, y: 396 },
    arrow: { x: 434, y: 482 },
    draw: () => (
      <>
        <circle cx="434" cy="396" r="12" />
        <path d="M431 402 L439 398 L456 428 L449 432 Z" />
        <circle cx="454" cy="433" r="10" />
      </>
    ),
  },
];

/** Handle and graduated ring face the operator at the front of the saddle. */
function CrossDial() {
  return (
    <g transform="translate(389 352)">
      <circle r="23" fill={GROUND} />
      {Array.from({ length: 20 }, (_, mark) => (
        <path
          key={mark}
          d={mark % 5 === 0 ? 'M0 -22 V-14' : 'M0 -22 V-18'}
          transform={`rotate(${mark * 18})`}
          stroke-width={THIN}
          fill="none"
        />
      ))}
      <circle r="12" />
      <g transform="rotate(-24)">
        <path d="M-3 -4 L-28 -4 V4 L-3 4 L3 4 L28 3 V-3 L3 -4 Z" />
        <circle cx="-28" r="7" />
        <circle cx="28" r="5" />
      </g>
    </g>
  );
}

function CarriageWheel() {
  return (
    <g transform="translate(335 409)">
      <circle r="32" />
      <circle r="24" fill={GROUND} />
      {[90, 210, 330].map((turn) => (
        <path key={turn} d="M0 -3.5 H26 V3.5 H0 Z" transform={`rotate(${turn})`} />
      ))}
      <circle r="9" />
      <circle cx="-20" cy="-20" r="7" />
    </g>
  );
}
