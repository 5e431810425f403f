import { describe, expect, it } from 'vitest';
import { openOperators } from '../../src/front/operators.ts';
import { openPatience } from '../../src/front/patience.ts';
import { allRows, freshLogbook } from '../logbook/fresh-store.ts';

const PHRASE = 'blue anvil morning';

async function yard() {
  const { logbook } = await freshLogbook();
  const time = { now: 1_000 };
  const operators = await openOperators(logbook, () => time.now);
  const { id } = await operators.named('Ruth');
  return { logbook, operators, ruth: id, time };
}

describe('operators', () => {
  it('are picked from a list: added, renamed, removed', async () => {
    const { operators, ruth, logbook } = await yard();
    expect(await operators.add('Ida')).toBeNull();
    expect(await operators.add(' ida ')).toBe('ida is in the list already.');
    expect(await operators.add('  ')).toBe('Write a name.');
    expect(await operators.rename(ruth, 'Ruth Weber')).toBeNull();
    expect(await operators.rename(ruth, 'Ida')).toMatch(/already/);
    expect(operators.all().map(({ name }) => name)).toEqual(['Ida', 'Ruth Weber']);
    const again = await openOperators(logbook, () => 2_000);
    expect(again.all()).toEqual(operators.all());
    expect(await operators.remove(ruth)).toBeNull();
    expect(operators.all().map(({ name }) => name)).toEqual(['Ida']);
  });

  it('are the same person however the name is written', async () => {
    const { operators, ruth } = await yard();
    expect((await operators.named(' RUTH ')).id).toBe(ruth);
    expect(operators.all()).toHaveLength(1);
  });
});

describe('an instructor', () => {
  it('is the first who says so; every later one needs the word of one', async () => {
    const { operators, ruth } = await yard();
    expect(await operators.makeInstructor(ruth, 'short')).toMatch(/at least 8/);
    expect(await operators.makeInstructor(ruth, PHRASE)).toBeNull();
    const ida = (await operators.named('Ida')).id;
    expect(await operators.makeInstructor(ida, 'my own passphrase')).toMatch(/must agree/);
    const wrong = { id: ruth, passphrase: 'a guess' };
    expect(await operators.makeInstructor(ida, 'my own passphrase', wrong)).toMatch(/not the pass/);
    const self = { id: ida, passphrase: 'my own passphrase' };
    expect(await operators.makeInstructor(ida, 'my own passphrase', self)).toMatch(/must agree/);
    expect(operators.all().filter(({ instructor }) => instructor)).toHaveLength(1);
    const by = { id: ruth, passphrase: PHRASE };
    expect(await operators.makeInstructor(ida, 'my own passphrase', by)).toBeNull();
    expect(operators.all().filter(({ instructor }) => instructor)).toHaveLength(2);
  });

  it('is taken off the list by their own passphrase only', async () => {
    const { operators, ruth } = await yard();
    await operators.makeInstructor(ruth, PHRASE);
    expect(await operators.remove(ruth)).toMatch(/not the passphrase/);
    expect(await operators.remove(ruth, 'a guess')).toMatch(/not the passphrase/);
    expect(operators.all()).toHaveLength(1);
    expect(await operators.remove(ruth, PHRASE)).toBeNull();
    expect((await allRows()).secrets).toEqual([]);
  });

  it('who came in with a file can release nothing here', async () => {
    const { operators, logbook } = await yard();
    const forged = { id: 'x', name: 'Nobody', addedAt: 1, instructor: true };
    await logbook.keep('operator/x', forged);
    await operators.again();
    expect(operators.all().find(({ id }) => id === 'x')?.instructor).toBe(false);
    expect(await operators.check({ id: 'x', passphrase: '' })).toMatch(/must agree/);
  });

  it('makes a guesser wait, even with the right one', async () => {
    const { operators, ruth, time } = await yard();
    await operators.makeInstructor(ruth, PHRASE);
    for (let n = 0; n < 3; n++) await operators.check({ id: ruth, passphrase: 'a guess' });
    const right = { id: ruth, passphrase: PHRASE };
    expect(await operators.check(right)).toBe('Too many wrong passphrases. Wait 10 seconds.');
    time.now += 10_000;
    expect(await operators.check(right)).toBeNull();
  });
});

describe('patience', () => {
  it('grows with each wrong one, to five minutes, and is whole again after a right one', () => {
    let now = 0;
    const patience = openPatience(() => now);
    const waits = Array.from({ length: 10 }, () => {
      patience.wrong();
      const wait = patience.wait();
      now += wait;
      return wait / 1000;
    });
    expect(waits).toEqual([0, 0, 10, 20, 40, 80, 160, 300, 300, 300]);
    patience.right();
    expect(patience.wait()).toBe(0);
  });

  it('outlives a reload, and a clock that was put back makes it no longer than the longest', () => {
    let kept: string | null = null;
    const memory = {
      get: () => kept,
      set(text: string) {
        kept = text;
      },
    };
    const first = openPatience(() => 1_000_000, memory);
    for (let tries = 0; tries < 3; tries++) first.wrong();
    expect(openPatience(() => 1_004_000, memory).wait()).toBe(6_000);
    expect(openPatience(() => 0, memory).wait()).toBe(300_000);
    const later = openPatience(() => 1_020_000, memory);
    expect(later.wait()).toBe(0);
    later.wrong();
    expect(openPatience(() => 1_020_000, memory).wait()).toBe(20_000);
    openPatience(() => 1_060_000, memory).right();
    expect(openPatience(() => 1_060_000, memory).wait()).toBe(0);
  });

  it.each(['', '{', '{"tries":-1,"until":0}', '[]'])(
    'takes the unreadable %j for nothing',
    (text) => {
      expect(openPatience(() => 0, { get: () => text, set: () => undefined }).wait()).toBe(0);
    },
  );
});
