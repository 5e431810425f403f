/** The beginning of a sentence is a capital, to the ear of a mouth and to the eye. */

export function sentence(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
