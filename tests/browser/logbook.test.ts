/** The logbook in a real browser: what was acknowledged outlives a kill, and tabs know of each other. */

import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { type BrowserContext, chromium, type Page } from 'playwright-core';
import { build } from 'vite';
import { afterAll, beforeAll, expect, it } from 'vitest';
import type { KeptRun, Ledger, RunEntry } from '../../src/bench/ports.ts';
import { serve } from '../../src/cli/serve.mjs';
import { entry, sampleRun } from '../logbook/sample-run.ts';
import { howToStart, kill } from './chromium.ts';

const folder = mkdtempSync(join(tmpdir(), 'followrest-logbook-'));
let server: Awaited<ReturnType<typeof serve>>;

/** A page that has the logbook's door and nothing else. */
beforeAll(async () => {
  await build({
    configFile: false,
    logLevel: 'error',
    build: {
      outDir: folder,
      lib: {
        entry: fileURLToPath(new URL('../../src/logbook/index.ts', import.meta.url)),
        formats: ['es'],
        fileName: 'logbook',
      },
    },
  });
  const script = `
    import { openLogbook, openOwnership } from './logbook.js';
    window.logbook = await openLogbook(() => undefined);
    window.tabs = openOwnership(() => undefined);
    document.title = 'open';`;
  writeFileSync(join(folder, 'index.html'), `<script type="module">${script}</script>`);
  server = await serve({ folder, port: 0 });
});
afterAll(async () => {
  await server.close();
  rmSync(folder, { recursive: true });
});

interface LogbookWindow {
  readonly logbook: Ledger;
  readonly tabs: { claim(runId: string): Promise<boolean> };
}

async function openPage(context: BrowserContext): Promise<Page> {
  const page = await context.newPage();
  await page.goto(server.address);
  await page.waitForFunction(() => document.title === 'open');
  return page;
}

it('keeps every acknowledged entry when the browser is killed', async () => {
  const profile = mkdtempSync(join(tmpdir(), 'followrest-profile-'));
  const open = async () => chromium.launchPersistentContext(profile, await howToStart());
  const { head, source } = sampleRun('run-1');
  let told: readonly RunEntry[] = [];

  for (const count of [1, 12]) {
    const context = await open();
    const page = await openPage(context);
    const more = Array.from({ length: count }, (_, place) => entry('run-1', told.length + place));
    await page.evaluate(
      async ([start, entries]) => {
        const { logbook } = window as unknown as LogbookWindow;
        await logbook.start(start.head, start.source);
        for (const each of entries) await logbook.append(each);
      },
      [{ head, source }, more] as const,
    );
    told = [...told, ...more];
    await kill(context);
  }

  const context = await open();
  const kept = await (await openPage(context)).evaluate(
    (): Promise<KeptRun | null> => (window as unknown as LogbookWindow).logbook.read('run-1'),
  );
  expect(kept).toEqual({ head, source, entries: told, readings: [] });
  await context.close();
  rmSync(profile, { recursive: true });
});

it('tells a second tab of a run, and gives it the run when the first tab is closed', async () => {
  const browser = await chromium.launch(await howToStart());
  const context = await browser.newContext();
  const [first, second] = [await openPage(context), await openPage(context)];
  const claim = (page: Page) =>
    page.evaluate(() => (window as unknown as LogbookWindow).tabs.claim('run-1'));
  expect([await claim(first), await claim(second)]).toEqual([true, false]);
  await first.close();
  await expect.poll(() => claim(second)).toBe(true);
  await browser.close();
});
