/** Proves one flow with every machine card of its kind, and puts the outcome into one row. */

import { type Card, compileJob, type Flow, type Job } from '../flow/index.ts';
import {
  type Claim,
  type Counted,
  claimNamed,
  claimsOf,
  heardClaim,
  Memory,
  type Problem,
  type Proof,
  prove,
  replayLine,
  toldAs,
  type Verdict,
} from '../proof/index.ts';
import { unpronounced } from './prove-pronunciation.ts';

export interface ReportedProblem {
  readonly kind: 'hazard' | 'format' | 'job';
  readonly claim: string;
  readonly sentence: string;
  readonly step: string;
  readonly message: string;
  readonly card: string;
  /** The shortest way there, turn by turn: "you: next", "bench: …". */
  readonly path: readonly string[];
  readonly facts?: Readonly<Record<string, string>>;
  /** One line to paste. */
  readonly replay?: string;
}

export interface ProveReport {
  readonly flow: string;
  readonly ok: boolean;
  readonly verdict: Verdict;
  readonly reason?: string;
  readonly cards: readonly string[];
  readonly states: number;
  readonly transitions: number;
  /** Hazards checked. */
  readonly hazards: readonly string[];
  /** `holds` is null where the walk did not come to its end: nothing is said then. */
  readonly claims: readonly (Claim & { readonly holds: boolean | null })[];
  readonly coverage: {
    readonly steps: number;
    readonly ofSteps: number;
    readonly places: number;
    /** Of the charts of all steps, with each card; none where there was no walk to its end. */
    readonly cards: readonly CardCoverage[];
  };
  /** What the verdict covers, and what it does not, in sentences. */
  readonly covers: readonly string[];
  readonly problems: readonly ReportedProblem[];
  /** For the proofs alone. */
  readonly ms: number;
}

/** Each as what was walked of what the chart has: [354, 354]. What is left nothing that is said or happens brings about. */
export interface CardCoverage {
  readonly card: string;
  readonly states: Pair;
  readonly transitions: Pair;
  /** Two transitions in a row, inside one step. */
  readonly pairs: Pair;
  /** Ways through the chart of a step on which no state comes twice. */
  readonly paths: Pair;
  /** Transitions walked, of all. */
  readonly percent: number;
  /** Steps with more paths than are looked at: theirs count as not walked. */
  readonly uncounted: readonly string[];
}

type Pair = readonly [walked: number, of: number];

/** `path` is the flow's file as it was given, for the line to paste. `memory` may be kept over several flows. */
export function proveFlow(
  path: string,
  flow: Flow,
  cards: readonly Card[],
  memory = new Memory(),
): ProveReport {
  const begun = performance.now();
  const outcomes = cards.map((card) => proveWith(path, flow, card, memory));
  const ms = Math.round((performance.now() - begun) * 10) / 10;
  const proofs = outcomes.flatMap(({ proof }) => (proof ? [proof] : []));
  const worst = worstOf(proofs);
  const unheard = unpronounced(flow, cards);
  const problems = [
    ...outcomes.flatMap((outcome) => outcome.problems),
    ...unheard.map((word) => unheardProblem(word, cards)),
  ];
  const verdict = problems.length > 0 ? 'broken' : (worst?.verdict ?? 'too-large');
  const unreached = new Set(
    problems.filter(({ claim }) => claim === 'FORMAT-REACH').map(({ step }) => step),
  );
  const ofSteps = flow.file.steps.length;
  return {
    flow: flow.file.id,
    ok: verdict === 'proved',
    verdict,
    ...(worst?.reason === undefined ? {} : { reason: worst.reason }),
    cards: cards.map((card) => card.id),
    states: sum(proofs, (proof) => proof.states),
    transitions: sum(proofs, (proof) => proof.transitions),
    hazards: flow.kind.hazards.map((hazard) => hazard.id),
    claims: [
      ...claimsFrom(outcomes).map((claim) => ({ ...claim, holds: holds(claim, outcomes) })),
      { ...heardClaim, holds: unheard.length === 0 },
    ],
    coverage: {
      steps: proofs.length > 0 && proofs.every(isWalked) ? ofSteps - unreached.size : 0,
      ofSteps,
      places: Math.max(0, ...proofs.map((proof) => proof.places)),
      cards: outcomes.flatMap(coverageWith),
    },
    covers: coversOf(flow, cards),
    problems,
    ms,
  };
}

interface Outcome {
  readonly job?: Job;
  readonly proof?: Proof;
  readonly problems: readonly ReportedProblem[];
}

function coverageWith({ job, proof }: Outcome): readonly CardCoverage[] {
  if (!job || !proof?.coverage) return [];
  const { states, transitions, pairs, paths, uncounted } = proof.coverage();
  const pair = ({ walked, of }: Counted): Pair => [walked, of];
  const percent = Math.floor((1000 * transitions.walked) / transitions.of) / 10;
  return [
    {
      card: job.card.id,
      states: pair(states),
      transitions: pair(transitions),
      pairs: pair(pairs),
      paths: pair(paths),
      percent,
      uncounted,
    },
  ];
}

function coversOf({ file }: Flow, cards: readonly Card[]): readonly string[] {
  const inputs = file.inputs.map((input) =>
    'options' in input
      ? `${input.id} ${input.default}`
      : `${input.id} ${input.default} ${input.unit}`,
  );
  const taken = inputs.length > 0 ? `as proposed: ${inputs.join(', ')}` : 'there are none';
  return [
    `Machine cards: ${cards.map(({ id }) => id).join(', ')}.`,
    `Inputs: ${taken}. Other values, and changes in a run, are walked by --inputs.`,
    'Readings: on every limit and just beside it on both sides, and what is no size.',
    'Words: everything that can be said, reported as lost or regained, at any moment; breaks, and every fault walk.',
  ];
}

function claimsFrom(outcomes: readonly Outcome[]): readonly Claim[] {
  const job = outcomes.find((outcome) => outcome.job)?.job;
  return job ? claimsOf(job) : [];
}

function holds({ id }: Claim, outcomes: readonly Outcome[]): boolean | null {
  if (outcomes.some(({ problems }) => problems.some(({ claim }) => claim === id))) return false;
  return outcomes.every(({ proof }) => proof && isWalked(proof)) ? true : null;
}

/** True where the walk came to its end. */
function isWalked({ verdict }: Proof): boolean {
  return verdict === 'proved' || verdict === 'broken';
}

function proveWith(path: string, flow: Flow, card: Card, memory: Memory): Outcome {
  const compiled = compileJob(flow, card);
  if (!compiled.ok) return { problems: [jobProblem(card, compiled.faults)] };
  const { job } = compiled;
  const proof = prove(job, { memory });
  return {
    job,
    proof,
    problems: proof.problems.map((problem) => reported(path, job, problem)),
  };
}

/** The numbers of the flow cannot be worked out on this machine: there is no job to prove. */
function jobProblem(card: Card, faults: readonly string[]): ReportedProblem {
  return {
    kind: 'job',
    claim: 'FORMAT-SPOKEN',
    sentence: 'Every value is worked out before it is spoken or shown.',
    step: '',
    message: faults.join(' '),
    card: card.id,
    path: [],
  };
}

/** No way leads to it: the word is there, and the page's own ear will never hear it. */
function unheardProblem(word: string, [card]: readonly Card[]): ReportedProblem {
  return {
    kind: 'format',
    claim: heardClaim.id,
    sentence: heardClaim.sentence,
    step: '',
    message: `The ear does not know how "${word}" sounds. Add it to "pronunciations", like "thou": ["TH AW"].`,
    card: card?.id ?? '',
    path: [],
  };
}

function reported(path: string, job: Job, problem: Problem): ReportedProblem {
  const { claim, step, message, events, facts } = problem;
  const told = events ? toldAs(job, events).map(({ who, says }) => `${who}: ${says}`) : [];
  const line = events && replayLine(job, events);
  return {
    kind: claim.startsWith('FORMAT-') ? 'format' : 'hazard',
    claim,
    sentence: claimNamed(job, claim).sentence,
    step,
    message,
    card: job.card.id,
    path: told,
    ...(facts ? { facts } : {}),
    ...(line === undefined
      ? {}
      : {
          replay: `npm run -s prove -- ${inShell(path)} --card ${job.card.id} --replay "${line}"`,
        }),
  };
}

/** A path with a blank or a sign that shells read is one word in quotes. */
function inShell(path: string): string {
  return /^[\w./-]+$/.test(path) ? path : `'${path.replaceAll("'", "'\\''")}'`;
}

const order: readonly Verdict[] = ['broken', 'unseeable', 'too-large', 'proved'];

function worstOf(proofs: readonly Proof[]): Proof | undefined {
  return [...proofs].sort((a, b) => order.indexOf(a.verdict) - order.indexOf(b.verdict))[0];
}

function sum(proofs: readonly Proof[], of: (proof: Proof) => number): number {
  return proofs.reduce((total, proof) => total + of(proof), 0);
}
