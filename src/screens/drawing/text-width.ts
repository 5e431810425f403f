/** About how much room a text takes, without a screen to measure it on. */

/** Widths in parts of the text size, on the wide side of common plain fonts. */
const NARROW = 0.36;
const DIGIT = 0.64;
const CAPITAL = 0.76;
const BROAD = 0.98;
const USUAL = 0.63;
const BOLD = 1.1;

/** Width of `text` at `size`, in the same unit; errs to the wide side. */
export function textWidth(text: string, size: number, bold = false): number {
  const sum = [...text].reduce((width, letter) => width + letterWidth(letter), 0);
  return sum * size * (bold ? BOLD : 1);
}

function letterWidth(letter: string): number {
  if (/[.,:;'|ijl!() ]/.test(letter)) return NARROW;
  if (/[0-9]/.test(letter)) return DIGIT;
  if (/[mwMWØ±×–−+=°%]/.test(letter)) return letter === 'm' || letter === 'w' ? BROAD : 0.86;
  return letter === letter.toUpperCase() ? CAPITAL : USUAL;
}
