/** The graph library's own walk of a flow, with the same machine, events and identity, judged by the same questions. */

import { getAdjacencyMap } from 'xstate/graph';
import type { FlowSnapshot, Job } from '../../src/flow/index.ts';
import { eventsAt } from '../../src/proof/alphabet.ts';
import { identityOf } from '../../src/proof/identity.ts';
import { prove } from '../../src/proof/index.ts';
import { questionsAt } from '../../src/proof/judge-state.ts';
import { jobOf } from './both-walks.ts';
import { tinyKind } from './tiny-kind.ts';

type Walked = Readonly<Record<string, { readonly state: FlowSnapshot }>>;

/** A machine of seven facts: with a lathe's thirteen the graph library does not finish. */
const facts = 3;

function flowOf(cuts: number): unknown {
  const parts = Array.from({ length: facts }, (_, at) => [`part-${'abcdefgh'[at]}`, 'in']);
  const good = { motor: 'off', tool: 'clear', guard: 'closed', ...Object.fromEntries(parts) };
  const base = (id: string) => ({ id, title: id, say: 'Do it.', needs: { motor: 'off' } });
  const cut = (_: unknown, at: number) => ({
    ...base(`cut-${at}`),
    kind: 'cut',
    needs: good,
    speed: { is: 100 + at, unit: 'rpm' },
  });
  return {
    followrest: 'flow',
    version: 1,
    id: 'measured',
    revision: 1,
    title: 'Measured',
    about: '',
    machineKind: 'lathe',
    steps: [
      { ...base('begin'), kind: 'check', needs: {}, facts: { motor: 'off' } },
      { ...base('mount'), kind: 'do', hands: true, ends: { tool: 'clear' } },
      ...Array.from({ length: cuts }, cut),
      { ...base('leave'), kind: 'tell' },
    ],
  };
}

function statesOf(job: Job): Walked {
  const walk = getAdjacencyMap as unknown as (logic: unknown, options: object) => Walked;
  return walk(job.machine, {
    events: (snapshot: FlowSnapshot) => eventsAt(job, snapshot),
    serializeState: identityOf,
  });
}

/** True where no question finds anything wrong in any state of the map. */
function isClean(job: Job, walked: Walked): boolean {
  return Object.values(walked).every(({ state }) =>
    questionsAt(job, state).every(({ ask }) => ask(state) === undefined),
  );
}

/** Milliseconds of the processor for the map and for the whole proof of one flow; throws where they differ. */
export function againstGraph(cuts = 4): { graph: number; own: number; states: number } {
  const job = jobOf(flowOf(cuts), undefined, new Map([['lathe', tinyKind(facts)]]));
  if (!job) throw new Error('The measured flow cannot be read.');
  const [graph, walked] = timed(() => statesOf(job));
  const proofs = [1, 2].map(() => timed(() => prove(job)));
  const same = proofs.every(([, { verdict }]) => (verdict === 'proved') === isClean(job, walked));
  if (!same) throw new Error('The graph library and the proof do not agree.');
  const own = Math.min(...proofs.map(([time]) => time));
  return { graph, own, states: Object.keys(walked).length };
}

function timed<T>(work: () => T): readonly [ms: number, made: T] {
  const begun = process.cpuUsage();
  const made = work();
  const { user, system } = process.cpuUsage(begun);
  return [(user + system) / 1000, made];
}
