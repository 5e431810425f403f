/** Finds a shortest way to broken claims: the walk again, one word at a time, and then back from where it broke. */

import type { FlowEvent } from '../flow/index.ts';
import type { Finding } from './judge-walk.ts';
import { noRows, type ValueSet } from './value-sets.ts';
import type { Arrow, Place, Walk } from './walk.ts';

type Layer = Map<Place, ValueSet>;

/** Words of the longest path that is looked for. */
const longest = 20_000;

/** The words that lead to each finding; only the nearest of each claim is looked for. */
export function shortestPaths(
  walk: Walk,
  findings: readonly Finding[],
): ReadonlyMap<Finding, readonly FlowEvent[]> {
  const paths = new Map<Finding, readonly FlowEvent[]>();
  const open = new Map<string, Finding[]>();
  for (const finding of findings) {
    if (finding.at) open.set(finding.claim, [...(open.get(finding.claim) ?? []), finding]);
  }
  const layers: Layer[] = [new Map([[walk.first, walk.begun]])];
  const known = new Map<Place, ValueSet>([[walk.first, walk.begun]]);
  while (open.size > 0 && layers.length < longest) {
    const layer = layers.at(-1);
    if (!layer || layer.size === 0) break;
    for (const [claim, list] of open) {
      for (const finding of list) {
        const path = pathIfHere(walk, layers, layer, finding);
        if (!path) continue;
        paths.set(finding, path);
        open.delete(claim);
        break;
      }
    }
    if (open.size > 0) layers.push(nextLayer(walk, layer, known));
  }
  return paths;
}

function pathIfHere(
  walk: Walk,
  layers: readonly Layer[],
  layer: Layer,
  { at }: Finding,
): readonly FlowEvent[] | undefined {
  if (!at?.place.settled) return undefined;
  const rows = walk.sets.both(layer.get(at.place) ?? noRows, at.rows);
  if (rows === noRows) return undefined;
  const path = trace(walk, layers, at.place, rows);
  return at.event ? [...path, at.event] : path;
}

function eventsAt({ words, sizes }: Place): readonly FlowEvent[] {
  return [...words, ...sizes.values()];
}

/** What one more word comes to, and was not come to with fewer. */
function nextLayer(walk: Walk, layer: Layer, known: Layer): Layer {
  const { sets } = walk;
  const next: Layer = new Map();
  const come = (to: Place, rows: ValueSet): ValueSet => {
    const old = known.get(to) ?? noRows;
    const fresh = sets.minus(rows, old);
    if (fresh !== noRows) known.set(to, sets.union(old, fresh));
    return fresh;
  };
  const arrive = ({ to, rows, puts }: Arrow): void => {
    const fresh = come(to, sets.withAll(rows, puts));
    if (fresh === noRows) return;
    if (to.settled) next.set(to, sets.union(next.get(to) ?? noRows, fresh));
    else walk.arrows(to, null, fresh, arrive);
  };
  for (const [place, rows] of layer) {
    for (const event of eventsAt(place)) {
      walk.arrows(place, event, rows, (arrow) => {
        if (arrow.move.to) arrive(arrow);
      });
    }
  }
  return next;
}

/** From the last layer back to the first, one word each. */
function trace(
  walk: Walk,
  layers: readonly Layer[],
  place: Place,
  rows: ValueSet,
): readonly FlowEvent[] {
  const { sets } = walk;
  const events: FlowEvent[] = [];
  let to = place;
  let goal = sets.only(sets.first(rows));
  for (const layer of layers.slice(0, -1).reverse()) {
    const step = before(walk, layer, to, goal);
    if (!step) throw new Error('A path was lost: the walk does not agree with itself.');
    events.push(step.event);
    to = step.place;
    goal = sets.only(sets.first(step.rows));
  }
  return events.reverse();
}

function before(
  walk: Walk,
  layer: Layer,
  to: Place,
  goal: ValueSet,
): { place: Place; rows: ValueSet; event: FlowEvent } | undefined {
  const { sets } = walk;
  const into = (arrow: Arrow): ValueSet => {
    const end = arrow.to.settled
      ? arrow.to === to
        ? goal
        : noRows
      : settlingInto(arrow.to, sets.withAll(arrow.rows, arrow.puts));
    return sets.comingInto(arrow.rows, end, arrow.puts);
  };
  const settlingInto = (middle: Place, rows: ValueSet): ValueSet => {
    let sum = noRows;
    walk.arrows(middle, null, rows, (arrow) => {
      sum = sets.union(sum, into(arrow));
    });
    return sum;
  };
  for (const [place, rows] of layer) {
    for (const event of eventsAt(place)) {
      let found = noRows;
      walk.arrows(place, event, rows, (arrow) => {
        if (arrow.move.to && found === noRows) found = into(arrow);
      });
      if (found !== noRows) return { place, rows: found, event };
    }
  }
  return undefined;
}
