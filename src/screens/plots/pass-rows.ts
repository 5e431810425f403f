/** A pass plan as rows of a bar chart, and which of them to leave out when there are very many. */

/** One pass: the diameters before and after it, in mm. */
export interface Pass {
  readonly before: number;
  readonly after: number;
  readonly finishing: boolean;
}

export type PassRow =
  | { readonly kind: 'pass'; readonly index: number; readonly pass: Pass }
  | { readonly kind: 'left-out'; readonly count: number };

/** More rows than this do not fit a screen that is read from afar. */
const MOST_ROWS = 9;

/** The passes from the diameter now through each diameter after; the last is the finishing one when told so. */
export function passesThrough(
  now: number,
  after: readonly number[],
  finishing: boolean,
): readonly Pass[] {
  return after.map((size, index) => ({
    before: after[index - 1] ?? now,
    after: size,
    finishing: finishing && index === after.length - 1,
  }));
}

/** All rows when they fit; else the first, those round `current`, and the last two. */
export function passRows(passes: readonly Pass[], current: number): readonly PassRow[] {
  const keep = (index: number) =>
    passes.length <= MOST_ROWS ||
    index === 0 ||
    Math.abs(index - current) <= 1 ||
    index >= passes.length - 2;
  const rows: PassRow[] = [];
  passes.forEach((pass, index) => {
    const last = rows.at(-1);
    if (keep(index)) rows.push({ kind: 'pass', index, pass });
    else if (last?.kind === 'left-out') rows[rows.length - 1] = { ...last, count: last.count + 1 };
    else rows.push({ kind: 'left-out', count: 1 });
  });
  return rows;
}
