/** `npm run -s prove -- [FILE…]`: proves flows. Wires only: reading, proving and telling stand elsewhere. */

import { type Card, type Flow, faultText, type MachineKind } from '../flow/index.ts';
import {
  type JudgedEdit,
  type JudgedKindMutant,
  type JudgedMutant,
  Memory,
} from '../proof/index.ts';
import { readFlowAt, shippedCards, shippedFlows, shippedKinds } from './flow-files.ts';
import { type Score, tellScore } from './mutant-score.ts';
import { reportInputs, tellInputs } from './prove-inputs.ts';
import { scoreKind } from './prove-kind-mutants.ts';
import { scoreMutants } from './prove-mutants.ts';
import { replayFlow, tellReplay } from './prove-replay.ts';
import { proveFlow } from './prove-report.ts';
import { tellReport } from './prove-told.ts';
import { type ProveWords, proveHelp, readProveWords } from './prove-words.ts';

/** One for all that the command proves. */
const memory = new Memory();
const given = process.argv.slice(2);
const read = readProveWords(given);
if (given.includes('--help')) say(proveHelp);
else if (!read.ok) refuse(read.fault);
else run(read.words);

function run(words: ProveWords): void {
  const kinds = shippedKinds();
  const edits: JudgedEdit[] = [];
  for (const path of words.files.length > 0 ? words.files : shippedFlows()) {
    const file = readFlowAt(path, kinds);
    if (!file.ok) refuse(file.faults.map(faultText).join('\n'));
    else edits.push(...judge(path, file.flow, words));
  }
  // A machine kind is judged by all its flows, not by one that happens to be named.
  if (words.files.length > 0) return;
  for (const kind of kinds.values()) {
    const own = edits.filter(({ flow }) => flow.file.machineKind === kind.id);
    if (own.length > 0) scoreOfKind(kind, own, words);
  }
}

/** Gives the edits of the flow that were judged; none but for mutants. */
function judge(path: string, flow: Flow, words: ProveWords): readonly JudgedEdit[] {
  const cards = cardsFor(flow.kind.id, words.card);
  const [first] = cards;
  if (!first) refuse(`${path}: there is no card "${words.card ?? ''}" for a ${flow.kind.id}.`);
  else if (words.replay !== undefined) replay(flow, first, words.replay, words.json);
  else if (words.inputs) inputs(flow, cards, words.json);
  else if (words.mutants) return score(flow, first, words.json);
  else {
    const report = proveFlow(path, flow, cards, memory);
    sayEither(report, tellReport, words.json);
    if (!report.ok) fail(1);
  }
  return [];
}

function score(flow: Flow, card: Card, json: boolean): readonly JudgedEdit[] {
  const { score, edits } = scoreMutants(
    flow,
    card,
    process.stderr.isTTY ? tellProgress : undefined,
  );
  tell(score.flow, score, json);
  return edits;
}

function scoreOfKind(kind: MachineKind, edits: readonly JudgedEdit[], words: ProveWords): void {
  const [card] = cardsFor(kind.id, words.card);
  const progress = process.stderr.isTTY ? tellProgress : undefined;
  if (!card) return;
  tell(`kinds/${kind.id}`, scoreKind(kind, card, edits, progress), words.json);
}

function tell(name: string, score: Score, json: boolean): void {
  sayEither(score, (one) => tellScore(name, one), json);
  if (!score.ok) fail(1);
}

/** A minute or two passes: a person sees that it goes on. */
function tellProgress(done: number, { mutant, fate }: JudgedMutant | JudgedKindMutant): void {
  process.stderr.write(`${String(done).padStart(4)}  ${fate.padEnd(8)} ${mutant.name}\n`);
}

function inputs(flow: Flow, cards: readonly Card[], json: boolean): void {
  const report = reportInputs(flow, cards, memory);
  sayEither(report, tellInputs, json);
  if (!report.ok) fail(1);
}

function replay(flow: Flow, card: Card, line: string, json: boolean): void {
  const told = replayFlow(flow, card, line);
  if (told.ok) sayEither(told.replayed, tellReplay, json);
  else refuse(told.fault);
}

function cardsFor(kind: string, id: string | undefined): readonly Card[] {
  return shippedCards().filter(
    (card) => card.machineKind === kind && (id === undefined || card.id === id),
  );
}

/** A table for a person at a terminal, a line of JSON for everybody else. */
function sayEither<T>(outcome: T, tellIt: (outcome: T) => string, json: boolean): void {
  say(json || !process.stdout.isTTY ? JSON.stringify(outcome) : tellIt(outcome));
}

function say(text: string): void {
  process.stdout.write(`${text}\n`);
}

function refuse(text: string): void {
  process.stderr.write(`${text}\n`);
  fail(2);
}

/** The worst stays: 2 is worse than 1. */
function fail(code: number): void {
  process.exitCode = Math.max(Number(process.exitCode ?? 0), code);
}
