/** Cuts a line into pieces that a speaking voice gets through without stalling. Pure. */

/** Some voices stop without a word after about fourteen seconds, so a piece stays far below. */
const LONGEST = 160;

/** Pieces of at most `longest` characters, cut after a sentence, else a clause, else a word. */
export function clauses(line: string, longest = LONGEST): readonly string[] {
  const pieces: string[] = [];
  let rest = line.replace(/\s+/g, ' ').trim();
  while (rest.length > longest) {
    const cut = cutAt(rest, longest);
    pieces.push(rest.slice(0, cut).trim());
    rest = rest.slice(cut).trim();
  }
  if (rest) pieces.push(rest);
  return pieces;
}

function cutAt(text: string, longest: number): number {
  const head = text.slice(0, longest + 1);
  for (const mark of [/[.!?](?= )/g, /[,;:](?= )/g, / /g]) {
    const last = [...head.matchAll(mark)].at(-1);
    if (last && last.index > 0) return last.index + 1;
  }
  return longest;
}
