/** Walks a job state by state, with no reduction: slow, plain, and the measure for the reduced walk. */

import {
  beginJob,
  endStep,
  type FlowEvent,
  type FlowSnapshot,
  type Job,
  judge,
  limitsOf,
  positionOf,
} from '../flow/index.ts';
import { eventsAt, goesOn } from './alphabet.ts';
import { identityOf } from './identity.ts';
import { judgeLoops, judgeReach, type Way } from './judge-graph.ts';
import { judgeMove } from './judge-move.ts';
import { judgePlans, waysIntoItself } from './judge-plans.ts';
import { type Question, questionsAt } from './judge-state.ts';
import { textsOfView } from './judge-texts.ts';
import { neverBegins, whyNeverBegins } from './never-begins.ts';
import type { Problem, Proof } from './proof.ts';
import { stepperOf } from './stepper.ts';
import { tell } from './tell.ts';

interface Node {
  readonly snapshot: FlowSnapshot;
  readonly from?: { readonly node: Node; readonly event: FlowEvent };
  /** Whence a person can come here by going on. */
  readonly before: Node[];
}

/** Breadth first, so that the first path to a broken claim is a shortest one. */
export function walkPlainly(job: Job, limit = 20_000): Proof {
  const never = whyNeverBegins(job);
  if (never !== undefined) return neverBegins(job, never);
  return new PlainWalk(job, limit).run();
}

class PlainWalk {
  private readonly nodes = new Map<string, Node>();
  private readonly ways = new Map<string, Way>();
  private readonly problems = new Map<string, Problem>();
  private readonly questions = new Map<string, readonly Question[]>();
  private readonly step;
  private transitions = 0;

  constructor(
    private readonly job: Job,
    private readonly limit: number,
  ) {
    this.step = stepperOf(job.machine);
  }

  run(): Proof {
    this.walk();
    if (this.nodes.size > this.limit) {
      const reason = `More than ${this.limit} situations.`;
      return {
        ...this.proof(this.problems.size > 0 ? 'broken' : 'too-large'),
        reason,
      };
    }
    this.judgeWhole();
    return this.proof(this.problems.size > 0 ? 'broken' : 'proved');
  }

  private walk(): void {
    this.node(beginJob(this.job));
    for (const node of this.nodes.values()) {
      this.judgeState(node);
      for (const event of eventsAt(this.job, node.snapshot)) {
        this.take(node, event);
      }
      if (this.nodes.size > this.limit) return;
    }
  }

  /** Where the chart goes round by itself, nothing comes of the event. */
  private take(node: Node, event: FlowEvent): void {
    const { snapshot } = node;
    let after: FlowSnapshot;
    try {
      after = this.step(snapshot, event);
    } catch (error) {
      this.complain('FORMAT-SETTLES', node, String(error), event);
      return;
    }
    if (after === snapshot) return; // refused: XState gives the very snapshot back
    this.transitions += 1;
    const broken = judgeMove(this.job, snapshot, event, after);
    if (broken) this.complain(broken.claim, node, broken.message, event);
    const { phase } = positionOf(snapshot);
    const next = this.node(after, { node, event });
    const onward = goesOn(this.job, phase, event);
    if (onward) next.before.push(node);
    this.follow(snapshot, event, onward && event.type !== 'back');
  }

  /** The ways from step to step that one event makes: its own, and those that follow by themselves. */
  private follow(snapshot: FlowSnapshot, event: FlowEvent, counts: boolean): void {
    let at = this.step.first(snapshot, event);
    if (counts) this.way(snapshot, at, isLostSize(this.job, snapshot, event));
    for (let next = this.step.follow(at); next !== at; next = this.step.follow(at)) {
      this.way(at, next, false);
      at = next;
    }
  }

  private way(before: FlowSnapshot, after: FlowSnapshot, lost: boolean): void {
    const [{ step: from }, { step: to }] = [positionOf(before), positionOf(after)];
    if (from !== to) this.ways.set(`${from} ${to} ${lost}`, { from, to, lost });
  }

  private node(snapshot: FlowSnapshot, from?: Node['from']): Node {
    const key = identityOf(snapshot);
    const old = this.nodes.get(key);
    if (old) return old;
    const node: Node = { snapshot, before: [], ...(from ? { from } : {}) };
    this.nodes.set(key, node);
    return node;
  }

  private judgeState(node: Node): void {
    const { snapshot } = node;
    const place = JSON.stringify(snapshot.value);
    const questions = this.questions.get(place) ?? questionsAt(this.job, snapshot);
    this.questions.set(place, questions);
    for (const { claim, ask } of questions) {
      const message = ask(snapshot);
      if (message !== undefined) this.complain(claim, node, message);
    }
    const text = textsOfView(this.job, snapshot);
    if (text !== undefined) this.complain('FORMAT-SPOKEN', node, text);
  }

  private judgeWhole(): void {
    const nodes = [...this.nodes.values()];
    const steps = new Set(nodes.map(({ snapshot }) => positionOf(snapshot).step));
    for (const problem of [
      ...judgePlans(this.job),
      ...judgeReach(this.job, steps),
      ...judgeLoops(this.job, [...this.ways.values(), ...waysIntoItself(this.job)]),
    ]) {
      this.problems.set(`${problem.claim} ${problem.step}`, problem);
    }
    const end = nodes.filter(({ snapshot }) => positionOf(snapshot).step === endStep);
    const good = backwards(end, () => true);
    for (const dead of nodes.filter((node) => !good.has(node))) {
      this.complain(
        'FORMAT-END',
        dead,
        tell(this.job)`From here the job cannot be brought to its end.`,
      );
    }
    this.judgeHolds(nodes);
  }

  private judgeHolds(nodes: readonly Node[]): void {
    const open = nodes.filter(({ snapshot }) => positionOf(snapshot).phase !== 'hold');
    const stepOf = (node: Node) => positionOf(node.snapshot).step;
    const good = backwards(open, (before, node) => stepOf(before) === stepOf(node));
    for (const node of nodes) {
      if (good.has(node)) continue;
      this.complain(
        'FORMAT-HOLD',
        node,
        tell(this.job)`The hold of step "${stepOf(node)}" cannot be left.`,
      );
    }
  }

  /** For each claim and step the nearest is kept. */
  private complain(claim: string, node: Node, message: string, last?: FlowEvent): void {
    const { step } = positionOf(node.snapshot);
    const key = `${claim} ${step}`;
    const events = [...pathTo(node), ...(last ? [last] : [])];
    const old = this.problems.get(key)?.events;
    if (old && old.length <= events.length) return;
    this.problems.set(key, {
      claim,
      step,
      message,
      events,
      facts: node.snapshot.context.facts,
    });
  }

  private proof(verdict: Proof['verdict']): Proof {
    const places = new Set(
      [...this.nodes.values()].map(({ snapshot }) =>
        JSON.stringify([snapshot.value, snapshot.context.held?.to]),
      ),
    );
    return {
      verdict,
      problems: [...this.problems.values()],
      places: places.size,
      states: this.nodes.size,
      transitions: this.transitions,
    };
  }
}

function pathTo(node: Node): readonly FlowEvent[] {
  const events: FlowEvent[] = [];
  for (let at = node; at.from; at = at.from.node) events.push(at.from.event);
  return events.reverse();
}

/** Everything from which one of `goals` can be come to by going on. */
function backwards(
  goals: readonly Node[],
  counts: (before: Node, node: Node) => boolean,
): ReadonlySet<Node> {
  const good = new Set(goals);
  for (const node of good) {
    for (const before of node.before) if (counts(before, node)) good.add(before);
  }
  return good;
}

/** True for a size by which the piece is lost. */
export function isLostSize(job: Job, snapshot: FlowSnapshot, event: FlowEvent): boolean {
  const step = job.flow.steps.get(positionOf(snapshot).step);
  if (event.type !== 'reading' || (step?.kind !== 'inspect' && step?.kind !== 'passes')) {
    return false;
  }
  const limits = limitsOf(step, job.numbers, snapshot.context.readings);
  return limits !== undefined && judge(event.value, limits, step.side) === 'lost';
}
