/** Walks inside one step until nothing new comes: from the rows that come in, to those that stand and those that leave. */

import type { FlowEvent } from '../flow/index.ts';
import { Arrows } from './arrows.ts';
import type { Frame } from './frame.ts';
import { grownFor, isGrownFor, newShared, type SharedTree } from './grown.ts';
import { insideOf, isDull, type Move, type SpotName, type Target, targetFrom } from './move.ts';
import type { Player } from './player.ts';
import type { Room } from './room.ts';
import type { Parted, Spot } from './spot.ts';
import { type Closed, type Exit, type StepRoom, standingKey } from './step-room.ts';
import { explore, type Groups, visitGroups } from './tree.ts';
import { noRows, type Row, type ValueSet } from './value-sets.ts';
import type { Look } from './watched.ts';

/** An event with its key; without one it is what follows by itself. */
export interface Said {
  readonly key: string;
  readonly event: FlowEvent | null;
}

const follows: readonly Said[] = [{ key: '(follows)', event: null }];

export class StepWalk {
  readonly home: StepRoom;
  private words: readonly Said[] | undefined;
  private readonly arrows: Arrows;

  constructor(
    readonly frame: Frame,
    /** What can be said in the step; asked for once, and only where it is walked. */
    private readonly sayable: () => readonly FlowEvent[],
    private readonly room: Room,
    private readonly player: Player,
  ) {
    this.arrows = new Arrows(player.job, frame, room);
    this.home = room.stepRoom(frame);
  }

  /** All that comes of what came in; `before`, of less of it. */
  close(entries: ReadonlyMap<Spot, ValueSet>, before?: Closed): Closed {
    const key = standingKey(entries);
    const old = this.home.closed.get(key);
    if (old) return old;
    const made = new Closing(this, this.room, before).from(entries);
    this.home.closed.set(key, made);
    return made;
  }

  /** The events of a spot: those of its step, and sizes on both sides of the limits for these rows. */
  eventsAt(spot: Spot, rows: ValueSet): readonly Said[] {
    if (!spot.rests) return follows;
    return [...this.wordsAt(spot), ...this.sizesAt(spot, rows)];
  }

  /** Only what some arrow hears: everything else is refused there, whatever the rows. */
  private wordsAt(spot: Spot): readonly Said[] {
    if (spot.words) return spot.words;
    const heard = this.arrows.heardAt(spot);
    this.words ??= this.sayable().map(said);
    spot.words = this.words.filter(({ event }) => event && heard.has(event.type));
    return spot.words;
  }

  private sizesAt(spot: Spot, rows: ValueSet): readonly Said[] {
    const { frame, player } = this;
    if (!('reading' in frame.step) || !this.arrows.heardAt(spot).has('reading')) return [];
    if (spot.sized?.rows === rows) return spot.sized.said;
    const sizes = new Set<number>();
    explore(spot.trees.sizes, rows, {
      sets: this.room.sets,
      names: frame,
      run: (look) => player.sizes(frame, spot, look),
      dull: (list) => list.length === 0,
      visit: (list) => {
        for (const value of list) sizes.add(value);
      },
    });
    const events = [...sizes].map((value) => said({ type: 'reading', value }));
    spot.sized = { rows, said: events };
    return events;
  }

  /** Rows by what the event does with them. */
  parts(spot: Spot, { key, event }: Said, rows: ValueSet): readonly Parted[] {
    const old = spot.parts.get(key);
    if (old?.rows === rows) return old.parts;
    const parts: Parted[] = [];
    visitGroups(this.groups(spot, key, event, rows), rows, {
      sets: this.room.sets,
      dull: isDull,
      visit: (move, some) => parts.push([move, some]),
    });
    spot.parts.set(key, { rows, parts });
    return parts;
  }

  /** What the event does for every value seen here; looked at again when one comes that was not there before. */
  private groups(spot: Spot, key: string, event: FlowEvent | null, rows: ValueSet): Groups<Move> {
    const { domain, trees } = spot;
    domain.include(rows);
    const old = spot.grown.get(key);
    if (old?.version === domain.version) return old.grown.groups;
    const { frame, player } = this;
    const how = {
      names: frame,
      valuesAt: (level: number) => domain.valuesAt(level),
      run: (look: Look) => player.play(frame, spot, event, look),
    };
    const tree = trees.moves.get(key) ?? this.newTree(spot, key, event);
    trees.moves.set(key, tree);
    // Values that came at levels which this event never looks at change nothing.
    const grown = old && isGrownFor(old.grown, how) ? old.grown : grownFor(tree, how);
    spot.grown.set(key, { version: domain.version, grown });
    return grown.groups;
  }

  /** Shared by all spots where the arrows of the event have the same text. */
  private newTree(spot: Spot, key: string, event: FlowEvent | null): SharedTree<Move> {
    const arrows = this.arrows.idOf(spot, event);
    return arrows === undefined ? newShared() : this.room.arrowTree(`${key} ${arrows}`);
  }

  /** What a move sets; on the way into another step, what nothing looks at from there on is set to nothing as well. */
  putsOf(move: Move): Row {
    const old = this.home.puts.get(move);
    if (old) return old;
    const puts = new Map<number, number>();
    for (const [name, held] of move.writes) {
      const { level, values } = this.frame.variable(name);
      puts.set(level, values.numberOf(held));
    }
    for (const level of this.frame.dead[slotOf(move)] ?? []) puts.set(level, 0);
    const row = [...puts].sort(([a], [b]) => a - b);
    this.home.puts.set(move, row);
    return row;
  }
}

function slotOf({ to }: Move): number {
  return typeof to === 'object' ? (to?.slot ?? 0) : 0;
}

/** One closing: rows only grow, and every event is played for all rows that stand. */
class Closing {
  private readonly rows: Map<Spot, ValueSet>;
  private readonly played = new Map<Spot, Map<string, ValueSet>>();
  /** The rows that every event was played for. */
  private readonly done: Map<Spot, ValueSet>;
  private readonly exits = new Map<string, Exit>();

  constructor(
    private readonly step: StepWalk,
    private readonly room: Room,
    private readonly before: Closed | undefined,
  ) {
    this.rows = new Map(before?.rows);
    this.done = new Map(before?.rows);
    for (const exit of before?.exits ?? []) this.exits.set(exitKey(exit.slot, exit.name), exit);
  }

  from(entries: ReadonlyMap<Spot, ValueSet>): Closed {
    for (const [spot, rows] of entries) this.add(spot, rows);
    for (let moved = true; moved; ) {
      moved = false;
      // Spots that are found on the way are walked as well.
      for (const spot of this.rows.keys()) if (this.playAll(spot)) moved = true;
    }
    return { rows: this.rows, exits: [...this.exits.values()] };
  }

  private add(spot: Spot, rows: ValueSet): void {
    this.rows.set(spot, this.room.sets.union(this.rows.get(spot) ?? noRows, rows));
  }

  /** Plays every event for the rows it has not been played for. True when there were any. */
  private playAll(spot: Spot): boolean {
    const rows = this.rows.get(spot) ?? noRows;
    if (this.done.get(spot) === rows) return false;
    let moved = false;
    for (const said of this.step.eventsAt(spot, rows)) {
      if (this.play(spot, said)) moved = true;
    }
    // Where more came meanwhile, the first events have not been played for it.
    if (this.rows.get(spot) === rows) this.done.set(spot, rows);
    return moved;
  }

  private play(spot: Spot, said: Said): boolean {
    // All rows anew, not only the new ones: whole sets are regular and remembered, differences are neither.
    const rows = this.rows.get(spot) ?? noRows;
    const played = this.played.get(spot) ?? new Map<string, ValueSet>();
    this.played.set(spot, played);
    if ((played.get(said.key) ?? this.before?.rows.get(spot) ?? noRows) === rows) return false;
    played.set(said.key, rows);
    for (const [move, some] of this.step.parts(spot, said, rows)) {
      const to = targetFrom(spot, move);
      if (to) this.deliver(move, to, some);
    }
    return true;
  }

  private deliver(move: Move, to: Target, rows: ValueSet): void {
    const after = this.room.sets.withAll(rows, this.step.putsOf(move));
    if (to.slot !== 0) {
      this.leave(to.slot, to, after);
      return;
    }
    const spot = this.step.home.spots.at(to);
    this.add(spot, after);
    // At once, so that the next event already meets what this one made: ten facts lost are one round, not ten.
    if (!spot.rests) for (const said of follows) this.play(spot, said);
  }

  private leave(slot: number, { inner, held, rests }: SpotName, rows: ValueSet): void {
    const name = { inner, held, rests };
    const key = exitKey(slot, name);
    const old = this.exits.get(key)?.rows ?? noRows;
    this.exits.set(key, { slot, name, rows: this.room.sets.union(old, rows) });
  }
}

function exitKey(slot: number, name: SpotName): string {
  return `${slot} ${insideOf(name)}`;
}

function said(event: FlowEvent): Said {
  return { key: keyOf(event), event };
}

function keyOf(event: FlowEvent): string {
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
