/**
 * The arrows at a spot, as the chart's own data: which words are heard there, and one text for all that a word can do.
 *
 * A small step does what the arrows of its event say, of the states that stand, from the inmost out: their guards, their
 * actions, and the exits and entries on the way. All of that is data; guards and actions are the same functions in every
 * step of a machine kind. So where the text is the same, XState does the same, in whichever step, flow or job it is.
 * What an action takes from the plan of the step that it names stands in the text instead of the name.
 */

import { endStep, type FlowEvent, type Job } from '../flow/index.ts';
import { isRecord, isRef, listed, Wordless, Words } from './arrow-words.ts';
import type { Frame } from './frame.ts';
import { insideOf, type SpotName } from './move.ts';
import type { Room } from './room.ts';
import { answering } from './watched.ts';

/** One state of the chart as it was given to XState. */
interface Node {
  readonly initial?: string;
  readonly entry?: unknown;
  readonly exit?: unknown;
  readonly always?: unknown;
  readonly on?: Readonly<Record<string, unknown>>;
  readonly states?: Readonly<Record<string, Node>>;
}

interface Standing {
  readonly node: Node;
  /** States from the step down to this one. */
  readonly path: readonly string[];
}

/** An arrow, the state that it is an arrow of, and what an answer is held against there. */
interface Drawn {
  readonly at: Standing;
  readonly arrow: unknown;
  readonly wanted: Readonly<Record<string, unknown>> | undefined;
}

interface DrawnAt {
  readonly drawn: readonly Drawn[];
  /** By which of them may be taken: the text's number, or none. */
  readonly ids: Map<number, number | null>;
}

export class Arrows {
  private readonly root: Node;
  private readonly drawn = new Map<string, DrawnAt>();
  private readonly standing = new Map<string, readonly Standing[]>();

  constructor(
    private readonly job: Job,
    private readonly frame: Frame,
    private readonly room: Room,
  ) {
    this.root = job.machine.config as Node;
  }

  /** The kinds of event that some arrow hears: others are refused unseen. */
  heardAt(spot: SpotName): ReadonlySet<string> {
    const nodes = [...this.standingAt(spot).map(({ node }) => node), this.root];
    return new Set(nodes.flatMap(({ on }) => Object.keys(on ?? {})));
  }

  /** A number for all that an event can do, or without one, that follows by itself; none where there is no text for it. */
  idOf(spot: SpotName, event: FlowEvent | null): number | undefined {
    const { drawn, ids } = this.drawnAt(spot, event?.type);
    let which = setsSpeed(this.job, event) ? 1 : 0;
    for (const one of drawn) which = which * 2 + (mayAnswer(one, event) ? 1 : 0);
    const old = ids.get(which);
    if (old !== undefined) return old ?? undefined;
    const live = drawn.filter((one) => mayAnswer(one, event));
    const text = this.textOf(spot, event, live, new Words(this.frame, setsSpeed(this.job, event)));
    const id = text === undefined ? null : this.room.ids.ofText(text);
    ids.set(which, id);
    return id ?? undefined;
  }

  /** The arrows of one kind of event, or those that follow by themselves, from the inmost out. */
  private drawnAt(spot: SpotName, type: FlowEvent['type'] | undefined): DrawnAt {
    const key = `${insideOf(spot)} ${type}`;
    const old = this.drawn.get(key);
    if (old) return old;
    const inmostFirst = [...this.standingAt(spot)].reverse();
    const drawn = inmostFirst.flatMap((at) =>
      listed(type ? at.node.on?.[type] : at.node.always).map((arrow) => drawnIn(at, arrow)),
    );
    const made = { drawn, ids: new Map<number, number | null>() };
    this.drawn.set(key, made);
    return made;
  }

  private textOf(
    spot: SpotName,
    event: FlowEvent | null,
    drawn: readonly Drawn[],
    words: Words,
  ): string | undefined {
    // Going back is judged by the steps between: they are no part of an arrow.
    if (event?.type === 'back' || this.root.always || this.root.on) return undefined;
    try {
      const arrows = drawn.map(({ at, arrow }) => this.arrowText(spot, at, arrow, words));
      // An event that leads nowhere and leaves holds alone does the same wherever it is heard.
      const where = words.moves ? this.whereText(spot, words) : null;
      return JSON.stringify([where, event?.type ?? null, arrows]);
    } catch (error) {
      if (error instanceof Wordless) return undefined;
      throw error;
    }
  }

  /** Where a hold goes on, and what is done on the way out. */
  private whereText(spot: SpotName, words: Words): unknown {
    const exits = [...this.standingAt(spot)].reverse().map(({ node }) => words.refs(node.exit));
    return [spot.held, isHold(spot), exits];
  }

  private arrowText(spot: SpotName, at: Standing, arrow: unknown, words: Words): unknown {
    if (!isRecord(arrow)) throw new Wordless();
    const { target, guard, actions, ...rest } = arrow;
    if (target !== undefined) words.moves = true;
    const to = target === undefined ? null : this.targetText(spot, at, target, words);
    return [words.refs(guard), words.refs(actions), to, rest];
  }

  /** Where it leads, and what is done on the way in. */
  private targetText(spot: SpotName, at: Standing, target: unknown, words: Words): unknown {
    const { step, path } = this.resolved(at, target);
    const slot = this.frame.slots.indexOf(step);
    if (slot < 0) throw new Wordless();
    if (step === endStep) return [slot];
    let node = this.root.states?.[step];
    const entries: unknown[] = [words.refs(node?.entry)];
    const names: string[] = [];
    while (names.length < path.length || node?.initial !== undefined) {
      const name: string = path[names.length] ?? node?.initial ?? '';
      node = node?.states?.[name];
      if (!node) throw new Wordless();
      names.push(name);
      entries.push(words.refs(node.entry));
    }
    if (slot !== 0) return [slot, names, entries];
    // How far out it goes on the way, and whether it comes to where it was.
    const common = path.findIndex((name, depth) => name !== at.path[depth]);
    const stays = names.join() === this.standingAt(spot).at(-1)?.path.join();
    return [slot, names, entries, path.length, at.path.length, common, stays];
  }

  /** As XState reads targets: "#flow.step.state", ".child", or the name of a sibling. */
  private resolved({ path }: Standing, target: unknown): { step: string; path: readonly string[] } {
    if (typeof target !== 'string') throw new Wordless();
    const own = this.frame.step.id;
    if (target.startsWith('#')) {
      const [flow, step, ...inner] = target.split('.');
      if (flow !== '#flow' || step === undefined) throw new Wordless();
      return { step, path: inner };
    }
    if (target.startsWith('.'))
      return { step: own, path: [...path, ...target.slice(1).split('.')] };
    if (path.length === 0) throw new Wordless();
    return { step: own, path: [...path.slice(0, -1), ...target.split('.')] };
  }

  /** The step and the states in it that stand, from the outmost in. */
  private standingAt({ inner }: SpotName): readonly Standing[] {
    const old = this.standing.get(inner);
    if (old) return old;
    const path = pathIn(inner);
    let node = this.root.states?.[this.frame.step.id];
    const made: Standing[] = node ? [{ node, path: [] }] : [];
    path.forEach((name, depth) => {
      node = node?.states?.[name];
      if (node) made.push({ node, path: path.slice(0, depth + 1) });
    });
    this.standing.set(inner, made);
    return made;
  }
}

function drawnIn(at: Standing, arrow: unknown): Drawn {
  const guard = isRecord(arrow) ? arrow.guard : undefined;
  const wanted = isRef(guard) && answering.has(guard.type) ? guard.params?.wanted : undefined;
  return { at, arrow, wanted: isRecord(wanted) ? wanted : undefined };
}

/** False where the answer is none that is wanted: then it never goes this way, and watched.ts makes sure of it. */
function mayAnswer({ wanted }: Drawn, event: FlowEvent | null): boolean {
  return !wanted || event?.type !== 'fact' || wanted[event.fact] === event.state;
}

function setsSpeed({ flow }: Job, event: FlowEvent | null): boolean {
  const { speed } = flow.kind.roles;
  return event?.type === 'fact' && event.fact === speed.fact && event.state === speed.set;
}

function pathIn(inner: string): readonly string[] {
  if (inner === '') return [];
  const path: string[] = [];
  let at: unknown = JSON.parse(inner);
  while (typeof at === 'object' && at !== null) {
    const [name, below] = Object.entries(at)[0] ?? [''];
    path.push(name);
    at = below;
  }
  return typeof at === 'string' ? [...path, at] : path;
}

function isHold({ inner }: SpotName): boolean {
  return inner === JSON.stringify('hold');
}
