/** A sentence that begins with a known head, such as "note, the jaws are worn". */

/** What follows the head as it was said, or nothing where no head begins the text; the longest head counts. */
export function restAfter(text: string, heads: readonly string[]): string | undefined {
  const longest = [...heads].sort((a, b) => b.length - a.length);
  const head = longest.find((one) => text.toLowerCase().startsWith(one));
  if (head === undefined) return undefined;
  return /^[,:]?\s+(\S.*)$/s.exec(text.slice(head.length))?.[1];
}
