/** Chromium is killed at random steps of the job; nothing that was taken is lost. */

import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { chromium } from 'playwright-core';
import { expect, it } from 'vitest';
import { howToStart, kill } from './chromium.ts';
import * as words from './hinge-pin.ts';
import { Person } from './person.ts';
import { chooser } from './seeded.ts';
import { serveDist } from './site.ts';

/** Says at least `more` words, and on until a word begins a new step; gives back how many were said in all. */
async function saysOn(ida: Person, script: readonly string[], said: number, more: number) {
  let at = await ida.settledStep();
  let count = 0;
  for (const word of script.slice(said)) {
    await ida.says(word);
    count++;
    const now = await ida.settledStep();
    if (count > more && now !== at) break;
    at = now;
  }
  return said + count;
}

it('comes back to the same step and readings after the process is killed', async () => {
  const profile = mkdtempSync(join(tmpdir(), 'followrest-profile-'));
  const site = await serveDist();
  const choose = chooser(20_261_125);
  const script = [...words.protect, ...words.mount, ...words.face, ...words.touch];
  let context = await chromium.launchPersistentContext(profile, await howToStart());
  let ida = await Person.in(context, site.address, 'keys');
  await ida.begin();
  const address = ida.page.url();
  let said = 0;
  for (const most of [6, 6, 6]) {
    said = await saysOn(ida, script, said, choose(most));
    const step = await ida.settledStep();
    await kill(context);
    context = await chromium.launchPersistentContext(profile, await howToStart());
    ida = await Person.in(context, address, 'keys');
    await ida.shows(/back after a break/i);
    expect(await ida.settledStep()).toBe(step);
    await ida.comesBack();
    expect(await ida.settledStep()).toBe(step);
  }
  await context.close();
  await site.close();
  rmSync(profile, { recursive: true, force: true });
}, 180_000);
