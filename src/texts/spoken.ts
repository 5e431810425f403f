/** How a language says and hears numbers, units and lists: data that the room words reads. */

export interface Spoken {
  /** Nouns begin with a capital everywhere. */
  readonly keepsCapitals: boolean;
  /** "," in "24,95", and "." in "1.400". */
  readonly decimalSign: string;
  readonly groupSign: string;
  /** Said between whole and digits: "Komma". */
  readonly point: string;
  readonly minus: string;
  readonly and: string;
  readonly or: string;
  readonly noNumber: string;
  /** 0 to 19, as they stand alone. */
  readonly belowTwenty: readonly string[];
  /** 0, 10, 20 … 90; the first two are not used. */
  readonly tens: readonly string[];
  /** How a number between the tens is made: "{one}und{ten}". */
  readonly between: string;
  /** One inside a longer number: "ein" in "einundzwanzig" and "einhundert". */
  readonly oneInside: string;
  readonly hundred: string;
  readonly thousand: string;
  /** "eine Million" and "Millionen". */
  readonly million: readonly string[];
  /** Put between the pieces of one number. */
  readonly joint: string;
  /** Other forms that are heard for a number: "zwo". */
  readonly alsoHeard: Readonly<Record<string, number>>;
  /** Words heard for the point and for the signs. */
  readonly points: readonly string[];
  readonly minuses: readonly string[];
  readonly pluses: readonly string[];
  /** Parts of one, by the words that name them: "hundertstel" is 100. */
  readonly parts: Readonly<Record<string, number>>;
  /** Whole words for a number and a half: "anderthalb" is 1.5; and what makes one of any number: "einhalb". */
  readonly halves: Readonly<Record<string, number>>;
  readonly andAHalf: string;
  /** Unit id → "ein Millimeter", "Millimeter", then other words that are heard. An empty name is not spoken. */
  readonly units: Readonly<Record<string, readonly string[]>>;
  /** Unit id → as it is shown, where that is not the sign of everywhere. */
  readonly unitsShown: Readonly<Record<string, string>>;
  /** What people say before a figure. */
  readonly runUp: readonly string[];
  /** Sounds of hesitation and articles: never a word of their own. */
  readonly hesitation: readonly string[];
  /** Politeness at the ends of what is said. */
  readonly edges: readonly string[];
  /** Words that deny what stands beside them. */
  readonly negations: readonly string[];
  /** Other spellings of one word. */
  readonly spellings: Readonly<Record<string, string>>;
  /** Before a number that takes the place of the one read back: "nein". */
  readonly denials: readonly string[];
  /** Too bare to answer a gate. */
  readonly bareYes: readonly string[];
}
