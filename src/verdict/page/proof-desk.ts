/** Asks for proofs in a worker, one at a time, and keeps what was told as long as the page is open. */

import type { Clock } from '../../bench/ports.ts';
import type { ProofJob, ToldProof } from '../../proof/index.ts';
import type { FromProver, ToProver } from '../shared/messages.ts';

export type ProofState =
  | { readonly is: 'walking'; readonly places: number }
  | { readonly is: 'told'; readonly proof: ToldProof }
  /** There is no job to prove: one sentence each. */
  | { readonly is: 'faulty'; readonly faults: readonly string[] }
  /** Ended before it was done: by the person, for another question, or by its own failure. */
  | { readonly is: 'stopped'; readonly why: 'person' | 'other' | 'failed' };

/** What is used of a `Worker`. */
export interface Prover {
  postMessage(message: ToProver): void;
  terminate(): void;
  onmessage: ((event: MessageEvent<FromProver>) => void) | null;
  onerror: ((event: ErrorEvent) => void) | null;
}

export interface ProofWorld {
  readonly clock: Clock;
  readonly start: () => Prover;
  /** Milliseconds after which a walk is given up as too large. */
  readonly limit: number;
}

interface Walk {
  readonly key: string;
  readonly answer: Promise<ProofState>;
  readonly end: (state: ProofState) => void;
}

export class ProofDesk {
  private readonly known = new Map<string, ProofState>();
  private readonly listeners = new Set<() => void>();
  private walk: Walk | undefined;

  constructor(private readonly world: ProofWorld) {}

  /** What is known by now; nothing when it was never asked for. */
  state(asked: ProofJob): ProofState | undefined {
    return this.known.get(keyOf(asked));
  }

  /** Called after every change; gives back what ends it. */
  subscribe(changed: () => void): () => void {
    this.listeners.add(changed);
    return () => this.listeners.delete(changed);
  }

  /** The verdict, walked for unless it is known. Another question ends the one before. Never rejects. */
  ask(asked: ProofJob): Promise<ProofState> {
    const key = keyOf(asked);
    const known = this.known.get(key);
    if (known && (known.is === 'told' || known.is === 'faulty')) return Promise.resolve(known);
    if (this.walk?.key === key) return this.walk.answer;
    this.walk?.end({ is: 'stopped', why: 'other' });
    return this.begin(key, asked);
  }

  /** The person no longer waits. */
  stop(): void {
    this.walk?.end({ is: 'stopped', why: 'person' });
  }

  private begin(key: string, asked: ProofJob): Promise<ProofState> {
    const prover = this.world.start();
    const { limit, clock } = this.world;
    let answered: (state: ProofState) => void = () => {};
    const answer = new Promise<ProofState>((resolve) => {
      answered = resolve;
    });
    const end = (state: ProofState) => {
      takeBack();
      prover.terminate();
      this.walk = undefined;
      this.keep(key, state);
      answered(state);
    };
    const takeBack = clock.after(limit, () => end({ is: 'told', proof: outOfTime(limit) }));
    this.walk = { key, answer, end };
    prover.onmessage = ({ data }) => this.heard(key, data, end);
    prover.onerror = () => end({ is: 'stopped', why: 'failed' });
    this.keep(key, { is: 'walking', places: 0 });
    prover.postMessage({ kind: 'prove', asked });
    return answer;
  }

  private heard(key: string, message: FromProver, end: Walk['end']): void {
    if (message.kind === 'walking') this.keep(key, { is: 'walking', places: message.places });
    else if (message.kind === 'failed') end({ is: 'stopped', why: 'failed' });
    else if (message.result.ok) end({ is: 'told', proof: message.result.proof });
    else end({ is: 'faulty', faults: message.result.faults });
  }

  private keep(key: string, state: ProofState): void {
    this.known.set(key, state);
    for (const call of this.listeners) call();
  }
}

function outOfTime(limit: number): ToldProof {
  return { verdict: 'too-large', reason: `${limit / 1000} s`, problems: [], states: 0 };
}

/** Everything that a verdict depends on. */
function keyOf({ flow, kind, card, inputs, language, releaseFirst }: ProofJob): string {
  const more = [language?.code ?? null, releaseFirst === true];
  return JSON.stringify([flow, kind, card, Object.entries(inputs).sort(), ...more]);
}
