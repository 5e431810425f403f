/**
 * Looks for one way to get hurt, quickly: a person in good order comes to a step, one thing goes wrong there, and they
 * answer what they are asked from then on. What it finds is real, since the job's own chart is played and the very
 * questions of the proof are asked. Finding nothing proves nothing: that is for `prove`.
 */

import {
  askedFacts,
  beginJob,
  endStep,
  type FlowEvent,
  type FlowSnapshot,
  isLoss,
  type Job,
  positionOf,
} from '../flow/index.ts';
import { sizesOf, wordsOf } from './alphabet.ts';
import { identityOf } from './identity.ts';
import { judgeMove } from './judge-move.ts';
import { type Broken, type Question, questionsAt } from './judge-state.ts';
import type { Problem } from './proof.ts';
import { type Stepper, stepperOf } from './stepper.ts';

/** Where a hunt stands, and how it came there. */
interface Trail {
  readonly snapshot: FlowSnapshot;
  readonly before?: { readonly trail: Trail; readonly event: FlowEvent };
  /** Whether the one thing has gone wrong already. */
  readonly wrong: boolean;
  /** Steps left since it went wrong. */
  readonly later: number;
}

export interface HuntLimits {
  /** Steps that are followed on behind the one where it went wrong. */
  readonly later: number;
  /** Situations looked at in one hunt. */
  readonly most: number;
}

const usual: HuntLimits = { later: 2, most: 4_000 };

/** The first broken claim near one of `steps`, with the words that lead to it. */
export function hunt(
  job: Job,
  steps: readonly string[],
  limits: HuntLimits = usual,
): Problem | undefined {
  const hunter = new Hunter(job, limits);
  for (const step of steps) {
    const found = hunter.near(step);
    if (found) return found;
  }
  return undefined;
}

class Hunter {
  private readonly step: Stepper;
  private readonly mishaps: readonly FlowEvent[];
  private readonly questions = new Map<string, readonly Question[]>();
  private readonly come = new Map<string, Trail>();

  constructor(
    private readonly job: Job,
    private readonly limits: HuntLimits,
  ) {
    this.step = stepperOf(job.machine);
    this.mishaps = mishapsOf(job);
  }

  near(step: string): Problem | undefined {
    const entry = this.comeTo(step);
    if (!entry) return undefined;
    const seen = new Set<string>();
    const open: Trail[] = [entry, ...this.backTo(step)];
    for (const trail of open) {
      if (seen.size > this.limits.most) return undefined;
      const key = `${trail.wrong} ${identityOf(trail.snapshot)}`;
      if (seen.has(key)) continue;
      seen.add(key);
      const broken = this.judged(trail);
      if (broken) return problemOf(trail, broken);
      const tried = goodEvents(this.job, trail.snapshot).map(
        (event) => [event, trail.wrong] as const,
      );
      const mishaps = trail.wrong ? [] : this.mishaps.map((event) => [event, true] as const);
      for (const [event, wrong] of [...tried, ...mishaps]) {
        const next = this.after(trail, event, wrong, step);
        if (next && next.later <= this.limits.later) open.push(next);
      }
    }
    return undefined;
  }

  private judged({ snapshot, before }: Trail): Broken | undefined {
    const move = before && judgeMove(this.job, before.trail.snapshot, before.event, snapshot);
    if (move) return move;
    const place = JSON.stringify(snapshot.value);
    const questions = this.questions.get(place) ?? questionsAt(this.job, snapshot);
    this.questions.set(place, questions);
    for (const { claim, ask } of questions) {
      const message = ask(snapshot);
      if (message !== undefined) return { claim, message };
    }
    return undefined;
  }

  private after(trail: Trail, event: FlowEvent, wrong: boolean, home: string): Trail | undefined {
    const snapshot = stepOrNothing(this.step, trail.snapshot, event);
    if (!snapshot || snapshot === trail.snapshot) return undefined;
    const from = positionOf(trail.snapshot).step;
    const { step } = positionOf(snapshot);
    // What has gone right all through is a hunt of its own at the next step.
    if (!wrong && step !== home && from !== home) return undefined;
    const later = trail.later + Number(step !== from);
    return { snapshot, before: { trail, event }, wrong, later };
  }

  /** From the next few steps behind it, back and back again until the step is come to. */
  private *backTo(step: string): Iterable<Trail> {
    const { dominator } = this.job.flow.graph;
    for (const [id, entry] of this.come) {
      const ways: string[] = [];
      for (let at = dominator.get(id); at !== undefined; at = dominator.get(at)) ways.push(at);
      const backs = ways.indexOf(step) + 1;
      let trail: Trail | undefined = { ...entry, wrong: true };
      for (let done = 0; trail && done < backs; done += 1) {
        trail = this.after(trail, { type: 'back' }, true, step);
      }
      if (trail && backs > 0) yield { ...trail, later: 0 };
    }
  }

  /** A shortest way in good order, by steps. */
  private comeTo(step: string): Trail | undefined {
    if (this.come.size === 0) {
      const snapshot = beginJob(this.job);
      this.come.set(positionOf(snapshot).step, { snapshot, wrong: false, later: 0 });
    }
    // Ways are found on the way: the map grows while it is gone through.
    if (this.come.size === 1) for (const trail of this.come.values()) this.leave(trail);
    return this.come.get(step);
  }

  private leave(from: Trail): void {
    const { step } = positionOf(from.snapshot);
    const seen = new Set<string>();
    const open: Trail[] = [from];
    for (const trail of open) {
      const key = identityOf(trail.snapshot);
      if (seen.has(key) || seen.size > this.limits.most) continue;
      seen.add(key);
      for (const event of goodEvents(this.job, trail.snapshot)) {
        const snapshot = stepOrNothing(this.step, trail.snapshot, event);
        if (!snapshot || snapshot === trail.snapshot) continue;
        const next: Trail = { snapshot, before: { trail, event }, wrong: false, later: 0 };
        const to = positionOf(snapshot).step;
        if (to === step) open.push(next);
        else if (to !== endStep && !this.come.has(to)) this.come.set(to, next);
      }
    }
  }
}

/** The first thing that is asked; where nothing is asked, every word that goes on, and a size on each side of a limit. */
function goodEvents(job: Job, snapshot: FlowSnapshot): readonly FlowEvent[] {
  const [asked] = askedFacts(job, snapshot);
  if (asked) return [{ type: 'fact', fact: asked.fact.id, state: asked.state.id }];
  const step = job.flow.steps.get(positionOf(snapshot).step);
  const sizes = sizesOf(job, step, snapshot.context.readings);
  return [
    { type: 'carry-on' },
    { type: 'next' },
    ...(step?.kind === 'choose'
      ? step.options.map((option): FlowEvent => ({ type: 'choose', option: option.id }))
      : []),
    ...sizes.map((value): FlowEvent => ({ type: 'reading', value })),
  ];
}

/** Everything that can be lost, a break after which nothing is known, and trouble with the start. */
function mishapsOf(job: Job): readonly FlowEvent[] {
  return wordsOf(job, undefined).filter((event) =>
    event.type === 'fact'
      ? isLoss(job.flow.kind, event.fact, event.state)
      : event.type === 'interrupted' || event.type === 'trouble',
  );
}

function stepOrNothing(
  step: Stepper,
  before: FlowSnapshot,
  event: FlowEvent,
): FlowSnapshot | undefined {
  try {
    return step(before, event);
  } catch {
    return undefined;
  }
}

function problemOf(trail: Trail, { claim, message }: Broken): Problem {
  const events: FlowEvent[] = [];
  for (let at = trail; at.before; at = at.before.trail) events.push(at.before.event);
  const { step } = positionOf(trail.snapshot);
  return { claim, step, message, events: events.reverse(), facts: trail.snapshot.context.facts };
}
