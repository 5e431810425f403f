/**
 * Walks a job by sets of situations instead of one by one: the reduction, and why it misses nothing.
 *
 * 1. A *spot* is a state of the chart inside a step, with where a hold goes on. The rest of a situation is a row of
 *    variables: facts, the speed that is set, readings. At each spot stands the set of rows that come to it.
 * 2. Each event is played by XState on the job's own machine, with variables left open. The lens (watched.ts) sees
 *    which variables the guards and assigns look at, and what the next context takes over untouched. The chart is pure:
 *    for every row that agrees on what was looked at, it does the same, and sets the same variables. So one run stands
 *    for all those rows, exactly. A variable is told apart only where it is looked at: facts that nothing looks at any
 *    more, and the order in which facts were lost or answered, are never multiplied out.
 * 3. A run is repeated with other values until every row of the set is covered, and the sets grow until nothing new
 *    comes. Sets only grow and are finite, so this ends; it covers every row that is reachable, and no other, since
 *    images of sets are exact. Claims are asked of the same sets in the same way.
 *    An event is played in small steps, as XState makes them: what the event does, and then one by one what follows by
 *    itself. So no run ever goes through more than one arrow of the chart, nor further than into the next step.
 * 4. Runs are shared by what is written: where the arrows of an event have the same text (arrows.ts), in whichever step,
 *    flow or job, XState does the same. What has no text is shared by steps of one shape (shape.ts) alone. What
 *    comes of the sets that came into a step depends on those and on its key alone (frame.ts): it is kept, and a step
 *    that the same comes into again, in this proof or after an edit in the next one, is not walked again.
 * 5. A reading is set to nothing where no step that can still be come to looks at it before it is taken again (live.ts).
 *    A speed is set to nothing where it is not known to be set: only one action looks at it (watched.ts refuses every
 *    other look), and that changes nothing, or forgets both. Where nothing is known of it, both leave nothing known, no
 *    guard, claim or sentence can tell them apart, and the next word that sets a speed sets it whole. So it misses nothing,
 *    and the speed of a cut does not go along with "back" through all the steps before.
 *    Speeds are told apart by names (speeds.ts), since they are only held against one another: jobs on two cards, or of
 *    two materials, whose steps run at the same and at different speeds alike share all.
 *
 * What is left out of a row, and why: the number on the cross dial and the list of lost facts (identity.ts says why),
 * and who began a hold, which only the view reads; and readings that no limit, speed, figure or sentence of the flow
 * is worked out from. Were one of them looked at all the same, the lens would refuse, and the verdict be "unseeable".
 */

import { endStep, type Job } from '../flow/index.ts';
import { worded } from '../texts/index.ts';
import { wordsOf } from './alphabet.ts';
import { Frame } from './frame.ts';
import { Live } from './live.ts';
import { Memory } from './memory.ts';
import { type Move, targetFrom } from './move.ts';
import { Player } from './player.ts';
import type { Watch } from './proof.ts';
import type { Room } from './room.ts';
import type { Speeds } from './speeds.ts';
import type { Spot } from './spot.ts';
import type { Closed, StepRoom } from './step-room.ts';
import { type Said, StepWalk } from './step-walk.ts';
import { worthPlaying } from './told-apart.ts';
import { noRows, type Row, type ValueSet, type ValueSets } from './value-sets.ts';
import { Variables } from './variables.ts';
import { Cancelled, TooLarge } from './walk-limits.ts';

/** A spot of one step of the job; of one place there is one object. */
export interface Place {
  /** None at the end of the job. */
  readonly walk: StepWalk | undefined;
  readonly step: string;
  readonly spot: Spot;
  /** All rows that come here. */
  readonly rows: ValueSet;
}

/** One kind of move: from these rows of a place, to that place. */
export interface Arrow {
  readonly rows: ValueSet;
  readonly move: Move;
  readonly to: Place;
  readonly puts: Row;
}

/** What has come into a step, and what came of it. */
interface Stand {
  readonly walk: StepWalk;
  readonly entries: Map<Spot, ValueSet>;
  closed: Closed | undefined;
  waiting: boolean;
}

export interface WalkLimits {
  /** Nodes of sets that may be made. Each takes about 50 bytes. */
  readonly nodes: number;
}

export class Walk {
  readonly room: Room;
  readonly sets: ValueSets;
  readonly player: Player;
  /** By step, in the order of the flow. */
  readonly stands = new Map<string, Stand>();
  readonly end: { readonly home: StepRoom; readonly rows: Map<Spot, ValueSet> };
  private readonly before: number;
  private readonly begun: { readonly step: string; readonly spot: Spot; readonly rows: ValueSet };
  private readonly places = new Map<Spot, Map<string, Place>>();

  constructor(
    readonly job: Job,
    memory: Memory = new Memory(),
    private readonly limits: WalkLimits = { nodes: 1_000_000 },
    private readonly watch: Watch = {},
    /** Only for rows that go over into walks of other jobs: else they are named by the room. */
    speeds?: Speeds,
  ) {
    this.room = memory.roomFor(job);
    this.sets = this.room.sets;
    this.before = this.sets.size;
    const variables = new Variables(job, this.room.variables, speeds ?? this.room.speedsOf(job));
    this.player = new Player(job, this.room, variables);
    const live = new Live(job, variables);
    job.flow.file.steps.forEach((step, index) => {
      const plan = job.plans.get(step.id);
      if (!plan) return;
      const frame = new Frame(plan, index, { job, variables, live, ids: this.room.ids });
      const words = () => worthPlaying(wordsOf(job, step), this.room.asked, job.flow.kind);
      const walk = new StepWalk(frame, words, this.room, this.player);
      this.stands.set(step.id, { walk, entries: new Map(), closed: undefined, waiting: false });
    });
    this.end = { home: this.room.stepRoom(undefined), rows: new Map() };
    const { step, name, rows } = this.player.begin();
    this.begun = { step, spot: this.homeOf(step).spots.at(name), rows };
    this.enter(step, this.begun.spot, rows);
  }

  /** Walks until nothing new comes. */
  run(): void {
    this.places.clear();
    // To and fro: a forward sweep carries what was done through the job, a backward one carries every "back".
    const forward = [...this.stands.values()];
    const orders = [forward, [...forward].reverse()];
    for (let sweep = 0; forward.some((one) => one.waiting); sweep += 1) {
      for (const stand of orders[sweep % 2] ?? []) {
        while (stand.waiting) this.close(stand);
      }
    }
  }

  private close(stand: Stand): void {
    stand.waiting = false;
    const { walk, entries, closed } = stand;
    stand.closed = walk.close(entries, closed);
    for (const { slot, name, rows } of stand.closed.exits) {
      const step = walk.frame.slots[slot] ?? endStep;
      this.enter(step, this.homeOf(step).spots.at(name), rows);
    }
    this.report();
  }

  private homeOf(step: string): StepRoom {
    return this.stands.get(step)?.walk.home ?? this.end.home;
  }

  /** Rows that come to a spot; true where some were not among those that came in before. */
  enter(step: string, spot: Spot, rows: ValueSet): boolean {
    const stand = this.stands.get(step);
    const entries = stand?.entries ?? this.end.rows;
    const old = entries.get(spot) ?? noRows;
    const now = this.sets.union(old, rows);
    entries.set(spot, now);
    if (stand && now !== old) stand.waiting = true;
    return now !== old;
  }

  private closings = 0;

  private report(): void {
    this.closings += 1;
    if (this.watch.cancelled?.()) throw new Cancelled('Stopped.');
    this.watch.progress?.(this.closings);
    if (this.sets.size - this.before > this.limits.nodes) {
      throw new TooLarge(worded`More than ${this.limits.nodes} nodes of sets.`);
    }
  }

  get first(): Place {
    return this.place(this.begun.step, this.begun.spot);
  }

  /** The one row that a job begins with. */
  get firstRows(): ValueSet {
    return this.begun.rows;
  }

  /** Rows that stand at the spots of a step, once the walk is done. */
  rowsIn(step: string): ReadonlyMap<Spot, ValueSet> {
    const stand = this.stands.get(step);
    return stand ? (stand.closed?.rows ?? new Map<Spot, ValueSet>()) : this.end.rows;
  }

  place(step: string, spot: Spot): Place {
    const bySteps = this.places.get(spot) ?? new Map<string, Place>();
    this.places.set(spot, bySteps);
    const old = bySteps.get(step);
    if (old) return old;
    const rows = this.rowsIn(step).get(spot) ?? noRows;
    const made = { walk: this.stands.get(step)?.walk, step, spot, rows };
    bySteps.set(step, made);
    return made;
  }

  eventsAt({ walk, spot, rows }: Place): readonly Said[] {
    return walk?.eventsAt(spot, rows) ?? [];
  }

  /** The arrows that an event gives for `rows` of a place. */
  arrows(place: Place, said: Said, rows: ValueSet): readonly Arrow[] {
    const { walk, spot } = place;
    if (!walk) return [];
    return walk.parts(spot, said, rows).map(([move, some]) => {
      const target = targetFrom(spot, move);
      const step = target ? (walk.frame.slots[target.slot] ?? endStep) : place.step;
      const to = target ? this.place(step, this.homeOf(step).spots.at(target)) : place;
      return { rows: some, move, to, puts: walk.putsOf(move) };
    });
  }
}
