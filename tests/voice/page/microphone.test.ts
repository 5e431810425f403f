import { describe, expect, it } from 'vitest';
import { openMicrophone, RAW_CAPTURE } from '../../../src/voice/page/microphone.ts';
import { microphoneLock } from '../../../src/voice/page/microphone-lock.ts';

function fakeStream() {
  const track = {
    stopped: false,
    getSettings: () => ({ deviceId: 'left-headset' }),
    stop() {
      this.stopped = true;
    },
    addEventListener() {},
  };
  return { track, stream: { getAudioTracks: () => [track] } as unknown as MediaStream };
}

const fails = (name: string) => ({
  getUserMedia: () => Promise.reject(Object.assign(new Error('no'), { name })),
});

const freeLock = async () => () => {};

describe('the microphone', () => {
  it('is asked for without any clean-up of the browser', async () => {
    const asked: unknown[] = [];
    const { stream } = fakeStream();
    const getUserMedia = async (wanted: unknown) => {
      asked.push(wanted);
      return stream;
    };
    await openMicrophone({ getUserMedia }, freeLock);
    expect(asked).toEqual([{ audio: RAW_CAPTURE, video: false }]);
    expect(RAW_CAPTURE).toMatchObject({
      noiseSuppression: { ideal: false },
      autoGainControl: { ideal: false },
    });
  });

  it('is known by its device, and stopped at the end', async () => {
    const { stream, track } = fakeStream();
    const microphone = await openMicrophone({ getUserMedia: async () => stream }, freeLock);
    if ('kind' in microphone) throw new Error('it was refused');
    expect(microphone.id).toBe('left-headset');
    expect(track.stopped).toBe(false);
    microphone.release();
    expect(track.stopped).toBe(true);
  });

  it.each([
    ['NotAllowedError', 'refused'],
    ['NotFoundError', 'missing'],
    ['NotReadableError', 'taken'],
  ])('that answers %s is %s, with a sentence, and the lock is given back', async (name, kind) => {
    let isHeld = false;
    const lock = async () => {
      isHeld = true;
      return () => {
        isHeld = false;
      };
    };
    const answer = await openMicrophone(fails(name), lock);
    expect(answer).toMatchObject({ kind, sentence: expect.stringMatching(/\.$/) });
    expect(isHeld).toBe(false);
  });

  it('is missing on a page the browser does not trust', async () => {
    expect(await openMicrophone(undefined, freeLock)).toMatchObject({ kind: 'missing' });
  });

  it('is taken when another tab has the lock', async () => {
    expect(await openMicrophone(fails('never asked'), async () => null)).toMatchObject({
      kind: 'taken',
    });
  });
});

describe('the lock of the microphone', () => {
  /** The part of the Web Locks API (W3C) that counts here: one holder, `ifAvailable` never waits. */
  function fakeLocks() {
    let isHeld = false;
    const request = async (
      _name: string,
      _options: unknown,
      call: (lock: object | null) => unknown,
    ) => {
      if (isHeld) return call(null);
      isHeld = true;
      await call({});
      isHeld = false;
    };
    return { request } as unknown as LockManager;
  }

  it('has one holder, and a next one when it is given back', async () => {
    const locks = fakeLocks();
    const first = await microphoneLock(locks)();
    expect(await microphoneLock(locks)()).toBeNull();
    first?.();
    await Promise.resolve();
    await Promise.resolve();
    expect(await microphoneLock(locks)()).not.toBeNull();
  });

  it('is always given in a browser without locks', async () => {
    expect(await microphoneLock(undefined)()).not.toBeNull();
  });
});
