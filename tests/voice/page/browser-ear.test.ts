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
