/** Front view of a horizontal metal-cutting band saw, drawn by us: the bar's end faces the reader. */
import { MachineFrame } from './MachineFrame.tsx';
import type { PartArt, PictureProps } from './picture.ts';
import { GROUND, STOP_RED } from './picture.ts';
import type { SawPart } from './saw-parts.ts';

const THIN = 1.6;

/** Back to front. The blade's cutting edge lies at y 312. */
export const SAW_ART: readonly PartArt<SawPart>[] = [
  {
    id: 'base',
    touch: () => [{ x: 360, y: 486, width: 220, height: 90 }],
    at: { x: 480, y: 530 },
    arrow: { x: 480, y: 570 },
    draw: () => (
      <>
        <path d="M60 420 H580 V448 H60 Z" />
        <path d="M84 448 H556 V592 H84 Z" />
      </>
    ),
  },
  {
    id: 'down-feed',
    touch: () => [{ x: 14, y: 318, width: 78, height: 92 }],
    at: { x: 48, y: 346 },
    arrow: { x: 44, y: 280 },
    turn: { x: 48, y: 346, rx: 34, ry: 34 },
    draw: () => (
      <>
        <path d="M72 300 H80 V340 H72 Z" />
        <path d="M64 338 H88 V420 H64 Z" />
        <path d="M52 350 H64 V360 H52 Z" />
        <circle cx="42" cy="355" r="16" />
        <path d="M42 345 V365 M32 355 H52" stroke-width={THIN} fill="none" />
      </>
    ),
  },
  {
    id: 'vice',
    touch: () => [
      { x: 196, y: 360, width: 84, height: 58 },
      { x: 360, y: 360, width: 84, height: 58 },
    ],
    at: { x: 236, y: 386 },
    arrow: { x: 160, y: 396 },
    draw: () => (
      <>
        <path d="M204 420 L232 352 H282 V420 Z" />
        <path d="M358 352 H408 L436 420 H358 Z" />
        <path d="M270 352 V420 M370 352 V420" stroke-width={THIN} fill="none" />
      </>
    ),
  },
  {
    id: 'vice-wheel',
    touch: () => [{ x: 452, y: 364, width: 96, height: 96 }],
    at: { x: 500, y: 380 },
    arrow: { x: 590, y: 410 },
    turn: { x: 500, y: 412, rx: 52, ry: 52 },
    draw: () => (
      <g transform="translate(500 412)">
        <circle r="40" />
        <circle r="31" fill={GROUND} />
        <path d="M-31 -3.5 H31 V3.5 H-31 Z M-3.5 -31 H3.5 V31 H-3.5 Z" />
        <circle r="11" />
        <circle cx="25" cy="-25" r="8" />
      </g>
    ),
  },
  {
    id: 'work',
    touch: () => [{ x: 284, y: 346, width: 72, height: 72 }],
    at: { x: 320, y: 372 },
    arrow: { x: 320, y: 470 },
    draw: () => (
      <>
        <circle cx="320" cy="382" r="38" />
        <path d="M312 382 H328 M320 374 V390" stroke-width={THIN} fill="none" />
      </>
    ),
  },
  {
    id: 'saw-frame',
    touch: () => [{ x: 226, y: 126, width: 140, height: 60 }],
    at: { x: 320, y: 152 },
    arrow: { x: 320, y: 230 },
    draw: () => (
      <>
        <path d="M110 136 Q110 122 124 122 H516 Q530 122 530 136 V190 H110 Z" />
        <path d="M128 180 H512" stroke-width={THIN} fill="none" />
        <path d="M64 276 H116 V300 H64 Z" />
      </>
    ),
  },
  {
    id: 'blade',
    touch: () => [{ x: 262, y: 298, width: 116, height: 46 }],
    at: { x: 320, y: 306 },
    arrow: { x: 320, y: 262 },
    draw: () => (
      <>
        <path d="M140 300 H500 V312 H140 Z" />
        <path d={teeth(232, 412, 312)} stroke-width={THIN} />
      </>
    ),
  },
  {
    id: 'guard',
    touch: () => [
      { x: 88, y: 190, width: 118, height: 118 },
      { x: 434, y: 190, width: 118, height: 118 },
    ],
    at: { x: 150, y: 214 },
    arrow: { x: 320, y: 262 },
    draw: ({ guard }) => (
      <>
        <WheelCover x={150} open={guard === 'open'} hinge={-1} />
        <WheelCover x={490} open={guard === 'open'} hinge={1} />
      </>
    ),
  },
  {
    id: 'blade-guides',
    touch: () => [
      { x: 210, y: 190, width: 50, height: 108 },
      { x: 380, y: 190, width: 50, height: 108 },
    ],
    at: { x: 236, y: 230 },
    arrow: { x: 320, y: 236 },
    draw: () => (
      <>
        <path d="M228 170 H246 V288 H254 V306 H220 V288 H228 Z" />
        <path d="M394 170 H412 V288 H420 V306 H386 V288 H394 Z" />
        <circle cx="237" cy="204" r="9" />
        <circle cx="403" cy="204" r="9" />
      </>
    ),
  },
  {
    id: 'coolant',
    touch: () => [{ x: 296, y: 200, width: 60, height: 96 }],
    at: { x: 322, y: 222 },
    arrow: { x: 270, y: 240 },
    draw: () => (
      <>
        <path d="M316 190 H328 V262 L338 284 L330 288 L316 266 Z" />
        <path d="M306 214 H338 V224 H306 Z" />
      </>
    ),
  },
  {
    id: 'blade-tension',
    touch: () => [{ x: 560, y: 170, width: 70, height: 90 }],
    at: { x: 600, y: 196 },
    arrow: { x: 592, y: 290 },
    turn: { x: 590, y: 214, rx: 24, ry: 44 },
    draw: () => (
      <>
        <path d="M550 206 H586 V222 H550 Z" />
        <path d="M586 186 H602 Q608 186 608 192 V236 Q608 242 602 242 H586 Z" />
        <path d="M586 200 H608 M586 214 H608 M586 228 H608" stroke-width={THIN} fill="none" />
      </>
    ),
  },
  {
    id: 'selector',
    touch: () => [{ x: 104, y: 470, width: 110, height: 96 }],
    at: { x: 160, y: 498 },
    arrow: { x: 160, y: 580 },
    draw: () => (
      <>
        <rect x="124" y="492" width="72" height="46" rx="5" />
        <path d="M160 492 V538 M142 506 V524" fill="none" />
        <circle cx="178" cy="515" r="9" fill="none" />
      </>
    ),
  },
  {
    id: 'emergency-stop',
    touch: () => [{ x: 220, y: 470, width: 110, height: 96 }],
    at: { x: 272, y: 494 },
    arrow: { x: 272, y: 580 },
    draw: () => (
      <>
        <circle cx="272" cy="516" r="32" fill={GROUND} />
        <circle cx="272" cy="516" r="23" fill={STOP_RED} />
      </>
    ),
  },
];

/** Shut: a plain disc. Open: the cover stands aside and the band wheel shows. */
function WheelCover(props: { readonly x: number; readonly open: boolean; readonly hinge: 1 | -1 }) {
  const { x, open, hinge } = props;
  return (
    <g transform={`translate(${x} 250)`}>
      <circle r="66" />
      {open ? (
        <>
          <circle r="56" fill={GROUND} />
          <circle r="16" />
          <path d="M0 -16 V-56 M14 8 L48 28 M-14 8 L-48 28" fill="none" />
          <path d={`M${hinge * 60} -50 L${hinge * 92} -62 V62 L${hinge * 60} 50 Z`} />
        </>
      ) : (
        <>
          <circle r="56" stroke-width={THIN} fill="none" />
          <path d={`M${hinge * 58} -14 H${hinge * 70} V14 H${hinge * 58} Z`} />
        </>
      )}
    </g>
  );
}

/** Saw teeth hanging from the line at `y`. */
function teeth(from: number, to: number, y: number): string {
  const path: string[] = [`M${from} ${y}`];
  for (let x = from; x < to; x += 10) path.push(`L${x + 3} ${y + 7} L${x + 10} ${y}`);
  return `${path.join(' ')} Z`;
}

/** The saw with one part lit, its name, and the arrow for the way it is to go. */
export function SawPicture(props: PictureProps<SawPart>) {
  return (
    <MachineFrame
      {...props}
      kind="band-saw"
      height={612}
      parts={SAW_ART}
      scenery={<path d="M20 596 H620" fill="none" />}
    />
  );
}
