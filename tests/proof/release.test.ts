/** The shipped hinge pin with an instructor's release on its first cut, as a learner begins it. */

import { describe, expect, it } from 'vitest';
import { compileJob, type Job, readFlow, releaseFact, releaseFirst } from '../../src/flow/index.ts';
import { hunt, huntMutant, mutantsOf, prove, toldAs } from '../../src/proof/index.ts';
import { cardNamed, kinds, textOf } from '../flow/shipped.ts';
import { withChart } from './altered-job.ts';

function jobFrom(text: string): Job {
  const read = readFlow('gate-hinge-pin.json', text, kinds);
  const made = read.ok ? compileJob(read.flow, cardNamed('metric-lathe')) : undefined;
  if (!made?.ok) throw new Error('The hinge pin makes no job.');
  return made.job;
}

const plain = jobFrom(textOf('gate-hinge-pin.json'));
const released = jobFrom(releaseFirst(textOf('gate-hinge-pin.json')));
const wanted = released.flow.file.steps.filter(({ release }) => release).map(({ id }) => id);

describe('the hinge pin that an instructor must release', () => {
  it('is proved', () => {
    expect(wanted).toEqual(['face']);
    expect(prove(released, { releases: wanted }).problems).toEqual([]);
  }, 60_000);

  it('[FORMAT-RELEASE] is broken when the release is deleted from the step, in words of the shop', () => {
    const mutant = mutantsOf(released.flow.file).find(({ name }) => name.startsWith('release'));
    const judged = mutant && huntMutant(mutant, plain.flow.kind, plain.card);
    expect(judged).toMatchObject({ fate: 'broken', problem: { claim: 'FORMAT-RELEASE' } });
    expect(judged?.why).toBe(
      '"Face the end" begins without an instructor\'s release, and it is to wait for one.',
    );
  });

  it('[FORMAT-RELEASE] is broken when its chart opens without the release, as somebody would say it', () => {
    const open = withChart(released, ({ face }) => {
      const chart = JSON.stringify(face).replaceAll(`"${releaseFact}":"given"`, '"eyes":"on"');
      Object.assign(face ?? {}, JSON.parse(chart));
    });
    const problem = hunt(open, ['face']);
    expect(problem?.claim).toBe('FORMAT-RELEASE');
    const turns = toldAs(open, problem?.events ?? []).map(({ who, says }) => `${who}: ${says}`);
    expect(turns.at(-1)).toBe('bench: Start the spindle. Say spindle running.');
  });
});
