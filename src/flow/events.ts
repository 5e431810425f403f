/** What can happen to a flow. Everything else is ignored by its statechart. */

export type FlowEvent =
  | { readonly type: 'next' }
  /** To the last step that every path to this one goes through; what was done since is no longer known. */
  | { readonly type: 'back' }
  | { readonly type: 'hold' }
  | { readonly type: 'carry-on' }
  /** The person said stop: the drill. It stops nothing by itself. */
  | { readonly type: 'stop' }
  /** Somebody came back after the page was gone: nothing that turns can be taken for known. */
  | { readonly type: 'interrupted' }
  /** A response to a gate, or the report of a loss. */
  | { readonly type: 'fact'; readonly fact: string; readonly state: string }
  /** In the base unit of the reading's quantity, after it was read back and confirmed. */
  | { readonly type: 'reading'; readonly value: number }
  | { readonly type: 'choose'; readonly option: string }
  | { readonly type: 'trouble'; readonly walk: string }
  /** An instructor has released the step that stands here. No word is this event: only a checked passphrase makes it. */
  | { readonly type: 'release' }
  /** The numbers were worked out anew: a speed that was set may be the wrong one now. */
  | { readonly type: 'adjusted' };

/** A fact nobody has answered for. */
export const unknownState = 'unknown';

export type Facts = Readonly<Record<string, string>>;

/** Where a passes step stands: the last measured size and what the cross dial read for it, both in mm. */
export interface PassState {
  readonly size: number;
  readonly dial: number;
}

export interface FlowContext {
  readonly facts: Facts;
  /** Reading name → number in base unit. */
  readonly readings: Readonly<Record<string, number>>;
  /** Steps with passes that have been entered. */
  readonly passes: Readonly<Record<string, PassState>>;
  /** The speed the machine was last said to be set to, in rev/min. */
  readonly speedSet: number | null;
  /** While held: where in the step to go on, and who or what held it. */
  readonly held: {
    readonly to: 'gate' | 'open' | 'measure';
    readonly by: 'loss' | 'person' | 'stop' | 'interruption';
    /** Facts that were lost, in the order of the machine kind. */
    readonly lost: readonly string[];
  } | null;
}
