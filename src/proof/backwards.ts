/** From where something good can still be come to: step by step from the last, each until nothing more comes. */

import { endStep } from '../flow/index.ts';
import { type JudgedStep, outsideOf, type StepArrow } from './judge-step.ts';
import type { SpotName, Target } from './move.ts';
import type { Spot } from './spot.ts';
import { noRows, type ValueSet, type ValueSets } from './value-sets.ts';
import type { Walk } from './walk.ts';

export interface Backwards {
  /** Under this name, what was worked out for a step is kept. */
  readonly name: string;
  readonly counts: (arrow: StepArrow) => boolean;
  /** Spots at which all is good from the beginning. */
  readonly isGood: (spot: Spot) => boolean;
  /** Whether ways out of the step count. */
  readonly leaves: boolean;
}

/** What of an arrow's rows is good, told by what is good where it leads: all, none, or what comes into a set. */
type Outside = ReadonlyMap<string, ValueSet | 'all'>;

/** By step and spot, the rows from which it can be come to. */
export function goodRows(
  walk: Walk,
  judged: ReadonlyMap<string, JudgedStep>,
  how: Backwards,
): ReadonlyMap<string, ReadonlyMap<Spot, ValueSet>> {
  const good = new Map<string, ReadonlyMap<Spot, ValueSet>>();
  const steps = [...judged].reverse();
  for (let changed = true; changed; ) {
    changed = false;
    for (const [step, one] of steps) {
      const now = goodIn(walk, step, one, outsideOfStep(walk, step, one, good, how), how);
      if (now !== good.get(step)) changed = true;
      good.set(step, now);
    }
  }
  return good;
}

function outsideOfStep(
  walk: Walk,
  step: string,
  judged: JudgedStep,
  good: ReadonlyMap<string, ReadonlyMap<Spot, ValueSet>>,
  how: Backwards,
): Outside {
  const outside = new Map<string, ValueSet | 'all'>();
  if (!how.leaves) return outside;
  const slots = walk.stands.get(step)?.walk.frame.slots ?? [];
  for (const [key, target] of waysOut(judged, how)) {
    const next = slots[target.slot] ?? endStep;
    outside.set(key, next === endStep ? 'all' : goodAt(walk, next, target, good));
  }
  return outside;
}

const known = new WeakMap<JudgedStep, Map<string, ReadonlyMap<string, Target>>>();

/** Where the arrows that count leave for: the same in every sweep. */
function waysOut(judged: JudgedStep, { name, counts }: Backwards): ReadonlyMap<string, Target> {
  const ways = known.get(judged) ?? new Map<string, ReadonlyMap<string, Target>>();
  known.set(judged, ways);
  const old = ways.get(name);
  if (old) return old;
  const made = new Map<string, Target>();
  for (const arrow of judged.arrows) {
    if (!arrow.to && arrow.target && counts(arrow)) made.set(outsideOf(arrow), arrow.target);
  }
  ways.set(name, made);
  return made;
}

function goodAt(
  walk: Walk,
  step: string,
  name: SpotName,
  good: ReadonlyMap<string, ReadonlyMap<Spot, ValueSet>>,
): ValueSet | 'all' {
  const spot = walk.stands.get(step)?.walk.home.spots.at(name);
  if (!spot) return noRows;
  const rows = good.get(step)?.get(spot) ?? noRows;
  return rows === walk.rowsIn(step).get(spot) ? 'all' : rows;
}

function goodIn(
  walk: Walk,
  step: string,
  judged: JudgedStep,
  outside: Outside,
  how: Backwards,
): ReadonlyMap<Spot, ValueSet> {
  const key = `${how.name} ${[...outside].map(([name, rows]) => `${name}=${rows}`).join('|')}`;
  const old = judged.good.get(key);
  if (old) return old;
  const made = new Inside(walk.sets, walk.rowsIn(step), judged, outside, how).find();
  judged.good.set(key, made);
  return made;
}

class Inside {
  private readonly good = new Map<Spot, ValueSet>();
  /** What was good where an arrow leads when it was last looked at. */
  private readonly tried = new Map<StepArrow, ValueSet | 'all'>();

  constructor(
    private readonly sets: ValueSets,
    private readonly rows: ReadonlyMap<Spot, ValueSet>,
    private readonly judged: JudgedStep,
    private readonly outside: Outside,
    private readonly how: Backwards,
  ) {
    for (const [spot, some] of rows) this.good.set(spot, how.isGood(spot) ? some : noRows);
  }

  find(): ReadonlyMap<Spot, ValueSet> {
    const arrows = this.judged.arrows.filter((one) => one.target && this.how.counts(one));
    arrows.reverse();
    for (let better = true; better; ) {
      better = false;
      for (const arrow of arrows) if (this.improve(arrow)) better = true;
    }
    return this.good;
  }

  private improve(arrow: StepArrow): boolean {
    const before = this.good.get(arrow.from) ?? noRows;
    if (before === this.rows.get(arrow.from)) return false;
    const end = this.endOf(arrow);
    if (this.tried.get(arrow) === end) return false;
    this.tried.set(arrow, end);
    const now = this.sets.union(before, this.through(arrow, end));
    this.good.set(arrow.from, now);
    return now !== before;
  }

  private endOf(arrow: StepArrow): ValueSet | 'all' {
    return arrow.to ? this.goodAt(arrow.to) : (this.outside.get(outsideOf(arrow)) ?? noRows);
  }

  private through({ rows, puts }: StepArrow, end: ValueSet | 'all'): ValueSet {
    if (end === 'all') return rows;
    return end === noRows ? noRows : this.sets.comingInto(rows, end, puts);
  }

  private goodAt(spot: Spot): ValueSet | 'all' {
    const good = this.good.get(spot) ?? noRows;
    return good === this.rows.get(spot) ? 'all' : good;
  }
}
