/** The page in German: chosen once, it is German on the Shelf and the Bench, and fits the narrowest screen. */

import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { dockTexts, frameTexts } from '../../src/texts/index.ts';
import { startChromium } from './chromium.ts';
import { serveDist } from './site.ts';

let browser: Browser;
let site: Awaited<ReturnType<typeof serveDist>>;
let page: Page;

beforeAll(async () => {
  [browser, site] = await Promise.all([startChromium(), serveDist()]);
  const context = await browser.newContext({
    serviceWorkers: 'block',
    viewport: { width: 360, height: 740 },
  });
  page = await context.newPage();
});
afterAll(async () => {
  await browser.close();
  await site.close();
});

/** English texts of two words and more, which German cannot share by chance. */
const english = [frameTexts, dockTexts]
  .flatMap(({ texts }) => Object.values<string>(texts))
  .filter((text) => /^[^{}]+ [^{}]+$/.test(text));

async function isGerman(): Promise<void> {
  const seen = await page.locator('body').innerText();
  expect(english.filter((text) => seen.includes(text))).toEqual([]);
  const wide = await page.evaluate(() => [
    document.documentElement.scrollWidth,
    document.documentElement.clientWidth,
  ]);
  expect(wide[0]).toBeLessThanOrEqual(wide[1] ?? 0);
}

it('is chosen in the Toolroom, and the page says its language', async () => {
  await page.goto(`${site.address}#/toolroom`);
  await page.locator('input[name="ear"][value="keys"]').check({ force: true });
  await page.locator('input[name="language"][value="de"]').check({ force: true });
  await expect.poll(() => page.evaluate(() => document.documentElement.lang)).toBe('de');
  await page.getByText('können nur Englisch').waitFor();
});

it('shows the Shelf in German', async () => {
  await page.getByRole('link', { name: 'Regal', exact: true }).click();
  await page.getByRole('heading', { name: 'Torbandbolzen' }).waitFor();
  await isGerman();
});

it('leads a run in German, by keys and by buttons', async () => {
  await page.getByLabel('Beginnen: Torbandbolzen').click();
  await page.locator('form input:not([type="radio"])').first().waitFor();
  await page
    .locator('#operator, input[name="operator"], form input[type="text"]')
    .first()
    .fill('Ida');
  await page.locator('button.main[type="submit"], form button.main').last().click();
  const title = () => page.locator('.bench-title').textContent();
  await expect.poll(title, { timeout: 30_000 }).toBe('Bevor du anfängst');
  await page.evaluate(
    () => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done))),
  );
  await isGerman();
  await page.keyboard.press('Space');
  await expect.poll(title).toBe('Schütze dich');
  await page.locator('.gate-row.open').first().click();
  await expect.poll(() => page.locator('.gate-row.open').count()).toBe(1);
  await isGerman();
  await page.locator('.dock-stop').click();
  await expect.poll(() => page.locator('.held-danger').textContent()).toContain('Not-Halt');
  await isGerman();
});
