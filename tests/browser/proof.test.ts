/** Before a job begins in real Chromium: every path is walked in the worker, and a broken flow does not begin. */

import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { serve } from '../../src/cli/serve.mjs';
import { startChromium } from './chromium.ts';
import { copyOfDist } from './site.ts';

let browser: Browser;
const copy = copyOfDist();
let site: Awaited<ReturnType<typeof serve>>;

beforeAll(async () => {
  [browser, site] = await Promise.all([startChromium(), serve({ folder: copy.folder, port: 0 })]);
});
afterAll(async () => {
  await browser.close();
  await site.close();
  copy.remove();
});

/** The gate that forgets the key: the first place where the shipped flow asks for it. */
const keyOut = /\\?"chuck-key\\?": \\?"out\\?",(\\n|\n)\s*/;

function forgetTheKey(): number {
  const assets = join(copy.folder, 'assets');
  const holders = readdirSync(assets).filter((name) => {
    if (!name.endsWith('.js')) return false;
    const text = readFileSync(join(assets, name), 'utf8');
    const changed = text.replace(keyOut, '');
    writeFileSync(join(assets, name), changed);
    return changed !== text;
  });
  return holders.length;
}

async function beginPage(): Promise<Page> {
  const page = await (await browser.newContext()).newPage();
  await page.goto(`${site.address}#/begin/gate-hinge-pin`);
  await page.getByLabel('Who is making it').fill('Ida');
  return page;
}

const walked = { timeout: 90_000 };

describe('the page where a job begins', () => {
  it('says that every path was walked, and begins', async () => {
    const page = await beginPage();
    await page.getByText(/^Proved\. [\d,]+ situations/).waitFor(walked);
    await page.getByRole('button', { name: /Begin the job/ }).click();
    await page.getByLabel('Instruction').waitFor();
    await page.context().close();
  });

  it('[LATHE-KEY] does not begin a flow whose gate forgets the key, and tells how it hurts', async () => {
    expect(forgetTheKey()).toBe(1);
    const page = await beginPage();
    await page
      .getByText('Not safe to begin. The spindle never runs with the key in the chuck.')
      .waitFor(walked);
    expect(await page.getByRole('button', { name: /Begin the job/ }).isDisabled()).toBe(true);
    await page.getByText('How it comes to that:').click();
    const turns = await page.locator('.proof-way li').allTextContents();
    expect(turns).toContain('you: key in');
    expect(turns.at(-1)).toBe('bench: Start the spindle. Say spindle running.');
    await page.context().close();
  });
});
