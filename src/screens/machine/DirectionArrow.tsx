/** The arrow that shows which way the lit part is to go. */
import type { Direction, PartArt } from './picture.ts';
import { GROUND, LINE } from './picture.ts';

/** A block arrow pointing right, 92 by 48, centred on nothing. */
const STRAIGHT = 'M-46 -11 H8 V-26 L46 0 L8 26 V11 H-46 Z';
/** Going away from the reader: broad at the near end, narrow at the far end, aslant as depth is drawn. */
const AWAY = 'M-22 44 L-8 -10 H-20 L0 -40 L20 -10 H8 L22 44 Z';
/** Coming at the reader: narrow at the far end, a broad head near. */
const NEARER = 'M-5 -42 L-13 2 H-36 L0 44 L36 2 H13 L5 -42 Z';

const TURNED: Partial<Readonly<Record<Direction, number>>> = {
  'towards-chuck': 180,
  left: 180,
  'away-from-chuck': 0,
  right: 0,
  down: 90,
  up: -90,
  in: 38,
  out: 38,
};

/** Draws the arrow for `direction` where the part wants it. */
export function DirectionArrow({
  art,
  direction,
}: {
  readonly art: Pick<PartArt<string>, 'arrow' | 'turn'>;
  readonly direction: Direction;
}) {
  const path = direction === 'round' ? turnPath(art) : straightPath(direction);
  const { x, y } = (direction === 'round' ? art.turn : undefined) ?? art.arrow;
  const turned = TURNED[direction] ?? 0;
  return (
    <path
      class="direction"
      data-direction={direction}
      d={path}
      transform={`translate(${x} ${y})${turned ? ` rotate(${turned})` : ''}`}
      fill={LINE}
      fill-rule="nonzero"
      stroke={GROUND}
      stroke-width="6"
      paint-order="stroke"
      stroke-linejoin="round"
      pointer-events="none"
    />
  );
}

function straightPath(direction: Direction): string {
  if (direction === 'in') return AWAY;
  return direction === 'out' ? NEARER : STRAIGHT;
}

/** A ribbon along most of an ellipse, growing towards the head at its end. */
function turnPath({ turn }: Pick<PartArt<string>, 'turn'>): string {
  const { rx, ry } = turn ?? { rx: 34, ry: 34 };
  const spot = (degrees: number, grow: number) => {
    const a = (degrees * Math.PI) / 180;
    return `${((rx + grow) * Math.cos(a)).toFixed(1)} ${((ry + grow) * Math.sin(a)).toFixed(1)}`;
  };
  const head = Math.min(70, 70 * Math.sqrt(rx / ry));
  const tip = head + (1600 / ry) * Math.sqrt(rx / ry);
  return [
    `M${spot(-140, 5)} A${rx + 5} ${ry + 5} 0 1 1 ${spot(head, 5)}`,
    `L${spot(head, 17)} L${spot(tip, 0)} L${spot(head, -17)} L${spot(head, -5)}`,
    `A${rx - 5} ${ry - 5} 0 1 0 ${spot(-140, -5)} Z`,
  ].join(' ');
}
