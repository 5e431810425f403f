/** Broken texts made from whole ones: » marks where a fault must point, and is taken out before reading. */

/** One change: a piece of the whole text that stands there once, and what stands there instead. */
export type Edit = readonly [whole: string, broken: string];

export interface Marked {
  readonly text: string;
  /** "line:column" of each mark, in order; both count from 1. */
  readonly places: readonly string[];
}

export function edited(whole: string, edits: readonly Edit[]): string {
  return edits.reduce((text, [from, to]) => {
    if (text.split(from).length !== 2) throw new Error(`"${from}" does not stand there once.`);
    return text.replace(from, () => to);
  }, whole);
}

export function unmarked(marked: string): Marked {
  const pieces = marked.split('»');
  const places = pieces.slice(0, -1).map((_, index) => {
    const lines = pieces
      .slice(0, index + 1)
      .join('')
      .split('\n');
    return `${lines.length}:${(lines.at(-1) ?? '').length + 1}`;
  });
  return { text: pieces.join(''), places };
}
