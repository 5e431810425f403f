/** The screens as they stand in real Chromium, measured from phone to wall, light and dark, at twice the letters. */

import { createRequire } from 'node:module';
import type { AxeResults, RunOptions } from 'axe-core';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { startChromium } from './chromium.ts';
import { faultsOf } from './screens-measure.ts';
import { beginRun, walkUntil } from './screens-walk.ts';
import { serveDist } from './site.ts';

const SIZES = [
  { width: 360, height: 740 },
  { width: 820, height: 1180 },
  { width: 1440, height: 900 },
  { width: 3840, height: 2160 },
] as const;
/** Colours and how many times the usual size of letters. */
const LOOKS = [
  ['light', 1],
  ['dark', 1],
  ['light', 2],
] as const;
const axe = createRequire(import.meta.url).resolve('axe-core/axe.min.js');

let browser: Browser;
let site: Awaited<ReturnType<typeof serveDist>>;
let page: Page;

beforeAll(async () => {
  [browser, site] = await Promise.all([startChromium(), serveDist()]);
  const context = await browser.newContext({ reducedMotion: 'reduce', serviceWorkers: 'block' });
  page = await context.newPage();
  await page.addInitScript({ path: axe });
  await beginRun(page, site.address);
});
afterAll(async () => {
  await browser.close();
  await site.close();
});

declare global {
  interface Window {
    readonly axe: { run(options: RunOptions): Promise<AxeResults> };
  }
}

/** Faults at every size, in both themes, with letters of the usual and of twice the size. */
async function faultsEverywhere(): Promise<readonly string[]> {
  const found: string[] = [];
  for (const size of SIZES) {
    await page.setViewportSize(size);
    for (const [colorScheme, letters] of LOOKS) {
      // Twice the letters on a wall say nothing that a desk does not.
      if (letters > 1 && size === SIZES[3]) continue;
      await page.emulateMedia({ colorScheme });
      await setLetters(letters);
      const faults = await faultsOf(page);
      found.push(...faults.map((one) => `${size.width} ${colorScheme} ×${letters}: ${one}`));
    }
  }
  await setLetters(1);
  return found;
}

/** As the setting does it; two frames later everything stands where it belongs. */
function setLetters(times: number): Promise<void> {
  return page.evaluate(
    (text) =>
      new Promise<void>((done) => {
        document.documentElement.style.setProperty('--text', String(text));
        requestAnimationFrame(() => requestAnimationFrame(() => done()));
      }),
    times,
  );
}

/** Where axe looks. On the Bench every contrast is measured above already, so once is enough there. */
const AXE_LOOKS = [
  [SIZES[0], 'dark'],
  [SIZES[2], 'light'],
] as const;

/** Faults that axe calls serious or critical. */
async function axeFaults(times: number): Promise<readonly string[]> {
  const found: string[] = [];
  for (const [size, colorScheme] of AXE_LOOKS.slice(0, times)) {
    await page.emulateMedia({ colorScheme });
    await page.setViewportSize(size);
    const { violations } = await page.evaluate(() =>
      window.axe.run({ resultTypes: ['violations'] }),
    );
    const grave = violations.filter(({ impact }) => impact === 'serious' || impact === 'critical');
    found.push(
      ...grave.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(' ')}`),
    );
  }
  return found;
}

/** As a finger does it, in the middle of the run. */
async function takePace(word: string): Promise<void> {
  const pace = page.locator(`button[data-word="${word}"]`);
  const fold = page.getByRole('button', { name: /^Pace/ });
  if (!(await pace.isVisible())) await fold.click();
  await pace.click();
  await pace.locator('.icon').waitFor();
  await fold.click();
}

async function isWhole(): Promise<void> {
  expect(await faultsEverywhere()).toEqual([]);
  const onBench = (await page.locator('.bench').count()) > 0;
  expect(await axeFaults(onBench ? 1 : 2)).toEqual([]);
}

describe('the Bench is whole at every size', () => {
  it('while it tells', isWhole);

  it('while it asks for a fact', async () => {
    await walkUntil(page, ({ title }) => title === 'Emergency stop');
    await isWhole();
  });

  it('while it lets choose', async () => {
    await walkUntil(page, ({ title }) => title === 'Machine card');
    await isWhole();
  });

  it('while a size is typed, and read back', async () => {
    await walkUntil(page, ({ layout }) => layout === 'measuring');
    await page.keyboard.type('25.02');
    expect(await faultsEverywhere()).toEqual([]);
    await page.keyboard.press('Enter');
    await page.locator('.read-back').waitFor();
    await isWhole();
  });

  it('at a gate of thirteen facts', async () => {
    await walkUntil(page, ({ layout }) => layout === 'gate');
    await isWhole();
  });

  it('at own pace, with the trade words opened', async () => {
    await takePace('own pace');
    await page.getByRole('button', { name: 'Trade words' }).click();
    await page.locator('.words-search input').fill('tail');
    await page
      .getByRole('button', { name: /^tailstock/ })
      .first()
      .click();
    await page.locator('.word-about').waitFor();
    await isWhole();
    await page.getByRole('button', { name: 'Trade words' }).click();
  });

  it('at the first-time pace, with a check question', async () => {
    await takePace('first time');
    await walkUntil(page, ({ all }) => all.includes('Nothing depends on it'));
    await isWhole();
    await page.locator('button[data-word="pass on"]').click();
    await takePace('familiar');
  });

  it('with nine figures, and the working of one of them opened', async () => {
    await walkUntil(page, ({ lead }) => lead.startsWith('Set the cross dial'));
    await page.locator('.figure.tells').first().click();
    await page.locator('.behind').waitFor();
    await isWhole();
  });

  it('while it cuts', async () => {
    await walkUntil(page, ({ lead }) => lead.startsWith('Cut'));
    await page.getByRole('button', { name: 'Something changed' }).click();
    await isWhole();
  });

  it('while it is held after a stop', async () => {
    await page.keyboard.press('s');
    await page.locator('.held-danger').waitFor();
    await isWhole();
  });

  it('when the job is done', async () => {
    await walkUntil(page, ({ layout }) => layout === 'done');
    await isWhole();
  });
});

describe('the other screens are whole at every size', () => {
  it.each([
    ['the Shelf', '#/shelf', '.shelf'],
    ['Begin', '#/begin/gate-hinge-pin', '.begin'],
    ['the Logbook', '#/logbook', '.run-row'],
    ['the Slate', '#/slate/card-speed', '.slate-fields'],
    ['the Toolroom', '#/toolroom', '.settings'],
    ['setting up the ear', '#/ear', '#voices-title'],
  ])('%s', async (_, hash, landmark) => {
    await page.goto(`${site.address}${hash}`);
    await page.locator(landmark).first().waitFor();
    await isWhole();
  });

  it('a kept run', async () => {
    await page.goto(`${site.address}#/logbook`);
    await page.locator('.run-row').first().click();
    await page.locator('.kept').waitFor();
    await isWhole();
  });
});
