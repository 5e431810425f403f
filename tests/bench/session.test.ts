import { describe, expect, test } from 'vitest';
import {
  beginRun,
  type Clock,
  type EarReport,
  type KeptRun,
  type Ledger,
  type Notice,
  openSession,
  type RunEntry,
  type SayEnd,
  type SessionWorld,
} from '../../src/bench/index.ts';
import { scriptedEar } from '../../src/voice/page/scripted-ear.ts';
import { head, heardAs, shippedJob, sources } from './scripted.ts';

/** A clock whose waits end only when they are let go. */
function handClock() {
  const waits: (() => void)[] = [];
  const clock: Clock = {
    now: () => 5_000,
    after: (_ms, call) => {
      waits.push(call);
      return () => undefined;
    },
  };
  const letGo = () => {
    for (const call of waits.splice(0)) call();
  };
  return { clock, letGo };
}

/** A mouth whose lines end only when they are let end. */
function handMouth() {
  const lines: string[] = [];
  let end: (how: SayEnd) => void = () => undefined;
  return {
    lines,
    finish: () => end('said'),
    mouth: {
      name: 'by hand',
      say: (line: string) => {
        lines.push(line);
        return new Promise<SayEnd>((resolve) => {
          end = resolve;
        });
      },
      cue: async () => undefined,
      hush: () => end('cut'),
    },
  };
}

function memoryLedger(fail: () => boolean = () => false) {
  const entries: RunEntry[] = [];
  const ends: string[] = [];
  const ledger: Ledger = {
    start: async () => undefined,
    append: async (entry) => {
      if (fail()) throw new Error('The disk is full.');
      entries.push(entry);
    },
    finish: async (_id, { status }) => void ends.push(status),
    read: async (): Promise<KeptRun> => ({
      head,
      source: { key: 'key', ...sources() },
      entries,
      readings: [],
    }),
    list: async () => [head],
  };
  return { ledger, entries, ends };
}

async function opened(fail?: () => boolean, changeManner?: SessionWorld['changeManner']) {
  const { clock, letGo } = handClock();
  const voice = handMouth();
  const kept = memoryLedger(fail);
  const ear = scriptedEar(clock);
  const troubles: (string | null)[] = [];
  const notices: Notice[] = [];
  const session = await openSession(beginRun(shippedJob(), head), {
    ledger: kept.ledger,
    clock,
    mouth: voice.mouth,
    ear,
    tailMs: 300,
    manner: () => ({ rate: 1, volume: 1, pitch: 1 }),
    ...(changeManner ? { changeManner } : {}),
    show: (_state, notice) => {
      notices.push(notice);
      troubles.push(notice.trouble);
    },
  });
  /** Ends the line and its tail, as a silent room does. */
  const quiet = async () => {
    voice.finish();
    await settled();
    letGo();
    await settled();
  };
  return { session, ear, voice, kept, troubles, notices, quiet, letGo };
}

/** A room that has not fallen silent yet. */
function ringing() {
  let end = () => {};
  const over = new Promise<void>((resolve) => {
    end = resolve;
  });
  return { over, end: () => end() };
}

const settled = () => new Promise((resolve) => setTimeout(resolve, 0));

describe('a session', () => {
  test('hears nothing while it speaks, nor in the tail after it', async () => {
    const { session, ear, voice, quiet, letGo } = await opened();
    expect(ear.hear('next')).toBe(false);
    voice.finish();
    await settled();
    expect(ear.hear('next')).toBe(false);
    letGo();
    await settled();
    expect(ear.hear('next')).toBe(true);
    await settled();
    expect(session.state().snapshot.value).toEqual({ protect: 'open' });
    await quiet();
  });

  test('shows that it listens when the ear is open, not before: a room may ring', async () => {
    const { session, ear, voice, notices, letGo } = await opened();
    const rings = ringing();
    await session.listenWith({ ...ear, reopen: () => rings.over });
    voice.finish();
    await settled();
    letGo();
    await settled();
    expect(notices.at(-1)?.sound).toBe('speaking');
    rings.end();
    await settled();
    expect(notices.at(-1)?.sound).toBe('listening');
  });

  test('does not shut the ear again that tells, while it opens, that it listens', async () => {
    const { session, ear, voice, letGo } = await opened();
    const calls: string[] = [];
    let report: (report: EarReport) => void = () => undefined;
    await session.listenWith({
      ...ear,
      open: async (to) => {
        report = to;
      },
      shut: async () => void calls.push('shut'),
      reopen: async () => {
        calls.push('reopen');
        report({ kind: 'listening' });
      },
    });
    voice.finish();
    await settled();
    letGo();
    await settled();
    expect(calls.slice(calls.indexOf('reopen'))).toEqual(['reopen']);
  });

  test('its own lines, played back into the ear as they are spoken, move nothing', async () => {
    const { session, ear, voice, quiet } = await opened();
    await quiet();
    ear.hear('next');
    await settled();
    const before = JSON.stringify(session.state().snapshot.value);
    for (const line of [...voice.lines]) ear.hear(line);
    await settled();
    expect(JSON.stringify(session.state().snapshot.value)).toBe(before);
  });

  test('keys are heard while it speaks, and cut the line short', async () => {
    const { session, voice } = await opened();
    await session.heard(heardAs('next', { from: 'key' }));
    expect(session.state().snapshot.value).toEqual({ protect: 'open' });
    expect(voice.lines.at(-1)).toBe('Eyes and clothing first. Is your eye protection on?');
  });

  test('a word is kept before it is shown or spoken', async () => {
    const { session, kept } = await opened();
    await session.heard(heardAs('next'));
    expect(kept.entries.map((entry) => entry.event)).toEqual([{ type: 'next' }]);
  });

  test('a word that could not be kept does not count and says so', async () => {
    let full = true;
    const { session, voice, troubles } = await opened(() => full);
    await session.heard(heardAs('next'));
    expect(session.state().snapshot.value).toEqual({ begin: 'open' });
    expect(voice.lines.at(-1)).toBe('Not kept. Say it again.');
    expect(troubles.at(-1)).toBe('Not kept, so it does not count: The disk is full.');
    full = false;
    await session.heard(heardAs('next'));
    expect(session.state().snapshot.value).toEqual({ protect: 'open' });
  });

  test('words that come together are taken one after the other', async () => {
    const { session, kept } = await opened();
    await Promise.all(
      ['next', 'glasses on', 'nothing loose'].map((word) => session.heard(heardAs(word))),
    );
    expect(kept.entries.map((entry) => entry.seq)).toEqual([0, 1, 2]);
    expect(session.state().snapshot.value).toEqual({ 'know-the-stop': 'open' });
  });

  test('a deaf ear is said in one sentence and the keys go on', async () => {
    const { session, ear, troubles } = await opened();
    ear.goDeaf({
      kind: 'refused',
      sentence: 'The microphone was refused. Keys and buttons do everything.',
    });
    expect(troubles.at(-1)).toBe('The microphone was refused. Keys and buttons do everything.');
    await session.heard(heardAs('next', { from: 'key' }));
    expect(session.state().snapshot.value).toEqual({ protect: 'open' });
  });

  test('"stop" breaks into a line, other words do not', async () => {
    const { session, ear, voice, quiet } = await opened();
    await quiet();
    ear.hear('next');
    await settled();
    expect(voice.lines.at(-1)).toBe('Eyes and clothing first. Is your eye protection on?');
    expect(ear.hear('glasses on')).toBe(false);
    expect(ear.hear('stop')).toBe(true);
    await settled();
    expect(voice.lines.at(-1)).toMatch(/^Press the emergency stop\./);
    expect(session.state().snapshot.value).toEqual({ protect: 'hold' });
  });

  test('"stop" cannot break into a line that says stop itself', async () => {
    const { session, ear, voice } = await opened();
    await session.heard(heardAs('stop', { from: 'key' }));
    expect(voice.lines.at(-1)).toMatch(/stop/i);
    expect(ear.hear('stop')).toBe(false);
  });

  test('an ear that has gone deaf is told once, after the line that sounds, and so is its return', async () => {
    const { ear, voice, quiet } = await opened();
    const first = voice.lines.length;
    const noisy = { kind: 'noisy', sentence: 'It is too loud.' } as const;
    ear.goDeaf(noisy);
    ear.goDeaf(noisy);
    expect(voice.lines).toHaveLength(first);
    voice.finish();
    await settled();
    expect(voice.lines.slice(first)).toEqual(['Too loud to hear you safely. Use the keys.']);
    await quiet();
    ear.hearAgain();
    expect(voice.lines.slice(first + 1)).toEqual(['Listening again.']);
  });

  test('tells whether what is said leaves the device, and nothing of it without an ear', async () => {
    const { session, ear, notices } = await opened();
    expect(notices.at(-1)?.soundLeaves).toBe('no');
    await session.listenWith({ ...ear, soundLeavesDevice: 'yes' });
    expect(notices.at(-1)?.soundLeaves).toBe('yes');
    await session.listenWith(null);
    expect(notices.at(-1)?.soundLeaves).toBeUndefined();
  });

  test('tells each word once that the ear has no pronunciation of, as long as that ear is in use', async () => {
    const { session, ear, notices } = await opened();
    const reports: ((report: EarReport) => void)[] = [];
    await session.listenWith({ ...ear, open: async (report) => void reports.push(report) });
    for (const words of [['grobe'], ['grobe', 'pinole']]) {
      reports[0]?.({ kind: 'unpronounced', words });
      reports[0]?.({ kind: 'listening' });
    }
    expect(notices.at(-1)?.unpronounced).toEqual(['grobe', 'pinole']);
    await session.listenWith(null);
    expect(notices.at(-1)).not.toHaveProperty('unpronounced');
  });

  test('begins though the browser still asks whether the microphone is allowed', async () => {
    const { clock } = handClock();
    const never = { ...scriptedEar(clock), open: () => new Promise<void>(() => undefined) };
    const session = await openSession(beginRun(shippedJob(), head), {
      ...{ ledger: memoryLedger().ledger, clock, mouth: handMouth().mouth, ear: never },
      ...{ tailMs: 300, manner: () => ({ rate: 1, volume: 1, pitch: 1 }), show: () => undefined },
    });
    await session.heard(heardAs('next', { from: 'key' }));
    expect(session.state().snapshot.value).toEqual({ protect: 'open' });
    await session.close();
  });

  test('knows that another ear has taken over: what it hears, and where its sound goes', async () => {
    const { session, ear, notices } = await opened();
    let taken = false;
    const handingOver = Object.defineProperties(
      { ...ear },
      {
        hearsFreely: { get: () => !taken },
        soundLeavesDevice: { get: () => (taken ? 'no' : 'yes') },
      },
    );
    await session.listenWith(handingOver);
    expect([session.state().hearsFreely, notices.at(-1)?.soundLeaves]).toEqual([true, 'yes']);
    taken = true;
    ear.hearAgain();
    expect([session.state().hearsFreely, notices.at(-1)?.soundLeaves]).toEqual([false, 'no']);
    await session.heard(heardAs('next', { from: 'key' }));
    expect(session.state().hearsFreely).toBe(false);
  });

  test('has one owner of the microphone: an ear is closed before the next is opened', async () => {
    const { session, ear } = await opened();
    const order: string[] = [];
    const named = (name: string) => ({
      ...ear,
      open: async () => void order.push(`${name} opens`),
      close: async () => {
        await settled();
        order.push(`${name} is closed`);
      },
    });
    await session.listenWith(named('first'));
    await session.listenWith(named('second'));
    await session.close();
    expect(order).toEqual(['first opens', 'first is closed', 'second opens', 'second is closed']);
  });

  test('"louder" is kept as a setting before it is said back', async () => {
    const manners: unknown[] = [];
    const { session, voice } = await opened(undefined, (manner) => manners.push(manner));
    await session.heard(heardAs('slower'));
    expect(manners).toEqual([{ rate: 0.8, volume: 1 }]);
    expect(voice.lines.at(-1)).toBe('Slower.');
  });

  test('a question to the Slate that does not come is waited for no longer than twelve seconds', async () => {
    const { session, voice, quiet, letGo } = await opened();
    await quiet();
    await session.heard(heardAs('slate'));
    expect(voice.lines.at(-1)).toBe('Ask.');
    await quiet();
    expect(session.state().slateAsked).toBe(0);
    letGo();
    await settled();
    expect(session.state().slateAsked).toBeUndefined();
    expect(voice.lines.at(-1)).toBe('Back to the job.');
  });

  test('listens for what counts now and nothing else', async () => {
    const { session, ear } = await opened();
    await session.heard(heardAs('next'));
    expect(ear.words.phrases).toContain('glasses on');
    expect(ear.words.phrases).not.toContain('guard closed');
  });

  test('is not given up while something may be turning', async () => {
    const { session, kept, voice } = await opened();
    for (const word of [
      'next',
      'glasses on',
      'nothing loose',
      'stop released',
      'spindle stopped',
    ]) {
      await session.heard(heardAs(word));
    }
    await session.heard(heardAs('spindle running'));
    await session.giveUp();
    expect(kept.ends).toEqual([]);
    expect(voice.lines.at(-1)).toMatch(/^Not while it may be turning/);
    await session.heard(heardAs('spindle stopped'));
    await session.giveUp();
    expect(kept.ends).toEqual(['given-up']);
  });
});
