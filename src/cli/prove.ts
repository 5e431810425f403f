/** `npm run -s prove -- [FILE…]`: proves flows. Wires only: reading, proving and telling stand elsewhere. */

import { type Card, type Flow, faultText } from '../flow/index.ts';
import type { JudgedMutant } from '../proof/index.ts';
import { readFlowAt, shippedCards, shippedFlows, shippedKinds } from './flow-files.ts';
import { scoreMutants, tellScore } from './prove-mutants.ts';
import { replayFlow } from './prove-replay.ts';
import { proveFlow } from './prove-report.ts';
import { tellReport } from './prove-told.ts';
import { type ProveWords, proveHelp, readProveWords } from './prove-words.ts';

const given = process.argv.slice(2);
const read = readProveWords(given);
if (given.includes('--help')) say(proveHelp);
else if (!read.ok) refuse(read.fault);
else run(read.words);

function run(words: ProveWords): void {
  const kinds = shippedKinds();
  const paths = words.files.length > 0 ? words.files : shippedFlows();
  for (const path of paths) {
    const file = readFlowAt(path, kinds);
    if (!file.ok) refuse(file.faults.map(faultText).join('\n'));
    else judge(path, file.flow, words);
  }
}

function judge(path: string, flow: Flow, words: ProveWords): void {
  const cards = cardsFor(flow, words.card);
  const [first] = cards;
  if (!first) refuse(`${path}: there is no card "${words.card ?? ''}" for a ${flow.kind.id}.`);
  else if (words.replay !== undefined) replay(flow, first, words.replay);
  else if (words.mutants) score(flow, first, words.json);
  else {
    const report = proveFlow(path, flow, cards);
    const told = words.json || !process.stdout.isTTY ? JSON.stringify(report) : tellReport(report);
    say(told);
    if (!report.ok) fail(1);
  }
}

function score(flow: Flow, card: Card, json: boolean): void {
  const told = scoreMutants(flow, card, process.stderr.isTTY ? tellProgress : undefined);
  say(json || !process.stdout.isTTY ? JSON.stringify(told) : tellScore(told));
  if (!told.ok) fail(1);
}

/** Minutes pass: a person sees that it goes on. */
function tellProgress(done: number, { mutant, fate }: JudgedMutant): void {
  process.stderr.write(`${String(done).padStart(4)}  ${fate.padEnd(8)} ${mutant.name}\n`);
}

function replay(flow: Flow, card: Card, line: string): void {
  const told = replayFlow(flow, card, line);
  if (told.ok) say(told.text);
  else refuse(told.fault);
}

function cardsFor(flow: Flow, id: string | undefined): readonly Card[] {
  return shippedCards().filter(
    (card) => card.machineKind === flow.kind.id && (id === undefined || card.id === id),
  );
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
