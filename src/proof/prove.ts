/** Proves one job: walks it by sets, judges the claims, and tells the shortest way to each that is broken. */

import { beginJob, endStep, type FlowEvent, type Job } from '../flow/index.ts';
import { type Language, wordedIn } from '../texts/index.ts';
import { claimNamed } from './claims.ts';
import { coverageOf } from './coverage.ts';
import { judgeMove } from './judge-move.ts';
import { judgeReleases } from './judge-plans.ts';
import { questionsAt } from './judge-state.ts';
import { textsOfView } from './judge-texts.ts';
import { type Finding, judgeWalk } from './judge-walk.ts';
import { Memory } from './memory.ts';
import { neverBegins, whyNeverBegins } from './never-begins.ts';
import type { Problem, Proof, Verdict, Watch } from './proof.ts';
import { shortestPaths } from './shortest.ts';
import { stepperOf } from './stepper.ts';
import { tell } from './tell.ts';
import { noRows } from './value-sets.ts';
import { Walk } from './walk.ts';
import { NoVerdict, Unseeable } from './walk-limits.ts';

export interface ProveOptions extends Watch {
  /** Kept by whoever proves again and again, such as the Desk after each edit. */
  readonly memory?: Memory;
  /** Nodes of sets; the default is about 200 MB. */
  readonly nodes?: number;
  /** False where the verdict is enough: paths are not looked for. */
  readonly paths?: boolean;
  /** Steps that an instructor must release, whatever the flow itself says. */
  readonly releases?: readonly string[];
}

const mostNodes = 1_000_000;

/** Throws `Cancelled` when `cancelled` says so; everything else is a verdict. */
export function prove(job: Job, options: ProveOptions = {}): Proof {
  const never = whyNeverBegins(job);
  if (never !== undefined) return neverBegins(job, never);
  try {
    const walk = new Walk(
      job,
      options.memory ?? new Memory(),
      { nodes: options.nodes ?? mostNodes },
      options,
    );
    walk.run();
    return judged(walk, options);
  } catch (error) {
    return { ...gaveUp(error, job.flow.language), ...none };
  }
}

const none = { problems: [], places: 0, states: 0, transitions: 0 } as const;

/**
 * The verdict of a walk that came to no end, and why, in the language of the flow. An engine that has no room left says
 * so by a RangeError of its own. Throws again what is neither.
 */
export function gaveUp(error: unknown, language: Language): { verdict: Verdict; reason: string } {
  if (error instanceof NoVerdict) {
    const verdict = error instanceof Unseeable ? 'unseeable' : 'too-large';
    return { verdict, reason: wordedIn(language, error.said) };
  }
  if (error instanceof RangeError) return { verdict: 'too-large', reason: error.message };
  throw error;
}

function judged(walk: Walk, { paths: wanted = true, releases = [] }: ProveOptions): Proof {
  const findings: readonly Finding[] = [...judgeWalk(walk), ...judgeReleases(walk.job, releases)];
  const paths = wanted ? shortestPaths(walk, findings) : new Map<Finding, readonly FlowEvent[]>();
  const problems = findings.map((finding) => problemOf(walk.job, finding, paths.get(finding)));
  const { places, states } = countsOf(walk);
  return {
    verdict: problems.length > 0 ? 'broken' : 'proved',
    problems: nearest(problems),
    places,
    states,
    transitions: walk.player.runs,
    coverage: () => coverageOf(walk),
  };
}

function countsOf(walk: Walk): { places: number; states: number } {
  const known = new Map<number, number>();
  const steps = [...walk.stands.keys(), endStep];
  const settled = steps.flatMap((step) =>
    [...walk.rowsIn(step)].filter(([spot, rows]) => spot.rests && rows !== noRows),
  );
  const states = settled.reduce((sum, [, rows]) => sum + walk.sets.count(rows, known), 0);
  return { places: settled.length, states };
}

/** One for each claim and step: with a path where there is one. */
function nearest(problems: readonly Problem[]): readonly Problem[] {
  const kept = new Map<string, Problem>();
  for (const problem of problems) {
    const key = `${problem.claim} ${problem.step}`;
    const old = kept.get(key);
    if (!old || (!old.events && problem.events)) kept.set(key, problem);
  }
  return [...kept.values()].sort((a, b) => Number(!a.events) - Number(!b.events));
}

function problemOf(
  job: Job,
  { claim, step, message }: Finding,
  events: Problem['events'],
): Problem {
  const sentence = claimNamed(job, claim).sentence;
  if (!events) return { claim, step, message: message ?? sentence };
  const seen = replayed(job, claim, events);
  return {
    claim,
    step,
    message: seen.message ?? sentence,
    events,
    facts: seen.facts,
  };
}

/** Plays the path on the job itself: what is wrong at its end, in words. */
function replayed(job: Job, claim: string, events: readonly FlowEvent[]) {
  const step = stepperOf(job.machine);
  let before = beginJob(job);
  let message: string | undefined;
  for (const event of events) {
    try {
      const after = step(before, event);
      const broken = judgeMove(job, before, event, after);
      message = broken?.claim === claim ? broken.message : undefined;
      before = after;
    } catch (error) {
      message = error instanceof Error ? error.message : String(error);
    }
  }
  const asked = questionsAt(job, before).filter((question) => question.claim === claim);
  for (const { ask } of asked) message ??= ask(before);
  if (claim === 'FORMAT-SPOKEN') message ??= textsOfView(job, before);
  if (claim === 'FORMAT-END') {
    message ??= tell(job)`From here the job cannot be brought to its end.`;
  }
  return { message, facts: before.context.facts };
}
