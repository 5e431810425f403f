/** The ear of this page with a fake worker behind it and a fake microphone in front of it. */
import { describe, expect, it, vi } from 'vitest';
import type { EarReport } from '../../../src/bench/ports.ts';
import type { Shelf } from '../../../src/voice/page/ear-store.ts';
import type { Kept } from '../../../src/voice/page/offline-ear.ts';
import type { FromEar, ToEar } from '../../../src/voice/shared/messages.ts';
import { fakeClock } from '../fake-clock.ts';

/** Where the page's samples come in; the real one needs an AudioWorklet. */
const capture = vi.hoisted(() => ({
  give: (_samples: Float32Array, _rate: number): void => {},
}));
vi.mock('../../../src/voice/page/capture-samples.ts', () => ({
  captureSamples: async (_stream: unknown, give: typeof capture.give) => {
    capture.give = give;
    return () => {};
  },
}));
const { offlineEar } = await import('../../../src/voice/page/offline-ear.ts');

function fakeMicrophone(deviceId: string) {
  let gone = () => {};
  const track = {
    stop: () => {},
    getSettings: () => ({ deviceId }),
    addEventListener: (_: string, call: () => void) => {
      gone = call;
    },
  };
  const stream = { getAudioTracks: () => [track] } as unknown as MediaStream;
  return { devices: { getUserMedia: async () => stream }, pullOut: () => gone() };
}

function fakeWorker() {
  const sent: ToEar[] = [];
  const worker = {
    onmessage: null as ((event: { data: FromEar }) => void) | null,
    onerror: null as (() => void) | null,
    terminated: false,
    postMessage(message: ToEar) {
      sent.push(message);
      if (message.kind === 'start') queueMicrotask(() => tell({ kind: 'ready' }));
    },
    terminate() {
      this.terminated = true;
    },
  };
  const tell = (data: FromEar) => worker.onmessage?.({ data });
  return { worker, sent, tell };
}

function memoryShelf(): Shelf {
  const rows = new Map<string, string>();
  return {
    get: (key) => rows.get(key) ?? null,
    set: (key, value) => void rows.set(key, value),
    remove: (key) => void rows.delete(key),
    keys: () => [...rows.keys()],
  };
}

async function openedEar(shelf: Shelf = memoryShelf(), device = 'headset') {
  const clock = fakeClock();
  const microphone = fakeMicrophone(device);
  const { worker, sent, tell } = fakeWorker();
  const reports: EarReport[] = [];
  const ear = offlineEar({
    clock,
    lock: async () => () => {},
    devices: microphone.devices,
    shelf,
    person: () => 'Ida',
    startWorker: async () => ({
      worker: worker as unknown as Worker,
      start: (kept: Kept) => ({ kind: 'start', addresses: {}, ...kept }) as unknown as ToEar,
    }),
  });
  await ear.open((report) => reports.push(report));
  const kinds = () => sent.map(({ kind }) => kind);
  return { ear, clock, worker, sent, kinds, tell, reports, pullOut: microphone.pullOut };
}

/** A tenth of a second of a steady sound, so many decibels below full scale. */
function sound(decibels: number): Float32Array {
  return new Float32Array(1600).fill(10 ** (decibels / 20));
}

const quietRoom = () => {
  for (let i = 0; i < 5; i++) capture.give(sound(-60), 16_000);
};

describe('a word without a pronunciation', () => {
  it('is reported, so that somebody can be told of it', async () => {
    const { tell, reports } = await openedEar();
    tell({ kind: 'missing', words: ['spannzange'] });
    expect(reports.at(-1)).toEqual({ kind: 'unpronounced', words: ['spannzange'] });
  });
});

describe('half duplex', () => {
  it('sends no sound and reports nothing while it is shut', async () => {
    const { ear, kinds, tell, reports } = await openedEar();
    await ear.shut();
    const before = kinds().length;
    capture.give(sound(-20), 16_000);
    tell({ kind: 'heard', text: 'next', confidence: 1 });
    tell({ kind: 'unclear', text: '' });
    expect(kinds()).toHaveLength(before);
    expect(reports).toEqual([{ kind: 'listening' }]);
  });

  it('hears only what may break in, where there is something', async () => {
    const { ear, sent, tell, reports } = await openedEar();
    const meanwhile = { line: 'Face the end.', still: ['stop', 'hold'] };
    await ear.shut(meanwhile);
    expect(sent.at(-1)).toEqual({ kind: 'shut', meanwhile });
    capture.give(sound(-20), 16_000);
    expect(sent.at(-1)?.kind).toBe('sound');
    tell({ kind: 'heard', text: 'next', confidence: 1 });
    tell({ kind: 'heard', text: 'stop', confidence: 1 });
    expect(reports.flatMap((r) => (r.kind === 'heard' ? [r.heard.text] : []))).toEqual(['stop']);
  });

  it('opens again when the room has fallen silent after the mouth, not before', async () => {
    const { ear, clock, kinds } = await openedEar();
    quietRoom();
    await ear.shut();
    const reopened = ear.reopen();
    await clock.pass(400);
    capture.give(sound(-25), 16_000);
    await clock.pass(10);
    expect(kinds()).not.toContain('reopen');
    capture.give(sound(-58), 16_000);
    await reopened;
    expect(kinds().at(-1)).toBe('reopen');
  });

  it('opens again after a second and a half in a room that does not fall silent', async () => {
    const { ear, clock, kinds } = await openedEar();
    quietRoom();
    await ear.shut();
    const reopened = ear.reopen();
    for (let i = 0; i < 14; i++) {
      await clock.pass(100);
      capture.give(sound(-25), 16_000);
    }
    expect(kinds()).not.toContain('reopen');
    await clock.pass(200);
    await reopened;
    expect(kinds().at(-1)).toBe('reopen');
  });

  it('stays shut when it is shut again during the tail', async () => {
    const { ear, clock, kinds } = await openedEar();
    quietRoom();
    await ear.shut();
    const reopened = ear.reopen();
    await ear.shut({ line: '', still: ['stop'] });
    await reopened;
    await clock.pass(5_000);
    expect(kinds()).not.toContain('reopen');
  });
});

describe('what it learns', () => {
  const voice = { version: 1, patterns: { stop: ['AAAA'] } } as const;

  it('is kept for this microphone and person, and handed to the engine at the next start', async () => {
    const shelf = memoryShelf();
    const first = await openedEar(shelf);
    const taken = first.ear.enrol('stop');
    first.tell({ kind: 'enrolled', phrase: 'stop', times: 1, voice });
    expect(await taken).toEqual({ kind: 'kept', times: 1 });
    expect(first.ear.known).toEqual({ stop: 1 });
    const again = await openedEar(shelf);
    expect(again.sent[0]).toMatchObject({ kind: 'start', voice });
    const elsewhere = await openedEar(shelf, 'tablet');
    expect(elsewhere.sent[0]).toMatchObject({ voice: undefined });
  });

  it('is asked for again when it was unlike, and when nothing came in twelve seconds', async () => {
    const { ear, tell, clock, kinds } = await openedEar();
    const unlike = ear.enrol('stop');
    tell({ kind: 'not-enrolled', phrase: 'stop', reason: 'unlike' });
    expect(await unlike).toEqual({ kind: 'again', reason: 'unlike' });
    const nothing = ear.enrol('stop');
    await clock.pass(12_500);
    expect(await nothing).toEqual({ kind: 'again', reason: 'nothing' });
    expect(kinds().at(-1)).toBe('stop-enrolling');
  });

  it('is forgotten by the engine and on the device', async () => {
    const shelf = memoryShelf();
    const { ear, tell, kinds } = await openedEar(shelf);
    const taken = ear.enrol('stop');
    tell({ kind: 'enrolled', phrase: 'stop', times: 1, voice });
    await taken;
    ear.forgetVoice();
    expect(kinds().at(-1)).toBe('forget-voice');
    expect(shelf.keys()).toEqual([]);
  });

  it('of a room is kept, and is nothing when the measuring does not end', async () => {
    const shelf = memoryShelf();
    const { ear, tell, clock } = await openedEar(shelf);
    const measured = ear.measureRoom();
    const room = { version: 1, decibels: -41 } as never;
    tell({ kind: 'room-measured', decibels: -41, room, isSafe: true });
    expect(await measured).toMatchObject({ decibels: -41, isSafe: true });
    const never = ear.measureRoom();
    await clock.pass(16_000);
    expect(await never).toBeNull();
    expect((await openedEar(shelf)).sent[0]).toMatchObject({ room: { decibels: -41 } });
  });
});

describe('trouble', () => {
  it('of sound that no longer comes is told after some seconds, and is over with the next', async () => {
    const { clock, tell, reports } = await openedEar();
    await clock.pass(3_000);
    capture.give(sound(-60), 16_000);
    await clock.pass(3_000);
    expect(reports).toEqual([{ kind: 'listening' }]);
    await clock.pass(2_000);
    expect(reports.at(-1)).toMatchObject({ kind: 'deaf', deafness: { kind: 'failing' } });
    capture.give(sound(-60), 16_000);
    expect(reports.slice(2)).toEqual([{ kind: 'listening' }]);
    tell({ kind: 'noisy', noisy: true });
    await clock.pass(5_000);
    capture.give(sound(-60), 16_000);
    expect(reports.at(-1)).toMatchObject({ kind: 'deaf', deafness: { kind: 'noisy' } });
  });

  it('of noise is a state that ends by itself', async () => {
    const { tell, reports } = await openedEar();
    tell({ kind: 'noisy', noisy: true });
    expect(reports.at(-1)).toMatchObject({ kind: 'deaf', deafness: { kind: 'noisy' } });
    tell({ kind: 'noisy', noisy: false });
    expect(reports.at(-1)).toEqual({ kind: 'listening' });
  });

  it('of a program that breaks down while it listens is told, and the microphone is let go', async () => {
    const { worker, reports } = await openedEar();
    worker.onerror?.();
    expect(reports.at(-1)).toMatchObject({ kind: 'deaf', deafness: { kind: 'failing' } });
    expect(worker.terminated).toBe(true);
  });

  it('of a microphone that is pulled out is told, and nothing is left running', async () => {
    const { pullOut, worker, reports } = await openedEar();
    pullOut();
    expect(reports.at(-1)).toMatchObject({ kind: 'deaf', deafness: { kind: 'missing' } });
    expect(worker.terminated).toBe(true);
  });
});
