/**
 * The sessions of browser recognition: how they go wrong, end and are let go. Each case restates a behaviour of real
 * browsers from public issue threads and browser sources; the expected result is what a person needs.
 */
import { describe, expect, it } from 'vitest';
import { earOverFake, FakeRecognition } from './fake-recognition.ts';

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
