/** Every screen by keyboard alone: all is reached, seen and in the order of reading, and every form and file works. */

import type { Browser, CDPSession, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { startChromium } from './chromium.ts';
import { to } from './plant.ts';
import { fileOfShop } from './plant-shop.ts';
import { tabFaults, tabTo } from './screens-tab.ts';
import { walkUntil } from './screens-walk.ts';
import { serveDist } from './site.ts';

const phrase = 'blue anvil morning';
/** The smallest picture there is: one dot (PNG, ISO/IEC 15948). */
const dot =
  'iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==';

let browser: Browser;
let site: Awaited<ReturnType<typeof serveDist>>;
let page: Page;
let session: CDPSession;

beforeAll(async () => {
  [browser, site] = await Promise.all([startChromium(), serveDist()]);
  const context = await browser.newContext({
    reducedMotion: 'reduce',
    serviceWorkers: 'block',
    viewport: { width: 1180, height: 820 },
  });
  page = await context.newPage();
  // While somebody listens no window of the system opens.
  page.on('filechooser', () => undefined);
  session = await context.newCDPSession(page);
  await page.goto(`${site.address}#/logbook`);
  await page.locator('#keep-title').waitFor();
});
afterAll(async () => {
  await browser.close();
  await site.close();
});

const press = (key: string) => page.keyboard.press(key);
const type = (text: string) => page.keyboard.type(text);
const isShown = (text: string | RegExp) => page.getByText(text).first().waitFor();
const focusIsOn = (id: string) =>
  expect.poll(() => page.evaluate(() => document.activeElement?.id)).toBe(id);

/** What a screen reader is given of what can be worked, and has no name; and names that two buttons share. */
async function nameFaults(): Promise<readonly string[]> {
  const { nodes } = await session.send('Accessibility.getFullAXTree');
  const worked = nodes.filter(({ ignored, role }) => !ignored && WORKED.has(role?.value));
  const named = worked.map(({ role, name }) => `${role?.value} "${name?.value ?? ''}"`);
  const nameless = named.filter((one) => one.endsWith(' ""'));
  // A size may be measured twice, and days bring buttons of the browser; else what a button does stands on it once.
  const buttons = named.filter((one) => /^button \D+$/.test(one) && !one.includes('date picker'));
  const twice = buttons.filter((one, place) => buttons.indexOf(one) < place);
  return [...nameless, ...twice.map((one) => `${one} stands there twice`)];
}

const WORKED: ReadonlySet<unknown> = new Set([
  ...['button', 'link', 'textbox', 'searchbox', 'combobox', 'slider', 'spinbutton', 'radio'],
  ...['checkbox', 'image', 'progressbar', 'meter', 'region', 'navigation', 'heading'],
]);

async function isWorkedByKeys(): Promise<void> {
  expect(await tabFaults(page)).toEqual([]);
  expect(await nameFaults()).toEqual([]);
}

describe('files, by keys', () => {
  it('a file is taken in', async () => {
    await tabTo(page, 'Take in a file');
    const chooser = page.waitForEvent('filechooser');
    await press('Enter');
    const buffer = Buffer.from(await fileOfShop());
    await (await chooser).setFiles({ name: 'shop.json', mimeType: 'application/json', buffer });
    await isShown(/taken in/i);
    await page.locator('.run-row').first().waitFor();
  });

  it('the whole Logbook is written to a file', async () => {
    await tabTo(page, 'Write all to a file');
    const download = page.waitForEvent('download');
    await press('Enter');
    expect((await download).suggestedFilename()).toMatch(/\.json$/);
  });
});

describe('what belongs to the shop, by keys', () => {
  it('an operator is added, given a passphrase, and has a sheet with a table to take along', async () => {
    await to(page, '#/toolroom', '.settings');
    await page.locator('#operators-title').focus();
    await tabTo(page, 'Name');
    await type('Ruth');
    await press('Enter');
    await isShown('Ruth is in the list.');
    await page.locator('#operators-title').focus();
    await tabTo(page, 'Change Ruth');
    await press('Enter');
    await tabTo(page, 'New passphrase');
    await type(phrase);
    await press('Enter');
    await isShown('The passphrase is set.');
    await isWorkedByKeys();
    await page.locator('#operators-title').focus();
    await tabTo(page, 'Sheet Ruth');
    await press('Enter');
    await page.locator('.sheet-rows').waitFor();
    await tabTo(page, 'Sheet, CSV');
    const download = page.waitForEvent('download');
    await press('Enter');
    expect((await download).suggestedFilename()).toMatch(/\.csv$/);
    await isWorkedByKeys();
  });

  it('a material is written, kept and taken away', async () => {
    await to(page, '#/toolroom', '.settings');
    await page.locator('#materials-title').focus();
    await tabTo(page, 'Write a material');
    await press('Enter');
    await focusIsOn('material-form');
    await tabTo(page, 'Name');
    await type('Gate brass');
    await tabTo(page, 'Where the numbers come from');
    await type('our own trials');
    expect(await nameFaults()).toEqual([]);
    await press('Enter');
    await focusIsOn('materials-title');
    await tabTo(page, 'Take away Gate brass');
    await press('Enter');
    await press('Enter');
    await focusIsOn('materials-title');
    expect(await page.getByRole('heading', { name: 'Gate brass' }).count()).toBe(0);
  });

  it('a card is copied, changed as a form and as text, and kept', async () => {
    await page.locator('#cards-title').focus();
    await press('Tab');
    await press('Enter');
    await focusIsOn('editor-title');
    await isWorkedByKeys();
    await page.locator('#editor-title').focus();
    await tabTo(page, 'As text');
    await press('Enter');
    await page.locator('#card-text').waitFor();
    await tabTo(page, 'Keep the card');
    await press('Enter');
    await focusIsOn('cards-title');
  });
});

describe('the record, by keys', () => {
  it('a run is found, opened, gone through word by word, and photographed', async () => {
    await to(page, '#/logbook', '.run-row');
    await tabTo(page, 'Find');
    await type('hinge piece 5');
    await tabTo(page, /^Gate hinge pin/);
    await press('Enter');
    await page.locator('.replay').waitFor();
    await isWorkedByKeys();
    await page.locator('#kept-photos').focus();
    await tabTo(page, 'Photo of the piece');
    const chooser = page.waitForEvent('filechooser');
    await press('Enter');
    const buffer = Buffer.from(dot, 'base64');
    await (await chooser).setFiles({ name: 'dot.png', mimeType: 'image/png', buffer });
    await page.locator('.photo').waitFor();
    await page.locator('#kept-photos').focus();
    await tabTo(page, /^Take this photo away/);
    await press('Enter');
    await focusIsOn('kept-photos');
    await page.locator('#replay-place').focus();
    await press('End');
    const place = () => page.locator('#replay-place').inputValue();
    const last = Number(await place());
    await press('ArrowLeft');
    await tabTo(page, 'Back');
    await press('Enter');
    expect(Number(await place())).toBe(last - 2);
  });

  it('a batch is read, and its next piece begun', async () => {
    await to(page, '#/batch/pin-1', '.batch-sizes figure');
    await isWorkedByKeys();
    await page.locator('.frame-main').focus();
    await tabTo(page, 'Next piece of the batch');
    await press('Enter');
    await page.locator('.begin').waitFor();
    await isWorkedByKeys();
  });

  it.each([
    ['the Shelf', '#/shelf', '.shelf'],
    ['the Slate', '#/slate/card-speed', '.slate-fields'],
    ['setting up the ear', '#/ear', '#voices-title'],
    ['the Logbook', '#/logbook', '.run-row'],
  ])('%s is gone through', async (_, hash, landmark) => {
    await to(page, hash, landmark);
    await isWorkedByKeys();
  });
});

describe('a run that waits for an instructor, by keys', () => {
  it('takes a note, and is released', async () => {
    await to(page, '#/run/waits', '.bench');
    await walkUntil(page, ({ all }) => all.includes('Release by an instructor'));
    await page.locator('.release').waitFor();
    await isWorkedByKeys();
    await page.locator('.machine [tabindex="0"]').focus();
    await press('ArrowRight');
    expect(
      await page.evaluate(() => document.activeElement?.matches('[data-touch][tabindex="-1"]')),
    ).toBe(true);
    await tabTo(page, /^Note/);
    await press('Enter');
    await tabTo(page, 'A note for the record');
    await type('Half-nut lever is stiff.');
    await tabTo(page, 'Keep the note');
    await press('Enter');
    await page.locator('.note-panel').waitFor({ state: 'detached' });
    await tabTo(page, 'Passphrase');
    await type(phrase);
    await press('Enter');
    await page.locator('.release').waitFor({ state: 'detached', timeout: 15_000 });
  });
});
