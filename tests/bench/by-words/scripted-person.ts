/** A scripted person who can take one arrow of a step's chart by saying words that count. */

import { comeBack, hear, type RunState, saidNow } from '../../../src/bench/index.ts';
import {
  type FlowEvent,
  type Job,
  limitsOf,
  planAt,
  plausibleRange,
} from '../../../src/flow/index.ts';
import { type Moves, movesOf } from '../../model/moves.ts';
import { heardAs } from '../scripted.ts';
import { type ChartArrow, placeIn, type StepChart } from './step-chart.ts';

/** One word, and all that came of it. */
export interface Turn {
  /** What was said; "interrupted" where the page was gone and somebody came back. */
  readonly word: string;
  readonly before: RunState;
  readonly after: RunState;
  /** What the chart was told, where it was told anything. */
  readonly event: FlowEvent | undefined;
  readonly line: string;
  /** Arrows of the step that were taken, in their order. */
  readonly arrows: readonly ChartArrow[];
}

const mostWords = 30;

/**
 * A person in one step. The bench is pure, so what a word does is asked once of each situation: paths that meet go on
 * from the very same state.
 */
export class Person {
  private readonly situations = new Map<string, RunState>();
  private readonly turns = new Map<RunState, Map<string, Turn>>();
  private readonly takes = new Map<RunState, Map<string, readonly Turn[] | undefined>>();
  private readonly moves: Moves;

  /** `look` is called once for each word in each situation. */
  constructor(
    private readonly job: Job,
    readonly chart: StepChart,
    private readonly look: (turn: Turn) => void = () => {},
  ) {
    this.moves = movesOf(job.machine);
  }

  /** The one state that stands for all that are like it. */
  standing(state: RunState): RunState {
    if (state.job !== this.job) throw new Error('The numbers of the job were changed on a walk.');
    const key = situationOf(state);
    const known = this.situations.get(key);
    if (!known) this.situations.set(key, state);
    return known ?? state;
  }

  place(state: RunState): string {
    return placeIn(state.snapshot, this.chart.step);
  }

  says(state: RunState, word: string): Turn {
    return this.turn(state, word, () => hear(state, heardAs(word)));
  }

  /** The words that take the arrow, those that answer what is asked before it included; undefined when none does. */
  take(state: RunState, arrow: ChartArrow): readonly Turn[] | undefined {
    const known = this.takes.get(state) ?? new Map<string, readonly Turn[] | undefined>();
    this.takes.set(state, known);
    if (!known.has(arrow.name)) known.set(arrow.name, this.tries(state, arrow));
    return known.get(arrow.name);
  }

  private tries(state: RunState, arrow: ChartArrow): readonly Turn[] | undefined {
    const said: Turn[] = [];
    for (let at = state; said.length < mostWords; ) {
      const direct = this.directly(at, arrow);
      if (direct) return [...said, ...direct];
      const asked = saidNow(at).items.find((item) => item.kind === 'fact');
      if (!asked) return undefined;
      const turn = this.says(at, asked.phrases[0] ?? '');
      said.push(turn);
      if (isTaken(turn, arrow)) return said;
      if (this.place(turn.after) !== arrow.from || turn.after === at) return undefined;
      at = turn.after;
    }
    return undefined;
  }

  private directly(state: RunState, arrow: ChartArrow): readonly Turn[] | undefined {
    if (arrow.event === 'interrupted') return [this.comesBack(state)];
    if (arrow.event === 'reading') return this.readsOff(state, arrow);
    for (const word of wordsFor(state, arrow)) {
      const turn = this.says(state, word);
      if (isTaken(turn, arrow)) return [turn];
    }
    return undefined;
  }

  private comesBack(state: RunState): Turn {
    return this.turn(state, 'interrupted', () => comeBack(state, 3_000));
  }

  private readsOff(state: RunState, arrow: ChartArrow): readonly Turn[] | undefined {
    const value = valueFor(state, arrow.guard);
    if (value === undefined) return undefined;
    const read = this.says(state, String(value));
    const answer = saidNow(read.after).items.find(
      (item) => item.answer === 'correct' || item.answer === 'keep',
    );
    const kept = answer && this.says(read.after, answer.phrases[0] ?? '');
    return kept && isTaken(kept, arrow) ? [read, kept] : undefined;
  }

  private turn(before: RunState, word: string, make: () => ReturnType<typeof hear>): Turn {
    const known = this.turns.get(before) ?? new Map<string, Turn>();
    this.turns.set(before, known);
    const old = known.get(word);
    if (old) return old;
    const { state, effects } = make();
    const event = effects.flatMap((effect) =>
      effect.kind === 'append' && effect.entry.outcome === 'moved' ? [effect.entry.event] : [],
    )[0] as FlowEvent | undefined;
    const moves = event ? this.moves(before.snapshot, event) : [];
    const turn = {
      word,
      before,
      after: this.standing(state),
      event,
      line: effects.flatMap((effect) => (effect.kind === 'say' ? [effect.line] : [])).join(' '),
      arrows: moves.flatMap((move) => this.chart.named(move) ?? []),
    };
    known.set(word, turn);
    this.look(turn);
    return turn;
  }
}

/** All that a word of a walk looks at. Not the number of the next entry, nor what "repeat" and "wrong" would say. */
function situationOf(state: RunState): string {
  const { snapshot, talk, readings, undo, question, cutShows } = state;
  const { value, context } = snapshot;
  const said = [talk.value, talk.context, question];
  return JSON.stringify([value, context, said, readings, cutShows, !undo]);
}

/** An arrow with a target is the first that was taken; one without is the word's own. */
function isTaken({ arrows }: Turn, arrow: ChartArrow): boolean {
  return arrows.find((one) => one.to !== one.from || one === arrow) === arrow;
}

/** Words of the said list that could take this arrow. */
function wordsFor(state: RunState, { event, guard, params }: ChartArrow): readonly string[] {
  const { power } = state.job.flow.kind.roles;
  return saidNow(state)
    .items.filter(({ kind, event: own }) => {
      if (!own || own.type !== (event === 'always' ? 'fact' : event)) return false;
      if (own.type === 'trouble') return own.walk === params.walk;
      if (own.type === 'choose') return own.option === params.option;
      if (own.type !== 'fact') return true;
      const isPower = own.fact === power.fact && own.state === power.on;
      // By itself an arrow is taken after a loss, but for the one that opens the gate: that follows the last answer.
      if (event === 'always') return kind === 'loss' && (isPower || !guard.startsWith('power'));
      return kind === (guard === 'loses' ? 'loss' : 'fact');
    })
    .map(({ phrases }) => phrases[0] ?? '');
}

function valueFor(state: RunState, guard: string): number | undefined {
  const step = planAt(state.job, state.snapshot)?.step;
  const number = saidNow(state).number;
  if (!step || !number) return undefined;
  const { readings } = state.snapshot.context;
  const range = plausibleRange(step, state.job.numbers, readings);
  if (!range) return undefined;
  if (step.kind !== 'inspect' && step.kind !== 'passes') {
    return round(number.expected ?? (range.lower + range.upper) / 2, number.decimals);
  }
  const limits = limitsOf(step, state.job.numbers, readings);
  if (!limits) return undefined;
  const clear = 20 * 10 ** -number.decimals;
  const large = guard === 'rework' ? step.side === 'outside' : step.side === 'inside';
  if (guard === 'within') return round((limits.lower + limits.upper) / 2, number.decimals);
  return round(large ? limits.upper + clear : limits.lower - clear, number.decimals);
}

function round(value: number, decimals: number): number {
  return Number(value.toFixed(decimals));
}
