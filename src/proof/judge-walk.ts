/** Asks every claim of a finished walk: of each place, of each move, and of the whole. */

import type { FlowEvent } from '../flow/index.ts';
import { endStep } from '../flow/index.ts';
import { judgeLoops, judgeReach, type Way } from './judge-graph.ts';
import { questionsAt } from './judge-state.ts';
import { textQuestions } from './judge-texts.ts';
import { noRows, type ValueSet } from './value-sets.ts';
import { type Arrow, goes, type Place, type Walk } from './walk.ts';

/** A broken claim: for these rows of a place, or for a move from there, or for a step of the flow. */
export interface Finding {
  readonly claim: string;
  readonly step: string;
  readonly at?: {
    readonly place: Place;
    readonly rows: ValueSet;
    readonly event: FlowEvent | null;
  };
  /** For what needs no path. */
  readonly message?: string;
}

export function judgeWalk(walk: Walk): readonly Finding[] {
  const findings: Finding[] = [];
  const arrows = new Map<Place, Arrow[]>();
  for (const place of walk.places.values()) {
    if (place.rows === noRows) continue;
    const list: Arrow[] = [];
    const events = place.settled ? [...place.words, ...place.sizes.values()] : [null];
    for (const event of events) walk.arrows(place, event, place.rows, (arrow) => list.push(arrow));
    arrows.set(place, list);
    for (const { move, rows, event, from } of list) {
      if (move.broken === null) continue;
      findings.push({
        claim: move.broken,
        step: from.step,
        at: { place: from, rows, event },
      });
    }
    if (place.settled) askPlace(walk, place, findings);
  }
  judgeWhole(walk, arrows, findings);
  return oneEach(findings);
}

function askPlace(walk: Walk, place: Place, findings: Finding[]): void {
  const { job } = walk;
  const at = walk.snapshotAt(place);
  const found = (claim: string) => (rows: ValueSet) => {
    findings.push({
      claim,
      step: place.step,
      at: { place, rows, event: null },
    });
  };
  questionsAt(job, at).forEach(({ claim, ask }, index) => {
    const tree = place.frame ? (place.trees.questions.get(index) ?? {}) : {};
    place.trees.questions.set(index, tree);
    walk.ask(place, tree, place.rows, (snapshot) => ask(snapshot) !== undefined, found(claim));
  });
  if (!place.frame) return;
  // Sentences are no part of a step's shape: what was seen of them is not shared.
  for (const { claim, ask } of textQuestions(job, at)) {
    walk.ask(place, {}, place.rows, (snapshot) => ask(snapshot) !== undefined, found(claim));
  }
}

function judgeWhole(
  walk: Walk,
  arrows: ReadonlyMap<Place, readonly Arrow[]>,
  findings: Finding[],
): void {
  const reached = new Set([...arrows.keys()].filter((one) => one.settled).map((one) => one.step));
  findings.push(...judgeReach(walk.job, reached), ...judgeLoops(waysOf(walk, arrows)));
  const end = [...arrows.keys()].filter((place) => place.step === endStep);
  const ending = backwards(walk, arrows, end, (arrow) => goes(walk.job, arrow));
  complain(walk, arrows.keys(), ending, 'FORMAT-END', findings);
  const open = [...arrows.keys()].filter((place) => place.settled && place.phase !== 'hold');
  const going = backwards(
    walk,
    arrows,
    open,
    (arrow) => goes(walk.job, arrow) && arrow.from.step === arrow.to.step,
  );
  const holds = [...arrows.keys()].filter((place) => place.settled && place.phase === 'hold');
  complain(walk, holds, going, 'FORMAT-HOLD', findings);
}

function complain(
  walk: Walk,
  places: Iterable<Place>,
  good: ReadonlyMap<Place, ValueSet>,
  claim: string,
  findings: Finding[],
): void {
  for (const place of places) {
    if (!place.settled) continue;
    const rows = walk.sets.minus(place.rows, good.get(place) ?? noRows);
    if (rows !== noRows)
      findings.push({
        claim,
        step: place.step,
        at: { place, rows, event: null },
      });
  }
}

function waysOf(walk: Walk, arrows: ReadonlyMap<Place, readonly Arrow[]>): readonly Way[] {
  const ways = new Map<string, Way>();
  for (const arrow of [...arrows.values()].flat()) {
    const { from, to, event } = arrow;
    if (from.step === to.step || event?.type === 'back' || !goes(walk.job, arrow)) continue;
    const lost = event?.type === 'reading' && isLostSlot(arrow);
    ways.set(`${from.step} ${to.step} ${lost}`, {
      from: from.step,
      to: to.step,
      lost,
    });
  }
  return [...ways.values()];
}

/** The last target of a step that judges a size is where a lost piece goes. */
function isLostSlot({ from, move }: Arrow): boolean {
  const plan = from.frame?.plan;
  if (plan?.step.kind !== 'inspect' && plan?.step.kind !== 'passes') return false;
  return move.to?.slot === plan.targets.length;
}

/** For each place the rows from which one of `goals` can be come to. */
function backwards(
  { sets }: Walk,
  arrows: ReadonlyMap<Place, readonly Arrow[]>,
  goals: readonly Place[],
  counts: (arrow: Arrow) => boolean,
): ReadonlyMap<Place, ValueSet> {
  const good = new Map<Place, ValueSet>(goals.map((place) => [place, place.rows]));
  const places = [...arrows].reverse();
  const counting = new Map(places.map(([place, list]) => [place, list.filter(counts)]));
  const improve = (place: Place): boolean => {
    const before = good.get(place) ?? noRows;
    if (before === place.rows) return false;
    let now = before;
    for (const { rows, to, puts } of counting.get(place) ?? []) {
      const end = good.get(to) ?? noRows;
      if (end === noRows) continue;
      now = sets.union(now, end === to.rows ? rows : sets.comingInto(rows, end, puts));
      good.set(place, now);
      if (now === place.rows) break;
    }
    return now !== before;
  };
  for (let changed = true; changed; ) {
    changed = false;
    for (const [place] of places) while (improve(place)) changed = true;
  }
  return good;
}

function oneEach(findings: readonly Finding[]): readonly Finding[] {
  const first = new Map<string, Finding>();
  for (const finding of findings) {
    const key = `${finding.claim} ${finding.step} ${finding.at?.place.key} ${finding.at?.event?.type}`;
    if (!first.has(key)) first.set(key, finding);
  }
  return [...first.values()];
}
