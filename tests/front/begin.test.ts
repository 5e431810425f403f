/** What is proved before a job begins is that very job, with the release that was asked for. */

import { expect, it } from 'vitest';
import { releaseFirst } from '../../src/flow/index.ts';
import { beginInLogbook } from '../../src/front/begin.ts';
import { openProvedJobs } from '../../src/front/proved-jobs.ts';
import { cardEntry } from '../../src/front/texts.ts';
import type { ProofJob } from '../../src/proof/index.ts';
import { englishLanguage } from '../../src/texts/index.ts';
import { sources } from '../bench/scripted.ts';
import { freshLogbook } from '../logbook/fresh-store.ts';

const texts = sources();
const entry = {
  ...{ id: 'gate-hinge-pin', title: 'Gate hinge pin', about: '', machineKind: 'lathe' },
  ...{ kindTitle: 'Lathe', cautions: [], revision: 1, steps: 1, ...texts },
};

async function device(proved = true) {
  const { logbook } = await freshLogbook();
  const asked: ProofJob[] = [];
  const isProved = async (job: ProofJob) => {
    asked.push(job);
    return proved;
  };
  const begin = (more: object = {}) =>
    beginInLogbook(
      { flowId: entry.id, cardId: 'metric-lathe', operator: 'Ida', inputs: {}, ...more },
      {
        ...{ entry, logbook, isProved, now: 5_000 },
        ...{ card: cardEntry(texts.card, false), operator: { id: 'a', name: 'Ida' } },
      },
    );
  const kept = async (more?: object) => {
    const begun = await begin(more);
    const run = begun.ok && (await logbook.read(begun.head.id));
    if (!run) throw new Error('Nothing was begun.');
    return run;
  };
  return { logbook, asked, begin, kept, isProved };
}

it('a job with a release before its first cut is proved with it, and one without is proved without', async () => {
  const { asked, kept } = await device();
  const [released, plain] = [await kept({ releaseFirst: true }), await kept()];
  expect(asked.map((job) => job.releaseFirst)).toEqual([true, undefined]);
  expect(released.source.flow).toBe(releaseFirst(asked[0]?.flow ?? ''));
  expect(plain.source.flow).toBe(asked[1]?.flow);
  expect(released.source.card).toBe(asked[0]?.card);
});

it('what is not proved is not begun', async () => {
  const { logbook, begin } = await device(false);
  const begun = await begin();
  expect(begun).toEqual({
    ok: false,
    faults: ['This job is not proved, so it does not begin.'],
  });
  expect(await logbook.list()).toEqual([]);
});

it.each([
  ['with its release does not count for it without', { releaseFirst: true }, {}],
  ['without a release does not count for it with one', {}, { releaseFirst: true }],
])('the seal of a job %s', async (_, proved, other) => {
  const { logbook, asked, kept, isProved } = await device();
  const jobs = openProvedJobs(logbook.secrets, isProved);
  const [here, there] = [await kept(proved), await kept(other)];
  await jobs.note(here.head);
  asked.length = 0;
  expect(await jobs.isProved(here, englishLanguage)).toBe(true);
  expect(asked).toEqual([]);
  expect(await jobs.isProved(there, englishLanguage)).toBe(true);
  expect(asked.map(({ flow }) => flow)).toEqual([there.source.flow]);
});
