/** What the claims say of one step, once it is known which rows stand where: for all steps that do the same. */

import type { FlowEvent, FlowSnapshot, Job } from '../flow/index.ts';
import { goesOn } from './alphabet.ts';
import { type Question, questionsAt } from './judge-state.ts';
import { insideOf, type Move, type Target, targetFrom } from './move.ts';
import type { Player } from './player.ts';
import type { Room } from './room.ts';
import type { Spot } from './spot.ts';
import { standingKey } from './step-room.ts';
import type { Said, StepWalk } from './step-walk.ts';
import { explore, type Names } from './tree.ts';
import { noRows, type Row, type ValueSet } from './value-sets.ts';
import type { KnownVariables } from './variables.ts';
import { isLostSize } from './walk-plain.ts';

/** One kind of move out of a spot; `to` is a spot of the same step, and none where it leaves. */
export interface StepArrow {
  readonly from: Spot;
  readonly said: Said;
  readonly rows: ValueSet;
  readonly move: Move;
  readonly target: Target | null;
  readonly to: Spot | undefined;
  readonly puts: Row;
  /** It is what a person says to go on. */
  readonly onward: boolean;
}

export interface StepFinding {
  readonly claim: string;
  readonly spot: Spot;
  readonly rows: ValueSet;
  readonly event: FlowEvent | null;
}

export interface JudgedStep {
  readonly arrows: readonly StepArrow[];
  readonly findings: readonly StepFinding[];
  /** By going on: into which slot, and whether because the piece is lost. */
  readonly ways: readonly { readonly slot: number; readonly lost: boolean }[];
  /** For backwards.ts: what is good here, by what is good where it leads. */
  readonly good: Map<string, ReadonlyMap<Spot, ValueSet>>;
}

export interface Judging {
  readonly job: Job;
  readonly room: Room;
  readonly player: Player;
}

export function judgeStep(
  walk: StepWalk,
  rows: ReadonlyMap<Spot, ValueSet>,
  judging: Judging,
): JudgedStep {
  const key = standingKey(rows);
  const old = walk.home.judged.get(key);
  if (old) return old;
  const arrows = arrowsIn(walk, rows, judging.job);
  const findings = [
    ...arrows.flatMap(brokenMove),
    ...[...rows].flatMap(([spot, some]) => (spot.rests ? askedAt(walk, spot, some, judging) : [])),
  ];
  const made = { arrows, findings, ways: waysIn(walk, arrows, judging), good: new Map() };
  walk.home.judged.set(key, made);
  return made;
}

function arrowsIn(
  walk: StepWalk,
  rows: ReadonlyMap<Spot, ValueSet>,
  job: Job,
): readonly StepArrow[] {
  const arrows: StepArrow[] = [];
  for (const [from, all] of rows) {
    for (const said of walk.eventsAt(from, all)) {
      const onward = said.event === null || goesOn(job, from.phase, said.event);
      for (const [move, some] of walk.parts(from, said, all)) {
        const target = targetFrom(from, move);
        const to = target?.slot === 0 ? walk.home.spots.at(target) : undefined;
        const puts = walk.putsOf(move);
        arrows.push({ from, said, rows: some, move, target, to, puts, onward });
      }
    }
  }
  return arrows;
}

function brokenMove({ from, said, rows, move }: StepArrow): readonly StepFinding[] {
  return move.broken === null ? [] : [{ claim: move.broken, spot: from, rows, event: said.event }];
}

/** Puts every question of a spot; at the end of the job there is no step. */
export function askedAt(
  walk: StepWalk | undefined,
  spot: Spot,
  rows: ValueSet,
  { job, room, player }: Judging,
): readonly StepFinding[] {
  const findings: StepFinding[] = [];
  // Where all was asked before, not even the step's chart is built.
  let made: readonly Question[] | undefined;
  const questions = () => {
    made ??= questionsAt(job, player.at(walk?.frame, spot));
    return made;
  };
  spot.trees.asked ??= questions().map(({ claim, alike }) => ({
    claim,
    tree: alike === undefined ? {} : room.questionTree(alike),
  }));
  spot.trees.asked.forEach(({ claim, tree }, index) => {
    const isBad = (seen: FlowSnapshot) => questions()[index]?.ask(seen) !== undefined;
    explore(tree, rows, {
      sets: room.sets,
      names: walk?.frame ?? plainly(room.variables),
      run: (look) => player.ask(walk?.frame, spot, isBad, look),
      dull: (bad) => !bad,
      visit: (_, some) => findings.push({ claim, spot, rows: some, event: null }),
    });
  });
  return findings;
}

/** Where a person can go on to from this step. */
function waysIn(
  walk: StepWalk,
  arrows: readonly StepArrow[],
  judging: Judging,
): JudgedStep['ways'] {
  const ways = new Map<string, { readonly slot: number; readonly lost: boolean }>();
  const add = (slot: number, lost: boolean) => ways.set(`${slot} ${lost}`, { slot, lost });
  for (const arrow of arrows) {
    const slot = arrow.target?.slot ?? 0;
    if (slot === 0 || !arrow.onward || arrow.said.event?.type === 'back') continue;
    const lost = lostRows(walk, arrow, judging);
    if (lost !== noRows) add(slot, true);
    if (lost !== arrow.rows) add(slot, false);
  }
  return [...ways.values()];
}

/** Of the rows of an arrow, those for which its size says that the piece is lost. */
function lostRows(
  walk: StepWalk,
  { from, said, rows }: StepArrow,
  { job, room, player }: Judging,
): ValueSet {
  const { event } = said;
  if (event?.type !== 'reading') return noRows;
  let lost = noRows;
  explore<boolean>({}, rows, {
    sets: room.sets,
    names: walk.frame,
    run: (look) => player.ask(walk.frame, from, (seen) => isLostSize(job, seen, event), look),
    dull: (bad) => !bad,
    visit: (_, some) => {
      lost = room.sets.union(lost, some);
    },
  });
  return lost;
}

/** The name of the spot that an arrow leaves for, in the step of its slot. */
export function outsideOf({ target }: StepArrow): string {
  return target ? `${target.slot} ${insideOf(target)}` : '';
}

/** Every variable by its own name. */
function plainly(variables: KnownVariables): Names {
  return {
    variable: (name) => {
      const found = variables.named(name);
      if (!found) throw new Error(`There is no variable "${name}".`);
      return found;
    },
    nameOf: ({ name }) => name,
  };
}
