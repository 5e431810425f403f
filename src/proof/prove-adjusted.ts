/**
 * Proves a job also for the numbers that may come into it: other inputs from the beginning, and numbers that are worked
 * out anew in the middle of a run ("carbide", "running four hundred and sixty").
 *
 * A size that is given to a job does not change in it: for both its ends the job is proved by itself. A choice and a
 * running speed may change at any moment. Each set of numbers gives a job of its own, with its own chart. What was said so far is carried over: so every row that
 * the one job can stand at is put where the other stands, as `adjustJob` puts it, and walked on from there. This is done
 * to and fro between all of them until nothing new comes, so that any number of changes in a row is covered. The rows of
 * all jobs are rows of one room, since readings and facts are the same; that is what makes it cheap.
 */

import {
  type Card,
  compileJob,
  constantInBase,
  type Flow,
  type FlowInput,
  type Job,
  type JobInputs,
} from '../flow/index.ts';
import type { Quantity } from '../trade/index.ts';
import { carryOver } from './carry-over.ts';
import { judgeWalk } from './judge-walk.ts';
import { Memory } from './memory.ts';
import type { Verdict } from './proof.ts';
import { gaveUp } from './prove.ts';
import { speedLimitOf, turnsAt } from './speed-limit.ts';
import { plainSpeeds } from './speeds.ts';
import { Walk } from './walk.ts';

/** One set of numbers that was tried. */
export interface TriedNumbers {
  /** "bar-diameter 12 mm", "tool carbide", "speed running 460"; empty for what the flow proposes. */
  readonly name: string;
  /** Why the job cannot begin with them; a refused job needs no proof. */
  readonly refused?: string;
  /** It may come in the middle of a run. */
  readonly anytime: boolean;
}

export interface AdjustedProof {
  readonly verdict: Verdict;
  readonly reason?: string;
  readonly tried: readonly TriedNumbers[];
  readonly problems: readonly {
    readonly claim: string;
    readonly step: string;
    readonly numbers: string;
  }[];
}

interface Variant {
  readonly name: string;
  readonly job: Job;
  /** It may come in the middle of a run. */
  readonly anytime: boolean;
  /** The speed that runs, where it is another than the one worked out. */
  readonly speed?: number;
}

/** Walks all of them together. `most`: nodes of sets. */
export function proveAdjusted(
  flow: Flow,
  card: Card,
  memory = new Memory(),
  most = 2_000_000,
): AdjustedProof {
  const { variants, tried } = variantsOf(flow, card);
  try {
    const walks = variants.map((variant) => ({
      ...variant,
      walk: new Walk(variant.job, memory, { nodes: most }, {}, plainSpeeds),
    }));
    for (const { walk } of walks) walk.run();
    const changing = walks.filter(({ anytime }) => anytime);
    for (let moved = true; moved; ) {
      moved = false;
      for (const from of changing) {
        for (const to of changing) {
          if (to === from || !carryOver(from.walk, to.walk, to.speed)) continue;
          to.walk.run();
          moved = true;
        }
      }
    }
    const problems = walks.flatMap(({ name, walk }) =>
      judgeWalk(walk).map(({ claim, step }) => ({ claim, step, numbers: name })),
    );
    return { verdict: problems.length > 0 ? 'broken' : 'proved', tried, problems };
  } catch (error) {
    return { ...gaveUp(error, flow.language), tried, problems: [] };
  }
}

function variantsOf(flow: Flow, card: Card): { variants: Variant[]; tried: TriedNumbers[] } {
  const variants: Variant[] = [];
  const tried: TriedNumbers[] = [];
  const add = (
    name: string,
    anytime: boolean,
    inputs: JobInputs,
    running: Record<string, number> = {},
  ) => {
    const made = compileJob(flow, card, inputs, running);
    if (!made.ok) {
      tried.push({ name, anytime, refused: made.faults.join(' ') });
      return;
    }
    const [speed] = Object.values(running);
    variants.push({ name, job: made.job, anytime, ...(speed === undefined ? {} : { speed }) });
    tried.push({ name, anytime });
  };
  add('', true, {});
  for (const input of flow.file.inputs) {
    for (const [name, value] of endsOf(input)) add(name, 'options' in input, { [input.id]: value });
  }
  const [proposed] = variants;
  for (const working of speedWorkings(flow)) {
    for (const speed of proposed ? speedsOf(proposed.job, working) : []) {
      add(`${working} running ${speed}`, true, {}, { [working]: speed });
    }
  }
  return { variants, tried };
}

/** Both ends of what a number may be, in base units, and every choice. */
function endsOf(input: FlowInput): readonly (readonly [name: string, value: number | string])[] {
  if ('options' in input) return input.options.map((one) => [`${input.id} ${one}`, one] as const);
  return [input.min, input.max].map(
    (end) =>
      [
        `${input.id} ${end} ${input.unit}`,
        constantInBase(end, input.unit, input.quantity as Quantity),
      ] as const,
  );
}

/** The workings that a speed may be set for by saying what runs. */
function speedWorkings(flow: Flow): readonly string[] {
  const found = flow.file.steps.flatMap((step) =>
    'speed' in step && 'working' in step.speed && step.speed.part === undefined
      ? [step.speed.working]
      : [],
  );
  return [...new Set(found)];
}

/** The slowest and the fastest that the card has and every step of that speed allows, as the words for a running speed do. */
function speedsOf({ flow, card, numbers }: Job, working: string): readonly number[] {
  const { speeds } = card.values;
  const steps = flow.file.steps.filter((step) => turnsAt(step, working));
  const most = Math.min(...steps.map((step) => speedLimitOf(step, numbers, card)));
  const all = (Array.isArray(speeds) ? (speeds as readonly number[]) : []).filter(
    (speed) => speed <= most,
  );
  return all.length > 0 ? [Math.min(...all), Math.max(...all)] : [];
}
