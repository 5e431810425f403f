/** Without a network: the page opens, heavy files wait for their first use, nothing changes unasked. */

import { randomBytes } from 'node:crypto';
import { appendFileSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { serve } from '../../src/cli/serve.mjs';
import { filesIn } from '../../src/offline/build/index.ts';
import { HEAVY_BYTES, sortFiles } from '../../src/offline/shared/index.ts';
import { startChromium } from './chromium.ts';
import { copyOfDist } from './site.ts';

let browser: Browser;
let site: ReturnType<typeof copyOfDist>;
let server: Awaited<ReturnType<typeof serve>>;
let page: Page;

beforeAll(async () => {
  browser = await startChromium();
});
afterAll(() => browser.close());

beforeEach(async () => {
  site = copyOfDist();
  for (const name of ['used.bin', 'unused.bin']) {
    writeFileSync(join(site.folder, name), randomBytes(HEAVY_BYTES + 1));
  }
  writeList(site.folder);
  server = await serve({ folder: site.folder, port: 0 });
  page = await (await browser.newContext()).newPage();
  await page.goto(server.address);
  await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
  await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
});
afterEach(async () => {
  await page.context().close();
  await server.close();
  site.remove();
});

/** Writes the list of files anew, as the build does. */
function writeList(folder: string): void {
  const worker = join(folder, 'sw.js');
  const [, ...code] = readFileSync(worker, 'utf8').split('\n');
  const list = JSON.stringify(sortFiles(filesIn(folder)));
  writeFileSync(worker, [`self.keptFiles = ${list};`, ...code].join('\n'));
}

/** How many bytes come, or null when nothing does. */
function bytesOf(path: string): Promise<number | null> {
  return page.evaluate(
    (address) =>
      fetch(address)
        .then((answer) => answer.arrayBuffer())
        .then((content) => content.byteLength)
        .catch(() => null),
    path,
  );
}

function textOf(tab: Page): Promise<string | null> {
  return tab.locator('body').textContent();
}

describe('with the server gone', () => {
  it('the page opens again, and again in a new tab', async () => {
    await expect.poll(() => textOf(page)).toMatch(/\w/);
    const before = await textOf(page);
    await server.close();
    await page.reload();
    await expect.poll(() => textOf(page)).toBe(before);
    const tab = await page.context().newPage();
    await tab.goto(server.address);
    await expect.poll(() => textOf(tab)).toBe(before);
  });

  it('a heavy file is there when it was used before, and only then', async () => {
    expect(await bytesOf('used.bin')).toBe(HEAVY_BYTES + 1);
    await server.close();
    expect(await bytesOf('used.bin')).toBe(HEAVY_BYTES + 1);
    expect(await bytesOf('unused.bin')).toBeNull();
  });

  it('the page is still isolated, so that WebAssembly may use threads', async () => {
    await server.close();
    await page.reload();
    expect(await page.evaluate(() => crossOriginIsolated)).toBe(true);
  });
});

describe('a newer version', () => {
  /** The page sets its own title, so the mark stands beside it. */
  const mark = '<meta name="newer" content="yes">';
  const newer = 'meta[name="newer"]';

  it('waits, and the page stays as it is, until it is asked for', async () => {
    const index = join(site.folder, 'index.html');
    writeFileSync(index, readFileSync(index, 'utf8').replace('<title>', `${mark}<title>`));
    writeList(site.folder);
    await page.evaluate(async () => {
      document.title = 'untouched';
      await (await navigator.serviceWorker.ready).update();
    });
    await page.waitForFunction(async () => (await navigator.serviceWorker.ready).waiting !== null);
    expect(await page.title()).toBe('untouched');
    await page.reload();
    expect(await page.locator(newer).count()).toBe(0);

    const changed = page.evaluate(
      () =>
        new Promise<void>((done) => {
          navigator.serviceWorker.addEventListener('controllerchange', () => done());
        }),
    );
    await page.evaluate(async () => {
      (await navigator.serviceWorker.ready).waiting?.postMessage({ kind: 'take over' });
    });
    await changed;
    await page.reload();
    expect(await page.locator(newer).count()).toBe(1);
  });

  it('with a file that is not the one on its list is not taken', async () => {
    appendFileSync(join(site.folder, 'index.html'), '<!-- cut short -->');
    appendFileSync(join(site.folder, 'sw.js'), '\n// newer');
    const list = readFileSync(join(site.folder, 'sw.js'), 'utf8');
    const wrong = list.replace(/("path":"index.html","hash":")[0-9a-f]{4}/, '$1beef');
    writeFileSync(join(site.folder, 'sw.js'), wrong);
    const waits = await page.evaluate(async () => {
      const registration = await navigator.serviceWorker.ready;
      const ended = new Promise<void>((done) => {
        registration.addEventListener('updatefound', () => {
          const worker = registration.installing;
          worker?.addEventListener('statechange', () => {
            if (worker.state !== 'installing') done();
          });
        });
      });
      await registration.update();
      await ended;
      return registration.waiting !== null;
    });
    expect(waits).toBe(false);
  });
});
