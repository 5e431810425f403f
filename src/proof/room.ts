/** Sets, variables and trees that the steps of one machine kind share. */

import { endStep, type Job, type MachineKind, type Phase } from '../flow/index.ts';
import { Domain } from './domain.ts';
import type { Frame } from './frame.ts';
import { newShared, type SharedTree } from './grown.ts';
import { Ids } from './ids.ts';
import { insideOf, type Move, type SpotName } from './move.ts';
import { NamedSpeeds, type Speeds } from './speeds.ts';
import type { Spot } from './spot.ts';
import type { SpotTrees } from './spot-trees.ts';
import { StepRoom } from './step-room.ts';
import type { AskedStates } from './told-apart.ts';
import type { Tree } from './tree.ts';
import { ValueSets, widest } from './value-sets.ts';
import { KnownVariables } from './variables.ts';

export class Room {
  readonly ids = new Ids();
  readonly sets: ValueSets;
  readonly variables: KnownVariables;
  private readonly shapes = new Map<number, Map<string, SpotTrees>>();
  private readonly steps = new Map<string, StepRoom>();
  private readonly arrows = new Map<string, SharedTree<Move>>();
  private readonly questions = new Map<string, Tree<boolean>>();
  private readonly moves = new Map<string, Move>();
  private readonly lists = new Map<string, readonly number[]>();
  private readonly speeds = new Map<string, NamedSpeeds>();

  constructor(
    kind: MachineKind,
    readonly asked: AskedStates,
  ) {
    this.variables = new KnownVariables(kind, asked);
    this.sets = new ValueSets(this.variables.facts.length);
  }

  isTired(nodes: number): boolean {
    return this.sets.size > nodes || this.variables.widest > widest / 2;
  }

  /** The tree of arrows that are the same in many steps. */
  arrowTree(arrows: string): SharedTree<Move> {
    const old = this.arrows.get(arrows);
    if (old) return old;
    const made = newShared<Move>();
    this.arrows.set(arrows, made);
    return made;
  }

  /** The tree of a question that is the same in many steps. */
  questionTree(question: string): Tree<boolean> {
    const old = this.questions.get(question);
    if (old) return old;
    const made: Tree<boolean> = {};
    this.questions.set(question, made);
    return made;
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

  /** Names for the speeds of a job. They stay as long as card and numbers do: after an edit the rest is called as before. */
  speedsOf(job: Job): Speeds {
    const { inputs, running } = job.numbers;
    const key = JSON.stringify([job.card, inputs, running]);
    const speeds = this.speeds.get(key) ?? new NamedSpeeds();
    this.speeds.set(key, speeds);
    speeds.nameAll(job);
    return speeds;
  }

  /** What steps that do the same share. */
  stepRoom(frame: Frame | undefined): StepRoom {
    const key = frame?.key ?? endStep;
    const old = this.steps.get(key);
    if (old) return old;
    const open = (frame?.open() ?? []).filter(({ kind }) => kind !== 'fact');
    const levels = open.map(({ level }) => level);
    const shape = frame?.shape ?? -1;
    const made = new StepRoom((name) => this.spot(shape, levels, name));
    this.steps.set(key, made);
    return made;
  }

  private spot(shape: number, levels: readonly number[], { inner, held, rests }: SpotName): Spot {
    const inside = insideOf({ inner, held, rests });
    return {
      inside,
      inner,
      held,
      rests,
      phase: phaseIn(inner),
      trees: this.trees(shape, inside),
      domain: new Domain(this.sets, levels),
      grown: new Map(),
      parts: new Map(),
    };
  }

  /** The trees of a spot, made empty where they are new. */
  private trees(shape: number, inside: string): SpotTrees {
    const spots = this.shapes.get(shape) ?? new Map<string, SpotTrees>();
    this.shapes.set(shape, spots);
    const old = spots.get(inside);
    if (old) return old;
    const made: SpotTrees = { moves: new Map(), sizes: {} };
    spots.set(inside, made);
    return made;
  }
}

function phaseIn(inner: string): Phase {
  if (inner === '') return 'end';
  const value: unknown = JSON.parse(inner);
  return typeof value === 'string' ? (value as Phase) : 'walk';
}
