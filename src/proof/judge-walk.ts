/** Asks every claim of a finished walk: of each place, of each move, and of the whole. */

import { endStep, type FlowEvent, type Step } from '../flow/index.ts';
import { judgeLoops, judgeReach, type Way } from './judge-graph.ts';
import { judgePlans, waysIntoItself } from './judge-plans.ts';
import { questionsAt } from './judge-state.ts';
import { textQuestions } from './judge-texts.ts';
import type { PlaceTrees } from './memory.ts';
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
  const clean: Clean = new Map();
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
    if (place.settled) askPlace(walk, place, findings, clean);
  }
  judgeWhole(walk, arrows, findings);
  return oneEach(findings);
}

/** By shape and place, the rows that nothing was found in: the next step of that shape need not be asked again. */
type Clean = Map<PlaceTrees, Set<ValueSet>>;

function askPlace(walk: Walk, place: Place, findings: Finding[], clean: Clean): void {
  const known = clean.get(place.trees) ?? new Set<ValueSet>();
  clean.set(place.trees, known);
  const plain = place.frame?.plain ?? false;
  const before = findings.length;
  if (!plain || !known.has(place.rows)) askOfShape(walk, place, findings);
  if (plain && findings.length === before) known.add(place.rows);
  if (place.frame && hasValues(place.frame.step)) askTexts(walk, place, findings);
}

/** Only sentences with a value in them, and figures, can lack one. */
function hasValues(step: Step): boolean {
  const { say, why, cautions, remedies, figures } = step;
  const texts = [say, why ?? '', ...cautions, ...Object.values(remedies)];
  const numbers = 'speed' in step || 'lower' in step || figures.length > 0;
  return numbers || texts.some((text) => text.includes('{'));
}

function askOfShape(walk: Walk, place: Place, findings: Finding[]): void {
  const at = walk.snapshotAt(place);
  questionsAt(walk.job, at).forEach(({ claim, ask }, index) => {
    const tree = place.frame ? (place.trees.questions.get(index) ?? {}) : {};
    place.trees.questions.set(index, tree);
    const found = (rows: ValueSet) => {
      findings.push({ claim, step: place.step, at: { place, rows, event: null } });
    };
    walk.ask(place, tree, place.rows, (snapshot) => ask(snapshot) !== undefined, found);
  });
}

/** Sentences are no part of a step's shape: what was seen of them is not shared. */
function askTexts(walk: Walk, place: Place, findings: Finding[]): void {
  for (const { claim, ask } of textQuestions(walk.job, walk.snapshotAt(place))) {
    const found = (rows: ValueSet) => {
      findings.push({ claim, step: place.step, at: { place, rows, event: null } });
    };
    walk.ask(place, {}, place.rows, (snapshot) => ask(snapshot) !== undefined, found);
  }
}

function judgeWhole(
  walk: Walk,
  arrows: ReadonlyMap<Place, readonly Arrow[]>,
  findings: Finding[],
): void {
  const reached = new Set([...arrows.keys()].filter((one) => one.settled).map((one) => one.step));
  const ways = [...waysOf(walk, arrows), ...waysIntoItself(walk.job)];
  findings.push(...judgePlans(walk.job), ...judgeReach(walk.job, reached), ...judgeLoops(ways));
  judgeSettling(walk, arrows, findings);
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

/** What follows by itself comes to rest: an event whose small steps never do is never answered. */
function judgeSettling(
  walk: Walk,
  arrows: ReadonlyMap<Place, readonly Arrow[]>,
  findings: Finding[],
): void {
  const resting = [...arrows.keys()].filter((place) => place.settled);
  const good = backwards(walk, arrows, resting, ({ event }) => event === null);
  for (const { from, to, event, rows, puts, move } of [...arrows.values()].flat()) {
    if (!event || !move.to || to.settled) continue;
    const bad = walk.sets.minus(to.rows, good.get(to) ?? noRows);
    const some = walk.sets.comingInto(rows, bad, puts);
    if (some === noRows) continue;
    findings.push({
      claim: 'FORMAT-SETTLES',
      step: from.step,
      at: { place: from, rows: some, event },
    });
  }
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
  // Step by step from the last one, each until nothing more comes: a step waits for what follows it.
  const bySteps = new Map<string, Place[]>();
  for (const [place] of places)
    bySteps.set(place.step, [...(bySteps.get(place.step) ?? []), place]);
  const settle = (list: readonly Place[]): boolean => {
    let any = false;
    for (let better = true; better; any ||= better) {
      better = false;
      for (const place of list) if (improve(place)) better = true;
    }
    return any;
  };
  for (let changed = true; changed; ) {
    changed = false;
    for (const list of bySteps.values()) if (settle(list)) changed = true;
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
