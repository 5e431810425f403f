/** Which places of a finished walk lead to which: small enough to be looked up, where rows would have to be tried. */

import type { Said } from './step-walk.ts';
import type { Place, Walk } from './walk.ts';

/** A word at a place. */
export interface Spoken {
  readonly place: Place;
  readonly said: Said;
}

export class PlaceGraph {
  private readonly onward = new Map<Place, Said[]>();
  private readonly back = new Map<Place, Spoken[]>();
  private readonly ends = new Map<Place, ReadonlySet<Place>>();

  constructor(private readonly walk: Walk) {}

  /** Words that do anything at a place; a place is looked at when it is first asked for. */
  saidAt(place: Place): readonly Said[] {
    const old = this.onward.get(place);
    if (old) return old;
    const said: Said[] = [];
    this.onward.set(place, said);
    for (const one of this.walk.eventsAt(place)) {
      const ends = this.endsOf(place, one);
      if (ends.size > 0) said.push(one);
      for (const end of ends) listed(this.back, end).push({ place, said: one });
    }
    return said;
  }

  /** Words that may lead to a place, at those places that were looked at so far. */
  before(place: Place): readonly Spoken[] {
    return this.back.get(place) ?? [];
  }

  /** Where it comes to rest. */
  private endsOf(place: Place, said: Said): ReadonlySet<Place> {
    const ends = new Set<Place>();
    for (const { move, to } of this.walk.arrows(place, said, place.rows)) {
      if (!move.to) continue;
      if (to.spot.rests) ends.add(to);
      else for (const end of this.restsOf(to)) ends.add(end);
    }
    return ends;
  }

  private restsOf(first: Place): ReadonlySet<Place> {
    const old = this.ends.get(first);
    if (old) return old;
    const ends = new Set<Place>();
    const seen = new Set([first]);
    for (const place of seen) {
      for (const said of this.walk.eventsAt(place)) {
        for (const { move, to } of this.walk.arrows(place, said, place.rows)) {
          if (move.to) (to.spot.rests ? ends : seen).add(to);
        }
      }
    }
    this.ends.set(first, ends);
    return ends;
  }
}

function listed<T>(lists: Map<Place, T[]>, place: Place): T[] {
  const list = lists.get(place) ?? [];
  lists.set(place, list);
  return list;
}
