/** The page in German: chosen once, every screen is German, and fits the narrowest screen. */

import { readdirSync, readFileSync } from 'node:fs';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { textsOfFile } from '../../src/flow/index.ts';
import { german } from '../../src/texts/de/index.ts';
import * as areas from '../../src/texts/en/index.ts';
import { sayIn, unitIn } from '../../src/texts/index.ts';
import { startChromium } from './chromium.ts';
import { serveDist } from './site.ts';

let browser: Browser;
let site: Awaited<ReturnType<typeof serveDist>>;
let page: Page;

beforeAll(async () => {
  [browser, site] = await Promise.all([startChromium(), serveDist()]);
  const context = await browser.newContext({
    serviceWorkers: 'block',
    locale: 'de-DE',
    viewport: { width: 360, height: 740 },
  });
  page = await context.newPage();
});
afterAll(async () => {
  await browser.close();
  await site.close();
});

/** All that the tables, flows, kinds and cards say in English, and German does not say anywhere. */
const english = new Set<string>();
const own = new Set(
  Object.values(german.tables)
    .flatMap((table) => Object.values(table))
    .flat(),
);
for (const { texts } of Object.values(areas)) addEnglish(Object.values(texts).flat());
for (const folder of ['', 'kinds/', 'machines/']) {
  const there = new URL(`../../flows/${folder}`, import.meta.url);
  for (const name of readdirSync(there).filter((one) => one.endsWith('.json'))) {
    addEnglish([...textsOfFile(readFileSync(new URL(name, there), 'utf8')).values()].flat());
    const inGerman = new URL(`../../flows/texts/de/${name}`, import.meta.url);
    for (const text of Object.values(textsIn(inGerman)).flat()) own.add(text);
  }
}
/** Units that have no sign of their own in German. */
for (const unit of Object.keys(german.spoken?.units ?? {})) own.add(unitIn(german, unit));
for (const text of own) english.delete(String(text));

/** Of sentences with values: the longest part between these, where it has two words and German never says it. */
const templates = [
  ...Object.values(areas).flatMap(({ texts }) => Object.values<string | readonly string[]>(texts)),
  ...Object.keys(german.sentences ?? {}),
];
const inSentences = templates
  .flat()
  .filter((text) => text.includes('{') && !text.includes('{#'))
  .map((text) => longest(text.split(/\{[^{}]*\}/)).trim())
  .filter((part) => /\p{L}{2} \p{L}{2}/u.test(part) && part.length >= 8)
  .filter((part) => ![...own].some((text) => String(text).includes(part)));

function longest(parts: readonly string[]): string {
  return parts.reduce((one, other) => (other.length > one.length ? other : one), '');
}

function addEnglish(texts: readonly string[]): void {
  for (const text of texts) if (/\p{L}{3}/u.test(text)) english.add(text);
}

function textsIn(file: URL): Readonly<Record<string, string | readonly string[]>> {
  return JSON.parse(readFileSync(file, 'utf8')).texts;
}

/** Every text on the page and every name or hint in it; then what of them is English, and how wide the page is. */
async function isGerman(): Promise<void> {
  const seen = await page.evaluate(() => {
    const attributes = ['aria-label', 'aria-valuetext', 'alt', 'placeholder', 'title'];
    const texts = [...document.querySelectorAll('body, body *')].flatMap((one) => [
      ...[...one.childNodes].flatMap((node) => (node instanceof Text ? [node.data] : [])),
      ...attributes.flatMap((name) => one.getAttribute(name) ?? []),
    ]);
    const { scrollWidth, clientWidth } = document.documentElement;
    return { texts: texts.map((text) => text.trim()), scrollWidth, clientWidth };
  });
  expect(seen.texts.length).toBeGreaterThan(10);
  expect(seen.texts.filter((text) => english.has(text))).toEqual([]);
  expect(inSentences.filter((part) => seen.texts.some((text) => text.includes(part)))).toEqual([]);
  expect(seen.scrollWidth).toBeLessThanOrEqual(seen.clientWidth);
}

/** Words of labels that stand in two lines, though this browser knows no place to part them. */
async function partedWords(): Promise<readonly string[]> {
  return page.evaluate(() => {
    const parted: string[] = [];
    for (const label of document.querySelectorAll('.figure-label, .gate-label')) {
      const walker = document.createTreeWalker(label, NodeFilter.SHOW_TEXT);
      for (let node = walker.nextNode(); node; node = walker.nextNode()) {
        for (const { index, 0: word } of (node.textContent ?? '').matchAll(/[^\s-]+-?/g)) {
          const range = document.createRange();
          range.setStart(node, index);
          range.setEnd(node, index + word.length);
          if (range.getClientRects().length > 1) parted.push(word);
        }
      }
    }
    return parted;
  });
}

async function goTo(address: string, landmark: string): Promise<void> {
  await page.evaluate((hash) => {
    location.hash = hash;
  }, address);
  await page.locator(landmark).first().waitFor();
}

it('is chosen in the Toolroom, and the page says its language', async () => {
  await page.goto(`${site.address}#/toolroom`);
  await page.locator('input[name="ear"][value="keys"]').check({ force: true });
  await page.locator('input[name="language"][value="de"]').check({ force: true });
  await expect.poll(() => page.evaluate(() => document.documentElement.lang)).toBe('de');
  await page.getByText('können nur Englisch').waitFor();
  await isGerman();
});

it('shows the Shelf in German', async () => {
  await page.getByRole('link', { name: 'Regal', exact: true }).click();
  await page.getByRole('heading', { name: 'Torbandbolzen', exact: true }).waitFor();
  await isGerman();
});

it('leads a run in German, by keys and by buttons', async () => {
  await page.getByLabel('Beginnen: Torbandbolzen').click();
  await page.getByLabel('Wer macht es').fill('Ida');
  await isGerman();
  expect(await partedWords()).toEqual([]);
  await page.getByRole('button', { name: 'Die Arbeit beginnen' }).click();
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
  expect(await partedWords()).toEqual([]);
  await page.locator('.dock-stop').click();
  await expect.poll(() => page.locator('.held-danger').textContent()).toContain('Not-Halt');
  await isGerman();
});

it('keeps the number of the step clear of whose turn it is, in the longest words', async () => {
  const say = sayIn(german, areas.dockTexts);
  const turns = (['speaking', 'readingBack', 'askingAgain', 'heldTurn'] as const).map((turn) =>
    say(turn),
  );
  const gaps = await page.evaluate((words) => {
    const [sound, count] = ['.sound', '.bench-count'].map((one) => document.querySelector(one));
    const label = sound?.querySelector('span');
    const was = label?.textContent ?? '';
    const number = document.createRange();
    if (count) number.selectNodeContents(count);
    const lines = document.createRange();
    const between = words.map((word) => {
      if (label) label.textContent = word;
      if (label) lines.selectNodeContents(label);
      return {
        gap: (sound?.getBoundingClientRect().left ?? 0) - number.getBoundingClientRect().right,
        broken: lines.getClientRects().length > word.split(' ').length,
      };
    });
    if (label) label.textContent = was;
    return between;
  }, turns);
  expect(gaps.filter(({ gap, broken }) => gap < 0 || broken)).toEqual([]);
});

it('keeps the run in German in the Logbook', async () => {
  await goTo('#/logbook', '.run-row');
  await isGerman();
  await page.locator('.run-row').click();
  await page.getByRole('heading', { name: 'Wort für Wort' }).waitFor();
  await isGerman();
});

it.each([
  ['#/slate', '.slate-ask'],
  ['#/slate/speed-for-material', '.slate-fields'],
  ['#/slate/tap-drill', '.slate-fields'],
  ['#/ear', 'h1'],
])('is German at %s', async (address, landmark) => {
  await goTo(address, landmark);
  await isGerman();
});

it('shows that run in German on an English page', async () => {
  await goTo('#/toolroom', 'input[name="language"]');
  await page.locator('input[name="language"][value="en"]').check({ force: true });
  await expect.poll(() => page.evaluate(() => document.documentElement.lang)).toBe('en');
  await goTo('#/logbook', '.run-row');
  await page.locator('.run-row').click();
  await page.getByRole('heading', { name: 'Wort für Wort' }).waitFor();
  const part = page.locator('.in-language');
  expect(await part.getAttribute('lang')).toBe('de');
  await expect.poll(() => part.textContent()).toContain('Gemacht von');
});
