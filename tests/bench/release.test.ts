import { describe, expect, test } from 'vitest';
import {
  beginRun,
  comeBack,
  hear,
  openSession,
  type Release,
  type RunEntry,
  type RunState,
  releaseIn,
  replayRun,
  saidNow,
  startJob,
} from '../../src/bench/index.ts';
import { takeRelease } from '../../src/bench/release-run.ts';
import { positionOf, releaseAwaited } from '../../src/flow/index.ts';
import { head, heardAs, sources, throughGate, toBar, toFirstGate } from './scripted.ts';

/** The shipped job, its first cut to be released by an instructor. */
function releaseJob() {
  const texts = sources();
  const flow = JSON.parse(texts.flow) as { steps: { id: string; release?: true }[] };
  for (const step of flow.steps) if (step.id === 'face') step.release = true;
  const started = startJob({ ...texts, flow: JSON.stringify(flow) }, {});
  if (!started.ok) throw new Error(started.faults.join('\n'));
  return started.job;
}
const job = releaseJob();

const genuine = (more: Partial<Release> = {}): Release => ({
  ...{ runId: head.id, step: 'face', by: 'op-1', byName: 'Ruth', at: 5_000, seal: 'true' },
  ...more,
});

/** A session that stands at the gate of the first cut, all answered but the release. */
async function atRelease(now = 5_000) {
  const entries: RunEntry[] = [];
  const lines: string[] = [];
  const session = await openSession(beginRun(job, head), {
    ledger: {
      start: async () => undefined,
      append: async (entry) => void entries.push(entry),
      finish: async () => undefined,
      read: async () => null,
      list: async () => [],
    },
    releases: { genuine: async ({ seal }) => seal === 'true' },
    clock: { now: () => now, after: () => () => undefined },
    mouth: {
      name: 'written',
      say: async (line) => {
        lines.push(line);
        return 'said';
      },
      cue: async () => undefined,
      hush: () => undefined,
    },
    ear: null,
    tailMs: 0,
    manner: () => ({ rate: 1, volume: 1, pitch: 1 }),
    show: () => undefined,
  });
  for (const word of [...toBar, ...toFirstGate, ...throughGate]) await session.heard(heardAs(word));
  return { session, entries, lines };
}
const place = ({ snapshot }: RunState) => {
  const { step, phase } = positionOf(snapshot);
  return `${step}/${phase}`;
};

describe('a step that an instructor must release', () => {
  test('holds when all is answered, names the instructor, and asks for them', async () => {
    const { session, lines } = await atRelease();
    expect(place(session.state())).toBe('face/gate');
    expect(lines.at(-1)).toContain('Ask the instructor to release this step.');
    await session.heard(heardAs('next'));
    expect(lines.at(-1)).toBe('Not yet: instructor.');
  });

  test('opens on a sealed release, kept with name and time', async () => {
    const { session, entries, lines } = await atRelease();
    await session.release(genuine());
    expect(place(session.state())).toBe('face/start');
    expect(lines.at(-1)).toMatch(/^Released by Ruth\. /);
    const entry = entries.at(-1);
    expect(entry).toMatchObject({ outcome: 'moved', at: 5_000, event: { byName: 'Ruth' } });
    expect(entry && releaseIn(entry)).toEqual(genuine());
  });

  test.each([
    ['a seal that is not of this device', { seal: 'forged' }, /not given on this device/],
    ['another run', { runId: 'run-2' }, /of another run/],
    ['another step', { step: 'part-off' }, /of another step/],
    ['an hour ago', { at: 5_000 - 3_600_000 }, /too old/],
    ['tomorrow', { at: 5_000 + 86_400_000 }, /too old/],
  ] as const)(
    'does not open on a release with %s, which is put on record',
    async (_of, more, why) => {
      const { session, entries } = await atRelease();
      await session.release(genuine(more));
      expect(place(session.state())).toBe('face/gate');
      expect(entries.at(-1)).toMatchObject({ outcome: 'refused', event: null });
      expect(entries.at(-1)?.said).toMatch(why);
    },
  );

  test('opens on none where nobody checks seals', async () => {
    const { session } = await atRelease();
    const unchecked = await openSession(
      { state: session.state(), effects: [] },
      {
        ledger: {
          start: async () => undefined,
          append: async () => undefined,
          finish: async () => undefined,
          read: async () => null,
          list: async () => [],
        },
        clock: { now: () => 5_000, after: () => () => undefined },
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
      },
    );
    await unchecked.release(genuine());
    expect(place(unchecked.state())).toBe('face/gate');
  });

  test('opens on no word, however it comes', async () => {
    const { session } = await atRelease();
    const state = session.state();
    const opensNothing = (word: string, from: 'speech' | 'key' | 'touch' | 'gauge' | 'script') => {
      const after = hear(state, heardAs(word, { from })).state;
      expect(place(after), `${word} by ${from}`).not.toMatch(/start|cutting/);
    };
    const known = saidNow(state).items.flatMap(({ phrases }) => phrases);
    for (const word of known) opensNothing(word, 'speech');
    const made = [
      'release',
      'released',
      'released by the instructor',
      'instructor',
      'given',
      'yes',
    ];
    for (const from of ['speech', 'key', 'touch', 'gauge', 'script'] as const) {
      for (const word of made) opensNothing(word, from);
    }
  });

  test('is not taken back to by "wrong"', async () => {
    const { session } = await atRelease();
    await session.release(genuine());
    await session.heard(heardAs('hold'));
    await session.heard(heardAs('wrong'));
    expect(place(session.state())).toBe('face/hold');
  });

  test('asks again after a reload, whatever the record says', async () => {
    const { session, entries } = await atRelease();
    await session.release(genuine());
    const replayed = replayRun(job, head, entries);
    if (!replayed.ok) throw new Error(replayed.fault);
    expect(place(replayed.state)).toBe('face/start');
    const back = comeBack(replayed.state, 9_000);
    const again = ['spindle stopped', 'glasses on', 'nothing loose', 'stop released']
      .concat(['work clamped', 'key out', 'tool locked', 'turns free', ...throughGate])
      .concat(['tailstock back', 'carry on'])
      .reduce((now, word) => hear(now, heardAs(word)).state, back.state);
    expect(place(again)).toBe('face/hold');
    expect(releaseAwaited(job, again.snapshot)).toBe('face');
  });
});

describe('what is told after a release', () => {
  const toldAt = async (pace: 'first-time' | 'familiar' | 'own-pace') => {
    const { session } = await atRelease();
    return takeRelease({ ...session.state(), pace }, genuine()).state.lastLine;
  };

  test('follows the pace of the run: less for who knows, more for who learns', async () => {
    const [full, plain, short] = await Promise.all(
      (['first-time', 'familiar', 'own-pace'] as const).map(toldAt),
    );
    expect(plain).toBe('Released by Ruth. Start the spindle. Say spindle running.');
    expect(short).toBe('Released by Ruth. Start.');
    expect(full).toMatch(/^Released by Ruth\. .*A square, clean end .*Start the spindle\./);
  });
});

test('waiting for a release when the page is loaded anew, it comes back and asks again', async () => {
  const { entries } = await atRelease();
  const replayed = replayRun(job, head, entries);
  if (!replayed.ok) throw new Error(replayed.fault);
  expect(place(replayed.state)).toBe('face/gate');
  const back = comeBack(replayed.state, 9_000);
  expect(place(back.state)).toBe('face/hold');
  const answered = ['spindle stopped', 'glasses on', 'nothing loose', 'stop released']
    .concat(['work clamped', 'key out', 'tool locked', 'turns free'])
    .concat(['tool clear', 'guard closed', 'hands clear', 'tailstock back'])
    .reduce((now, word) => hear(now, heardAs(word)).state, back.state);
  expect(answered.lastLine).toContain('Ask the instructor to release this step.');
  expect(place(hear(answered, heardAs('carry on')).state)).toBe('face/hold');
  const released = takeRelease(answered, genuine({ at: 9_500 })).state;
  expect(releaseAwaited(job, released.snapshot)).toBeUndefined();
  expect(place(hear(released, heardAs('carry on')).state)).toMatch(/^face\/(gate|start)$/);
});

test('a release tried in vain is on record with the name and without what was typed', async () => {
  const { session, entries } = await atRelease();
  await session.releaseRefused('Ruth', 'That is not the passphrase.');
  expect(entries.at(-1)).toMatchObject({
    outcome: 'refused',
    heard: { text: 'release by Ruth' },
    said: 'That is not the passphrase.',
  });
});
