import { beforeAll, describe, expect, it } from 'vitest';
import { readFlowAt, shippedCards, shippedFlows, shippedKinds } from '../../src/cli/flow-files.ts';
import { compileJob, type FlowEvent, type Job } from '../../src/flow/index.ts';
import { arrowName } from '../../src/proof/step-chart.ts';
import { comeToAll } from './come-to.ts';
import { Player } from './play-path.ts';
import { byPlace, byTransition, entryOf, modelOf } from './step-model.ts';

const kinds = shippedKinds();
const fallsBack = arrowName('"open"', '', '"gate"');

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

/** Every simple path of each step's model by place, a path for every transition of it, and every arrow of its chart. */
function walkStep(job: Job, step: string, player: Player, come: ReturnType<typeof comeToAll>) {
  const from = come.get(step);
  if (!from) return 0;
  const entry = entryOf(job, step, from.snapshot);
  const whole = modelOf(job, step, entry, byTransition);
  const coarse = modelOf(job, step, entry, byPlace);
  const shortest = whole.model.getShortestPaths(whole.options);
  const simple = coarse.model.getSimplePaths(coarse.options);
  for (const path of [...shortest, ...simple]) player.play(entry, wordsOf(path));
  player.closeCircles(step, entry);
  return shortest.length + simple.length;
}

/** A step that asks for standstill alone does not fall back to its gate: what turns there is a hold. */
function asksStandstillAlone({ flow }: Job, step: string): boolean {
  const [fact, ...others] = Object.keys(flow.needs.get(step) ?? {});
  return fact === flow.kind.roles.power.fact && others.length === 0;
}

describe.each(shippedFlows())('%s', (path) => {
  const job = jobOf(path);
  const player = new Player(job);
  let played: readonly number[] = [];

  beforeAll(() => {
    const come = comeToAll(job);
    played = job.flow.file.steps.map(({ id }) => walkStep(job, id, player, come));
  }, 120_000);

  it('keeps the never-rules, and speaks, on every path of the model of each step', () => {
    expect(player.faults).toEqual([]);
    expect(played.filter((paths) => paths === 0)).toEqual([]);
  });

  it('takes every transition, but where standstill alone is asked for and its loss holds', () => {
    const missed = player.walked.missed();
    const paths = played.reduce((sum, one) => sum + one, 0);
    console.table([{ flow: job.flow.file.id, paths, ...player.walked.row() }]);
    const others = missed.filter(
      ({ step, name }) => name !== fallsBack || !asksStandstillAlone(job, step),
    );
    expect(others).toEqual([]);
  });
});
