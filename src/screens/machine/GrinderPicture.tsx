/** Front view of a pedestal grinder, drawn by us: both wheels face the reader. */
import type { ComponentChildren } from 'preact';
import type { GrinderPart } from './grinder-parts.ts';
import { MachineFrame } from './MachineFrame.tsx';
import type { Box, PartArt, PictureProps } from './picture.ts';
import { GROUND, PICTURE_WIDTH, STOP_RED } from './picture.ts';

const THIN = 1.6;

/** Draws the right half as a mirror of the left. */
function Both({ children }: { readonly children: ComponentChildren }) {
  return (
    <>
      {children}
      <g transform={`translate(${PICTURE_WIDTH} 0) scale(-1 1)`}>{children}</g>
    </>
  );
}

/** The same touch area on both sides. */
function both(box: Box): readonly Box[] {
  return [box, { ...box, x: PICTURE_WIDTH - box.x - box.width }];
}

/** Back to front; the left wheel is drawn and mirrored. */
export const GRINDER_ART: readonly PartArt<GrinderPart>[] = [
  {
    id: 'pedestal',
    touch: () => [{ x: 250, y: 540, width: 140, height: 80 }],
    at: { x: 320, y: 580 },
    arrow: { x: 450, y: 560 },
    draw: () => (
      <>
        <path d="M262 366 H378 L396 616 H244 Z" />
        <path d="M200 616 H440 L450 640 H190 Z" />
      </>
    ),
  },
  {
    id: 'motor',
    touch: () => [{ x: 224, y: 244, width: 192, height: 110 }],
    at: { x: 320, y: 280 },
    arrow: { x: 320, y: 220 },
    draw: () => (
      <>
        <path d="M206 288 H434 V316 H206 Z" />
        <rect x="226" y="240" width="188" height="124" rx="18" />
        <path
          d="M250 258 H390 M250 276 H390 M250 328 H390 M250 346 H390"
          stroke-width={THIN}
          fill="none"
        />
        <path d="M258 364 H382 V376 H258 Z" />
      </>
    ),
  },
  {
    id: 'wheel-guard',
    touch: () => both({ x: 84, y: 362, width: 136, height: 54 }),
    at: { x: 152, y: 388 },
    arrow: { x: 152, y: 446 },
    draw: () => (
      <Both>
        <path d="M92 214 Q92 180 126 180 H178 Q212 180 212 214 V378 Q212 412 178 412 H126 Q92 412 92 378 Z" />
        <rect x="110" y="220" width="84" height="146" rx="4" fill={GROUND} stroke-width={THIN} />
      </Both>
    ),
  },
  {
    id: 'wheels',
    touch: () => both({ x: 110, y: 254, width: 84, height: 62 }),
    at: { x: 152, y: 274 },
    arrow: { x: 152, y: 446 },
    turn: { x: 152, y: 300, rx: 70, ry: 96 },
    draw: () => (
      <Both>
        <path d="M122 222 H182 V364 H122 Z" />
        <path
          d="M132 236 h3 M150 242 h3 M170 236 h3 M140 258 h3 M160 262 h3 M132 280 h3 M172 284 h3 M150 292 h3 M136 344 h3 M166 350 h3 M152 354 h3"
          fill="none"
        />
      </Both>
    ),
  },
  {
    id: 'tool-rest',
    touch: () => both({ x: 84, y: 316, width: 136, height: 46 }),
    at: { x: 112, y: 332 },
    arrow: { x: 48, y: 350 },
    draw: () => (
      <Both>
        <path d="M98 322 H206 L212 338 H92 Z" />
        <path d="M142 338 H162 V356 H142 Z" />
        <circle cx="152" cy="352" r="8" />
      </Both>
    ),
  },
  {
    id: 'tongue-guard',
    touch: () => both({ x: 84, y: 208, width: 136, height: 46 }),
    at: { x: 152, y: 228 },
    arrow: { x: 48, y: 230 },
    draw: () => (
      <Both>
        <path d="M114 212 H190 V240 H114 Z" />
        <path d="M152 218 V232" stroke-width="5" fill="none" />
      </Both>
    ),
  },
  {
    id: 'guard',
    touch: (look) =>
      both({ x: 84, y: look.guard === 'closed' ? 158 : 110, width: 136, height: 48 }),
    at: { x: 152, y: 166 },
    arrow: { x: 48, y: 170 },
    draw: ({ guard }) => (
      <Both>
        {guard === 'closed' ? (
          <>
            <path d="M88 166 H216 L224 286 H80 Z" fill-opacity="0.35" />
            <path
              d="M88 166 H216 L224 286 H80 Z M98 176 L90 276 H214 L206 176 Z"
              fill-rule="evenodd"
            />
          </>
        ) : (
          <path
            d="M88 174 L96 112 H208 L216 174 Z M100 164 H204 L198 122 H106 Z"
            fill-rule="evenodd"
          />
        )}
        <path d="M136 160 H168 V184 H136 Z" />
      </Both>
    ),
  },
  {
    id: 'selector',
    touch: () => [{ x: 264, y: 392, width: 112, height: 58 }],
    at: { x: 320, y: 408 },
    arrow: { x: 450, y: 420 },
    draw: () => (
      <>
        <rect x="288" y="400" width="64" height="42" rx="5" />
        <path d="M320 400 V442 M304 413 V429" fill="none" />
        <circle cx="336" cy="421" r="8" fill="none" />
      </>
    ),
  },
  {
    id: 'emergency-stop',
    touch: () => [{ x: 264, y: 454, width: 112, height: 72 }],
    at: { x: 320, y: 470 },
    arrow: { x: 450, y: 490 },
    draw: () => (
      <>
        <circle cx="320" cy="490" r="30" fill={GROUND} />
        <circle cx="320" cy="490" r="22" fill={STOP_RED} />
      </>
    ),
  },
  {
    id: 'water-pot',
    touch: () => [{ x: 396, y: 430, width: 96, height: 76 }],
    at: { x: 446, y: 460 },
    arrow: { x: 540, y: 470 },
    draw: () => (
      <>
        <path d="M382 470 H406 V480 H382 Z" />
        <path d="M402 442 H488 L478 500 H412 Z" />
        <ellipse cx="445" cy="442" rx="43" ry="9" fill={GROUND} />
      </>
    ),
  },
];

/** The grinder with one part lit, its name, and the arrow for the way it is to go. */
export function GrinderPicture(props: PictureProps<GrinderPart>) {
  return (
    <MachineFrame
      {...props}
      kind="grinder"
      height={652}
      parts={GRINDER_ART}
      scenery={<path d="M60 642 H580" fill="none" />}
    />
  );
}
