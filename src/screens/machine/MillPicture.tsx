/** Front view of a knee mill with a vertical head, drawn by us. */
import { MachineFrame } from './MachineFrame.tsx';
import type { MillPart } from './mill-parts.ts';
import type { PartArt, PictureProps } from './picture.ts';
import { GROUND, STOP_RED } from './picture.ts';

const THIN = 1.6;

/** Back to front. The spindle axis lies at x 320. */
export const MILL_ART: readonly PartArt<MillPart>[] = [
  {
    id: 'column',
    touch: () => [{ x: 392, y: 120, width: 62, height: 62 }],
    at: { x: 420, y: 150 },
    arrow: { x: 486, y: 160 },
    draw: () => <path d="M206 640 L220 116 H432 L444 640 Z" />,
  },
  {
    id: 'knee',
    touch: () => [{ x: 236, y: 588, width: 104, height: 46 }],
    at: { x: 270, y: 604 },
    arrow: { x: 170, y: 570 },
    draw: () => (
      <>
        <path d="M306 600 H334 V648 H306 Z" />
        <path d="M222 524 H428 V580 L398 622 H252 L222 580 Z" />
      </>
    ),
  },
  {
    id: 'saddle',
    touch: () => [{ x: 340, y: 492, width: 102, height: 44 }],
    at: { x: 410, y: 510 },
    arrow: { x: 486, y: 540 },
    draw: () => (
      <>
        <path d="M210 496 H440 V526 H210 Z" />
        <path d="M222 526 L230 512 H420 L428 526" stroke-width={THIN} fill="none" />
      </>
    ),
  },
  {
    id: 'table',
    touch: () => [
      { x: 64, y: 448, width: 276, height: 44 },
      { x: 340, y: 448, width: 246, height: 44 },
    ],
    at: { x: 150, y: 470 },
    arrow: { x: 130, y: 426 },
    draw: () => (
      <>
        <path d="M60 456 H584 V498 H60 Z" />
        <path d="M60 466 H584 M60 482 H584" stroke-width={THIN} fill="none" />
        <path d="M44 470 H60 V486 H44 Z M584 464 H600 V492 H584 Z" />
      </>
    ),
  },
  {
    id: 'table-wheel',
    touch: () => [{ x: 8, y: 430, width: 54, height: 96 }],
    at: { x: 36, y: 446 },
    arrow: { x: 44, y: 552 },
    turn: { x: 48, y: 478, rx: 26, ry: 58 },
    draw: () => (
      <>
        <rect x="30" y="436" width="14" height="84" rx="6" />
        <rect x="10" y="446" width="20" height="11" rx="5" />
        <path d="M37 444 V512" stroke-width={THIN} fill="none" />
      </>
    ),
  },
  {
    id: 'vice',
    touch: () => [
      { x: 210, y: 400, width: 74, height: 48 },
      { x: 356, y: 400, width: 92, height: 48 },
    ],
    at: { x: 250, y: 430 },
    arrow: { x: 500, y: 424 },
    draw: () => (
      <>
        <path d="M218 436 H412 V456 H218 Z" />
        <path d="M236 404 H284 V436 H236 Z M356 404 H398 V436 H356 Z" />
        <path d="M276 404 V436 M364 404 V436" stroke-width={THIN} fill="none" />
        <path d="M398 418 H420 V428 H398 Z M420 410 H428 V448 H420 Z" />
      </>
    ),
  },
  {
    id: 'work',
    touch: () => [{ x: 286, y: 396, width: 68, height: 50 }],
    at: { x: 300, y: 412 },
    arrow: { x: 240, y: 372 },
    draw: () => <path d="M284 396 H318 V404 H356 V436 H284 Z" />,
  },
  {
    id: 'head',
    touch: () => [{ x: 262, y: 126, width: 116, height: 56 }],
    at: { x: 340, y: 160 },
    arrow: { x: 420, y: 120 },
    draw: () => (
      <>
        <path d="M284 126 V100 Q284 92 292 92 H348 Q356 92 356 100 V126 Z" />
        <path
          d="M296 100 V122 M308 108 V122 M320 108 V122 M332 108 V122 M344 100 V122"
          stroke-width={THIN}
          fill="none"
        />
        <path d="M262 134 Q262 126 270 126 H370 Q378 126 378 134 V256 L364 296 H276 L262 256 Z" />
        <path d="M262 178 H378" stroke-width={THIN} fill="none" />
      </>
    ),
  },
  {
    id: 'drawbar',
    touch: () => [{ x: 298, y: 82, width: 44, height: 44 }],
    at: { x: 320, y: 92 },
    arrow: { x: 404, y: 100 },
    draw: () => (
      <>
        <path d="M315 86 H325 V92 H315 Z" />
        <path d="M308 92 H332 V104 H308 Z" />
        <path d="M316 92 V104 M324 92 V104" stroke-width={THIN} fill="none" />
      </>
    ),
  },
  {
    id: 'gear-levers',
    touch: () => [{ x: 262, y: 184, width: 116, height: 60 }],
    at: { x: 320, y: 196 },
    arrow: { x: 330, y: 266 },
    turn: { x: 347, y: 212, rx: 32, ry: 32 },
    draw: () => (
      <>
        {[293, 347].map((x, index) => (
          <g key={x} transform={`translate(${x} 216) rotate(${index === 0 ? -30 : 24})`}>
            <circle r="17" fill={GROUND} stroke-width={THIN} />
            <circle r="9" />
            <path d="M-4 -4 L-3 -22 H3 L4 -4 Z" />
            <circle cy="-24" r="7" />
          </g>
        ))}
      </>
    ),
  },
  {
    id: 'selector',
    touch: () => [{ x: 166, y: 164, width: 80, height: 56 }],
    at: { x: 206, y: 180 },
    arrow: { x: 130, y: 196 },
    turn: { x: 206, y: 194, rx: 36, ry: 36 },
    draw: () => (
      <>
        <path d="M172 164 H240 V292 H172 Z M240 216 H262 V228 H240 Z" />
        <path d="M186 174 L190 179 M206 166 V171 M226 174 L222 179" fill="none" />
        <circle cx="206" cy="196" r="18" />
        <rect x="202" y="180" width="8" height="32" rx="3" fill={GROUND} />
      </>
    ),
  },
  {
    id: 'emergency-stop',
    touch: () => [{ x: 166, y: 222, width: 80, height: 72 }],
    at: { x: 206, y: 240 },
    arrow: { x: 130, y: 256 },
    draw: () => (
      <>
        <circle cx="206" cy="256" r="27" fill={GROUND} />
        <circle cx="206" cy="256" r="19" fill={STOP_RED} />
      </>
    ),
  },
  {
    id: 'quill',
    touch: () => [{ x: 286, y: 296, width: 68, height: 46 }],
    at: { x: 320, y: 316 },
    arrow: { x: 400, y: 330 },
    draw: () => (
      <>
        <path d="M294 296 H346 V334 H294 Z" />
        <path d="M294 308 H346" stroke-width={THIN} fill="none" />
      </>
    ),
  },
  {
    id: 'quill-lever',
    touch: () => [{ x: 382, y: 200, width: 92, height: 110 }],
    at: { x: 436, y: 262 },
    arrow: { x: 496, y: 260 },
    turn: { x: 396, y: 238, rx: 52, ry: 52 },
    draw: () => (
      <>
        <path d="M378 226 H392 V250 H378 Z" />
        <circle cx="400" cy="238" r="15" />
        <path d="M408 236 L404 246 L446 284 L451 277 Z" />
        <circle cx="453" cy="285" r="10" />
      </>
    ),
  },
  {
    id: 'cutter',
    touch: () => [{ x: 292, y: 344, width: 56, height: 50 }],
    at: { x: 320, y: 364 },
    arrow: { x: 416, y: 372 },
    turn: { x: 320, y: 362, rx: 48, ry: 22 },
    draw: () => (
      <>
        <path d="M300 334 H340 V352 L332 362 H308 L300 352 Z" />
        <path d="M311 362 H329 V402 H311 Z" />
        <path
          d="M311 374 L329 366 M311 386 L329 376 M311 398 L329 388"
          stroke-width={THIN}
          fill="none"
        />
      </>
    ),
  },
  {
    id: 'guard',
    touch: (look) => [
      look.guard === 'closed'
        ? { x: 240, y: 330, width: 46, height: 66 }
        : { x: 176, y: 330, width: 84, height: 66 },
    ],
    at: { x: 258, y: 340 },
    arrow: { x: 160, y: 300 },
    draw: ({ guard }) => (
      <>
        <path d="M250 300 H262 V352 H250 Z" />
        {guard === 'closed' ? (
          <>
            <path d="M256 336 H386 V412 H256 Z" fill-opacity="0.4" />
            <path d="M256 336 H386 V412 H256 Z M264 344 V404 H378 V344 Z" fill-rule="evenodd" />
          </>
        ) : (
          <path
            d="M256 336 L186 350 V414 L256 412 Z M248 346 V402 L194 404 V358 Z"
            fill-rule="evenodd"
          />
        )}
      </>
    ),
  },
  {
    id: 'cross-wheel',
    touch: () => [{ x: 238, y: 510, width: 84, height: 76 }],
    at: { x: 280, y: 530 },
    arrow: { x: 190, y: 600 },
    turn: { x: 280, y: 550, rx: 44, ry: 44 },
    draw: () => (
      <g transform="translate(280 550)">
        <circle r="32" />
        <circle r="24" fill={GROUND} />
        <path d="M-24 -3 H24 V3 H-24 Z M-3 -24 H3 V24 H-3 Z" />
        <circle r="10" />
        <circle cx="19" cy="-20" r="7" />
      </g>
    ),
  },
  {
    id: 'knee-crank',
    touch: () => [{ x: 342, y: 538, width: 90, height: 76 }],
    at: { x: 374, y: 566 },
    arrow: { x: 480, y: 580 },
    turn: { x: 374, y: 572, rx: 40, ry: 40 },
    draw: () => (
      <>
        <circle cx="374" cy="572" r="15" fill={GROUND} />
        <circle cx="374" cy="572" r="9" />
        <path d="M370 566 L378 564 L404 592 L396 600 Z" />
        <circle cx="404" cy="600" r="10" />
      </>
    ),
  },
];

/** The mill with one part lit, its name, and the arrow for the way it is to go. */
export function MillPicture(props: PictureProps<MillPart>) {
  return (
    <MachineFrame
      {...props}
      kind="mill"
      height={684}
      parts={MILL_ART}
      scenery={
        <>
          <path d="M170 640 H480 L492 672 H158 Z" />
          <path d="M40 676 H600" fill="none" />
        </>
      }
    />
  );
}
