import { expect, it } from 'vitest';
import { loaded } from '../../../src/voice/page/loaded.ts';

it('a load is shared by all who ask, and a failed one is tried again', async () => {
  let times = 0;
  const load = loaded(async () => {
    times++;
    if (times === 1) throw new Error('no network');
    return times;
  });
  await expect(Promise.all([load(), load()])).rejects.toThrow('no network');
  expect(await load()).toBe(2);
  expect(await load()).toBe(2);
});
