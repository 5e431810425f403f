import { describe, expect, it } from 'vitest';
import { beginRun, type KeptRun, openSession, type RunEntry } from '../../src/bench/index.ts';
import { releaseAwaited } from '../../src/flow/index.ts';
import { allGenuine, beginInLogbook, resumeKept } from '../../src/front/begin.ts';
import { openOperators } from '../../src/front/operators.ts';
import { openReleases } from '../../src/front/releases.ts';
import { cardEntry } from '../../src/front/texts.ts';
import { heardAs, sources, throughGate, toBar, toFirstGate } from '../bench/scripted.ts';
import { freshLogbook } from '../logbook/fresh-store.ts';

const PHRASE = 'blue anvil morning';
const NOW = 5_000;

/** A device with an instructor, and a run at the gate of its first cut, all answered but the release. */
async function yard() {
  const { logbook } = await freshLogbook();
  const operators = await openOperators(logbook, () => NOW);
  const ruth = await operators.named('Ruth');
  await operators.makeInstructor(ruth.id, PHRASE);
  const releases = openReleases(operators, logbook.secrets, () => NOW);
  const texts = sources();
  const entry = {
    ...{ id: 'gate-hinge-pin', title: 'Gate hinge pin', about: '', machineKind: 'lathe' },
    ...{ kindTitle: 'Lathe', cautions: [], revision: 1, steps: 1, ...texts },
  };
  const begun = await beginInLogbook(
    {
      ...{ flowId: 'gate-hinge-pin', cardId: 'metric-lathe', operator: 'Ida', inputs: {} },
      releaseFirst: true,
    },
    {
      entry,
      card: cardEntry(texts.card, false),
      operator: await operators.named('Ida'),
      logbook,
      now: NOW,
      isProved: async () => true,
    },
  );
  if (!begun.ok) throw new Error(begun.faults.join('\n'));
  const kept = await logbook.read(begun.head.id);
  if (!kept) throw new Error('The run is gone.');
  const resumed = await resumeKept(kept, NOW, releases);
  if (!resumed.ok) throw new Error(resumed.fault);
  const session = await openSession(resumed.step, {
    ledger: logbook,
    releases,
    clock: { now: () => NOW, after: () => () => undefined },
    mouth: {
      name: 'none',
      say: async () => 'said',
      cue: async () => undefined,
      hush: () => undefined,
    },
    ear: null,
    tailMs: 0,
    manner: () => ({ rate: 1, volume: 1, pitch: 1 }),
    show: () => undefined,
  });
  for (const word of [...toBar, ...toFirstGate, ...throughGate]) {
    await session.heard(heardAs(word));
  }
  const awaits = () => releaseAwaited(session.state().job, session.state().snapshot);
  return { logbook, releases, session, awaits, ruth: ruth.id, runId: begun.head.id };
}

async function kept(logbook: Awaited<ReturnType<typeof yard>>['logbook'], id: string) {
  const run = await logbook.read(id);
  if (!run) throw new Error('The run is gone.');
  return run;
}

describe('a release', () => {
  it('is made by the passphrase, sealed, and opens the step', async () => {
    const { releases, session, awaits, ruth, runId } = await yard();
    expect(awaits()).toBe('face');
    const made = await releases.make(runId, 'face', { id: ruth, passphrase: PHRASE });
    if (!made.ok) throw new Error(made.why);
    await session.release(made.release);
    expect(awaits()).toBeUndefined();
  });

  it('is not made by a wrong one', async () => {
    const { releases, ruth, runId } = await yard();
    const made = await releases.make(runId, 'face', { id: ruth, passphrase: 'a guess' });
    expect(made).toEqual({ ok: false, byName: 'Ruth', why: 'That is not the passphrase.' });
  });

  it('is true for its run, step, name and time alone', async () => {
    const { releases, ruth, runId } = await yard();
    const made = await releases.make(runId, 'face', { id: ruth, passphrase: PHRASE });
    if (!made.ok) throw new Error(made.why);
    expect(await releases.genuine(made.release)).toBe(true);
    for (const change of [
      ...[{ runId: 'x' }, { step: 'x' }, { by: 'x' }, { byName: 'x' }, { at: 1 }, { seal: '' }],
    ]) {
      expect(await releases.genuine({ ...made.release, ...change })).toBe(false);
    }
  });
});

describe('a run that is opened again', () => {
  it('goes on when its releases were sealed here, and asks for the release again', async () => {
    const { logbook, releases, session, ruth, runId } = await yard();
    const made = await releases.make(runId, 'face', { id: ruth, passphrase: PHRASE });
    if (made.ok) await session.release(made.release);
    const resumed = await resumeKept(await kept(logbook, runId), NOW, releases);
    if (!resumed.ok) throw new Error(resumed.fault);
    const { job, snapshot } = resumed.step.state;
    expect(snapshot.context.facts['release!']).toBe('unknown');
    expect(job.flow.steps.get('face')?.release).toBe(true);
  });

  it('is not led on with a release written by hand, by whatever way it came in', async () => {
    const { logbook, releases, session, runId } = await yard();
    const run = await kept(logbook, runId);
    const event = {
      ...{ type: 'release', runId, step: 'face', by: 'ruth', byName: 'Ruth', at: NOW },
      seal: '00'.repeat(32),
    };
    const forged: RunEntry = {
      ...(run.entries[0] ??
        (() => {
          throw new Error('no entry');
        })()),
      ...{ seq: session.state().seq, at: NOW, step: 'face', event, outcome: 'moved' },
    };
    await logbook.append(forged);
    const resumed = await resumeKept(await kept(logbook, runId), NOW, releases);
    expect(resumed).toMatchObject({ ok: false, fault: expect.stringContaining('not given on') });

    const file = (await logbook.exportRuns()).parts.join('');
    const other = await freshLogbook();
    expect(await other.logbook.importRuns(file)).toMatchObject({ ok: true });
    const elsewhere = openReleases(
      await openOperators(other.logbook, () => NOW),
      other.logbook.secrets,
      () => NOW,
    );
    const there = await other.logbook.read(runId);
    expect(there && (await resumeKept(there, NOW, elsewhere)).ok).toBe(false);
  });

  it('is not led on with one true release used twice', async () => {
    const { logbook, releases, session, ruth, runId } = await yard();
    const made = await releases.make(runId, 'face', { id: ruth, passphrase: PHRASE });
    if (made.ok) await session.release(made.release);
    const run = await kept(logbook, runId);
    const last = run.entries.at(-1);
    if (!last) throw new Error('no entry');
    const twice: KeptRun = { ...run, entries: [...run.entries, { ...last, seq: last.seq + 1 }] };
    expect(await allGenuine(run, releases)).toBe(true);
    expect(await allGenuine(twice, releases)).toBe(false);
  });

  it('stands where the replay of an unreleased gate leaves it, whatever facts are written in', async () => {
    const { logbook, releases, session, runId } = await yard();
    const run = await kept(logbook, runId);
    const [first] = run.entries;
    if (!first) throw new Error('no entry');
    const crafted = { type: 'fact', fact: 'release!', state: 'given' };
    await logbook.append({
      ...first,
      ...{ seq: session.state().seq, step: 'face', event: crafted, outcome: 'moved' },
    });
    const resumed = await resumeKept(await kept(logbook, runId), NOW, releases);
    if (!resumed.ok) throw new Error(resumed.fault);
    expect(resumed.step.state.snapshot.context.facts['release!']).toBe('unknown');
    expect(beginRun(resumed.step.state.job, run.head).state.seq).toBe(0);
  });
});

describe('the next piece', () => {
  it('is of the batch that its first run names, numbered on', async () => {
    const { logbook, runId } = await yard();
    const first = await kept(logbook, runId);
    const texts = sources();
    const entry = {
      ...{ id: 'gate-hinge-pin', title: 'Gate hinge pin', about: '', machineKind: 'lathe' },
      ...{ kindTitle: 'Lathe', cautions: [], revision: 1, steps: 1, ...texts },
    };
    const world = {
      ...{ entry, card: cardEntry(texts.card, false), operator: { id: 'i', name: 'Ida' }, logbook },
      now: NOW,
      isProved: async () => true,
    };
    const again = async (batchOf: string) => {
      const begun = await beginInLogbook(
        { flowId: entry.id, cardId: 'metric-lathe', operator: 'Ida', inputs: {}, batchOf },
        world,
      );
      if (!begun.ok) throw new Error(begun.faults.join());
      const made = await kept(logbook, begun.head.id);
      expect(made.head).toEqual(begun.head);
      return made;
    };
    const second = await again(runId);
    const third = await again(second.head.id);
    expect(first.head.batch).toBeUndefined();
    expect(second.head.batch).toEqual({ id: runId, piece: 2 });
    expect(third.head.batch).toEqual({ id: runId, piece: 3 });
  });
});
