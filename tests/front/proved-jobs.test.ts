import { expect, it } from 'vitest';
import { openProvedJobs } from '../../src/front/proved-jobs.ts';
import { type ProofJob, proveJob } from '../../src/proof/index.ts';
import { englishLanguage } from '../../src/texts/index.ts';
import { sources } from '../bench/scripted.ts';
import { freshLogbook } from '../logbook/fresh-store.ts';

/** This device, with the real prover, counting its walks. */
async function device() {
  const { logbook } = await freshLogbook();
  const walks: ProofJob[] = [];
  const prove = async (job: ProofJob) => {
    walks.push(job);
    const result = proveJob(job);
    return result.ok && result.proof.verdict === 'proved';
  };
  return { jobs: openProvedJobs(logbook.secrets, prove), logbook, walks };
}

function run(change: (flow: string) => string = (flow) => flow, sourceKey = 'of these texts') {
  const { kind, card, flow } = sources();
  const head = { id: 'a', flowId: 'a', flowTitle: 'a', flowVersion: 1, operator: 'Ida' };
  return {
    source: { key: sourceKey, flow: change(flow), kind, card },
    head: {
      ...head,
      ...{ sourceKey, cardId: 'a', inputs: {}, startedAt: 0, status: 'open' as const },
    },
  };
}

const withoutKeyOut = (flow: string) => {
  const altered = flow.replace(/"chuck-key": "out",\s*/, '');
  expect(altered).not.toBe(flow);
  return altered;
};

it('a job that was proved before it began is led on without a walk, and only it', async () => {
  const { jobs, walks } = await device();
  await jobs.note(run().head);
  expect(await jobs.isProved(run(), englishLanguage)).toBe(true);
  expect(walks).toHaveLength(0);
  const other = run(withoutKeyOut, 'of other texts');
  expect(await jobs.isProved(other, englishLanguage)).toBe(false);
  expect(walks).toHaveLength(1);
});

it('a run from elsewhere is proved once, and known from then on', async () => {
  const { jobs, walks } = await device();
  expect(await jobs.isProved(run(), englishLanguage)).toBe(true);
  expect(await jobs.isProved(run(), englishLanguage)).toBe(true);
  expect(walks).toHaveLength(1);
});

it('a mark counts on the device that made it alone, and is in no export', async () => {
  const [here, there] = [await device(), await device()];
  await here.jobs.note(run().head);
  const file = (await here.logbook.exportRuns()).parts.join('');
  expect(file).not.toContain('mark/');
  await there.logbook.importRuns(file);
  expect(await there.jobs.isProved(run(withoutKeyOut), englishLanguage)).toBe(false);
});
