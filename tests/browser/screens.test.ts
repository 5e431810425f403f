/** The screens as they stand in real Chromium, measured from phone to wall, light and dark, at twice the letters. */

import { createRequire } from 'node:module';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { startChromium } from './chromium.ts';
import { fakeSpeech } from './fake-speech.ts';
import { takeIn, to } from './plant.ts';
import { fileOfShop } from './plant-shop.ts';
import { colourFaults } from './screens-colours.ts';
import { faultsOf } from './screens-measure.ts';
import { beginRun, walkUntil } from './screens-walk.ts';
import { serveDist } from './site.ts';

const SIZES = [
  { width: 360, height: 740 },
  { width: 820, height: 1180 },
  { width: 1440, height: 900 },
  { width: 3840, height: 2160 },
] as const;
/**
 * Sizes, and how many times the usual size of letters. Colours move nothing, which is looked at, so sizes are looked at
 * in one theme; twice the letters on a wall say nothing that a desk does not.
 */
const LOOKS = [
  [SIZES[3], 1],
  [SIZES[2], 1],
  [SIZES[2], 2],
  [SIZES[1], 1],
  [SIZES[1], 2],
  [SIZES[0], 2],
  [SIZES[0], 1],
] as const;
/** The phone lying down, where its little height tells. */
const LYING = { width: 740, height: 360 };
const axe = createRequire(import.meta.url).resolve('axe-core/axe.min.js');

let browser: Browser;
let site: Awaited<ReturnType<typeof serveDist>>;
let page: Page;

beforeAll(async () => {
  [browser, site] = await Promise.all([startChromium(), serveDist()]);
  const context = await browser.newContext({ reducedMotion: 'reduce', serviceWorkers: 'block' });
  page = await context.newPage();
  await page.addInitScript({ path: axe });
  await fakeSpeech(page);
  await page.goto(`${site.address}#/toolroom`);
  await page.locator('input[name="ear"][value="browser-service"]').check({ force: true });
  await takeIn(page, await fileOfShop());
  await beginRun(page, site.address);
});
afterAll(async () => {
  await browser.close();
  await site.close();
});

/** Faults at every size, with letters of the usual and of twice the size. Ends on a phone. */
async function faultsEverywhere(): Promise<readonly string[]> {
  const found: string[] = [];
  for (const [size, letters] of LOOKS) {
    await page.setViewportSize(size);
    await setLetters(letters);
    const faults = await faultsOf(page);
    found.push(...faults.map((one) => `${size.width} ×${letters}: ${one}`));
  }
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
  expect(await colourFaults(page, SIZES[0], SIZES[2])).toEqual([]);
}

async function isWholeLyingDown(): Promise<void> {
  await page.setViewportSize(LYING);
  await setLetters(1);
  expect(await faultsOf(page)).toEqual([]);
}

/** On an upright phone, whose one column holds all: what is above what. */
async function isAbove(upper: string, lower: string): Promise<void> {
  await page.setViewportSize(SIZES[0]);
  const heightOf = (selector: string) =>
    page.locator(selector).evaluate((one) => one.getBoundingClientRect().top);
  await expect.poll(async () => (await heightOf(upper)) < (await heightOf(lower))).toBe(true);
}

async function isWholeInGerman(): Promise<void> {
  expect(await page.evaluate(() => document.documentElement.lang)).toBe('de');
  expect(await faultsEverywhere()).toEqual([]);
}

describe('the Bench is whole at every size', () => {
  it('while it tells, with a note begun', async () => {
    await page.getByRole('button', { name: 'Note', exact: true }).click();
    await page.locator('.keep-beside textarea').waitFor();
    await isWhole();
    await page.getByRole('button', { name: 'Note', exact: true }).click();
  });

  it('while it asks for a fact', async () => {
    await walkUntil(page, ({ title }) => title === 'Emergency stop');
    await isWhole();
  });

  it('while it lets choose', async () => {
    await walkUntil(page, ({ title }) => title === 'Machine card');
    await isWhole();
  });

  it('while the Slate answers a question', async () => {
    for (const said of ['slate', 'tapping drill for M ten']) {
      await page.waitForFunction((text) => window.fakeSpeech.say(text), said);
    }
    await expect
      .poll(() => page.locator('.said').textContent(), { timeout: 15_000 })
      .toMatch(/[Ee]ight point five|8\.5/);
    await isWhole();
  });

  it('while a size is typed, and read back', async () => {
    await walkUntil(page, ({ layout }) => layout === 'measuring');
    await page.keyboard.type('25.02');
    expect(await faultsEverywhere()).toEqual([]);
    await page.keyboard.press('Enter');
    await page.locator('.read-back').waitFor();
    await isWhole();
    await isWholeLyingDown();
  });

  it('at a gate of thirteen facts', async () => {
    await walkUntil(page, ({ layout }) => layout === 'gate');
    await isWhole();
    await isWholeLyingDown();
    await isAbove('.picture.machine', '.asks');
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

  it('in the walk of a start that does not come', async () => {
    await walkUntil(page, ({ all }) => all.includes('spindle running'));
    await page.locator('.troubles [data-word="will not start"]').click();
    await page.locator('[data-word="carry on"]').waitFor();
    await isWhole();
    await page.locator('.gate-row.open, .choice').first().click();
    await page.locator('[data-word="carry on"]').click();
  });

  it('while it cuts', async () => {
    await walkUntil(page, ({ lead }) => lead.startsWith('Cut'));
    await page.getByRole('button', { name: 'Something changed' }).click();
    await isWhole();
    await isWholeLyingDown();
    await isAbove('.picture.machine', '.asks');
  });

  it('while it cuts at own pace, with the picture behind the questions', async () => {
    await takePace('own pace');
    await isAbove('.figures', '.asks');
    await isAbove('.asks', '.picture.machine');
    await isWholeLyingDown();
    await takePace('familiar');
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
    ['the Shelf', '#/shelf', '.shelf', false],
    ['Begin', '#/begin/gate-hinge-pin', '.begin', true],
    ['the Logbook', '#/logbook', '.run-row', true],
    ['the Slate', '#/slate/card-speed', '.slate-fields', false],
    ['the Toolroom', '#/toolroom', '.settings', false],
    ['setting up the ear', '#/ear', '#voices-title', false],
  ])('%s', async (_, hash, landmark, lying) => {
    await page.goto(`${site.address}${hash}`);
    await page.locator(landmark).first().waitFor();
    await isWhole();
    if (lying) await isWholeLyingDown();
  });

  it('a kept run of a batch, with its notes and its replay', async () => {
    await to(page, '#/logbook/pin-5', '.replay');
    await page.getByText('The half-nut lever is stiff').first().waitFor();
    await isWhole();
  });

  /** A4 as ISO 216 has it, 297 mm by 210 mm, in points of 1/72 inch. */
  it('that run on paper, with its drawing on one sheet that lies', async () => {
    const paper = (await page.pdf({ format: 'A4', preferCSSPageSize: true })).toString('latin1');
    const sheets = [...paper.matchAll(/\/MediaBox \[0 0 ([\d.]+) ([\d.]+)\]/g)];
    const sizes = sheets.map(([, width, height]) => [Number(width), Number(height)] as const);
    const lying = sizes.filter(([width, height]) => width > height);
    expect(lying.map((sides) => sides.map((side) => Math.round((side / 72) * 25.4)))).toEqual([
      [297, 210],
    ]);
    expect(sizes.length).toBeGreaterThan(1);
  });

  it('a batch', async () => {
    await to(page, '#/batch/pin-1', '.batch-sizes figure');
    await isWhole();
  });

  it('the Toolroom with its forms: an operator, a material, a card', async () => {
    await to(page, '#/toolroom', '.settings');
    await page.locator('#operator-new').fill('Ruth');
    await page.getByRole('button', { name: 'Add', exact: true }).click();
    await page.getByRole('button', { name: 'Change Ruth' }).click();
    await page.getByLabel('New passphrase').fill('blue anvil morning');
    await page.getByRole('button', { name: 'Set the passphrase' }).click();
    await page.getByText('The passphrase is set.').waitFor();
    await page.locator('.new-material button').click();
    await page.locator('#cards-title ~ ul button').first().click();
    await page.locator('#cards-title').waitFor({ state: 'detached' });
    await isWhole();
  });

  it('the sheet of an operator', async () => {
    await to(page, '#/shelf', '.shelf');
    await to(page, '#/toolroom', '.settings');
    await page.getByRole('link', { name: 'Sheet Ruth' }).click();
    await page.locator('.sheet-rows').waitFor();
    await isWhole();
  });
});

describe('a run that waits for an instructor', () => {
  it('is whole at every size', async () => {
    await to(page, '#/run/waits', '.bench');
    await walkUntil(page, ({ all }) => all.includes('Release by an instructor'));
    await page.locator('.release').waitFor();
    await isWhole();
  });
});

describe('in German, whose words are longer, nothing is cut', () => {
  it.each([
    ['held after a break', 'held'],
    ['cutting', 'cutting'],
    ['measuring', 'measuring'],
  ])('%s', async (_, layout) => {
    await to(page, '#/run/german', '.bench');
    await walkUntil(page, (seen) => seen.layout === layout);
    expect(await faultsEverywhere()).toEqual([]);
  });

  it('the Shelf, Begin, the Logbook, the Slate and the Toolroom', async () => {
    await to(page, '#/toolroom', '.settings');
    await page.locator('input[name="language"][value="de"]').check({ force: true });
    await expect.poll(() => page.evaluate(() => document.documentElement.lang)).toBe('de');
    await isWholeInGerman();
    for (const [hash, landmark] of [
      ['#/shelf', '.shelf'],
      ['#/begin/gate-hinge-pin', '.begin'],
      ['#/logbook', '.run-row'],
      ['#/logbook/pin-5', '.replay'],
      ['#/slate/card-speed', '.slate-fields'],
    ] as const) {
      await to(page, hash, landmark);
      await isWholeInGerman();
    }
  });
});
