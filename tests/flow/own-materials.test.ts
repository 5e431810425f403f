import { describe, expect, test } from 'vitest';
import { beginJob, compileJob, readCard, saidList, workOut } from '../../src/flow/index.ts';
import { findMaterial } from '../../src/trade/index.ts';
import { hingePin, textOf } from './shipped.ts';

const brass = findMaterial('free-cutting-brass');
if (!brass) throw new Error('The table has no brass.');
const turn = [35, 120, 120] as const;
const gateBrass = {
  ...brass,
  name: 'gate-brass',
  title: 'Gate brass',
  speeds: { ...brass.speeds, turn },
};

function cardWith(...materials: readonly object[]) {
  const plain = JSON.parse(textOf('machines/metric-lathe.json')) as object;
  return readCard('card', JSON.stringify({ ...plain, materials }));
}

function goodCard() {
  const read = cardWith(gateBrass);
  if (!read.ok) throw new Error(JSON.stringify(read.faults));
  return read.value;
}

describe('a card with a material of the shop', () => {
  const inputs = { material: 'gate-brass' };

  test('lets a job be begun in it, with its own speed', () => {
    const made = compileJob(hingePin(), goodCard(), inputs);
    if (!made.ok) throw new Error(made.faults.join('\n'));
    const { flow, numbers } = made.job;
    const speeds = [...flow.scope.workings.keys()].map((id) => numbers.working(id, {}));
    const told = speeds.flatMap((one) => (one.ok ? [one.working] : []));
    expect(told.join('\n')).toContain('Gate brass, hss, turn: 35 m/min');
  });

  test('lets it be said in the middle of a run', () => {
    const made = compileJob(hingePin(), goodCard());
    if (!made.ok) throw new Error(made.faults.join('\n'));
    const { items } = saidList(made.job, beginJob(made.job));
    const item = items.find(({ id }) => id === 'adjust:material:gate-brass');
    expect(item?.phrases).toContain('gate brass');
  });

  test('leaves other cards without it', () => {
    const plain = readCard('card', textOf('machines/metric-lathe.json'));
    if (!plain.ok) throw new Error('The shipped card is faulty.');
    expect(workOut(hingePin(), plain.value, inputs)).toMatchObject({ ok: false });
  });

  test('is refused with a sentence when a number cannot be, or the table has the name', () => {
    const faults = [{ ...gateBrass, density: 8 }, brass].map((row) => {
      const read = cardWith(row);
      return read.ok ? '' : read.faults.map(({ message }) => message).join(' ');
    });
    expect(faults[0]).toMatch(/density is 8; it must lie from 100/);
    expect(faults[1]).toMatch(/There is a material "free-cutting-brass" already/);
  });
});
