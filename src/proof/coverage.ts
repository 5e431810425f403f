/**
 * How much of each step's chart a proof has walked: its states, its arrows, pairs of arrows in a row, and simple paths.
 *
 * What the chart has is read off the compiled machine (step-chart.ts). What was walked is asked of the very sets of the
 * walk: an arrow counts when some row takes it; a pair, when some row that the first one leads to takes the second; a
 * simple path, when rows are left at its end, with what a person may answer between two of its arrows. What is not walked
 * after a proof is what nothing that is said or happens can bring about. To the walk what is lost and what is not known are
 * one (told-apart.ts): so the report of a loss counts as taken also where that loss is believed already.
 */

import type { Job } from '../flow/index.ts';
import { judgeStep, type StepArrow } from './judge-step.ts';
import type { Spot } from './spot.ts';
import {
  arrowName,
  type ChartArrow,
  countPaths,
  type StepChart,
  stepChartOf,
} from './step-chart.ts';
import { type StepRoom, standingKey } from './step-room.ts';
import { noRows, type ValueSet, type ValueSets } from './value-sets.ts';
import type { Walk } from './walk.ts';

/** So many of so many. */
export interface Counted {
  readonly walked: number;
  readonly of: number;
}

export interface Coverage {
  readonly states: Counted;
  readonly transitions: Counted;
  /** Two transitions in a row, inside one step. */
  readonly pairs: Counted;
  /** Ways through a step's chart on which no state comes twice. */
  readonly paths: Counted;
  /** Steps with more paths than are looked at: their paths are counted as not walked. */
  readonly uncounted: readonly string[];
}

/** More ways through one step are not looked at. */
const mostPaths = 20_000;

const none: Counted = { walked: 0, of: 0 };

/** What was counted of a step is counted again only for other rows: of a second card most is the same. */
const kept = new WeakMap<StepRoom, Map<string, Coverage>>();

export function coverageOf(walk: Walk): Coverage {
  let total: Coverage = {
    states: none,
    transitions: none,
    pairs: none,
    paths: none,
    uncounted: [],
  };
  for (const [step, { walk: inside }] of walk.stands) {
    const rows = walk.rowsIn(step);
    const key = `${standingKey(rows)} ${shapeOf(walk.job, step)}`;
    const known = kept.get(inside.home) ?? new Map<string, Coverage>();
    kept.set(inside.home, known);
    const one = known.get(key) ?? stepCoverage(walk, step, judgeStep(inside, rows, walk).arrows);
    known.set(key, one);
    total = added(total, one, step);
  }
  return total;
}

/** Steps of one key stand alike; their charts differ at most in where their ways out lead. */
function shapeOf(job: Job, step: string): string {
  return String(job.plans.get(step)?.targets.length);
}

function added(a: Coverage, b: Coverage, step: string): Coverage {
  const sum = (x: Counted, y: Counted) => ({ walked: x.walked + y.walked, of: x.of + y.of });
  return {
    states: sum(a.states, b.states),
    transitions: sum(a.transitions, b.transitions),
    pairs: sum(a.pairs, b.pairs),
    paths: sum(a.paths, b.paths),
    uncounted: [...a.uncounted, ...b.uncounted.map(() => step)],
  };
}

function stepCoverage(walk: Walk, step: string, arrows: readonly StepArrow[]): Coverage {
  const one = new StepCoverage(
    walk.sets,
    stepChartOf(walk.job, step),
    walk.rowsIn(step),
    (slot) => {
      const to = walk.stands.get(step)?.walk.frame.slots[slot];
      return `out:${to}`;
    },
  );
  one.take(arrows);
  const uncounted = one.paths.of > mostPaths ? [step] : [];
  const { states, transitions, pairs, paths } = one;
  return { states, transitions, pairs, paths, uncounted };
}

type Rows = ReadonlyMap<Spot, ValueSet>;

class StepCoverage {
  /** What the walk took, by the chart's own names. */
  private readonly taken = new Map<string, StepArrow[]>();
  /** From where an event left off to where it rests. */
  private readonly settles = new Map<Spot, StepArrow[]>();
  private readonly after: ReadonlyMap<string, readonly ChartArrow[]>;
  private readonly closed = new Map<string, Rows>();

  constructor(
    private readonly sets: ValueSets,
    private readonly chart: StepChart,
    private readonly rows: Rows,
    private readonly out: (slot: number) => string,
  ) {
    this.after = new Map(
      chart.states.map((state) => [state, chart.arrows.filter(({ from }) => from === state)]),
    );
  }

  take(arrows: readonly StepArrow[]): void {
    for (const arrow of arrows) {
      const { from, said, target } = arrow;
      if (!target || arrow.rows === noRows) continue;
      const to = target.slot === 0 ? target.inner : this.out(target.slot);
      if (said.event === null && target.slot === 0 && target.rests) {
        this.settles.set(from, [...(this.settles.get(from) ?? []), arrow]);
        continue;
      }
      const name = arrowName(from.inner, said.event?.type ?? '', to);
      this.taken.set(name, [...(this.taken.get(name) ?? []), arrow]);
    }
  }

  get states(): Counted {
    const stood = new Set(
      [...this.rows].flatMap(([{ inner }, rows]) => (rows === noRows ? [] : [inner])),
    );
    return counted(this.chart.states, (state) => stood.has(state));
  }

  get transitions(): Counted {
    return counted(this.chart.arrows, ({ name }) => this.taken.has(name));
  }

  get pairs(): Counted {
    let walked = 0;
    let of = 0;
    for (const first of this.chart.arrows) {
      const led = this.ledBy(first, this.rows);
      for (const second of this.after.get(first.to) ?? []) {
        of += 1;
        if (this.leaves(second, led)) walked += 1;
      }
    }
    return { walked, of };
  }

  /** Simple paths from where the step is come to; `walked` is none where there are too many. */
  get paths(): Counted {
    const of = countPaths(this.chart, mostPaths);
    if (of > mostPaths) return { walked: 0, of };
    const first = new Map([...this.rows].filter(([{ inner }]) => inner === this.chart.first));
    return { walked: this.walkedFrom(this.chart.first, first, new Set([this.chart.first])), of };
  }

  private walkedFrom(state: string, rows: Rows, seen: Set<string>): number {
    let count = 0;
    const here = this.closedAt(rows);
    for (const arrow of this.after.get(state) ?? []) {
      if (seen.has(arrow.to) || !this.leaves(arrow, here)) continue;
      count += 1;
      if (!this.after.has(arrow.to)) continue;
      seen.add(arrow.to);
      count += this.walkedFrom(arrow.to, this.ledBy(arrow, here), seen);
      seen.delete(arrow.to);
    }
    return count;
  }

  /** With all that may be answered or reported there without leaving the state. */
  private closedAt(rows: Rows): Rows {
    const key = standingKey(rows);
    const old = this.closed.get(key);
    if (old) return old;
    let all = rows;
    for (let grown = true; grown; ) {
      grown = false;
      for (const state of new Set([...all.keys()].map(({ inner }) => inner))) {
        for (const arrow of this.after.get(state) ?? []) {
          if (arrow.to !== state) continue;
          const more = this.joined(all, this.ledBy(arrow, all));
          if (more !== all) grown = true;
          all = more;
        }
      }
    }
    this.closed.set(key, all);
    return all;
  }

  /** The first of both where nothing new comes. */
  private joined(rows: Rows, more: Rows): Rows {
    const sum = new Map(rows);
    let grown = false;
    for (const [spot, some] of more) {
      const old = sum.get(spot) ?? noRows;
      const now = this.sets.union(old, some);
      if (now === old) continue;
      sum.set(spot, now);
      grown = true;
    }
    return grown ? sum : rows;
  }

  private leaves({ name }: ChartArrow, rows: Rows): boolean {
    return (this.taken.get(name) ?? []).some(
      (arrow) => this.sets.both(rows.get(arrow.from) ?? noRows, arrow.rows) !== noRows,
    );
  }

  /** Where an arrow leads, there where it leads first and where it comes to rest. */
  private ledBy({ name }: ChartArrow, rows: Rows): Rows {
    const led = new Map<Spot, ValueSet>();
    const come = (arrow: StepArrow, from: ValueSet): void => {
      const some = this.sets.both(from, arrow.rows);
      if (some === noRows || !arrow.to) return;
      const image = this.sets.withAll(some, arrow.puts);
      led.set(arrow.to, this.sets.union(led.get(arrow.to) ?? noRows, image));
      for (const settle of this.settles.get(arrow.to) ?? []) come(settle, image);
    };
    for (const arrow of this.taken.get(name) ?? []) come(arrow, rows.get(arrow.from) ?? noRows);
    return led;
  }
}

function counted<T>(all: readonly T[], is: (one: T) => boolean): Counted {
  return { walked: all.filter(is).length, of: all.length };
}
