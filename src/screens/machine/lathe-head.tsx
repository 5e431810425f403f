/** Drawings of what stays at the left end of the lathe: headstock, its controls, chuck, guard, work. */
import type { LathePart } from './lathe-parts.ts';
import type { Look, PartArt } from './picture.ts';
import { GROUND, STOP_RED } from './picture.ts';

const THIN = 1.6;

/** Back to front. The spindle axis lies at y 212; the chuck is 132 high. */
export const LATHE_HEAD: readonly PartArt<LathePart>[] = [
  {
    id: 'headstock',
    touch: () => [{ x: 12, y: 132, width: 164, height: 46 }],
    at: { x: 94, y: 152 },
    arrow: { x: 94, y: 110 },
    draw: () => (
      <>
        <path d="M14 348 V158 Q14 140 32 140 H150 Q164 140 166 154 L170 172 V348 Z" />
        <path d="M22 164 H168" stroke-width={THIN} fill="none" />
        <path d="M14 348 H172 V452 H14 Z" />
        <rect x="30" y="366" width="76" height="44" rx="3" fill={GROUND} stroke-width={THIN} />
        <path d="M38 378 H98 M38 388 H98 M38 398 H98" stroke-width={THIN} fill="none" />
        <circle cx="140" cy="388" r="15" fill={GROUND} stroke-width={THIN} />
        <path d="M140 388 V404" stroke-width="4" fill="none" />
      </>
    ),
  },
  {
    id: 'gear-levers',
    touch: () => [{ x: 12, y: 180, width: 164, height: 78 }],
    at: { x: 92, y: 196 },
    arrow: { x: 92, y: 268 },
    turn: { x: 130, y: 222, rx: 36, ry: 36 },
    draw: () => (
      <>
        <SpeedLever x={52} y={222} turned={-32} />
        <SpeedLever x={130} y={222} turned={28} />
      </>
    ),
  },
  {
    id: 'selector',
    touch: () => [{ x: 26, y: 268, width: 68, height: 66 }],
    at: { x: 58, y: 282 },
    arrow: { x: 58, y: 356 },
    turn: { x: 58, y: 302, rx: 38, ry: 38 },
    draw: () => (
      <>
        <path d="M34 278 L39 284 M58 270 V276 M82 278 L77 284" fill="none" />
        <circle cx="58" cy="304" r="22" />
        <rect x="53" y="284" width="10" height="38" rx="4" fill={GROUND} />
      </>
    ),
  },
  {
    id: 'emergency-stop',
    touch: () => [{ x: 104, y: 268, width: 68, height: 66 }],
    at: { x: 138, y: 282 },
    arrow: { x: 138, y: 356 },
    draw: () => (
      <>
        <circle cx="138" cy="302" r="28" fill={GROUND} />
        <circle cx="138" cy="302" r="20" fill={STOP_RED} />
        <path d="M127 294 Q138 284 149 294" fill="none" stroke={GROUND} stroke-width="3" />
      </>
    ),
  },
  {
    id: 'chuck',
    touch: () => [{ x: 178, y: 236, width: 82, height: 48 }],
    at: { x: 216, y: 158 },
    arrow: { x: 216, y: 306 },
    turn: { x: 214, y: 212, rx: 40, ry: 92 },
    draw: () => (
      <>
        <rect x="170" y="172" width="14" height="80" />
        <path d="M184 150 Q184 146 188 146 H230 L236 152 V272 L230 278 H188 Q184 278 184 274 Z" />
        <path d="M194 146 V278" stroke-width={THIN} fill="none" />
        <path d="M236 162 H252 V174 H262 V186 H236 Z" />
        <path d="M236 200 H252 L262 205 V219 L252 224 H236 Z" />
        <path d="M236 262 H252 V250 H262 V238 H236 Z" />
      </>
    ),
  },
  {
    id: 'key-hole',
    touch: () => [{ x: 178, y: 190, width: 68, height: 46 }],
    at: { x: 212, y: 206 },
    arrow: { x: 212, y: 306 },
    turn: { x: 213, y: 212, rx: 30, ry: 30 },
    draw: () => (
      <>
        <circle cx="213" cy="212" r="12" />
        <rect x="207" y="206" width="12" height="12" fill={GROUND} stroke-width="2.4" />
      </>
    ),
  },
  {
    id: 'work',
    touch: () => [{ x: 260, y: 186, width: 46, height: 52 }],
    at: { x: 288, y: 196 },
    arrow: { x: 290, y: 268 },
    turn: { x: 282, y: 212, rx: 24, ry: 48 },
    draw: () => (
      <>
        <path d="M252 189 H322 V235 H252 Z" />
        <path d="M322 194 H352 V230 H322 Z" />
        <path d="M246 212 H352" stroke-width={THIN} stroke-dasharray="14 4 3 4" fill="none" />
        <path d="M252 200 V224" stroke-width={THIN} fill="none" />
      </>
    ),
  },
];

/** The guard lies over chuck and work, so it is drawn after everything else at this end. */
export const LATHE_GUARD: PartArt<LathePart> = {
  id: 'guard',
  touch: (look) => [
    look.guard === 'closed'
      ? { x: 178, y: 124, width: 82, height: 64 }
      : { x: 178, y: 88, width: 82, height: 64 },
  ],
  at: { x: 224, y: 132 },
  arrow: { x: 306, y: 150 },
  draw: (look) => (look.guard === 'closed' ? <GuardClosed /> : <GuardOpen look={look} />),
};

/** Down over the chuck: a clear shield in a frame, so the jaws stay visible through it. */
function GuardClosed() {
  return (
    <>
      <path d="M178 132 H272 V262 Q272 290 244 290 H178 Z" fill-opacity="0.45" />
      <path
        d="M178 132 H272 V262 Q272 290 244 290 H178 Z M188 144 H260 V258 Q260 278 240 278 H188 Z"
        fill-rule="evenodd"
      />
      <path d="M200 166 L216 150 M200 186 L236 150" stroke-width={THIN} fill="none" />
      <GuardHinge />
    </>
  );
}

/** Swung up and back: seen foreshortened above the chuck. */
function GuardOpen(_: { readonly look: Look }) {
  return (
    <>
      <path
        d="M178 132 L184 98 Q186 90 194 90 H256 Q264 90 266 98 L272 132 Z M190 124 L194 102 H256 L260 124 Z"
        fill-rule="evenodd"
      />
      <GuardHinge />
    </>
  );
}

function GuardHinge() {
  return (
    <>
      <path d="M164 126 H276 V136 H164 Z" />
      <circle cx="170" cy="131" r="9" />
    </>
  );
}

function SpeedLever(at: { readonly x: number; readonly y: number; readonly turned: number }) {
  return (
    <g transform={`translate(${at.x} ${at.y})`}>
      <circle r="24" fill={GROUND} stroke-width={THIN} />
      <circle r="13" />
      <g transform={`rotate(${at.turned})`}>
        <path d="M-5 -6 L-3.5 -30 H3.5 L5 -6 Z" />
        <circle cy="-32" r="9" />
      </g>
    </g>
  );
}
