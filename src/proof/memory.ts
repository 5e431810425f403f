/**
 * What was seen of steps, kept from step to step and, if somebody keeps the memory, from proof to proof: so after an edit
 * only the edited step, and what its change reaches, is walked anew. Everything is kept under a key that holds all it
 * depends on; tests/proof/kept-memory.test.ts proves many flows with one memory and each with a new one.
 */

import type { Job } from '../flow/index.ts';
import { Ids } from './ids.ts';
import { Room } from './room.ts';
import { type AskedStates, askedStates } from './told-apart.ts';

/** Machine kinds, or sets of states that are told apart, kept at once. */
const mostRooms = 4;
/** A room with more nodes of sets is made anew: a Desk that is edited for hours must not grow for ever. */
const tired = 300_000;

export class Memory {
  private readonly ids = new Ids();
  private readonly rooms = new Map<string, Room>();

  /** The room of a job: called before a walk begins, never in the middle of one. */
  roomFor(job: Job): Room {
    const asked = askedStates(job);
    const key = keyOf(this.ids.of(job.flow.kind), asked);
    const old = this.rooms.get(key);
    if (old && !old.isTired(tired)) return old;
    this.rooms.delete(key);
    const [first] = this.rooms.keys();
    if (first !== undefined && this.rooms.size >= mostRooms) this.rooms.delete(first);
    const made = new Room(job.flow.kind, asked);
    this.rooms.set(key, made);
    return made;
  }

  /** All is seen anew. */
  forget(): void {
    this.rooms.clear();
  }
}

function keyOf(kind: number, asked: AskedStates): string {
  return JSON.stringify([kind, [...asked].map(([fact, states]) => [fact, ...states])]);
}
