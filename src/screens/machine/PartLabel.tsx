/** The name of the lit part, large, with a line down to it. */
import { textWidth } from '../drawing/text-width.ts';
import type { Point } from './picture.ts';
import { GROUND, LABEL_BAND, LINE, PICTURE_WIDTH } from './picture.ts';

const NAME_SIZE = 38;
const WAY_SIZE = 28;
const MARGIN = 10;
const ROOM = PICTURE_WIDTH - 2 * MARGIN;

/** Draws the name (and the way to move, when there is one) over the part, kept inside the picture. */
export function PartLabel({
  name,
  way,
  at,
}: {
  readonly name: string;
  readonly way?: string | undefined;
  readonly at: Point;
}) {
  // A name in a language of long words is set smaller as a whole.
  const size = Math.min(NAME_SIZE, (NAME_SIZE * ROOM) / textWidth(name, NAME_SIZE, true));
  const half = Math.max(textWidth(name, size, true), textWidth(way ?? '', WAY_SIZE)) / 2;
  const middle = Math.min(Math.max(at.x, MARGIN + half), PICTURE_WIDTH - MARGIN - half);
  const foot = way === undefined ? 54 : LABEL_BAND;
  return (
    <g class="part-label" pointer-events="none" text-anchor="middle" fill={LINE}>
      <Leader from={{ x: middle, y: foot }} to={at} />
      <text x={middle} y="36" font-size={size} font-weight="700">
        {name}
      </text>
      {way !== undefined && (
        <text x={middle} y="70" font-size={WAY_SIZE}>
          {way}
        </text>
      )}
    </g>
  );
}

function Leader({ from, to }: { readonly from: Point; readonly to: Point }) {
  const line = `M${from.x} ${from.y} L${to.x} ${to.y}`;
  return (
    <>
      <path d={line} fill="none" stroke={GROUND} stroke-width="8" />
      <path d={line} fill="none" stroke={LINE} stroke-width="3" />
      <circle cx={to.x} cy={to.y} r="6" stroke={GROUND} stroke-width="3" paint-order="stroke" />
    </>
  );
}
