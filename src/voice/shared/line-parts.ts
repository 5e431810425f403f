/** What of a spoken line may be taken for a short phrase: its words, and each two that follow one another. Pure. */
import { phraseWords } from './pronunciation.ts';

/** The parts, each once. Figures are left out: as words they are like none of the few that may break into a line. */
export function partsOf(line: string): readonly string[] {
  const words = phraseWords(line);
  const pairs = words.slice(1).map((word, i) => `${words[i]} ${word}`);
  return [...new Set([...words, ...pairs])];
}
