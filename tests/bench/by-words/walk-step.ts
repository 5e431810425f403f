/**
 * Walks one step's chart by words: every simple path that the model-based tool finds, then every arrow that closes a
 * circle, and every two arrows in a row. Paths share their beginnings, and go on from the very state they came to.
 */

import { type RunState, saidNow } from '../../../src/bench/index.ts';
import { nothingKnown } from '../../model/nothing-known.ts';
import { metByCut } from './expected-list.ts';
import type { Judge } from './judge.ts';
import { neverTaken, reasonAgainst, reasons } from './reasons.ts';
import { Person, type Turn } from './scripted-person.ts';
import { type ChartArrow, namesOfPaths, type StepChart, stepChart } from './step-chart.ts';

/** Begins what stands where a reason should: somebody could have taken the arrow, and did not. */
export const noReason = 'no reason is known:';

/** Where a path has come to. */
export interface Node {
  readonly state: RunState;
  /** Its last arrow; empty at its beginning. */
  readonly last: string;
  /** Arrows that were taken in the same breath and are still to be named by the path. */
  readonly ahead: readonly ChartArrow[];
}

type Refused = { readonly refused: string };

export interface WalkedStep {
  readonly chart: StepChart;
  /** Names of all arrows that were taken. */
  readonly taken: ReadonlySet<string>;
  /** Those that nothing brings about, by reason. */
  readonly never: ReadonlyMap<string, number>;
  /** Two arrows in a row, each with a target. */
  readonly pairs: number;
  /** Pairs that did not follow one another from where the walks came to, by what was in the way. */
  readonly apart: ReadonlyMap<string, number>;
  /** Simple paths from the first state, as the tool finds them. */
  readonly paths: number;
  /** Those that were played to their end. */
  readonly whole: number;
  /** Those that come to an arrow which nothing brings about there, by reason. */
  readonly refused: ReadonlyMap<string, number>;
}

export class StepWalk {
  readonly chart: StepChart;
  private readonly person: Person;
  private readonly byName: ReadonlyMap<string, ChartArrow>;
  private readonly taken = new Set<string>();
  private readonly pairs = new Set<string>();
  /** Places that paths came to, by their last arrow: one of each situation. */
  private readonly nodes = new Map<string, Map<RunState, Node>>();
  private readonly refused = new Map<string, number>();
  private readonly apart = new Map<string, number>();
  private paths = 0;
  private whole = 0;

  constructor(
    private readonly entered: RunState,
    step: string,
    judge?: Judge,
  ) {
    this.chart = stepChart(entered.job, step);
    this.person = new Person(entered.job, this.chart, (turn) => {
      for (const { name } of turn.arrows) this.taken.add(name);
      judge?.look(turn);
    });
    this.byName = new Map(this.chart.arrows.map((arrow) => [arrow.name, arrow]));
  }

  /** The step as it is come to in a run, and with nothing known: from there the paths are counted. */
  walk(): WalkedStep {
    const { first, arrows } = this.chart;
    const { job, snapshot } = this.entered;
    const atGate = () => nothingKnown(job, this.chart.step, snapshot);
    // What a cut can show was met before: as a gate is come back to after its cut.
    const cutShows = metByCut(this.entered, this.chart.step);
    const unknown =
      first === 'gate' ? [{ ...this.entered, snapshot: atGate(), undo: null, cutShows }] : [];
    for (const from of [...unknown, this.entered]) {
      const root = { state: this.person.standing(from), last: '', ahead: [] };
      this.keep(root);
      const place = this.person.place(from);
      const counts = unknown.length === 0 || from !== this.entered;
      for (const names of namesOfPaths(place, arrows, counts)) this.path(root, names, counts);
    }
    this.closeCircles();
    this.followOn();
    this.loseEverything();
    const { chart, taken, apart, paths, whole, refused } = this;
    const pairs = this.pairs.size;
    return { chart, taken, never: this.never(), pairs, apart, paths, whole, refused };
  }

  /** Where a path ends, or nothing where one of its arrows cannot be taken. */
  path(root: Node, names: readonly string[], counts = false): Node | undefined {
    let at = root;
    if (counts) this.paths += 1;
    for (const name of names) {
      const next = this.onward(at, name);
      if ('refused' in next) {
        if (counts) countIn(this.refused, next.refused);
        return undefined;
      }
      at = next;
    }
    if (counts) this.whole += 1;
    return at;
  }

  private never(): ReadonlyMap<string, number> {
    const reasonsNow = new Map<string, number>();
    for (const arrow of [...this.chart.arrows, ...this.chart.stays]) {
      if (this.taken.has(arrow.name)) continue;
      countIn(
        reasonsNow,
        neverTaken(this.entered.job, this.chart, arrow) ?? `${noReason} ${arrow.name}`,
      );
    }
    return reasonsNow;
  }

  private onward(at: Node, name: string): Node | Refused {
    const arrow = this.byName.get(name);
    if (!arrow) throw new Error(`The chart has no arrow "${name}".`);
    const [passed, ...ahead] = at.ahead;
    if (passed) {
      if (passed !== arrow) return { refused: reasons.passed };
      return this.keep({ state: at.state, last: name, ahead }, at.last);
    }
    const turn = this.person.take(at.state, arrow)?.at(-1);
    if (!turn) {
      return { refused: reasonAgainst(at.state, this.chart, arrow) ?? `${noReason} ${name}` };
    }
    const rest = targeted(turn).slice(1);
    return this.keep({ state: turn.after, last: name, ahead: rest }, at.last);
  }

  private keep(node: Node, before?: string): Node {
    if (before) this.pairs.add(`${before} | ${node.last}`);
    const alike = this.nodes.get(node.last) ?? new Map<RunState, Node>();
    this.nodes.set(node.last, alike);
    // What was passed in one breath follows from where it was passed from: one node stands for a situation.
    if (!alike.has(node.state)) alike.set(node.state, node);
    return node;
  }

  /** Twice: some arrows begin where only one of the first round leads. */
  private closeCircles(): void {
    for (let round = 0; round < 2; round += 1) {
      for (const arrow of [...this.chart.arrows, ...this.chart.stays]) {
        if (!this.taken.has(arrow.name)) this.takeSomewhere(arrow);
      }
    }
  }

  private takeSomewhere(arrow: ChartArrow): void {
    for (const node of this.standingAt(arrow.from)) {
      if (arrow.name.endsWith(' stays')) this.person.take(node.state, arrow);
      else this.onward(node, arrow.name);
      if (this.taken.has(arrow.name)) return;
    }
  }

  private standingAt(place: string): readonly Node[] {
    return [...this.nodes.values()].flatMap((alike) =>
      [...alike.values()].filter(
        ({ state, ahead }) => ahead.length === 0 && this.person.place(state) === place,
      ),
    );
  }

  /** Every arrow behind every other that leads to where it begins. */
  private followOn(): void {
    for (const one of this.chart.arrows) {
      const alike = [...(this.nodes.get(one.name)?.values() ?? [])];
      for (const other of this.chart.arrows) {
        if (other.from === one.to) this.follow(one, other, alike);
      }
    }
  }

  private follow(one: ChartArrow, other: ChartArrow, alike: readonly Node[]): void {
    const pair = `${one.name} | ${other.name}`;
    const never = neverTaken(this.entered.job, this.chart, one);
    let against: string = never ?? `${noReason} ${pair}`;
    for (const node of alike) {
      if (this.pairs.has(pair)) return;
      const next = this.onward(node, other.name);
      if ('refused' in next) against = next.refused;
    }
    if (!this.pairs.has(pair)) countIn(this.apart, against);
  }

  /** Where something turns or hands are near, everything that can be lost is lost once. */
  private loseEverything(): void {
    for (const place of ['start', 'cutting', 'stopping', 'measure', 'open']) {
      const losses = this.standingAt(place).flatMap(({ state }) =>
        saidNow(state).items.flatMap(({ id, kind, phrases }) =>
          kind === 'loss' ? [[id, { state, word: phrases[0] ?? '' }] as const] : [],
        ),
      );
      for (const { state, word } of new Map(losses).values()) this.person.says(state, word);
    }
  }
}

function targeted({ arrows }: Turn): readonly ChartArrow[] {
  return arrows.filter(({ name }) => !name.endsWith(' stays'));
}

function countIn(counts: Map<string, number>, key: string): void {
  counts.set(key, (counts.get(key) ?? 0) + 1);
}
