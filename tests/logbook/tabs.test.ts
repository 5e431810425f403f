import { afterEach, describe, expect, it, vi } from 'vitest';
import { openOwnership, type TabOwnership } from '../../src/logbook/index.ts';
import { fakeLocks } from './fake-locks.ts';

const PATIENCE = 250;
const open: TabOwnership[] = [];
const lost: string[] = [];

/** A tab; its name stands before each run it loses. */
function tab(name: string, world: { locks?: ReturnType<typeof fakeLocks>; calls?: boolean }) {
  const channel = world.calls ? new BroadcastChannel('followrest-tabs-test') : undefined;
  const ownership = openOwnership((runId) => lost.push(`${name}: ${runId}`), {
    locks: world.locks,
    channel,
    patience: PATIENCE,
  });
  open.push(ownership);
  return ownership;
}

afterEach(() => {
  for (const each of open.splice(0)) each.close();
  lost.length = 0;
});

describe.each([
  ['locks', () => ({ locks: fakeLocks(), calls: true }), 'locked'],
  ['calls alone', () => ({ calls: true }), 'asked'],
] as const)('two tabs with %s', (_name, makeWorld, surety) => {
  it('lead different runs, and never the same one', async () => {
    const world = makeWorld();
    const [first, second] = [tab('first', world), tab('second', world)];
    expect(first.surety).toBe(surety);
    expect(await first.claim('run-1')).toBe(true);
    expect(await second.claim('run-1')).toBe(false);
    expect(await second.claim('run-2')).toBe(true);
    expect(await first.claim('run-1')).toBe(true);
  });

  it('pass a run on when it is released', async () => {
    const world = makeWorld();
    const [first, second] = [tab('first', world), tab('second', world)];
    await first.claim('run-1');
    first.release('run-1');
    await vi.waitFor(async () => expect(await second.claim('run-1')).toBe(true));
  });

  it('do not both get a run that both ask for at once', async () => {
    const world = makeWorld();
    const [first, second] = [tab('first', world), tab('second', world)];
    const got = await Promise.all([first.claim('run-1'), second.claim('run-1')]);
    expect(got.filter((each) => each)).toHaveLength(1);
  });

  it('do not take a run over from a tab that answers', async () => {
    const world = makeWorld();
    const [first, second] = [tab('first', world), tab('second', world)];
    await first.claim('run-1');
    expect(await second.takeOver('run-1')).toBe(false);
    expect(lost).toEqual([]);
  });
});

describe('a tab', () => {
  it('takes over from one that sleeps, which hears of it', async () => {
    const locks = fakeLocks();
    const asleep = tab('asleep', { locks });
    const awake = tab('awake', { locks, calls: true });
    await asleep.claim('run-1');
    expect(await awake.claim('run-1')).toBe(false);
    expect(await awake.takeOver('run-1')).toBe(true);
    expect(lost).toEqual(['asleep: run-1']);
    expect(await asleep.claim('run-1')).toBe(false);
  });

  it('sees whether any tab leads any run', async () => {
    const locks = fakeLocks();
    const [first, second] = [tab('first', { locks }), tab('second', { locks })];
    expect(await second.anyLed()).toBe(false);
    await first.claim('run-1');
    expect(await second.anyLed()).toBe(true);
    first.close();
    await vi.waitFor(async () => expect(await second.anyLed()).toBe(false));
  });

  it('says that it asked nobody where tabs cannot speak to each other', async () => {
    const alone = tab('alone', {});
    expect([alone.surety, await alone.claim('run-1')]).toEqual(['alone', true]);
  });
});
