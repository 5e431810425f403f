/**
 * The arrows at a spot, as the chart's own data: which words are heard there, and one text for all that a word can do.
 *
 * A small step does what the arrows of its event say, of the states that stand, from the inmost out: their guards, their
 * actions, and the exits and entries on the way. All of that is data; guards and actions are the same functions in every
 * step of a machine kind. So where the text is the same, XState does the same, in whichever step, flow or job it is.
 * What an action takes from the plan of the step that it names stands in the text instead of the name.
 */

import { endStep, type FlowEvent, type Job } from '../flow/index.ts';
import type { Frame } from './frame.ts';
import type { SpotName } from './move.ts';

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

interface Ref {
  readonly type: string;
  readonly params?: Readonly<Record<string, unknown>>;
}

/** Something in an arrow that has no text: it is looked at in its own shape of step alone. */
class Wordless extends Error {}

export class Arrows {
  private readonly root: Node;
  private readonly standing = new Map<string, readonly Standing[]>();

  constructor(
    private readonly job: Job,
    private readonly frame: Frame,
  ) {
    this.root = job.machine.config as Node;
  }

  /** Whether any state that stands has an arrow for such an event: without, it is refused unseen. */
  hears(spot: SpotName, { type }: FlowEvent): boolean {
    const at = [...this.standingAt(spot).map(({ node }) => node), this.root];
    return at.some(({ on }) => on !== undefined && type in on);
  }

  /** One text for all that the event can do, or without one, that can follow by itself; none where it has no text. */
  textOf(spot: SpotName, event: FlowEvent | null): string | undefined {
    // Going back is judged by the steps between: they are no part of an arrow.
    if (event?.type === 'back' || this.root.always || this.root.on) return undefined;
    try {
      return this.told(spot, event);
    } catch (error) {
      if (error instanceof Wordless) return undefined;
      throw error;
    }
  }

  private told(spot: SpotName, event: FlowEvent | null): string {
    const inmostFirst = [...this.standingAt(spot)].reverse();
    const words = new Words(this.job, this.frame, event);
    const arrows = inmostFirst.flatMap((at) =>
      listed(event ? at.node.on?.[event.type] : at.node.always).map((arrow) =>
        this.arrowText(at, arrow, words),
      ),
    );
    const exits = words.moves ? inmostFirst.map(({ node }) => words.refs(node.exit)) : null;
    // An event that leads nowhere and leaves holds alone does the same wherever it is heard.
    const where = words.moves || !event ? [spot.inner, spot.held] : null;
    return JSON.stringify([where, exits, event?.type ?? null, arrows]);
  }

  private arrowText(at: Standing, arrow: unknown, words: Words): unknown {
    if (!isArrow(arrow)) throw new Wordless();
    const { target, guard, actions, ...rest } = arrow;
    const to = target === undefined ? null : this.targetText(at, target, words);
    if (to !== null) words.moves = true;
    return [words.refs(guard), words.refs(actions), to && [at.path.length, to], rest];
  }

  /** Where it leads, and what is done on the way in. */
  private targetText(at: Standing, target: unknown, words: Words): unknown {
    const { step, path } = this.resolved(at, target);
    const slot = this.frame.slots.indexOf(step);
    if (slot < 0) throw new Wordless();
    if (step === endStep) return [slot];
    let node = this.root.states?.[step];
    const entries: unknown[] = [words.refs(node?.entry)];
    for (let depth = 0; depth < path.length || node?.initial !== undefined; depth += 1) {
      const name: string = path[depth] ?? node?.initial ?? '';
      node = node?.states?.[name];
      if (!node) throw new Wordless();
      entries.push(name, words.refs(node.entry));
    }
    return [slot, path, entries];
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

/** Guards and actions that look at where a hold goes on, or set it. */
const aboutHolds = new Set(['holdFor', 'release', 'mayCarryOn']);

/** References to guards and actions, told without the names of steps. */
class Words {
  /** True where anything leads somewhere, or has to do with a hold. */
  moves = false;
  private readonly setsSpeed: boolean;

  constructor(
    job: Job,
    private readonly frame: Frame,
    event: FlowEvent | null,
  ) {
    const { speed } = job.flow.kind.roles;
    this.setsSpeed =
      event?.type === 'fact' && event.fact === speed.fact && event.state === speed.set;
  }

  refs(refs: unknown): readonly unknown[] {
    return listed(refs).map((one) => this.ref(one));
  }

  private ref(ref: unknown): unknown {
    if (typeof ref === 'string') {
      if (aboutHolds.has(ref)) this.moves = true;
      return ref;
    }
    if (!isRef(ref)) throw new Wordless();
    const { type, params } = ref;
    if (aboutHolds.has(type)) this.moves = true;
    // What was lost, and who holds, is told and never looked at: watched.ts leaves it out.
    if (type === 'holdFor') return [type, params?.to];
    const step = params?.step;
    if (typeof step !== 'string') return ref;
    if (type === 'setFact') return this.setsSpeed ? [type, this.frame.speedText(step)] : type;
    if (type === 'forgetOtherSpeed') return [type, this.frame.speedText(step)];
    const slot = this.frame.slots.indexOf(step);
    if (slot < 0) throw new Wordless();
    return [type, slot, this.frame.shape];
  }
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

function listed(one: unknown): readonly unknown[] {
  if (one === undefined) return [];
  return Array.isArray(one) ? one : [one];
}

function isArrow(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null;
}

function isRef(value: unknown): value is Ref {
  if (!isArrow(value) || typeof value.type !== 'string') return false;
  return value.params === undefined || isArrow(value.params);
}
