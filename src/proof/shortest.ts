/** Finds a shortest way to broken claims: the walk again, one word at a time, and then back from where it broke. */

import type { FlowEvent } from '../flow/index.ts';
import type { Finding } from './judge-walk.ts';
import { PlaceGraph } from './place-graph.ts';
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
  if (open.size === 0) return paths;
  const graph = new PlaceGraph(walk);
  const layers: Layer[] = [new Map([[walk.first, walk.firstRows]])];
  const known = new Map<Place, ValueSet>([[walk.first, walk.firstRows]]);
  while (open.size > 0 && layers.length < longest) {
    const layer = layers.at(-1);
    if (!layer || layer.size === 0) break;
    for (const [claim, list] of open) {
      for (const finding of list) {
        const path = pathIfHere(walk, graph, layers, finding);
        if (!path) continue;
        paths.set(finding, path);
        open.delete(claim);
        break;
      }
    }
    if (open.size > 0) layers.push(nextLayer(walk, graph, layer, known));
  }
  return paths;
}

function pathIfHere(
  walk: Walk,
  graph: PlaceGraph,
  layers: readonly Layer[],
  { at }: Finding,
): readonly FlowEvent[] | undefined {
  if (!at?.place.spot.rests) return undefined;
  const rows = walk.sets.both(layers.at(-1)?.get(at.place) ?? noRows, at.rows);
  if (rows === noRows) return undefined;
  const path = trace(walk, graph, layers, at.place, rows);
  return at.event ? [...path, at.event] : path;
}

/** What one more word comes to, and was not come to with fewer. */
function nextLayer(walk: Walk, graph: PlaceGraph, layer: Layer, known: Layer): Layer {
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
    if (to.spot.rests) return void next.set(to, sets.union(next.get(to) ?? noRows, fresh));
    for (const said of walk.eventsAt(to)) walk.arrows(to, said, fresh).forEach(arrive);
  };
  for (const [place, rows] of layer) {
    for (const said of graph.saidAt(place)) {
      for (const arrow of walk.arrows(place, said, rows)) if (arrow.move.to) arrive(arrow);
    }
  }
  return next;
}

/** From the last layer back to the first, one word each. */
function trace(
  walk: Walk,
  graph: PlaceGraph,
  layers: readonly Layer[],
  place: Place,
  rows: ValueSet,
): readonly FlowEvent[] {
  const { sets } = walk;
  const events: FlowEvent[] = [];
  let to = place;
  let goal = sets.only(sets.first(rows));
  for (const layer of layers.slice(0, -1).reverse()) {
    const step = before(walk, graph, layer, to, goal);
    if (!step) throw new Error('A path was lost: the walk does not agree with itself.');
    events.push(step.event);
    to = step.place;
    goal = sets.only(sets.first(step.rows));
  }
  return events.reverse();
}

function before(
  walk: Walk,
  graph: PlaceGraph,
  layer: Layer,
  to: Place,
  goal: ValueSet,
): { place: Place; rows: ValueSet; event: FlowEvent } | undefined {
  const { sets } = walk;
  const into = (arrow: Arrow): ValueSet => {
    const end = arrow.to.spot.rests
      ? arrow.to === to
        ? goal
        : noRows
      : settlingInto(arrow.to, sets.withAll(arrow.rows, arrow.puts));
    return sets.comingInto(arrow.rows, end, arrow.puts);
  };
  const settlingInto = (middle: Place, rows: ValueSet): ValueSet => {
    let sum = noRows;
    for (const said of walk.eventsAt(middle)) {
      for (const arrow of walk.arrows(middle, said, rows)) sum = sets.union(sum, into(arrow));
    }
    return sum;
  };
  for (const { place, said } of graph.before(to)) {
    const rows = layer.get(place) ?? noRows;
    if (!said.event || rows === noRows) continue;
    const moves = walk.arrows(place, said, rows).filter(({ move }) => move.to);
    const found = moves.map(into).find((some) => some !== noRows);
    if (found !== undefined) return { place, rows: found, event: said.event };
  }
  return undefined;
}
