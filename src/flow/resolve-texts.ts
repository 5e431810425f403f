/** Finds the values that a sentence puts in by {name}. */

const place = /\{([^{}]*)\}/g;
const name = /^[a-z][A-Za-z0-9]*(\.[a-z][A-Za-z0-9]*)?$/;

/** The names in braces, in order; a brace that is no name is given as it stands, in `strange`. */
export function namesIn(text: string): {
  readonly names: readonly string[];
  readonly strange: readonly string[];
} {
  const found = [...text.matchAll(place)].map((match) => match[1] ?? '');
  const rest = text.replace(place, '');
  const strange = found.filter((one) => !name.test(one));
  if (/[{}]/.test(rest)) strange.push(rest.includes('{') ? '{' : '}');
  return { names: found.filter((one) => name.test(one)), strange };
}

/** Puts words in for the names; a name with no value stays visible, so that it cannot pass unseen. */
export function fillText(text: string, figureFor: (name: string) => string | undefined): string {
  return text.replace(place, (whole, inner: string) => figureFor(inner) ?? whole);
}
