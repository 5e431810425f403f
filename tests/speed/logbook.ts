/** List and search of a logbook of 10,000 runs with 60 entries each, in real Chromium with its own IndexedDB. */

import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { loadavg, tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'vite';
import { serve } from '../../src/cli/serve.mjs';
import { startChromium } from '../browser/chromium.ts';
import type {} from '../browser/logbook-page/page.ts';
import type { Figure } from './figure.ts';

const RUNS = 10_000;
const ENTRIES = 60;
const LOADS = 24;
const TIMES = 100;

export async function logbookFigures(): Promise<readonly Figure[]> {
  const folder = mkdtempSync(join(tmpdir(), 'followrest-logbook-'));
  await buildPage(folder);
  const server = await serve({ folder, port: 0 });
  const browser = await startChromium();
  try {
    const page = await browser.newPage();
    const open = async () => {
      await page.goto(server.address);
      await page.waitForFunction(() => document.title === 'ready');
    };
    await open();
    const begun = performance.now();
    await page.evaluate(([runs, entries]) => window.logbookPage.fill(runs, entries), [
      RUNS,
      ENTRIES,
    ] as const);
    const seconds = Math.round((performance.now() - begun) / 1000);
    const rows: number[] = [];
    const wholes: number[] = [];
    for (let load = 0; load < LOADS; load++) {
      await open();
      const first = await page.evaluate(() => window.logbookPage.first());
      rows.push(first.rows);
      wholes.push(first.whole);
    }
    const { lists, searches, reads } = await page.evaluate(
      (times) => window.logbookPage.measure(times),
      TIMES,
    );
    const load = loadavg()[0]?.toFixed(1);
    process.stderr.write(`${RUNS} runs × ${ENTRIES} entries in ${seconds} s; load ${load}\n`);
    return [
      figure(`first rows on the screen of a page just loaded, ${LOADS} loads`, rows, 0.5),
      figure(`first rows on the screen of a page just loaded, ${LOADS} loads`, rows, 0.95, 50),
      figure('all runs in a page just loaded', wholes, 0.95),
      figure('list', lists, 0.95, 50),
      figure('search', searches, 0.95, 50),
      figure('one run read whole', reads, 0.95),
    ];
  } finally {
    await browser.close();
    await server.close();
    rmSync(folder, { recursive: true });
  }
}

function figure(name: string, times: readonly number[], part: number, target?: number): Figure {
  const value = Math.round(10 * percentile(times, part)) / 10;
  const whole = { name: `logbook: ${name}, p${100 * part}`, value, unit: 'ms' };
  return target === undefined ? whole : { ...whole, target };
}

function percentile(times: readonly number[], part: number): number {
  const sorted = [...times].sort((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.floor(part * sorted.length))] ?? Number.NaN;
}

async function buildPage(folder: string): Promise<void> {
  await build({
    configFile: false,
    logLevel: 'error',
    build: {
      outDir: folder,
      lib: {
        entry: fileURLToPath(new URL('../browser/logbook-page/page.ts', import.meta.url)),
        formats: ['es'],
        fileName: 'page',
      },
    },
  });
  writeFileSync(
    join(folder, 'index.html'),
    '<link rel="stylesheet" href="./followrest.css"><script type="module" src="./page.js"></script>',
  );
}
