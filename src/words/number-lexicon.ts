/** The words numbers are made of, with the forms a recogniser writes for the same sounds. */

/** What a word costs when it is taken as a number word: 0 for its own, more for a word that only sounds like it. */
export interface Lexeme<T> {
  readonly is: T;
  readonly cost: number;
}

/** A homophone or a word of radio speech is believed only after every plain reading. */
const SOUNDS_LIKE = 0.4;

function lexicon<T>(
  own: Readonly<Record<string, T>>,
  alike: Readonly<Record<string, T>>,
): ReadonlyMap<string, Lexeme<T>> {
  const words = new Map<string, Lexeme<T>>();
  for (const [word, is] of Object.entries(alike)) words.set(word, { is, cost: SOUNDS_LIKE });
  for (const [word, is] of Object.entries(own)) words.set(word, { is, cost: 0 });
  return words;
}

/** One to nine, with ICAO radio forms as words of their own. */
export const UNITS_WORDS = lexicon(
  {
    one: 1,
    two: 2,
    three: 3,
    four: 4,
    five: 5,
    six: 6,
    seven: 7,
    eight: 8,
    nine: 9,
    wun: 1,
    tree: 3,
    fower: 4,
    fife: 5,
    ait: 8,
    niner: 9,
  },
  { won: 1, to: 2, too: 2, for: 4, fore: 4, ate: 8 },
);

export const ZERO_WORDS = lexicon(
  { zero: 0, nought: 0, naught: 0, aught: 0, nil: 0 },
  { ought: 0 },
);

/** Zero only inside a number, never its first word unless a point follows. */
export const INNER_ZERO_WORDS = new Set(['oh', 'o']);

export const TEENS = lexicon(
  {
    ten: 10,
    eleven: 11,
    twelve: 12,
    thirteen: 13,
    fourteen: 14,
    fifteen: 15,
    sixteen: 16,
    seventeen: 17,
    eighteen: 18,
    nineteen: 19,
  },
  {},
);

export const TENS = lexicon(
  {
    twenty: 20,
    thirty: 30,
    forty: 40,
    fourty: 40,
    fifty: 50,
    sixty: 60,
    seventy: 70,
    eighty: 80,
    ninety: 90,
  },
  {},
);

export const POINTS = new Set(['point', 'decimal', 'dot']);

/** Parts of a whole that a half-inch rule knows, by the word or words that name them. */
export const RULE_PARTS: ReadonlyMap<string, number> = new Map(
  Object.entries({
    half: 2,
    halves: 2,
    quarter: 4,
    quarters: 4,
    fourths: 4,
    eighth: 8,
    eighths: 8,
    sixteenth: 16,
    sixteenths: 16,
    'thirty second': 32,
    'thirty seconds': 32,
    '30 second': 32,
    '30 seconds': 32,
    'sixty fourth': 64,
    'sixty fourths': 64,
    '60 fourth': 64,
    '60 fourths': 64,
    '8th': 8,
    '8ths': 8,
    '16th': 16,
    '16ths': 16,
    '32nd': 32,
    '32nds': 32,
    '64th': 64,
    '64ths': 64,
  }),
);

/** Decimal parts, by the word or words that name them. "Tenth" means a tenth of a thou beside inches. */
export const TEN_PARTS: ReadonlyMap<string, 10 | 100 | 1000 | 10000> = new Map(
  Object.entries({
    tenth: 10,
    tenths: 10,
    '10th': 10,
    '10ths': 10,
    hundredth: 100,
    hundredths: 100,
    '100th': 100,
    '100ths': 100,
    thousandth: 1000,
    thousandths: 1000,
    '1000th': 1000,
    '1000ths': 1000,
    'ten thousandth': 10000,
    'ten thousandths': 10000,
  } as const),
);

export const SIGNS: ReadonlyMap<string, 1 | -1> = new Map([
  ['minus', -1],
  ['negative', -1],
  ['plus', 1],
  ['positive', 1],
]);

/** "Mil" is a millimetre to some and a thou to others: only a range can tell. */
export const MILS = new Set(['mil', 'mils', 'mill', 'mills']);

/** Words a recogniser writes for "thou". */
export const THOU_ALIKE = new Set(['though', 'thow']);
