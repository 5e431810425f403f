/** Finds the name a person probably meant. */

function editDistance(a: string, b: string): number {
  let row = Array.from({ length: b.length + 1 }, (_, index) => index);
  for (let i = 1; i <= a.length; i += 1) {
    const next = [i];
    for (let j = 1; j <= b.length; j += 1) {
      const swap = (row[j - 1] ?? 0) + (a[i - 1] === b[j - 1] ? 0 : 1);
      next.push(Math.min(swap, (row[j] ?? 0) + 1, (next[j - 1] ?? 0) + 1));
    }
    row = next;
  }
  return row[b.length] ?? 0;
}

/** A name shorter than this is part of too many others to guess from. */
const TELLING_LETTERS = 4;

/** The nearest of the names, when it has this one in it or at most half of the letters differ. */
export function nearestName(name: string, names: readonly string[]): string | undefined {
  const part = name.toLowerCase();
  const longer = names.find((candidate) => candidate.toLowerCase().includes(part));
  if (part.length >= TELLING_LETTERS && longer !== undefined) return longer;
  let best: string | undefined;
  let bestDistance = Math.max(2, Math.floor(name.length / 2)) + 1;
  for (const candidate of names) {
    const distance = editDistance(name.toLowerCase(), candidate.toLowerCase());
    if (distance < bestDistance) [best, bestDistance] = [candidate, distance];
  }
  return best;
}
