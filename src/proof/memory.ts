/**
 * What was seen of step shapes: shared by the steps of one proof. It may be kept from proof to proof for a quick first
 * answer after an edit; a verdict that somebody runs by is taken with a new one, since once, among thousands of random
 * flows, a kept memory gave a verdict that a new one did not.
 */

import type { Job } from '../flow/index.ts';
import type { Tree } from './tree.ts';

/** What one event does, told without the names of steps. */
export interface Move {
  /** Refused, or where it leads: a slot of the frame, the state inside that step, and where a hold goes on. */
  readonly to: {
    readonly slot: number;
    readonly inner: string;
    readonly held: string | null;
    /** False where more may follow by itself. */
    readonly rests: boolean;
  } | null;
  /** Variables that are set, by the frame's names. */
  readonly writes: readonly (readonly [name: string, held: string | number | null])[];
  /** The claim that the move itself breaks. */
  readonly broken: string | null;
}

/** The trees of one place in a shape. */
export interface PlaceTrees {
  readonly moves: Map<string, Tree<Move>>;
  readonly sizes: Tree<readonly number[]>;
  readonly questions: Map<number, Tree<boolean>>;
}

/** More than this, and all is forgotten: a Desk that is edited for hours must not grow for ever. */
const mostShapes = 5_000;

export class Memory {
  private readonly shapes = new Map<string, Map<string, PlaceTrees>>();
  private readonly moves = new Map<string, Move>();
  private readonly lists = new Map<string, readonly number[]>();
  private readonly ids = new Map<string, number>();
  private readonly jobs = new WeakMap<Job, { kind: number; numbers: number }>();
  private readonly files = new WeakMap<object, number>();

  /** Called before a walk begins, never in the middle of one. */
  trim(): void {
    if (this.shapes.size >= mostShapes) this.shapes.clear();
  }

  /** Equal outcomes as one object. */
  oneMove(move: Move): Move {
    const key = JSON.stringify(move);
    const old = this.moves.get(key);
    if (old) return old;
    this.moves.set(key, move);
    return move;
  }

  oneList(list: readonly number[]): readonly number[] {
    const key = list.join();
    const old = this.lists.get(key);
    if (old) return old;
    this.lists.set(key, list);
    return list;
  }

  /** The trees of a place, made empty where they are new. */
  trees(shape: string, place: string): PlaceTrees {
    const places = this.shapes.get(shape) ?? new Map<string, PlaceTrees>();
    if (!this.shapes.has(shape)) {
      this.shapes.set(shape, places);
    }
    const old = places.get(place);
    if (old) return old;
    const made: PlaceTrees = {
      moves: new Map(),
      sizes: {},
      questions: new Map(),
    };
    places.set(place, made);
    return made;
  }

  /** One number for all that a machine kind and the limits of a card decide. */
  kindId(job: Job): number {
    return this.idsOf(job).kind;
  }

  /** One number for all that readings can be worked into. */
  numbersId(job: Job): number {
    return this.idsOf(job).numbers;
  }

  idOf(value: object): number {
    const old = this.files.get(value);
    if (old !== undefined) return old;
    const made = this.number(JSON.stringify(value));
    this.files.set(value, made);
    return made;
  }

  private idsOf(job: Job): { kind: number; numbers: number } {
    const old = this.jobs.get(job);
    if (old) return old;
    const { chuckLimit, topSpeed } = job.card.values;
    const { workings } = job.flow.file;
    const kind = this.number(JSON.stringify([this.idOf(job.flow.kind), chuckLimit, topSpeed]));
    const numbers = this.number(JSON.stringify([workings, job.card, job.numbers.inputs]));
    this.jobs.set(job, { kind, numbers });
    return { kind, numbers };
  }

  private number(text: string): number {
    const old = this.ids.get(text);
    if (old !== undefined) return old;
    this.ids.set(text, this.ids.size);
    return this.ids.size - 1;
  }
}
