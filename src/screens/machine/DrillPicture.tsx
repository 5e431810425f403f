/** Front view of a pillar drill press, drawn by us. */
import type { DrillPart } from './drill-parts.ts';
import { MachineFrame } from './MachineFrame.tsx';
import type { PartArt, PictureProps } from './picture.ts';
import { GROUND, STOP_RED } from './picture.ts';

const THIN = 1.6;

/** Back to front. The spindle axis lies at x 320. */
export const DRILL_ART: readonly PartArt<DrillPart>[] = [
  {
    id: 'column',
    touch: () => [{ x: 292, y: 526, width: 56, height: 72 }],
    at: { x: 320, y: 560 },
    arrow: { x: 250, y: 570 },
    draw: () => <path d="M294 240 H346 V610 H294 Z" />,
  },
  {
    id: 'base',
    touch: () => [{ x: 160, y: 600, width: 320, height: 50 }],
    at: { x: 400, y: 622 },
    arrow: { x: 520, y: 600 },
    draw: () => (
      <>
        <path d="M272 612 L282 590 H358 L368 612 Z" />
        <path d="M164 646 L176 612 H464 L476 646 Z" />
      </>
    ),
  },
  {
    id: 'table-crank',
    touch: () => [{ x: 352, y: 526, width: 96, height: 70 }],
    at: { x: 392, y: 552 },
    arrow: { x: 490, y: 560 },
    turn: { x: 400, y: 556, rx: 30, ry: 42 },
    draw: () => (
      <>
        <path d="M284 526 H356 V586 H284 Z" />
        <path d="M356 546 H394 V558 H356 Z" />
        <path d="M390 540 H400 L404 584 H392 Z" />
        <rect x="400" y="576" width="34" height="13" rx="6" />
      </>
    ),
  },
  {
    id: 'table',
    touch: () => [{ x: 150, y: 480, width: 340, height: 46 }],
    at: { x: 210, y: 498 },
    arrow: { x: 120, y: 496 },
    draw: () => (
      <>
        <path d="M154 482 H486 V506 H154 Z" />
        <path d="M200 506 H440 L376 528 H264 Z" />
      </>
    ),
  },
  {
    id: 'vice',
    touch: () => [
      { x: 206, y: 434, width: 76, height: 46 },
      { x: 358, y: 434, width: 96, height: 46 },
    ],
    at: { x: 250, y: 456 },
    arrow: { x: 500, y: 440 },
    draw: () => (
      <>
        <path d="M210 464 H416 V482 H210 Z" />
        <path d="M234 438 H282 V464 H234 Z M358 438 H400 V464 H358 Z" />
        <path d="M400 446 H424 V456 H400 Z M424 438 H432 V474 H424 Z" />
      </>
    ),
  },
  {
    id: 'work',
    touch: () => [{ x: 284, y: 432, width: 72, height: 46 }],
    at: { x: 296, y: 446 },
    arrow: { x: 230, y: 410 },
    draw: () => <path d="M282 432 H358 V464 H282 Z" />,
  },
  {
    id: 'belt-cover',
    touch: () => [{ x: 200, y: 86, width: 250, height: 46 }],
    at: { x: 400, y: 114 },
    arrow: { x: 500, y: 110 },
    draw: () => (
      <>
        <path d="M204 132 V112 Q204 94 226 94 H420 Q442 94 442 112 V132 Z" />
        <path d="M228 104 H418" stroke-width={THIN} fill="none" />
      </>
    ),
  },
  {
    id: 'head',
    touch: () => [{ x: 290, y: 136, width: 118, height: 100 }],
    at: { x: 350, y: 160 },
    arrow: { x: 500, y: 160 },
    draw: () => (
      <>
        <path d="M214 132 H430 V220 Q430 240 410 240 H356 V258 H284 V240 H234 Q214 240 214 220 Z" />
        <rect x="302" y="160" width="76" height="46" rx="3" fill={GROUND} stroke-width={THIN} />
        <path d="M310 172 H370 M310 183 H370 M310 194 H370" stroke-width={THIN} fill="none" />
      </>
    ),
  },
  {
    id: 'selector',
    touch: () => [{ x: 216, y: 134, width: 72, height: 46 }],
    at: { x: 252, y: 152 },
    arrow: { x: 160, y: 156 },
    draw: () => (
      <>
        <rect x="228" y="142" width="48" height="32" rx="4" />
        <path d="M252 142 V174" fill="none" />
        <path d="M240 152 V164" fill="none" />
        <circle cx="264" cy="158" r="6" fill="none" />
      </>
    ),
  },
  {
    id: 'emergency-stop',
    touch: () => [{ x: 216, y: 182, width: 72, height: 56 }],
    at: { x: 252, y: 196 },
    arrow: { x: 160, y: 210 },
    draw: () => (
      <>
        <circle cx="252" cy="208" r="25" fill={GROUND} />
        <circle cx="252" cy="208" r="18" fill={STOP_RED} />
      </>
    ),
  },
  {
    id: 'feed-handles',
    touch: () => [{ x: 412, y: 150, width: 110, height: 142 }],
    at: { x: 470, y: 196 },
    arrow: { x: 548, y: 230 },
    turn: { x: 452, y: 208, rx: 50, ry: 76 },
    draw: () => (
      <>
        <path d="M430 196 H450 V220 H430 Z" />
        {[-62, 20, 98].map((turn) => (
          <g key={turn} transform={`translate(458 208) rotate(${turn})`}>
            <path d="M10 -3.5 H56 V3.5 H10 Z" />
            <circle cx="60" r="9" />
          </g>
        ))}
        <circle cx="458" cy="208" r="16" />
      </>
    ),
  },
  {
    id: 'depth-stop',
    touch: () => [{ x: 216, y: 242, width: 60, height: 72 }],
    at: { x: 252, y: 270 },
    arrow: { x: 160, y: 290 },
    draw: () => (
      <>
        <path d="M248 236 H258 V316 H248 Z" />
        <path
          d="M248 250 L258 246 M248 274 L258 270 M248 298 L258 294 M248 310 L258 306"
          stroke-width={THIN}
          fill="none"
        />
        <path d="M240 256 H266 V266 H240 Z M240 268 H266 V278 H240 Z" />
        <path d="M246 306 H300 V314 H246 Z" />
      </>
    ),
  },
  {
    id: 'quill',
    touch: () => [{ x: 282, y: 242, width: 76, height: 52 }],
    at: { x: 320, y: 280 },
    arrow: { x: 396, y: 270 },
    draw: () => (
      <>
        <path d="M296 258 H344 V316 H296 Z" />
        <path d="M310 316 H330 V326 H310 Z" />
      </>
    ),
  },
  {
    id: 'chuck',
    touch: () => [{ x: 282, y: 296, width: 76, height: 44 }],
    at: { x: 338, y: 336 },
    arrow: { x: 404, y: 340 },
    turn: { x: 320, y: 350, rx: 50, ry: 22 },
    draw: () => (
      <>
        <path d="M290 326 H350 V366 L334 392 H306 L290 366 Z" />
        <path d="M290 350 H350" stroke-width={THIN} fill="none" />
      </>
    ),
  },
  {
    id: 'key-hole',
    touch: () => [{ x: 294, y: 340, width: 52, height: 46 }],
    at: { x: 320, y: 356 },
    arrow: { x: 404, y: 362 },
    draw: () => <circle cx="320" cy="360" r="8" fill={GROUND} />,
  },
  {
    id: 'drill',
    touch: () => [{ x: 294, y: 386, width: 52, height: 46 }],
    at: { x: 320, y: 404 },
    arrow: { x: 404, y: 400 },
    turn: { x: 320, y: 404, rx: 36, ry: 18 },
    draw: () => (
      <>
        <path d="M312 392 H328 V422 L320 432 L312 422 Z" />
        <path
          d="M312 404 L328 396 M312 414 L328 406 M313 424 L328 416"
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
        ? { x: 236, y: 318, width: 46, height: 96 }
        : { x: 162, y: 318, width: 112, height: 96 },
    ],
    at: { x: 268, y: 330 },
    arrow: { x: 150, y: 350 },
    draw: ({ guard }) => (
      <>
        <path d="M264 318 H296 V328 H264 Z" />
        {guard === 'closed' ? (
          <>
            <path d="M264 322 H376 V422 H264 Z" fill-opacity="0.4" />
            <path d="M264 322 H376 V422 H264 Z M272 330 V414 H368 V330 Z" fill-rule="evenodd" />
          </>
        ) : (
          <path
            d="M268 322 L176 340 V430 L268 422 Z M260 332 V413 L184 421 V348 Z"
            fill-rule="evenodd"
          />
        )}
      </>
    ),
  },
];

/** The drill press with one part lit, its name, and the arrow for the way it is to go. */
export function DrillPicture(props: PictureProps<DrillPart>) {
  return (
    <MachineFrame
      {...props}
      kind="drill-press"
      height={660}
      parts={DRILL_ART}
      scenery={<path d="M60 650 H580" fill="none" />}
    />
  );
}
