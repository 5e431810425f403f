import { describe, expect, it } from 'vitest';
import { readFlowAt, shippedCards, shippedFlows, shippedKinds } from '../../src/cli/flow-files.ts';
import { compileJob, type FlowEvent, type Job } from '../../src/flow/index.ts';
import { comeToAll } from './come-to.ts';
import { Player } from './play-path.ts';
import { byPlace, byTransition, entryOf, modelOf } from './step-model.ts';

const kinds = shippedKinds();

function jobOf(path: string): Job {
  const read = readFlowAt(path, kinds);
  if (!read.ok) throw new Error(read.faults.map((fault) => fault.message).join('\n'));
  const card = shippedCards().find((one) => one.machineKind === read.flow.kind.id);
  const compiled = card && compileJob(read.flow, card);
  if (!compiled?.ok) throw new Error(`${path} makes no job: ${compiled?.faults.join(' ')}`);
  return compiled.job;
}

const wordsOf = (path: { readonly steps: readonly { readonly event: unknown }[] }) =>
  path.steps
    .map(({ event }) => event as FlowEvent)
    .filter(({ type }) => !type.startsWith('xstate'));

/** Every simple path of each step's model by place, and a path for every transition of it: the table tells how much of the chart that is. */
function walkStep(job: Job, step: string, player: Player, come: ReturnType<typeof comeToAll>) {
  const from = come.get(step);
  if (!from) return { faults: [`No way to step "${step}" was found.`], simple: 0 };
  const entry = entryOf(job, step, from.snapshot);
  const whole = modelOf(job, step, entry, byTransition);
  const coarse = modelOf(job, step, entry, byPlace);
  const shortest = whole.model.getShortestPaths(whole.options);
  const simple = coarse.model.getSimplePaths(coarse.options);
  const faults = [...shortest, ...simple].flatMap((path) => player.play(entry, wordsOf(path)));
  return { faults, simple: simple.length };
}

describe.each(shippedFlows())('%s', (path) => {
  it('keeps the never-rules, and speaks, on every path of the model of each step', () => {
    const job = jobOf(path);
    const come = comeToAll(job);
    const player = new Player(job);
    const walked = job.flow.file.steps.map(({ id }) => walkStep(job, id, player, come));
    const steps = walked.filter(({ simple }) => simple > 0).length;
    const row = {
      flow: job.flow.file.id,
      steps: `${steps} of ${walked.length}`,
      ...player.walked.row(),
    };
    console.table([row]);
    expect(walked.flatMap(({ faults }) => faults)).toEqual([]);
    expect(steps).toBe(walked.length);
  }, 120_000);
});
