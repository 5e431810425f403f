/** Asks every claim of a finished walk: of each step, of its sentences, and of the whole. */

import { endStep, type FlowEvent, type FlowSnapshot, type Job, type Step } from '../flow/index.ts';
import { type Backwards, goodRows } from './backwards.ts';
import { judgeLoops, judgeReach, type Way } from './judge-graph.ts';
import { judgePlans, waysIntoItself } from './judge-plans.ts';
import {
  askedAt,
  type JudgedStep,
  type Judging,
  judgeStep,
  type StepArrow,
  type StepFinding,
} from './judge-step.ts';
import { type TextQuestion, textQuestions } from './judge-texts.ts';
import type { Spot } from './spot.ts';
import { type SaidTrees, standingKey } from './step-room.ts';
import type { StepWalk } from './step-walk.ts';
import { explore } from './tree.ts';
import { noRows, type ValueSet } from './value-sets.ts';
import type { Place, Walk } from './walk.ts';

/** A broken claim: for these rows of a place, or for a move from there, or for a step of the flow. */
export interface Finding {
  readonly claim: string;
  readonly step: string;
  readonly at?: {
    readonly place: Place;
    readonly rows: ValueSet;
    readonly event: FlowEvent | null;
  };
  /** For what needs no path. */
  readonly message?: string;
}

type Good = ReadonlyMap<string, ReadonlyMap<Spot, ValueSet>>;

export function judgeWalk(walk: Walk): readonly Finding[] {
  const judging: Judging = walk;
  const judged = new Map<string, JudgedStep>();
  const findings: Finding[] = [];
  const texts = textsKey(walk.job);
  for (const [step, { walk: inside }] of walk.stands) {
    const rows = walk.rowsIn(step);
    if (rows.size === 0) continue;
    const one = judgeStep(inside, rows, judging);
    judged.set(step, one);
    const said = saidIn(inside, rows, judging, texts);
    for (const finding of [...one.findings, ...said]) findings.push(placed(walk, step, finding));
  }
  for (const [spot, rows] of walk.end.rows) {
    const asked = askedAt(undefined, spot, rows, judging);
    findings.push(...asked.map((finding) => placed(walk, endStep, finding)));
  }
  return oneEach(walk, [...findings, ...judgeWhole(walk, judged)]);
}

function placed(walk: Walk, step: string, { claim, spot, rows, event }: StepFinding): Finding {
  return { claim, step, at: { place: walk.place(step, spot), rows, event } };
}

/** All that a sentence can be filled in with. */
function textsKey({ flow, card, numbers }: Job): string {
  const { workings, steps } = flow.file;
  const readings = steps.map((step) => ('reading' in step ? step.reading : null));
  return JSON.stringify([workings, readings, card, numbers.inputs, numbers.running]);
}

/** Sentences are no part of a step's shape: what was seen of them is kept by themselves. */
function saidIn(
  walk: StepWalk,
  rows: ReadonlyMap<Spot, ValueSet>,
  judging: Judging,
  texts: string,
): readonly StepFinding[] {
  const { step } = walk.frame;
  if (!hasValues(step)) return [];
  const id = judging.room.ids.ofText(texts);
  const about = `${id} ${JSON.stringify(step)}`;
  const key = `${standingKey(rows)} ${about}`;
  const old = walk.home.texts.get(key);
  if (old) return old;
  const said = walk.home.saidTrees(about);
  const made = [...rows].flatMap(([spot, some]) =>
    spot.rests ? saidAt(walk, spot, some, judging, said) : [],
  );
  walk.home.texts.set(key, made);
  return made;
}

/** Only sentences with a value in them, and figures, can lack one. */
function hasValues(step: Step): boolean {
  const { say, long, short, why, cautions, remedies, figures } = step;
  const texts = [say, long ?? '', short ?? '', why ?? '', ...cautions, ...Object.values(remedies)];
  const numbers = 'speed' in step || 'lower' in step || figures.length > 0;
  return numbers || texts.some((text) => text.includes('{'));
}

function saidAt(
  walk: StepWalk,
  spot: Spot,
  rows: ValueSet,
  { job, room, player }: Judging,
  { trees, asked }: SaidTrees,
): readonly StepFinding[] {
  const findings: StepFinding[] = [];
  let made: readonly TextQuestion[] | undefined;
  const questions = () => {
    made ??= textQuestions(job, player.at(walk.frame, spot));
    return made;
  };
  const names = asked.get(spot) ?? questions().map(({ claim, about }) => ({ claim, about }));
  asked.set(spot, names);
  names.forEach(({ claim, about }, index) => {
    const tree = trees.get(about) ?? {};
    trees.set(about, tree);
    const isBad = (seen: FlowSnapshot) => questions()[index]?.ask(seen) !== undefined;
    explore(tree, rows, {
      sets: room.sets,
      names: walk.frame,
      run: (look) => player.ask(walk.frame, spot, isBad, look),
      dull: (bad) => !bad,
      visit: (_, some) => findings.push({ claim, spot, rows: some, event: null }),
    });
  });
  return findings;
}

const goesOn = ({ onward }: StepArrow) => onward;

/** Whence the job can be brought to its end, by going on. */
const ending: Backwards = {
  name: 'end',
  counts: goesOn,
  isGood: () => false,
  leaves: true,
};

/** Whence a hold goes on in the same step. */
const going: Backwards = {
  name: 'hold',
  counts: goesOn,
  isGood: (spot) => spot.rests && spot.phase !== 'hold',
  leaves: false,
};

/** Whence what follows by itself comes to rest. */
const resting: Backwards = {
  name: 'rest',
  counts: ({ said }) => said.event === null,
  isGood: (spot) => spot.rests,
  leaves: true,
};

function judgeWhole(walk: Walk, judged: ReadonlyMap<string, JudgedStep>): readonly Finding[] {
  const reached = new Set(
    [...judged.keys()].filter((step) => [...walk.rowsIn(step).keys()].some(({ rests }) => rests)),
  );
  const ways = [...waysOf(walk, judged), ...waysIntoItself(walk.job)];
  return [
    ...judgePlans(walk.job),
    ...judgeReach(walk.job, reached),
    ...judgeLoops(walk.job, ways),
    ...unsettled(walk, judged, goodRows(walk, judged, resting)),
    ...left(walk, goodRows(walk, judged, ending), 'FORMAT-END', ({ rests }) => rests),
    ...left(
      walk,
      goodRows(walk, judged, going),
      'FORMAT-HOLD',
      ({ rests, phase }) => rests && phase === 'hold',
    ),
  ];
}

/** Spots with rows that are not good. */
function left(
  walk: Walk,
  good: Good,
  claim: string,
  asked: (spot: Spot) => boolean,
): readonly Finding[] {
  return [...good].flatMap(([step, spots]) =>
    [...walk.rowsIn(step)].flatMap(([spot, all]) => {
      const rows = asked(spot) ? walk.sets.minus(all, spots.get(spot) ?? noRows) : noRows;
      return rows === noRows ? [] : [placed(walk, step, { claim, spot, rows, event: null })];
    }),
  );
}

/** An event whose small steps never come to rest is never answered. */
function unsettled(
  walk: Walk,
  judged: ReadonlyMap<string, JudgedStep>,
  good: Good,
): readonly Finding[] {
  const bad = left(walk, good, 'FORMAT-SETTLES', ({ rests }) => !rests);
  if (bad.length === 0) return [];
  const rowsAt = new Map(bad.map(({ at }) => [at?.place, at?.rows ?? noRows]));
  return [...judged].flatMap(([step, { arrows }]) =>
    arrows.flatMap(({ from, said, rows }) => {
      const { event } = said;
      if (!event) return [];
      const into = walk
        .arrows(walk.place(step, from), said, rows)
        .map(({ to, rows: some, puts }) =>
          walk.sets.comingInto(some, rowsAt.get(to) ?? noRows, puts),
        )
        .reduce((sum, some) => walk.sets.union(sum, some), noRows);
      if (into === noRows) return [];
      return [placed(walk, step, { claim: 'FORMAT-SETTLES', spot: from, rows: into, event })];
    }),
  );
}

function waysOf(walk: Walk, judged: ReadonlyMap<string, JudgedStep>): readonly Way[] {
  return [...judged].flatMap(([from, { ways }]) =>
    ways.map(({ slot, lost }) => {
      const to = walk.stands.get(from)?.walk.frame.slots[slot] ?? endStep;
      return { from, to, lost };
    }),
  );
}

/** One for each claim, place and word; what several questions found there is one set, so that the nearest is told. */
function oneEach(walk: Walk, findings: readonly Finding[]): readonly Finding[] {
  const first = new Map<string, Finding>();
  for (const finding of findings) {
    const { claim, step, at } = finding;
    const key = `${claim} ${step} ${at?.place.spot.inside} ${JSON.stringify(at?.event ?? null)}`;
    const old = first.get(key);
    first.set(key, old ? joined(walk, old, finding) : finding);
  }
  return [...first.values()];
}

function joined({ sets }: Walk, one: Finding, other: Finding): Finding {
  if (!one.at || !other.at) return one;
  return { ...one, at: { ...one.at, rows: sets.union(one.at.rows, other.at.rows) } };
}
