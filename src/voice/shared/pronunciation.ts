/** How words sound: the dictionary, ours in addition, and what has no entry. Pure. */

/** Word → ways to say it, in the phones of the ear's dictionary (ARPABET without stress). */
export type Pronunciations = ReadonlyMap<string, readonly string[]>;

/**
 * Ways of saying that the dictionary lacks: the radiotelephone figures of ICAO Annex 10 volume II
 * (tree, fower, fife, ait, niner), commands with an l that is half a vowel or a vowel that is shorter, and the word list
 * of a workshop.
 */
const OURS: Readonly<Record<string, readonly string[]>> = {
  three: ['T R IY'],
  four: ['F OW ER'],
  five: ['F AY F'],
  nine: ['N AY N ER'],
  hold: ['HH OW D', 'HH AW L D', 'HH OW L T'],
  repeat: ['R EH P IY T', 'R AH P IY T'],
  back: ['B EH K'],
  thou: ['TH AW'],
  thous: ['TH AW Z'],
  zero: ['Z IH R OW'],
  millimetre: ['M IH L AH M IY T ER'],
  millimetres: ['M IH L AH M IY T ER Z'],
  micron: ['M AY K R AA N'],
  microns: ['M AY K R AA N Z'],
  micrometre: ['M AY K R AH M IY T ER'],
  micrometres: ['M AY K R AH M IY T ER Z'],
  brazed: ['B R EY Z D'],
  deburr: ['D IY B ER'],
  swarf: ['S W AO R F'],
  chatters: ['CH AE T ER Z'],
  tailstock: ['T EY L S T AA K'],
  handwheel: ['HH AE N D W IY L'],
  runout: ['R AH N AW T'],
  undersize: ['AH N D ER S AY Z'],
  oversize: ['OW V ER S AY Z'],
  unchucked: ['AH N CH AH K T'],
  rechuck: ['R IY CH AH K'],
  pillar: ['P IH L ER'],
  quill: ['K W IH L'],
  headstock: ['HH EH D S T AA K'],
  faceplate: ['F EY S P L EY T'],
  selector: ['S AH L EH K T ER'],
  mandrel: ['M AE N D R AH L'],
  deburring: ['D IY B ER IH NG'],
  knurling: ['N ER L IH NG'],
  reaming: ['R IY M IH NG'],
  chamfer: ['CH AE M F ER', 'SH AE M F ER'],
  kerf: ['K ER F'],
};

/** Reads the dictionary's text: one `word PHONE PHONE` a line, further ways as `word(2)`. */
export function readDictionary(text: string): Pronunciations {
  const words = new Map<string, string[]>();
  for (const line of text.split('\n')) {
    const space = line.indexOf(' ');
    if (space < 0) continue;
    const word = line.slice(0, space).replace(/\(\d+\)$/, '');
    const ways = words.get(word);
    const phones = line.slice(space + 1).trim();
    if (ways) ways.push(phones);
    else words.set(word, [phones]);
  }
  return words;
}

export type ExtraPronunciations = Readonly<Record<string, readonly string[]>>;

/** All ways to say a word, ours and a flow's own included; empty when there is none. */
export function pronunciationsOf(
  word: string,
  dictionary: Pronunciations,
  extra: ExtraPronunciations = {},
): readonly string[] {
  const ways = [...own(extra, word), ...(dictionary.get(word) ?? []), ...own(OURS, word)];
  return [...new Set(ways)];
}

function own(table: ExtraPronunciations, word: string): readonly string[] {
  return Object.hasOwn(table, word) ? (table[word] ?? []) : [];
}

/** The words, each once, that the ear could not hear because nobody told it how they sound. */
export function missingPronunciations(
  phrases: readonly string[],
  dictionary: Pronunciations,
  extra: ExtraPronunciations = {},
): readonly string[] {
  const words = new Set(phrases.flatMap(phraseWords));
  return [...words].filter((word) => pronunciationsOf(word, dictionary, extra).length === 0);
}

/** The words of a phrase as the dictionary writes them. */
export function phraseWords(phrase: string): readonly string[] {
  return phrase
    .toLowerCase()
    .split(/[^a-z']+/)
    .filter((word) => word !== '');
}

/** The 39 phones of the dictionary. */
export const PHONES =
  'AA AE AH AO AW AY B CH D DH EH ER EY F G HH IH IY JH K L M N NG OW OY P R S SH T TH UH UW V W Y Z ZH'.split(
    ' ',
  );
