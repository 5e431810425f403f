/**
 * Walks a job by sets of situations instead of one by one: the reduction, and why it misses nothing.
 *
 * 1. A *place* is a state of the chart with where a hold goes on. The rest of a situation is a row of variables: facts,
 *    the speed that is set, readings. At each place stands the set of rows that come to it.
 * 2. Each event is played by XState on the job's own machine, with variables left open. The lens (watched.ts) sees
 *    which variables the guards and assigns look at, and what the next context takes over untouched. The chart is pure:
 *    for every row that agrees on what was looked at, it does the same, and sets the same variables. So one run stands
 *    for all those rows, exactly. A variable is told apart only where it is looked at: facts that nothing looks at any
 *    more, and the order in which facts were lost or answered, are never multiplied out.
 * 3. A run is repeated with other values until every row of the set is covered, and the sets grow until nothing new
 *    comes. Sets only grow and are finite, so this ends; it covers every row that is reachable, and no other, since
 *    images of sets are exact. Claims are asked of the same sets in the same way.
 *    An event is played in two halves, as XState makes it: what the event does, and then what follows by itself (gates
 *    that are met, guards that are lost). The second half is looked at once for a place, not once for each event.
 * 4. Steps of one shape (frame.ts) were compiled by the same code from the same plan, so their runs are shared.
 * 5. A reading is set to nothing where no step that can still be come to looks at it before it is taken again (live.ts).
 *
 * What is left out of a row, and why: the number on the cross dial and the list of lost facts (identity.ts says why),
 * and who began a hold, which only the view reads; and readings that no limit, speed, figure or sentence of the flow
 * is worked out from. Were one of them looked at all the same, the lens would refuse, and the verdict be "unseeable".
 */

import {
  endStep,
  type FlowContext,
  type FlowEvent,
  type FlowMachine,
  type FlowSnapshot,
  type Job,
  type Phase,
  positionOf,
} from '../flow/index.ts';
import { goesOn, sizesOf, wordsOf } from './alphabet.ts';
import { Frame } from './frame.ts';
import { judgeMove } from './judge-move.ts';
import { Live } from './live.ts';
import { Memory, type Move, type PlaceTrees } from './memory.ts';
import type { Watch } from './proof.ts';
import { type Stepper, stepperOf } from './stepper.ts';
import { type AskedStates, askedStates, worthPlaying } from './told-apart.ts';
import { explore, type Groups, groupsOf, visitGroups } from './tree.ts';
import { noRows, type Row, type ValueSet, ValueSets, zeroRow } from './value-sets.ts';
import { heldIn, type Variable, Variables } from './variables.ts';
import { Lens, type Look, Unseeable, watchedMachine } from './watched.ts';

export interface Place {
  readonly key: string;
  readonly frame: Frame | undefined;
  readonly step: string;
  readonly phase: Phase;
  readonly inner: string;
  readonly held: string | null;
  /** False just after an event, before the chart has looked whether anything follows by itself. */
  readonly settled: boolean;
  readonly trees: PlaceTrees;
  /** Rows that come here. */
  rows: ValueSet;
  /** By event: the rows it has been played for. */
  readonly played: Map<string, ValueSet>;
  readonly groups: Map<string, { readonly domain: number; readonly groups: Groups<Move> }>;
  counted: { readonly rows: ValueSet; readonly count: number };
  readonly words: readonly FlowEvent[];
  /** By key, every size that was tried. */
  readonly sizes: Map<string, FlowEvent>;
  sized: ValueSet;
}

/** One kind of move: from these rows of a place, to that place. */
export interface Arrow {
  readonly from: Place;
  /** None where it follows by itself. */
  readonly event: FlowEvent | null;
  readonly rows: ValueSet;
  readonly move: Move;
  readonly to: Place;
  readonly puts: Row;
}

type Parted = readonly [move: Move, rows: ValueSet];

/** Thrown when the walk was stopped from outside. */
export class Cancelled extends Error {}

/** Thrown when it would need more room than it may have; the message is the limit. */
export class TooLarge extends Error {}

export interface WalkLimits {
  /** Nodes of sets. Each takes about 200 bytes. */
  readonly nodes: number;
}

export class Walk {
  readonly sets = new ValueSets();
  readonly places = new Map<string, Place>();
  readonly variables: Variables;
  readonly frames = new Map<string, Frame>();
  readonly first: Place;
  /** The one row that a job begins with. */
  readonly begun: ValueSet;
  private readonly asked: AskedStates;
  private readonly words = new Map<Frame, readonly FlowEvent[]>();
  private readonly live: Live;
  private readonly lens: Lens;
  private readonly machine: FlowMachine;
  private readonly step: Stepper;
  private readonly snapshots = new Map<Place, FlowSnapshot>();
  private readonly byStep: Place[][];

  constructor(
    readonly job: Job,
    private readonly memory: Memory = new Memory(),
    private readonly limits: WalkLimits = { nodes: 1_000_000 },
    private readonly watch: Watch = {},
  ) {
    memory.trim();
    this.asked = askedStates(job);
    this.variables = new Variables(job, this.asked);
    this.live = new Live(job, this.variables);
    this.lens = new Lens(this.variables);
    this.machine = watchedMachine(job.machine, this.lens);
    this.step = stepperOf(this.machine);
    const steps = job.flow.file.steps;
    steps.forEach((step, index) => {
      const plan = job.plans.get(step.id);
      if (plan) this.frames.set(step.id, new Frame(plan, index, job, this.variables, memory));
    });
    this.byStep = Array.from({ length: steps.length + 1 }, () => []);
    const { snapshot, rows } = this.begin();
    this.first = this.placeAt(snapshot, true);
    this.first.rows = rows;
    this.begun = rows;
  }

  /** Walks until nothing new comes. */
  run(): void {
    // To and fro: a forward sweep carries what was done through the job, a backward one carries every "back".
    const orders = [this.byStep, [...this.byStep].reverse()];
    for (let moved = true, sweep = 0; moved; sweep += 1) {
      moved = false;
      for (const places of orders[sweep % 2] ?? []) {
        for (let local = true; local; ) {
          local = false;
          // Places that are found on the way are walked as well.
          for (const place of places) if (this.playAll(place)) local = true;
          moved ||= local;
        }
        this.report();
      }
    }
  }

  private report(): void {
    if (this.watch.cancelled?.()) throw new Cancelled('Stopped.');
    this.watch.progress?.(this.places.size);
    if (this.sets.size > this.limits.nodes) {
      throw new TooLarge(`More than ${this.limits.nodes} nodes of sets.`);
    }
  }

  /** The first snapshot of the chart holds no open values: its row is read off. */
  private begin(): { snapshot: FlowSnapshot; rows: ValueSet } {
    const [first] = this.frames.values();
    const look: Look = () => {
      throw new Unseeable('The beginning of a job.');
    };
    const near = first?.nearby ?? new Set<string>();
    const snapshot = this.lens.through(look, near, () =>
      this.machine.getInitialSnapshot(this.scope()),
    );
    const row = this.variables.all.map((variable) => {
      const held = heldIn(snapshot.context, variable);
      return [variable.level, variable.values.numberOf(plainHeld(held))] as const;
    });
    return {
      snapshot,
      rows: this.sets.withAll(
        zeroRow,
        row.filter(([, value]) => value !== 0),
      ),
    };
  }

  private scope(): Parameters<FlowMachine['getInitialSnapshot']>[0] {
    return this.step.scope;
  }

  private placeAt(snapshot: FlowSnapshot, settled: boolean): Place {
    const { step } = positionOf(snapshot);
    const value = snapshot.value as string | Readonly<Record<string, unknown>>;
    const inner = typeof value === 'string' ? '' : JSON.stringify(value[step]);
    return this.place(step, inner, snapshot.context.held?.to ?? null, settled || inner === '');
  }

  private place(step: string, inner: string, held: string | null, settled: boolean): Place {
    const inside = `${settled ? '' : '~'}${inner} ${held ?? ''}`;
    const key = `${step} ${inside}`;
    const old = this.places.get(key);
    if (old) return old;
    const frame = this.frames.get(step);
    const trees = this.memory.trees(frame?.shape ?? endStep, inside);
    const made: Place = {
      key,
      frame,
      step,
      phase: phaseOf(inner),
      inner,
      held,
      settled,
      trees,
      rows: noRows,
      played: new Map(),
      groups: new Map(),
      counted: { rows: noRows, count: 0 },
      words: frame ? this.wordsOf(frame) : [],
      sizes: new Map(),
      sized: noRows,
    };
    this.places.set(key, made);
    this.byStep[frame?.index ?? this.byStep.length - 1]?.push(made);
    return made;
  }

  private wordsOf(frame: Frame): readonly FlowEvent[] {
    const old = this.words.get(frame);
    if (old) return old;
    const made = worthPlaying(wordsOf(this.job, frame.step), this.asked, this.job.flow.kind);
    this.words.set(frame, made);
    return made;
  }

  /** Plays every event for the rows it has not been played for. True when there were any. */
  private playAll(place: Place): boolean {
    if (!place.frame) return false;
    if (!place.settled) return this.play(place, settles, null);
    let moved = this.findSizes(place);
    for (const event of place.words) moved = this.play(place, keyOf(event), event) || moved;
    for (const [key, event] of place.sizes) moved = this.play(place, key, event) || moved;
    return moved;
  }

  private play(place: Place, key: string, event: FlowEvent | null): boolean {
    // All rows anew, not only the new ones: whole sets are regular and remembered, differences are neither.
    const { rows } = place;
    if (place.played.get(key) === rows) return false;
    place.played.set(key, rows);
    this.arrows(place, event, rows, ({ to, rows: some, puts }) => {
      to.rows = this.sets.union(to.rows, this.sets.withAll(some, puts));
      // At once, so that the next event already meets what this one made: ten facts lost are one round, not ten.
      if (!to.settled) this.play(to, settles, null);
    });
    return true;
  }

  /** The arrows that `event` gives for `rows` of a place. */
  arrows(
    place: Place,
    event: FlowEvent | null,
    rows: ValueSet,
    visit: (arrow: Arrow) => void,
  ): void {
    const { frame } = place;
    if (!frame) return;
    const key = event ? keyOf(event) : settles;
    for (const [move, some] of this.parted(place, frame, key, event, rows)) {
      const to = move.to ? this.target(frame, move.to) : place;
      visit({ from: place, event, rows: some, move, to, puts: this.putsOf(frame, move, to) });
    }
  }

  /** Rows by what the event does with them. Steps of one shape that look at no readings part the same rows alike. */
  private parted(
    place: Place,
    frame: Frame,
    key: string,
    event: FlowEvent | null,
    rows: ValueSet,
  ): readonly Parted[] {
    const known = frame.plain ? this.partedBy(place.trees, key) : undefined;
    const old = known?.get(rows);
    if (old) return old;
    const parts: Parted[] = [];
    visitGroups(this.groups(place, frame, key, event), rows, {
      sets: this.sets,
      dull: isDull,
      visit: (move, some) => parts.push([move, some]),
    });
    known?.set(rows, parts);
    return parts;
  }

  private readonly knownParts = new Map<
    PlaceTrees,
    Map<string, Map<ValueSet, readonly Parted[]>>
  >();

  private partedBy(trees: PlaceTrees, key: string): Map<ValueSet, readonly Parted[]> {
    const byKey = this.knownParts.get(trees) ?? new Map<string, Map<ValueSet, readonly Parted[]>>();
    this.knownParts.set(trees, byKey);
    const byRows = byKey.get(key) ?? new Map<ValueSet, readonly Parted[]>();
    byKey.set(key, byRows);
    return byRows;
  }

  /** What the event does for all rows of the place; looked at again when a value comes that was not there before. */
  private groups(place: Place, frame: Frame, key: string, event: FlowEvent | null): Groups<Move> {
    const domain = this.domainOf(place);
    const old = place.groups.get(key);
    if (old?.domain === domain) return old.groups;
    const tree = place.trees.moves.get(key) ?? {};
    place.trees.moves.set(key, tree);
    const groups = groupsOf(tree, place.rows, {
      sets: this.sets,
      names: frame,
      run: (look) => this.memory.oneMove(this.playOnce(place, frame, event, look)),
      dull: isDull,
      visit: () => {},
    });
    place.groups.set(key, { domain, groups });
    return groups;
  }

  /** Rows only grow, so the number of values at each level tells whether one was added. */
  private domainOf(place: Place): number {
    if (place.counted.rows !== place.rows) {
      let count = 0;
      for (const { level } of place.frame?.open() ?? []) {
        count += this.sets.valuesAt(place.rows, level).length;
      }
      place.counted = { rows: place.rows, count };
    }
    return place.counted.count;
  }

  private target(frame: Frame, { slot, inner, held, rests }: NonNullable<Move['to']>): Place {
    return this.place(frame.slots[slot] ?? endStep, inner, held, rests);
  }

  private readonly knownPuts = new Map<Place, Map<Move, Row>>();

  /** What a move sets. On the way into another step, what nothing looks at from there on is set to nothing as well. */
  private putsOf(frame: Frame, move: Move, to: Place): Row {
    const known = this.knownPuts.get(to) ?? new Map<Move, Row>();
    this.knownPuts.set(to, known);
    const old = known.get(move);
    if (old && to.step === frame.step.id) return old;
    const puts = new Map<number, number>();
    for (const [name, held] of move.writes) {
      const { level, values } = frame.variable(name);
      puts.set(level, values.numberOf(held));
    }
    if (to.step !== frame.step.id) {
      for (const { level } of this.live.deadBetween(frame.step.id, to.step)) puts.set(level, 0);
    }
    const row = [...puts].sort(([a], [b]) => a - b);
    if (to.step === frame.step.id) known.set(move, row);
    return row;
  }

  private runs = 0;

  /** Runs of the chart that were needed; what was remembered from other proofs is not among them. */
  movesSeen(): number {
    return this.runs;
  }

  private playOnce(place: Place, frame: Frame, event: FlowEvent | null, look: Look): Move {
    this.runs += 1;
    const before = this.snapshotAt(place);
    return this.lens.through(look, frame.nearby, () => {
      const after = this.stepOrNothing(before, event);
      if (after === before && event) return refused;
      if (!after) return { to: null, writes: [], broken: 'FORMAT-SETTLES' };
      const broken = event && judgeMove(this.job, before, event, this.seen(after));
      return {
        to: this.slotOf(frame, after, after === before),
        writes: writesOf(frame, after.context),
        broken: broken?.claim ?? null,
      };
    });
  }

  private stepOrNothing(before: FlowSnapshot, event: FlowEvent | null): FlowSnapshot | undefined {
    try {
      return event ? this.step.first(before, event) : this.step.follow(before);
    } catch (error) {
      if (error instanceof Unseeable) throw error;
      return undefined;
    }
  }

  private slotOf(frame: Frame, after: FlowSnapshot, settled: boolean): NonNullable<Move['to']> {
    const place = this.placeAt(after, settled);
    const slot = frame.slots.indexOf(place.step);
    if (slot >= 0) return { slot, inner: place.inner, held: place.held, rests: place.settled };
    throw new Unseeable(`Step "${frame.step.id}" leads on to "${place.step}".`);
  }

  /** A snapshot as claims may see it: facts through the lens, readings as they stand. */
  private seen(snapshot: FlowSnapshot): FlowSnapshot {
    return {
      ...snapshot,
      context: this.lens.context(snapshot.context),
    } as FlowSnapshot;
  }

  /** A snapshot of a place with everything left open. */
  snapshotAt(place: Place): FlowSnapshot {
    const old = this.snapshots.get(place);
    if (old) return old;
    const inner: unknown = place.inner === '' ? undefined : JSON.parse(place.inner);
    const value = inner === undefined ? place.step : { [place.step]: inner };
    const open = place.frame?.open() ?? this.variables.all.filter(({ kind }) => kind === 'fact');
    const made = this.machine.resolveState({
      value: value as FlowSnapshot['value'],
      context: openContext(open, place.held),
      status: place.frame ? 'active' : 'done',
    });
    this.snapshots.set(place, made);
    return made;
  }

  /** Asks one question of some rows of a place; visits those for which the answer is bad. */
  ask(
    place: Place,
    tree: { leaf?: { readonly value: boolean } },
    rows: ValueSet,
    bad: (snapshot: FlowSnapshot) => boolean,
    visit: (rows: ValueSet) => void,
  ): void {
    const names = place.frame ?? plainNames(this.variables);
    const near = place.frame?.nearby ?? new Set<string>();
    explore<boolean>(tree, rows, {
      sets: this.sets,
      names,
      run: (look) => this.lens.through(look, near, () => bad(this.seen(this.snapshotAt(place)))),
      dull: (value) => !value,
      visit: (_, some) => visit(some),
    });
  }

  private findSizes(place: Place): boolean {
    const { frame } = place;
    if (!frame || !('reading' in frame.step)) return false;
    const { rows } = place;
    if (rows === place.sized) return false;
    place.sized = rows;
    const before = this.snapshotAt(place);
    explore(place.trees.sizes, rows, {
      sets: this.sets,
      names: frame,
      run: (look) =>
        this.lens.through(look, frame.nearby, () =>
          this.memory.oneList(sizesOf(this.job, frame.step, this.seen(before).context.readings)),
        ),
      dull: (sizes) => sizes.length === 0,
      visit: (sizes) => {
        for (const value of sizes) {
          const event: FlowEvent = { type: 'reading', value };
          place.sizes.set(keyOf(event), event);
        }
      },
    });
    return true;
  }
}

/** The key of what follows by itself. */
export const settles = '(settles)';

const isDull = (move: Move) => move.to === null && move.broken === null;
const refused: Move = { to: null, writes: [], broken: null };

export function keyOf(event: FlowEvent): string {
  switch (event.type) {
    case 'fact':
      return `fact ${event.fact} ${event.state}`;
    case 'reading':
      return `reading ${event.value}`;
    case 'choose':
      return `choose ${event.option}`;
    case 'trouble':
      return `trouble ${event.walk}`;
    default:
      return event.type;
  }
}

export function goes(job: Job, arrow: Arrow): boolean {
  return arrow.event === null || goesOn(job, arrow.from.phase, arrow.event);
}

function phaseOf(inner: string): Phase {
  if (inner === '') return 'end';
  const value: unknown = JSON.parse(inner);
  return typeof value === 'string' ? (value as Phase) : 'walk';
}

function plainNames(variables: Variables) {
  return {
    variable: (name: string): Variable => {
      const found = variables.named(name);
      if (!found) throw new Error(`There is no variable "${name}".`);
      return found;
    },
    nameOf: (variable: Variable) => variable.name,
  };
}

function plainHeld(held: unknown): string | number | null {
  if (typeof held === 'string' || typeof held === 'number') return held;
  if (typeof held === 'object' && held !== null && 'size' in held) return Number(held.size);
  return null;
}

/** What a context holds that is not the token of its variable: it was set. */
function writesOf(frame: Frame, context: FlowContext): Move['writes'] {
  return frame.open().flatMap((variable) => {
    const held = heldIn(context, variable);
    if (held === variable.token) return [];
    return [[frame.nameOf(variable), plainHeld(held)] as const];
  });
}

/** Tokens stand where facts and numbers would; nothing but the lens ever looks at them. */
function openContext(open: readonly Variable[], held: string | null): FlowContext {
  const tokens = (kind: Variable['kind']): Record<string, unknown> =>
    Object.fromEntries(open.filter((one) => one.kind === kind).map((one) => [one.key, one.token]));
  const context: unknown = {
    facts: tokens('fact'),
    readings: tokens('reading'),
    passes: tokens('pass'),
    speedSet: open.find((one) => one.kind === 'speed')?.token ?? null,
    held: held === null ? null : { to: held, by: 'person', lost: [] },
  };
  return context as FlowContext;
}
