/** How long proofs take: shipped flows, long flows, after an edit, and against the graph library's own walk. */

import { getAdjacencyMap } from 'xstate/graph';
import { readFlowAt, shippedCards, shippedFlows, shippedKinds } from '../../src/cli/flow-files.ts';
import { proveFlow } from '../../src/cli/prove-report.ts';
import {
  type Card,
  compileJob,
  type FlowSnapshot,
  type Job,
  type MachineKind,
  readFlow,
} from '../../src/flow/index.ts';
import { eventsAt } from '../../src/proof/alphabet.ts';
import { identityOf } from '../../src/proof/identity.ts';
import { Memory, prove } from '../../src/proof/index.ts';
import { bigFlow } from '../proof/big-flow.ts';
import { jobOf as tinyJobOf } from '../proof/both-walks.ts';
import type { Figure } from './figure.ts';

export function proofFigures(): readonly Figure[] {
  const kinds = shippedKinds();
  const card = shippedCards().find((one) => one.machineKind === 'lathe');
  if (!card) throw new Error('There is no card of a lathe.');
  const at = (steps: number) => provedIn(jobOf(bigFlow(steps), kinds, card));
  at(60);
  const short = Math.min(at(60), at(60));
  const long = at(1000);
  return [
    {
      name: 'proof: all shipped flows, all cards',
      value: shipped(kinds),
      unit: 'ms',
      target: 2000,
    },
    {
      name: 'proof: 60 steps after an edit, p95',
      value: afterEdits(kinds, card),
      unit: 'ms',
      target: 100,
    },
    { name: 'proof: 1000 steps', value: long, unit: 'ms', target: 5000 },
    {
      name: 'proof: exponent from 60 to 1000 steps',
      value: Math.log(long / short) / Math.log(1000 / 60),
      unit: '',
      target: 1.2,
    },
    {
      name: 'proof: times faster than an adjacency map',
      value: againstGraph(),
      unit: 'times',
    },
    { name: 'proof: memory', value: process.memoryUsage().rss / 1e6, unit: 'MB', target: 300 },
  ];
}

function shipped(kinds: ReadonlyMap<string, MachineKind>): number {
  return timed(() => {
    for (const path of shippedFlows()) {
      const read = readFlowAt(path, kinds);
      if (!read.ok) continue;
      const cards = shippedCards().filter((card) => card.machineKind === read.flow.kind.id);
      proveFlow(path, read.flow, cards);
    }
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
  return timed(() => {
    const { verdict, reason } = prove(job);
    if (verdict !== 'proved') throw new Error(`${verdict}: ${reason ?? ''}`);
  });
}

/** One step is changed each time, as an author does; the memory of the proof before is kept. */
function afterEdits(kinds: ReadonlyMap<string, MachineKind>, card: Card): number {
  const memory = new Memory();
  const times = Array.from({ length: 20 }, (_, edit) => {
    const value = bigFlow(60) as { steps: Record<string, unknown>[] };
    const steps = value.steps.map((step, at) => (at === edit ? edited(step) : step));
    return timed(() => prove(jobOf({ ...value, steps }, kinds, card), { memory }));
  });
  return times.slice(1).sort((a, b) => a - b)[18] ?? 0;
}

function edited(step: Record<string, unknown>): Record<string, unknown> {
  return step.kind === 'cut'
    ? { ...step, speed: { is: 755, unit: 'rpm' } }
    : { ...step, hands: true };
}

/** A machine of four facts: with a lathe's thirteen the graph library does not finish. Same machine, events, identity. */
function againstGraph(): number {
  const good = { motor: 'off', tool: 'clear', guard: 'closed' };
  const base = (id: string) => ({ id, title: id, say: 'Do it.', needs: { motor: 'off' } });
  const cut = (id: string) => ({
    ...base(id),
    kind: 'cut',
    needs: good,
    speed: { is: 100, unit: 'rpm' },
  });
  const steps = [
    { ...base('begin'), kind: 'check', needs: {}, facts: { motor: 'off' } },
    { ...base('mount'), kind: 'do', hands: true, ends: { tool: 'clear' } },
    cut('face'),
    cut('turn'),
    { ...base('leave'), kind: 'tell' },
  ];
  const job = tinyJobOf({ ...(bigFlow(10) as object), gates: {}, steps });
  if (!job) throw new Error('The tiny flow cannot be read.');
  const walkGraph = getAdjacencyMap as unknown as (logic: unknown, options: object) => unknown;
  const graph = timed(() =>
    walkGraph(job.machine, {
      events: (snapshot: FlowSnapshot) => eventsAt(job, snapshot),
      serializeState: identityOf,
    }),
  );
  return graph / Math.min(provedIn(job), provedIn(job));
}

function timed(work: () => unknown): number {
  const begun = performance.now();
  work();
  return performance.now() - begun;
}
