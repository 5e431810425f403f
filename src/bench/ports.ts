/** What a job needs from the world. Types only: the bench never touches a device itself. */

/** Something the person said, pressed or sent, from whichever door it came. */
export interface Heard {
  /** Plain lower-case words: "guard closed", "twenty four point nine", "24.9". */
  readonly text: string;
  /** Other readings of the same sound, likeliest first, without `text`. */
  readonly alternatives: readonly string[];
  /** 0 to 1. Keys, buttons and gauges give 1. An ear with no measure of its own gives 1 too. */
  readonly confidence: number;
  readonly from: 'speech' | 'key' | 'touch' | 'gauge' | 'script';
  /** Milliseconds since 1970, from the Clock. */
  readonly at: number;
}

/** A number that may be said now. Numbers are in `unit`; the ear may narrow its grammar with them. */
export interface NumberWanted {
  readonly unit: string;
  readonly min: number;
  readonly max: number;
  readonly decimals: number;
}

/** All that counts as said in this state: the ear is biased by it and by nothing else. */
export interface ListenFor {
  readonly phrases: readonly string[];
  readonly number?: NumberWanted;
  /** Those of the phrases that change nothing: an ear may take them when it is less sure. */
  readonly harmless?: readonly string[];
  /** Those that only make the job wait: an ear takes them before all others. */
  readonly pausing?: readonly string[];
  /** Phrase → word to be said before it ("tool carbide"), for an ear that would hear short words in all talk; empty: none. */
  readonly led?: Readonly<Record<string, string>>;
  /** Extra pronunciations a flow brings along: word → phones of the ear's dictionary. */
  readonly pronunciations?: Readonly<Record<string, readonly string[]>>;
}

/** Why an ear cannot hear, in a few kinds, with the sentence for the person. */
export interface Deafness {
  readonly kind: 'missing' | 'refused' | 'failing' | 'noisy' | 'taken' | 'off';
  readonly sentence: string;
  /** It lies in this ear alone: another may hear. */
  readonly otherMayHear?: true;
}

/** What an ear reports while it is open. */
export type EarReport =
  | { readonly kind: 'listening' }
  | { readonly kind: 'heard'; readonly heard: Heard }
  /** Somebody spoke, or something sounded, and it matched nothing that counts. */
  | { readonly kind: 'unclear'; readonly text: string }
  | { readonly kind: 'deaf'; readonly deafness: Deafness }
  /** Words that are listened for and that it has no pronunciation of: they must come by keys. */
  | { readonly kind: 'unpronounced'; readonly words: readonly string[] }
  /** Loudness of the room and advice about it ("move the microphone closer"). */
  | { readonly kind: 'level'; readonly decibels: number; readonly advice?: string };

/** What goes on while an ear is shut. */
export interface Meanwhile {
  /** What the mouth says: the microphone hears it too. */
  readonly line: string;
  /** The phrases that are heard all the same; they do not stand in the line. */
  readonly still: readonly string[];
}

/** An ear: hears words. Several exist, one is in use; it owns the microphone while it is open. */
export interface Ear {
  readonly name: string;
  /** True when it hears words that are not in the list: then a note can be spoken. */
  readonly hearsFreely?: boolean;
  /** Shown to the person: does sound leave this device? */
  readonly soundLeavesDevice: 'no' | 'yes' | 'may';
  /** Starts listening; reports come until `close`. Never rejects: trouble is a `deaf` report. */
  open(report: (report: EarReport) => void): Promise<void>;
  listenFor(words: ListenFor): void;
  /**
   * Shut while the mouth speaks. Nothing heard while shut is ever reported, but for the phrases of `meanwhile`, where the
   * ear is able to tell them from the mouth. Called again, it changes what is still heard.
   */
  shut(meanwhile?: Meanwhile): Promise<void>;
  reopen(): Promise<void>;
  close(): Promise<void>;
}

/** How a line ended: sounded whole, cut short on request, or no sound came. */
export type SayEnd = 'said' | 'cut' | 'failed';

export interface Mouth {
  readonly name: string;
  /** Speaks one short line; resolves at the end of its sound. Never rejects. */
  say(
    line: string,
    manner?: { readonly rate?: number; readonly volume?: number; readonly pitch?: number },
  ): Promise<SayEnd>;
  /** A short sound of ours: something was heard, or was not understood. */
  cue(cue: 'heard' | 'unclear' | 'stop'): Promise<void>;
  /** Cuts the current line short. */
  hush(): void;
}

export interface Clock {
  /** Milliseconds since 1970. */
  now(): number;
  /** Calls back once after `ms`; returns a function that takes it back. */
  after(ms: number, call: () => void): () => void;
}

/** Keeps the screen awake during a run. Failing is not a fault: it is only reported. */
export interface ScreenLock {
  hold(): Promise<boolean>;
  release(): Promise<void>;
}

/** The head of one run: what is being made, by whom, with which numbers. */
export interface RunHead {
  readonly id: string;
  readonly flowId: string;
  readonly flowTitle: string;
  readonly flowVersion: number;
  /** Key of the kept flow, kind and card texts: a hash of their content. */
  readonly sourceKey: string;
  /** The name as it was then. */
  readonly operator: string;
  /** In the list of operators of this device; runs from before there was one have none. */
  readonly operatorId?: string;
  /** How much is told; the gates are the same at every pace. */
  readonly pace?: Pace;
  /** Code of the language it is said in; English without it. */
  readonly language?: string;
  /** One piece of several. The first of a batch has none: its own id names the batch. */
  readonly batch?: PieceOfBatch;
  readonly startedAt: number;
  readonly endedAt?: number;
  readonly status: 'open' | 'finished' | 'given-up';
  /** The job's numbers as given: input id → value in base unit, or the chosen word. */
  readonly inputs: Readonly<Record<string, number | string>>;
  readonly cardId: string;
  /** What came of it, counted when it ended, so that lists need not read the entries. */
  readonly tally?: RunTally;
}

export type Pace = 'first-time' | 'familiar' | 'own-pace';

export interface PieceOfBatch {
  /** The id of the run that made the first piece. */
  readonly id: string;
  /** 2, 3, 4 … */
  readonly piece: number;
}

/** A run in counts. */
export interface RunTally {
  /** Words that were not understood. */
  readonly unclear: number;
  /** Words refused, at a gate above all. */
  readonly refused: number;
  readonly within: number;
  readonly rework: number;
  readonly lost: number;
  readonly notes: number;
  /** Names of those who released a step. */
  readonly releases: readonly string[];
}

/** The texts a run was started from, so that it can be replayed when the shipped files have changed. */
export interface RunSource {
  readonly key: string;
  readonly flow: string;
  readonly kind: string;
  readonly card: string;
}

/** One accepted or refused word in a run. A run is its entries, replayed. */
export interface RunEntry {
  readonly version: 1;
  readonly runId: string;
  /** 0, 1, 2 … without a gap. */
  readonly seq: number;
  readonly at: number;
  readonly step: string;
  readonly heard: {
    readonly text: string;
    readonly from: Heard['from'];
    readonly confidence: number;
  };
  /** The phrase of the said list, the question or the number it was taken for; none where it matched nothing. */
  readonly understood?: string;
  /** The flow event it became, as plain JSON; null when it was only a question or was refused by talk. */
  readonly event: Readonly<Record<string, unknown>> | null;
  readonly outcome: 'moved' | 'refused' | 'asked' | 'unclear' | 'note';
  /** What was said back, for the record. */
  readonly said?: string;
}

/** A reading against its limits, for the list of a run's results. */
export interface KeptReading {
  readonly step: string;
  readonly reading: string;
  readonly label: string;
  readonly unit: string;
  readonly value: number;
  readonly lower?: number;
  readonly upper?: number;
  readonly verdict?: 'within' | 'rework' | 'lost';
  readonly at: number;
}

/** A finished or open run, whole. */
export interface KeptRun {
  readonly head: RunHead;
  readonly source: RunSource;
  readonly entries: readonly RunEntry[];
  readonly readings: readonly KeptReading[];
}

/** The logbook as the bench sees it. Every promise resolves only when the data is safely on disk. */
export interface Ledger {
  start(head: RunHead, source: RunSource): Promise<void>;
  append(entry: RunEntry): Promise<void>;
  finish(
    runId: string,
    end: {
      readonly status: 'finished' | 'given-up';
      readonly endedAt: number;
      readonly readings: readonly KeptReading[];
    },
  ): Promise<void>;
  read(runId: string): Promise<KeptRun | null>;
  /** Heads, newest first. */
  list(): Promise<readonly RunHead[]>;
}

/** An instructor's release of one step of one run, as it is kept. Only a checked passphrase makes one. */
export interface Release {
  readonly runId: string;
  readonly step: string;
  /** The instructor: id in the list of operators, and the name as it was then. */
  readonly by: string;
  readonly byName: string;
  readonly at: number;
  /** Over all of the above, by a key of this device that cannot be read out. */
  readonly seal: string;
}

/** Tells a release that this device made from one that was written by hand or came in with a file. */
export interface ReleaseCheck {
  genuine(release: Release): Promise<boolean>;
}

/** Only one tab may lead a run. */
export interface RunOwnership {
  /** True when this tab now leads the run; false when another tab already does. */
  claim(runId: string): Promise<boolean>;
  release(runId: string): void;
}
