import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { freshLogbook, putRaw } from './fresh-store.ts';

const card = z.object({ speeds: z.array(z.number()) });

describe('what is kept', () => {
  it('comes back under its key until it is forgotten', async () => {
    const { logbook } = await freshLogbook();
    await logbook.keep('card/yard-lathe', { speeds: [60, 95] });
    await logbook.keep('card/yard-lathe', { speeds: [60, 95, 150] });
    expect(await logbook.recall('card/yard-lathe', card.parse)).toEqual({ speeds: [60, 95, 150] });
    await logbook.forget('card/yard-lathe');
    expect(await logbook.recall('card/yard-lathe', card.parse)).toBeNull();
  });

  it('is found by the beginning of its key', async () => {
    const { logbook } = await freshLogbook();
    for (const key of ['card/b', 'card/a', 'cards', 'operator/ilse']) {
      await logbook.keep(key, { speeds: [] });
    }
    expect([...(await logbook.recallAll('card/', card.parse)).keys()]).toEqual([
      'card/a',
      'card/b',
    ]);
  });

  it('is plain data only', async () => {
    const { logbook } = await freshLogbook();
    const kept = logbook.keep('card/a', { work: () => 1 });
    await expect(kept).rejects.toMatchObject({ kind: 'unfit' });
  });

  it('is reported and not given when it does not parse', async () => {
    const { logbook, faults } = await freshLogbook();
    await logbook.keep('card/a', { speeds: 'many' });
    await logbook.keep('card/b', { speeds: [1] });
    expect(await logbook.recall('card/a', card.parse)).toBeNull();
    await putRaw('kept', { key: 'card/c', valve: 1 });
    expect([...(await logbook.recallAll('card/', card.parse)).keys()]).toEqual(['card/b']);
    expect(faults.map(({ kind }) => kind)).toEqual(['damaged', 'damaged', 'damaged']);
  });
});
