/** How a language says and hears numbers, units and lists: data that the room words reads. */

export interface Spoken {
  /** "," in "24,95". */
  readonly decimalSign: string;
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
  /** One and many, as words of their own. */
  readonly million: readonly [string, string];
  /** Other forms that are heard for a number: "zwo". */
  readonly alsoHeard: Readonly<Record<string, number>>;
  /** Words heard for the point and for the minus. */
  readonly points: readonly string[];
  readonly minuses: readonly string[];
  /** Parts of one, by the words that name them: "hundertstel" is 100. */
  readonly parts: Readonly<Record<string, number>>;
  /** A half of one, alone or at the end: "halb", "halbe". */
  readonly halves: readonly string[];
  /** Whole words for a number and a half: "anderthalb" is 1.5. */
  readonly mixed: Readonly<Record<string, number>>;
  /** Unit id → one, many, then other words that are heard. */
  readonly units: Readonly<Record<string, readonly string[]>>;
  /** What people say before a figure. */
  readonly runUp: readonly string[];
  /** Sounds of hesitation and articles: never a word of their own. */
  readonly hesitation: readonly string[];
  readonly leading: readonly string[];
  readonly trailing: readonly string[];
  /** Words that deny what stands beside them. */
  readonly negations: readonly string[];
  /** Other spellings of one word. */
  readonly spellings: Readonly<Record<string, string>>;
  /** Before a number that takes the place of the one read back: "nein". */
  readonly denials: readonly string[];
  /** Too bare to answer a gate. */
  readonly bareYes: readonly string[];
}
