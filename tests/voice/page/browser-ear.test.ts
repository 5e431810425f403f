/**
 * Browser recognition as it is reported to misbehave. Each case restates a behaviour of real browsers
 * from public issue threads and browser sources; the expected result is what a person needs.
 */
import { describe, expect, it } from 'vitest';
import { installOnDevice, onDeviceState } from '../../../src/voice/page/on-device.ts';
import { begun, hears } from '../../bench/scripted.ts';
import { fakeClock } from '../fake-clock.ts';
import { earOverFake, FakeRecognition } from './fake-recognition.ts';

const never = new Promise<never>(() => {});

describe('a browser ear that works', () => {
  it('reports listening once and each final result once', async () => {
    const world = earOverFake();
    await world.listen();
    world.last().begins();
    world.last().gives(['Guard closed.', 0.9]);
    world.last().onend?.();
    await world.clock.pass(1_000);
    world.last().begins();
    expect(world.heard()).toEqual(['guard closed']);
    expect(world.reports.filter((r) => r.kind === 'listening')).toHaveLength(1);
    expect(world.sessions()).toBe(2);
  });

  it('keeps a decimal number whole', async () => {
    const world = earOverFake();
    await world.listen();
    world.last().begins();
    world.last().gives(['24.9', 0.9]);
    expect(world.heard()).toEqual(['24.9']);
  });

  it('never starts two sessions within a second', async () => {
    const world = earOverFake();
    await world.listen();
    for (let i = 0; i < 30; i++) {
      world.last().fails('no-speech');
      await world.clock.pass(300);
    }
    const gaps = FakeRecognition.startsAt.map((t, i, all) => t - (all[i - 1] ?? 0)).slice(1);
    expect(Math.min(...gaps)).toBeGreaterThanOrEqual(1_000);
    expect(world.deaf()).toEqual([]);
  });

  it('sets a language, one-shot mode and, only on the device, the phrases of the said list', async () => {
    const local = earOverFake('on-device');
    local.ear.listenFor({ phrases: ['next', 'repeat'] });
    await local.listen();
    expect(local.last()).toMatchObject({ lang: 'en-US', continuous: false, processLocally: true });
    expect(local.last().phrases).toHaveLength(2);
    const service = earOverFake('service');
    service.ear.listenFor({ phrases: ['next'] });
    await service.listen();
    expect(service.last().phrases).toHaveLength(0);
    expect([local.ear.soundLeavesDevice, service.ear.soundLeavesDevice]).toEqual(['no', 'yes']);
  });
});

describe('a browser ear that is given repeated and provisional results', () => {
  it('takes old finals that come again with index 0 only once', async () => {
    const world = earOverFake();
    await world.listen();
    world.last().begins();
    world.last().gives(['next', 0.9]);
    world.last().gives(['next', 0.9], ['repeat', 0.8]);
    world.last().gives(['next', 0.9], ['repeat', 0.8]);
    expect(world.heard()).toEqual(['next', 'repeat']);
  });

  it('does not take two finals once more when they come again as one', async () => {
    const { listen, last, heard } = earOverFake();
    await listen();
    last().begins();
    last().gives(['guard closed', 0.9]);
    last().gives(['guard closed', 0.9], ['next', 0.9]);
    last().gives(['guard closed', 0.9], ['next', 0.9], ['guard closed next', 0.9]);
    expect(heard()).toEqual(['guard closed', 'next']);
  });

  it('takes a final with confidence 0 as provisional until a quarter of a second is quiet', async () => {
    const world = earOverFake();
    await world.listen();
    world.last().begins();
    world.last().gives(['twenty', 0]);
    await world.clock.pass(200);
    world.last().gives(['twenty four', 0]);
    await world.clock.pass(200);
    expect(world.heard()).toEqual([]);
    world.last().gives(['twenty four point nine', 0.9]);
    await world.clock.pass(2_000);
    expect(world.heard()).toEqual(['twenty four point nine']);
  });

  it('takes a final with confidence 0 when nothing better follows', async () => {
    const world = earOverFake();
    await world.listen();
    world.last().begins();
    world.last().gives(['closed', 0]);
    await world.clock.pass(300);
    world.last().gives(['closed', 0.8]);
    expect(world.heard()).toEqual(['closed']);
  });

  it('takes 0 that stands to the end for no measure at all: a gate would refuse it for ever', async () => {
    const world = earOverFake();
    await world.listen();
    world.last().begins();
    world.last().gives(['guard closed', 0]);
    await world.clock.pass(300);
    expect(world.reports.at(-1)).toMatchObject({ heard: { text: 'guard closed', confidence: 1 } });
  });

  it('takes the last interim when a browser never says final', async () => {
    const world = earOverFake();
    await world.listen();
    world.last().begins();
    world.last().gives(['rel', 0.1, false]);
    world.last().gives(['released', 0.1, false]);
    await world.clock.pass(1_300);
    expect(world.heard()).toEqual(['released']);
  });
});

describe('a browser ear whose session goes wrong', () => {
  it('goes on after an error that no end follows', async () => {
    const world = earOverFake();
    await world.listen();
    world.last().begins();
    world.last().onerror?.({ error: 'no-speech' });
    await world.clock.pass(2_000);
    expect(world.sessions()).toBe(2);
  });

  it('goes deaf with a sentence after three network errors in a row, and starts no more', async () => {
    const world = earOverFake();
    await world.listen();
    for (let i = 0; i < 3; i++) {
      world.last().fails('network');
      await world.clock.pass(4_100);
    }
    expect(world.deaf()).toEqual(['failing']);
    expect(world.sessions()).toBe(3);
  });

  it('forgets two network errors when a session works in between', async () => {
    const world = earOverFake();
    await world.listen();
    for (const error of ['network', 'network', 'no-speech', 'network', 'network']) {
      world.last().fails(error);
      await world.clock.pass(4_100);
    }
    expect(world.deaf()).toEqual([]);
  });

  it.each([
    ['not-allowed', 'refused'],
    ['service-not-allowed', 'missing'],
    ['language-not-supported', 'missing'],
  ])('stops at once on %s and says it is %s', async (error, kind) => {
    const world = earOverFake();
    await world.listen();
    world.last().fails(error);
    await world.clock.pass(60_000);
    expect(world.deaf()).toEqual([kind]);
    expect(world.sessions()).toBe(1);
  });

  it('says the microphone is taken when another tab aborts it three times', async () => {
    const world = earOverFake();
    await world.listen();
    for (let i = 0; i < 3; i++) {
      world.last().fails('aborted');
      await world.clock.pass(4_100);
    }
    expect(world.deaf()).toEqual(['taken']);
  });

  it('says the microphone is taken when another tab holds its lock', async () => {
    const world = earOverFake('service', false);
    await world.listen();
    expect(world.deaf()).toEqual(['taken']);
    expect(world.sessions()).toBe(0);
  });

  it('waits while the page is hidden and listens again when it is seen', async () => {
    const world = earOverFake();
    await world.listen();
    world.setVisible(false);
    world.last().fails('aborted');
    await world.clock.pass(30_000);
    expect(world.sessions()).toBe(1);
    world.setVisible(true);
    await world.clock.pass(1_000);
    expect(world.sessions()).toBe(2);
    expect(world.deaf()).toEqual([]);
  });

  it('survives start being refused because a session is active', async () => {
    const world = earOverFake();
    FakeRecognition.startThrows = 'InvalidStateError';
    await world.listen();
    FakeRecognition.startThrows = undefined;
    await world.clock.pass(3_000);
    world.last().begins();
    world.last().gives(['next', 1]);
    expect(world.heard()).toEqual(['next']);
  });

  it('says it is failing when sessions start but no sound ever does', async () => {
    const world = earOverFake();
    await world.listen();
    for (let i = 0; i < 3; i++) {
      world.last().onstart?.();
      await world.clock.pass(12_000);
    }
    expect(world.deaf()).toEqual(['failing']);
  });

  it('says it is failing when the browser never starts, and gives no error either', async () => {
    const world = earOverFake();
    await world.listen();
    await world.clock.pass(30_000);
    expect(world.deaf()).toEqual(['failing']);
    expect(world.sessions()).toBe(3);
  });

  it('takes a new session for one that has not ended by itself in a minute', async () => {
    const world = earOverFake();
    await world.listen();
    world.last().begins();
    await world.clock.pass(59_000);
    expect(world.sessions()).toBe(1);
    await world.clock.pass(2_000);
    expect(world.sessions()).toBe(2);
    expect(world.deaf()).toEqual([]);
  });

  it('drops phrases, not the ear, when the browser does not support them', async () => {
    const world = earOverFake('on-device');
    world.ear.listenFor({ phrases: ['next'] });
    await world.listen();
    world.last().fails('phrases-not-supported');
    await world.clock.pass(2_000);
    expect(world.last().phrases).toHaveLength(0);
    expect(world.deaf()).toEqual([]);
  });

  it('listens again when a microphone is plugged in', async () => {
    const world = earOverFake();
    await world.listen();
    for (let i = 0; i < 3; i++) {
      world.last().fails('audio-capture');
      await world.clock.pass(4_100);
    }
    expect(world.deaf()).toEqual(['missing']);
    world.deviceChanged();
    await world.clock.pass(2_000);
    expect(world.sessions()).toBe(4);
  });
});

describe('a browser ear that is shut', () => {
  it('reports nothing of what the browser still gives, and nothing late', async () => {
    const world = earOverFake();
    await world.listen();
    const first = world.last();
    first.begins();
    const late = first.onresult;
    const shut = world.ear.shut();
    late?.({
      resultIndex: 0,
      results: [Object.assign([{ transcript: 'next', confidence: 1 }], { isFinal: true })],
    });
    await world.clock.pass(2_000);
    await shut;
    expect(world.heard()).toEqual([]);
    expect(world.sessions()).toBe(1);
  });

  it('is shut in time even when the browser answers neither error nor end', async () => {
    const world = earOverFake();
    await world.listen();
    world.last().begins();
    FakeRecognition.abortAnswers = false;
    let isShut = false;
    void world.ear.shut().then(() => {
      isShut = true;
    });
    await world.clock.pass(1_000);
    expect(isShut).toBe(true);
  });

  it('drops a session that only starts after it was let go: on the device, starting takes a while', async () => {
    const world = earOverFake('on-device');
    await world.listen();
    FakeRecognition.abortAnswers = false;
    void world.ear.shut();
    await world.clock.pass(1_000);
    const late = world.last();
    const before = late.aborted;
    late.onstart?.();
    expect(late.aborted).toBe(before + 1);
    late.gives(['next', 1]);
    expect(world.heard()).toEqual([]);
  });

  it('does not start again when it was shut during the wait before a restart', async () => {
    const world = earOverFake();
    await world.listen();
    world.last().fails('no-speech');
    const shut = world.ear.shut();
    await world.clock.pass(5_000);
    await shut;
    expect(world.sessions()).toBe(1);
    void world.ear.reopen();
    await world.clock.pass(1_000);
    expect(world.sessions()).toBe(2);
  });

  it('is open again when the browser has started, not before; and in two seconds when it does not', async () => {
    const world = earOverFake();
    await world.listen();
    world.last().begins();
    const openAgain = async () => {
      void world.ear.shut();
      await world.clock.pass(1_000);
      let isOpen = false;
      void world.ear.reopen().then(() => {
        isOpen = true;
      });
      await world.clock.pass(100);
      return () => isOpen;
    };
    const first = await openAgain();
    expect(first()).toBe(false);
    world.last().begins();
    await world.clock.pass(0);
    expect(first()).toBe(true);
    const second = await openAgain();
    await world.clock.pass(2_000);
    expect(second()).toBe(true);
  });
});

describe('a browser ear that is sure of everything', () => {
  it('hands on what it heard with the confidence of the browser; what counts is the said list', async () => {
    const world = earOverFake('on-device');
    world.ear.listenFor({ phrases: ['next'] });
    await world.listen();
    world.last().begins();
    world.last().gives(['pass me the long one', 1]);
    const run = begun();
    const [heard] = world.reports.flatMap((report) =>
      report.kind === 'heard' ? [report.heard] : [],
    );
    expect(heard).toMatchObject({ confidence: 1, from: 'speech' });
    expect(hears(run, heard ?? '').state.snapshot).toBe(run.state.snapshot);
  });

  it('uses a fresh recogniser each time: an old one keeps its microphone and its settings', async () => {
    const world = earOverFake();
    await world.listen();
    for (let i = 0; i < 3; i++) {
      world.last().fails('no-speech');
      await world.clock.pass(1_000);
    }
    expect(new Set(FakeRecognition.made).size).toBe(world.sessions());
    expect(world.sessions()).toBeGreaterThan(2);
  });
});

describe('speech recognition on the device', () => {
  const fake = FakeRecognition as never;

  it('is none in a browser without the members for it', async () => {
    expect(await onDeviceState(undefined, 'en-US', fakeClock())).toBe('none');
    expect(await onDeviceState(class {} as never, 'en-US', fakeClock())).toBe('none');
  });

  it('is given up in time when installing never resolves', async () => {
    const clock = fakeClock();
    FakeRecognition.installation = never;
    let done: boolean | undefined;
    void installOnDevice(fake, 'en-US', clock).then((result) => {
      done = result;
    });
    await clock.pass(121_000);
    expect(done).toBe(false);
  });

  it('is none in time when asking never resolves', async () => {
    const clock = fakeClock();
    FakeRecognition.availability = never;
    let state: string | undefined;
    void onDeviceState(fake, 'en-US', clock).then((result) => {
      state = result;
    });
    await clock.pass(4_000);
    expect(state).toBe('none');
  });

  it('makes the ear deaf, not silent, when the pack is missing', async () => {
    const world = earOverFake('on-device');
    FakeRecognition.availability = Promise.resolve('downloadable');
    await world.listen();
    expect(world.deaf()).toEqual(['missing']);
    expect(world.sessions()).toBe(0);
  });
});
