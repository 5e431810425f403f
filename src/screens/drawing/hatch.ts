/** Section lines at 45 degrees inside a closed outline. */
import type { Place } from './marks.ts';

/** A hatching line from one edge of the section to another. */
export type HatchLine = readonly [Place, Place];

/** Shorter pieces than this are ink, not hatching. */
const LEAST = 1.5;

/**
 * Lines rising to the right at 45 degrees, `gap` apart, cut at the outline by the even-odd rule.
 * The outline is a closed run of corners; it may touch itself.
 */
export function hatch(outline: readonly Place[], gap: number): readonly HatchLine[] {
  if (outline.length < 3) return [];
  const offsets = outline.map(({ x, y }) => x + y);
  const step = gap * Math.SQRT2;
  const first = Math.ceil(Math.min(...offsets) / step) * step + step / 7;
  const lines: HatchLine[] = [];
  for (let offset = first; offset < Math.max(...offsets); offset += step)
    lines.push(...inside(outline, offset));
  return lines;
}

/** The parts of the line x + y = offset that lie within the outline. */
function inside(outline: readonly Place[], offset: number): readonly HatchLine[] {
  const meets = outline.flatMap((a, index) => {
    const b = outline[(index + 1) % outline.length] ?? a;
    const [da, db] = [a.x + a.y - offset, b.x + b.y - offset];
    if (da < 0 === db < 0) return [];
    return [a.x + ((b.x - a.x) * da) / (da - db)];
  });
  meets.sort((p, q) => p - q);
  const lines: HatchLine[] = [];
  for (let i = 0; i + 1 < meets.length; i += 2) {
    const [from, to] = [meets[i] ?? 0, meets[i + 1] ?? 0];
    if (to - from > LEAST)
      lines.push([
        { x: from, y: offset - from },
        { x: to, y: offset - to },
      ]);
  }
  return lines;
}
