/** What the screens are given. They call nothing else: devices, storage and voices stay behind this door. */

import type {
  EarReport,
  KeptRun,
  Notice,
  Pace,
  RunHead,
  RunState,
  SlateReply,
} from '../bench/index.ts';
import type { ToldProof } from '../proof/index.ts';
import type { Language } from '../texts/index.ts';
import type { Material } from '../trade/index.ts';

/** A flow one can run, as the Shelf shows it. */
export interface ShelfEntry {
  readonly id: string;
  readonly title: string;
  readonly about: string;
  readonly machineKind: string;
  readonly kindTitle: string;
  readonly cautions: readonly string[];
  readonly revision: number;
  readonly steps: number;
  /** Texts as shipped; a run keeps them. */
  readonly flow: string;
  readonly kind: string;
}

export interface CardEntry {
  readonly id: string;
  readonly title: string;
  readonly machineKind: string;
  /** True for a card written in this shop, which can be changed and taken away. */
  readonly own: boolean;
  readonly card: string;
}

export interface RunChoice {
  readonly flowId: string;
  readonly cardId: string;
  /** The name of who makes it; one that is new is put into the list. */
  readonly operator: string;
  readonly pace?: Pace;
  /** The run whose piece is made once more: both are of one batch. */
  readonly batchOf?: string;
  /** An instructor must release the first cut, whatever the flow says. */
  readonly releaseFirst?: boolean;
  /** Input id → base unit number or word. */
  readonly inputs: Readonly<Record<string, number | string>>;
}

export type Begun =
  | { readonly ok: true; readonly runId: string }
  | { readonly ok: false; readonly faults: readonly string[] };

/** One run on the Bench, live. */
export interface LiveRun {
  current(): {
    readonly state: RunState;
    readonly notice: Notice;
    /** The last line given to the mouth, refusals and answers too: it is shown for those who cannot hear it. */
    readonly said?: string;
  };
  /** Called after every change; gives back a function that ends it. */
  subscribe(changed: () => void): () => void;
  /** The one door for buttons and keys: the words a person would say. */
  heard(text: string, from: 'touch' | 'key'): void;
  /** A typed note, into the record. */
  note(text: string): void;
  /** Releases the step that waits; a sentence when it was not the passphrase. Tries are on record. */
  release(by: Credential): Promise<string | null>;
  giveUp(): void;
  repeat(): void;
  leave(): Promise<void>;
}

/** Somebody who works here. */
export interface Operator {
  readonly id: string;
  readonly name: string;
  readonly addedAt: number;
  /** Can release steps: a passphrase is set on this device. */
  readonly instructor: boolean;
}

/** An instructor and what they typed; it is used once and kept nowhere. */
export interface Credential {
  readonly id: string;
  readonly passphrase: string;
}

/** The list of operators. What can be refused gives a sentence, or null when it was done. */
export interface OperatorsDesk {
  all(): readonly Operator[];
  add(name: string): Promise<string | null>;
  rename(id: string, name: string): Promise<string | null>;
  /** An instructor is taken off the list by their own passphrase only. */
  remove(id: string, passphrase?: string): Promise<string | null>;
  /** Sets or changes a passphrase; where there is an instructor, one must agree. */
  makeInstructor(id: string, passphrase: string, by?: Credential): Promise<string | null>;
}

/** A picture kept beside a run, on this device. */
export interface RunPhoto {
  readonly id: string;
  readonly at: number;
  readonly step: string;
  readonly about: 'set-up' | 'piece';
  readonly width: number;
  readonly height: number;
  readonly picture: Blob;
}

export interface PhotosDesk {
  of(runId: string): Promise<readonly RunPhoto[]>;
  /** A sentence when it was not kept. */
  add(runId: string, photo: Omit<RunPhoto, 'id' | 'at'>): Promise<string | null>;
  remove(id: string): Promise<void>;
}

export type Opened =
  | { readonly ok: true; readonly run: LiveRun; readonly resumed: boolean }
  /** Led in another tab, damaged, or gone: one sentence. */
  | { readonly ok: false; readonly fault: string };

export interface EarChoice {
  readonly id: string;
  readonly name: string;
  readonly about: string;
  readonly soundLeavesDevice: 'no' | 'yes' | 'may';
  /** The browser must fetch a speech pack first, by a tap. */
  readonly needsFetching: boolean;
}

/** Sets up the ear of this page. Numbers about microphone, room and voice are kept on this device; sound never is. */
export interface EarBench {
  /** Whose voice is learnt. */
  person(): string;
  /** Opens microphone and ear; a fault is one sentence. */
  open(
    report: (report: EarReport) => void,
  ): Promise<
    | { readonly ok: true; readonly bench: OpenEarBench }
    | { readonly ok: false; readonly fault: string }
  >;
  /** The words of a flow that are worth learning. */
  words(flowId: string): Promise<readonly string[]>;
  voices(): readonly {
    readonly key: string;
    readonly person: string;
    readonly microphone: string;
    readonly phrases: readonly string[];
  }[];
  forget(key: string): void;
}

export interface OpenEarBench {
  /** Phrase → how often it was learnt, from this person at this microphone. */
  known(): Readonly<Record<string, number>>;
  /** Ten seconds of the room without speech; null when it was broken off. */
  measureRoom(): Promise<{
    readonly decibels: number;
    readonly isSafe: boolean;
    readonly advice?: string;
  } | null>;
  /** The next thing said is learnt as this phrase. */
  enrol(phrase: string): Promise<
    | { readonly kind: 'kept'; readonly times: number }
    | {
        readonly kind: 'again';
        readonly reason: 'too-quiet' | 'too-short' | 'too-long' | 'unlike' | 'nothing';
      }
  >;
  stopEnrolling(): void;
  /** From now on reports what it hears of these. */
  tryWords(phrases: readonly string[]): void;
  close(): Promise<void>;
}

export interface MouthChoice {
  readonly id: string;
  readonly name: string;
}

export interface Settings {
  /** Code of the language of the page and of new runs: "en", "de". */
  readonly language: string;
  readonly theme: 'auto' | 'light' | 'dark';
  /** 1 is sized for two metres on a tablet. */
  readonly textSize: number;
  readonly rate: number;
  readonly volume: number;
  readonly pitch: number;
  readonly ear: string;
  readonly mouth: string;
  readonly operator: string;
  readonly cardId: string;
}

/** What is known of a job's proof. */
export type ProofState =
  | { readonly is: 'walking'; readonly places: number }
  | { readonly is: 'told'; readonly proof: ToldProof }
  /** There is no job to prove: one sentence each. */
  | { readonly is: 'faulty'; readonly faults: readonly string[] }
  | { readonly is: 'stopped'; readonly why: 'person' | 'other' | 'failed' };

/** Every path of a job is walked before it is begun. */
export interface Proofs {
  /** Nothing when it was never asked for. */
  state(choice: ProofChoice): ProofState | undefined;
  /** Walks unless the verdict is known; another question ends the one before. */
  ask(choice: ProofChoice): void;
  stop(): void;
  subscribe(changed: () => void): () => void;
}

export type ProofChoice = Pick<RunChoice, 'flowId' | 'cardId' | 'inputs' | 'releaseFirst'>;

/** What the Slate needs of devices. */
export interface SlateDesk {
  /** The last answers, newest first. */
  last(): Promise<readonly SlateReply[]>;
  /** Keeps one more and gives back those that are kept now. */
  keep(reply: SlateReply): Promise<readonly SlateReply[]>;
  /** Opens the chosen ear for one question; gives back what shuts it early. */
  listen(
    report: (
      heard: /** The ear is open: before, it may have to be fetched. */
        | { readonly kind: 'listening' }
        | { readonly kind: 'heard'; readonly text: string }
        | { readonly kind: 'deaf'; readonly sentence: string },
    ) => void,
  ): Promise<() => Promise<void>>;
  say(line: string): Promise<void>;
}

/** The shop's own materials, beside those of the trade's table. */
export interface MaterialsDesk {
  all(): Promise<readonly Material[]>;
  /** Faults, each a sentence; none when it was kept. */
  keep(row: Material): Promise<readonly string[]>;
  remove(name: string): Promise<void>;
}

export interface AppWorld {
  readonly language: Language;
  /** Code and own name of each. */
  readonly languages: readonly (readonly [code: string, name: string])[];
  /** That of a kept run; English for none. */
  languageNamed(code: string | undefined): Promise<Language>;
  readonly shelf: readonly ShelfEntry[];
  cards(): readonly CardEntry[];
  /** Faults, each a sentence; none when it was kept. */
  keepCard(text: string): Promise<readonly string[]>;
  removeCard(id: string): Promise<void>;
  readonly materials: MaterialsDesk;
  settings(): Settings;
  change(settings: Partial<Settings>): Promise<void>;
  /** Called when settings or cards change. */
  subscribe(changed: () => void): () => void;
  ears(): readonly EarChoice[];
  /** Fetches the browser's speech pack; call it in a tap. Takes two minutes at most. */
  fetchPack(): Promise<boolean>;
  readonly earBench: EarBench;
  mouths(): readonly MouthChoice[];
  /** Waits for the proof: what is not proved is not begun. */
  begin(choice: RunChoice): Promise<Begun>;
  readonly proofs: Proofs;
  open(runId: string): Promise<Opened>;
  /** The newest first. Where there are many, `newest` is called with the first of them while the rest is read. */
  runs(newest?: (heads: readonly RunHead[]) => void): Promise<readonly RunHead[]>;
  read(runId: string): Promise<KeptRun | null>;
  /** The finished pieces of the batch that a run belongs to, the first made first. */
  batch(runId: string): Promise<readonly KeptRun[]>;
  /** The whole logbook as one file text, and back; nothing is changed when it is refused. */
  exportAll(): Promise<Blob>;
  importAll(text: string): Promise<{ readonly ok: boolean; readonly message: string }>;
  readingsTable(runs: readonly KeptRun[]): string;
  readonly slate: SlateDesk;
  readonly operators: OperatorsDesk;
  readonly photos: PhotosDesk;
  /** True when every release in the run was sealed by this device. */
  releasesGenuine(run: KeptRun): Promise<boolean>;
  /** What was wrong with kept data, each a sentence. */
  troubles(): readonly string[];
  /** Storage that the browser promised not to clear, or why not known. */
  readonly persistent: () => Promise<boolean | null>;
}

/** What every screen is given. */
export interface WorldProps {
  readonly world: AppWorld;
}
