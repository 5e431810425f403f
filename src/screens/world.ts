/** What the screens are given. They call nothing else: devices, storage and voices stay behind this door. */

import type { KeptRun, Notice, RunHead, RunState, SlateReply } from '../bench/index.ts';

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
  readonly operator: string;
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
  giveUp(): void;
  repeat(): void;
  leave(): Promise<void>;
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
}

export interface MouthChoice {
  readonly id: string;
  readonly name: string;
}

export interface Settings {
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

/** What the Slate needs of devices. */
export interface SlateDesk {
  /** The last answers, newest first. */
  last(): Promise<readonly SlateReply[]>;
  /** Keeps one more and gives back those that are kept now. */
  keep(reply: SlateReply): Promise<readonly SlateReply[]>;
  /** Opens the chosen ear for one question; gives back what shuts it early. */
  listen(
    report: (
      heard:
        | { readonly kind: 'heard'; readonly text: string }
        | { readonly kind: 'deaf'; readonly sentence: string },
    ) => void,
  ): Promise<() => Promise<void>>;
  say(line: string): Promise<void>;
}

export interface AppWorld {
  readonly shelf: readonly ShelfEntry[];
  cards(): readonly CardEntry[];
  /** Faults, each a sentence; none when it was kept. */
  keepCard(text: string): Promise<readonly string[]>;
  removeCard(id: string): Promise<void>;
  settings(): Settings;
  change(settings: Partial<Settings>): Promise<void>;
  /** Called when settings or cards change. */
  subscribe(changed: () => void): () => void;
  ears(): readonly EarChoice[];
  mouths(): readonly MouthChoice[];
  begin(choice: RunChoice): Promise<Begun>;
  open(runId: string): Promise<Opened>;
  runs(): Promise<readonly RunHead[]>;
  read(runId: string): Promise<KeptRun | null>;
  /** The whole logbook as one file text, and back; nothing is changed when it is refused. */
  exportAll(): Promise<string>;
  importAll(text: string): Promise<{ readonly ok: boolean; readonly message: string }>;
  readingsTable(runs: readonly KeptRun[]): string;
  readonly slate: SlateDesk;
  /** What was wrong with kept data, each a sentence. */
  troubles(): readonly string[];
  /** Storage that the browser promised not to clear, or why not known. */
  readonly persistent: () => Promise<boolean | null>;
}

/** What every screen is given. */
export interface WorldProps {
  readonly world: AppWorld;
}
