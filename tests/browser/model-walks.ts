/**
 * Walks through step charts for the page to play, made by the model-based tool: from where a walk stands, the tool's
 * shortest path to the nearest arrow that no walk has taken yet, over and over until the step is left.
 */

import {
  type BenchItem,
  comeBack,
  hear,
  type RunEntry,
  type RunState,
  saidNow,
} from '../../src/bench/index.ts';
import { positionOf } from '../../src/flow/index.ts';
import { neverTaken } from '../bench/by-words/reasons.ts';
import { Person } from '../bench/by-words/scripted-person.ts';
import { type ChartArrow, namesOfPaths, placeIn, stepChart } from '../bench/by-words/step-chart.ts';
import { heardAs } from '../bench/scripted.ts';
import type { Entered } from './plant.ts';

/** One word of a walk and the run after it, as the model has it. */
export interface Said {
  /** What is said; "interrupted" when the Bench is left and come back to. */
  readonly word: string;
  readonly state: RunState;
}

export interface Walk {
  readonly step: string;
  /** What was said before the walk; the Bench comes back to it through a hold. */
  readonly entries: readonly RunEntry[];
  readonly first: RunState;
  readonly said: readonly Said[];
  /** Names of the arrows, in their order. */
  readonly taken: readonly string[];
}

/** An arrow that could not be taken from this many places is given up. */
const mostTries = 20;
/** Longer walks are ended, so that one fault does not hide what comes after it. */
const mostArrows = 40;
const mostAnswers = 40;
/** Walks one after another that took nothing new. */
const mostIdle = 4;

/** Walks that take every arrow of a step's chart, but those that no word brings about. */
export class ChartWalks {
  readonly walks: Walk[] = [];
  readonly arrows: readonly ChartArrow[];
  private readonly missing: Map<string, number>;
  private readonly person: Person;

  /**
   * @param from the run at the entry of the step, or of the one before it: a run that is come back to asks for every
   *   fact in a hold, so that only the gate of the next step is seen open
   * @param keep which arrows count; those of a fault walk are many, and alike in every step
   */
  constructor(
    private readonly from: Entered,
    readonly step: string,
    keep: (arrow: ChartArrow) => boolean,
  ) {
    const { job } = from.state;
    const chart = stepChart(job, step);
    this.person = new Person(job, chart);
    this.arrows = chart.arrows.filter((one) => keep(one) && !neverTaken(job, chart, one));
    this.missing = new Map(this.arrows.map(({ name }) => [name, 0]));
    for (let idle = 0; idle < mostIdle && this.missing.size > 0; ) {
      const walk = this.walk();
      const isNew = walk.taken.some(
        (name) => !this.walks.some(({ taken }) => taken.includes(name)),
      );
      if (isNew) this.walks.push(walk);
      idle = isNew ? 0 : idle + 1;
    }
  }

  /** Arrows that no walk takes. */
  get missed(): readonly ChartArrow[] {
    const taken = new Set(this.walks.flatMap((walk) => walk.taken));
    return this.arrows.filter(({ name }) => !taken.has(name));
  }

  private walk(): Walk {
    const { entries, state } = this.from;
    const first = entries.length > 0 ? comeBack(state, 3_000).state : state;
    const said = straightOn(first, this.step);
    const taken: string[] = [];
    for (let at = said.at(-1)?.state ?? first; taken.length < mostArrows; ) {
      const next = this.onward(at);
      if (!next) break;
      taken.push(...next.names);
      said.push(...next.said);
      at = next.state;
    }
    return { step: this.step, entries, first, said, taken };
  }

  /** Along the path to the nearest arrow that is missing; nothing when none can be taken from here. */
  private onward(at: RunState) {
    const place = placeIn(at.snapshot, this.step);
    if (place.startsWith('out:')) return undefined;
    for (const path of this.pathsToMissing(place, goesOn(at))) {
      const played = this.play(at, path);
      const isNew = played.names.some((name) => this.missing.has(name));
      for (const name of played.names) this.missing.delete(name);
      this.tried(path.at(-1) ?? '');
      if (isNew) return played;
    }
    return undefined;
  }

  private tried(goal: string): void {
    const tries = this.missing.get(goal);
    if (tries === undefined) return;
    if (tries + 1 < mostTries) this.missing.set(goal, tries + 1);
    else this.missing.delete(goal);
  }

  /** Those that stay in the step before those that leave it, so that a walk takes more; the shortest first. */
  private pathsToMissing(place: string, on: string | undefined): readonly (readonly string[])[] {
    const ends = (path: readonly string[]) => this.arrow(path.at(-1))?.to ?? place;
    const leaves = (path: readonly string[]) => (ends(path).startsWith('out:') ? 1 : 0);
    return this.waysFrom(place, on)
      .flatMap((way) =>
        this.arrows
          .filter(({ name, from }) => this.missing.has(name) && from === ends(way))
          .map(({ name }) => [...way, name]),
      )
      .sort((one, other) => leaves(one) - leaves(other) || one.length - other.length);
  }

  /** A shortest way to every state. The tool leaves out paths that begin longer ones. */
  private waysFrom(place: string, on: string | undefined): readonly (readonly string[])[] {
    const ways = new Map<string, readonly string[]>([[place, []]]);
    const arrows = this.arrows.flatMap((arrow) => {
      if (on !== 'measure' || arrow.event !== 'carry-on') return [arrow];
      return arrow.to === on ? [{ ...arrow, event: 'goes on' }] : [];
    });
    for (const path of namesOfPaths(place, arrows, false)) {
      for (const [index, name] of path.entries()) {
        const to = this.arrow(name)?.to ?? '';
        const old = ways.get(to);
        if (!old || old.length > index + 1) ways.set(to, path.slice(0, index + 1));
      }
    }
    return [...ways.values()];
  }

  private arrow(name: string | undefined): ChartArrow | undefined {
    return this.arrows.find((one) => one.name === name);
  }

  /** As far along the path as it goes. What follows in the same breath ends it, unless the path goes there. */
  private play(from: RunState, path: readonly string[]) {
    const names: string[] = [];
    const said: Said[] = [];
    let state = from;
    for (const name of path) {
      if (name === names.at(-1)) continue;
      const arrow = this.arrow(name);
      const turns = arrow && this.person.take(state, arrow);
      const last = turns?.at(-1);
      if (!turns || !last) break;
      said.push(...turns.map(({ word, after }) => ({ word, state: after })));
      state = last.after;
      const taken = last.arrows.filter((one) => this.arrows.includes(one));
      names.push(...taken.map((one) => one.name));
      const [, passed] = taken;
      if (passed && !path.includes(passed.name)) break;
    }
    return { state, names, said };
  }
}

/** Where a hold that stands here goes on to; the tool would not go to the gauge by itself. */
function goesOn({ snapshot }: RunState): string | undefined {
  return positionOf(snapshot).phase === 'hold' ? snapshot.context.held?.to : undefined;
}

/** Answers what is asked, as one who has no trouble, until the step is come to. */
function straightOn(first: RunState, step: string): Said[] {
  const said: Said[] = [];
  for (let state = first; positionOf(state.snapshot).step !== step; ) {
    const word = straightWord(state);
    state = hear(state, heardAs(word)).state;
    said.push({ word, state });
    if (said.length > mostAnswers) throw new Error(`Step "${step}" is not come to: "${word}".`);
  }
  return said;
}

function straightWord(state: RunState): string {
  const { items, number } = saidNow(state);
  const of = (kind: BenchItem['kind']) => items.find((item) => item.kind === kind)?.phrases[0];
  const size = number?.expected ?? (number && (number.min + number.max) / 2);
  const reading = size === undefined ? undefined : size.toFixed(number?.decimals ?? 0);
  const asked = items.find(({ answer }) => answer === 'correct' || answer === 'keep');
  const onward = positionOf(state.snapshot).phase === 'hold' ? 'carry on' : 'next';
  return asked?.phrases[0] ?? of('fact') ?? of('choice') ?? reading ?? onward;
}
