/** How long proofs take: shipped flows, long flows, after an edit, and against the graph library's own walk. */

import { readFileSync } from 'node:fs';
import { readFlowAt, shippedCards, shippedFlows, shippedKinds } from '../../src/cli/flow-files.ts';
import { proveFlow } from '../../src/cli/prove-report.ts';
import {
  type Card,
  compileJob,
  type Flow,
  type Job,
  type MachineKind,
  readFlow,
} from '../../src/flow/index.ts';
import { Memory, prove } from '../../src/proof/index.ts';
import { bigFlow } from '../proof/big-flow.ts';
import { againstGraph } from '../proof/graph-walk.ts';
import type { Figure } from './figure.ts';

/**
 * Times are of the processor, so that a busy machine tells nearly the same as a quiet one; of all threads together, also
 * those of the engine that compile and clean up beside the proof: so long it takes on one core. On two it takes as long as
 * the one thread that proves, since the others run beside it; on a quiet machine the clock says the same. A second thread
 * of ours would not help: it would take the core from them, and first load everything once more.
 */
export function proofFigures(): readonly Figure[] {
  const kinds = shippedKinds();
  const card = shippedCards().find((one) => one.machineKind === 'lathe');
  if (!card) throw new Error('There is no card of a lathe.');
  const at = (steps: number) => provedIn(jobOf(bigFlow(steps), kinds, card));
  const short = Math.min(at(60), at(60), at(60));
  const long = at(1000);
  const memory = process.memoryUsage().rss / 1e6;
  const flows = shipped(kinds);
  const memoryOfAll = process.memoryUsage().rss / 1e6;
  const reports = reported(kinds);
  const edits = afterEdits(kinds, card);
  const { graph, own, states } = againstGraph();
  return [
    { name: 'proof: all shipped flows, all cards, one core', value: flows.all, unit: 'ms' },
    { name: 'proof: the same, two cores', value: flows.own, unit: 'ms', target: 2000 },
    { name: 'proof: the same, by the clock', value: flows.clock, unit: 'ms' },
    { name: 'proof: the same as reports, one core', value: reports.all, unit: 'ms' },
    { name: 'proof: reports, two cores', value: reports.own, unit: 'ms' },
    { name: 'proof: 60 steps anew', value: short, unit: 'ms' },
    { name: 'proof: 60 steps after an edit, p95', value: edits.verdict, unit: 'ms', target: 100 },
    { name: 'proof: the same with its shortest path, p95', value: edits.withPath, unit: 'ms' },
    { name: 'proof: 1000 steps', value: long, unit: 'ms', target: 5000 },
    {
      name: 'proof: exponent from 60 to 1000 steps',
      value: Math.log(long / short) / Math.log(1000 / 60),
      unit: '',
      target: 1.2,
    },
    { name: `proof: adjacency map of ${states} states`, value: graph, unit: 'ms' },
    { name: 'proof: the same flow', value: own, unit: 'ms' },
    { name: 'proof: times faster than the map (20 wanted)', value: graph / own, unit: 'times' },
    { name: "proof: share of the map's time", value: own / graph, unit: '', target: 1 / 20 },
    { name: 'proof: memory after 1000 steps', value: memory, unit: 'MB', target: 300 },
    { name: 'proof: memory after all shipped', value: memoryOfAll, unit: 'MB', target: 300 },
  ];
}

/** Every shipped flow read, compiled and proved with every card that it can be run on. */
function shipped(kinds: ReadonlyMap<string, MachineKind>): Spent {
  return spent(() => {
    const memory = new Memory();
    for (const [flow, cards] of shippedPairs(kinds)) {
      for (const card of cards) {
        const compiled = compileJob(flow, card);
        if (!compiled.ok) throw new Error(compiled.faults.join(' '));
        proved(compiled.job, memory);
      }
    }
  });
}

/** The same as a report: with what was walked of every chart, and the words that no voice can say. */
function reported(kinds: ReadonlyMap<string, MachineKind>): Spent {
  return spent(() => {
    const memory = new Memory();
    for (const [flow, cards, path] of shippedPairs(kinds)) proveFlow(path, flow, cards, memory);
  });
}

function shippedPairs(
  kinds: ReadonlyMap<string, MachineKind>,
): readonly (readonly [Flow, readonly Card[], string])[] {
  return shippedFlows().map((path) => {
    const read = readFlowAt(path, kinds);
    if (!read.ok) throw new Error(`${path} cannot be read.`);
    const { flow } = read;
    return [flow, shippedCards().filter((card) => card.machineKind === flow.kind.id), path];
  });
}

function jobOf(value: unknown, kinds: ReadonlyMap<string, MachineKind>, card: Card): Job {
  const read = readFlow('big', JSON.stringify(value), kinds);
  if (!read.ok) throw new Error(read.faults[0]?.message);
  const compiled = compileJob(read.flow, card);
  if (!compiled.ok) throw new Error(compiled.faults.join(' '));
  return compiled.job;
}

function provedIn(job: Job): number {
  return timed(() => proved(job, new Memory()));
}

function proved(job: Job, memory: Memory): void {
  const { verdict, reason } = prove(job, { memory });
  if (verdict !== 'proved') throw new Error(`${verdict}: ${reason ?? ''}`);
}

/** One step is changed each time, as an author does; the memory of the proof before is kept. */
function afterEdits(kinds: ReadonlyMap<string, MachineKind>, card: Card) {
  const times = (paths: boolean) => {
    const memory = new Memory();
    prove(jobOf(bigFlow(60), kinds, card), { memory });
    return Array.from({ length: 60 }, (_, edit) => {
      const value = bigFlow(60) as { steps: Record<string, unknown>[] };
      const steps = value.steps.map((step, at) => (at === edit ? edited(step, edit) : step));
      const job = jobOf({ ...value, steps }, kinds, card);
      return timed(() => prove(job, { memory, paths }));
    });
  };
  return { verdict: p95(times(false)), withPath: p95(times(true)) };
}

/** Every edit is a new one: nothing of it can be remembered. */
function edited(step: Record<string, unknown>, edit: number): Record<string, unknown> {
  return step.kind === 'cut'
    ? { ...step, speed: { is: 700 + edit, unit: 'rpm' } }
    : { ...step, say: `Edit ${edit}.`, hands: step.hands !== true };
}

function p95(times: readonly number[]): number {
  return [...times].sort((a, b) => a - b)[Math.ceil(times.length * 0.95) - 1] ?? 0;
}

function timed(work: () => unknown): number {
  return spent(work).all;
}

/** Milliseconds: of the processor, by all threads and by this one, and of the clock. */
interface Spent {
  readonly all: number;
  readonly own: number;
  readonly clock: number;
}

function spent(work: () => unknown): Spent {
  const begun = process.cpuUsage();
  const [own, clock] = [ownTime(), performance.now()];
  work();
  const waited = performance.now() - clock;
  const { user, system } = process.cpuUsage(begun);
  const after = ownTime();
  const known = own !== undefined && after !== undefined;
  return { all: (user + system) / 1000, own: known ? after - own : waited, clock: waited };
}

/** Of this thread since it began; only Linux tells it, in hundredths of a second (proc(5), fields 14 and 15). */
function ownTime(): number | undefined {
  try {
    const stat = readFileSync('/proc/thread-self/stat', 'utf8');
    const fields = stat.slice(stat.lastIndexOf(')') + 2).split(' ');
    return (Number(fields[11]) + Number(fields[12])) * 10;
  } catch {
    return undefined;
  }
}
