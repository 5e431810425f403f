/** The Bench under hands: keyboard alone, a foot switch, a key held down, a double tap; and nothing lost on Begin. */

import type { Browser, Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { startChromium } from './chromium.ts';
import { beginRun, walkUntil } from './screens-walk.ts';
import { serveDist } from './site.ts';

let browser: Browser;
let site: Awaited<ReturnType<typeof serveDist>>;
let page: Page;

beforeAll(async () => {
  [browser, site] = await Promise.all([startChromium(), serveDist()]);
  page = await (await browser.newContext({ serviceWorkers: 'block' })).newPage();
});
afterAll(async () => {
  await browser.close();
  await site.close();
});

const openFacts = () => page.locator('.gate-row.open');
const titleIs = (title: string) =>
  expect.poll(() => page.locator('.bench-title').textContent()).toBe(title);
const saidIs = (line: RegExp) =>
  expect.poll(() => page.locator('.said').textContent()).toMatch(line);

/** The key that is printed on a button. */
async function keyOn(button: Locator): Promise<string> {
  return ((await button.locator('.key').textContent()) ?? '').toLowerCase();
}

describe('by keyboard alone', () => {
  beforeEach(() => beginRun(page, site.address));

  it('facts are answered by the keys that stand on them, and choices by their number', async () => {
    await page.keyboard.press('Space');
    await titleIs('Protect yourself');
    await page.keyboard.press(await keyOn(openFacts().first()));
    await expect.poll(() => openFacts().count()).toBe(1);
    await page.keyboard.press(await keyOn(openFacts().first()));
    await titleIs('Emergency stop');
    for (const left of [1, 0]) {
      await page.keyboard.press(await keyOn(openFacts().first()));
      await expect.poll(() => openFacts().count()).toBe(left);
    }
    await titleIs('Machine card');
    await page.keyboard.press('1');
    await titleIs('Measure the bar');
  });

  it('the space bar answers no gate, even with the focus on its word', async () => {
    await page.keyboard.press('Space');
    await titleIs('Protect yourself');
    await openFacts().first().focus();
    await page.keyboard.press('Space');
    await saidIs(/^Not yet: eye protection/);
    expect(await openFacts().count()).toBe(2);
  });

  it('a fact that was reached with Tab is answered with Enter', async () => {
    await page.keyboard.press('Space');
    await titleIs('Protect yourself');
    for (let tab = 0; tab < 10; tab++) {
      await page.keyboard.press('Tab');
      if (
        await openFacts()
          .first()
          .evaluate((one) => one === document.activeElement)
      )
        break;
    }
    await page.keyboard.press('Enter');
    await expect.poll(() => openFacts().count()).toBe(1);
  });

  it('a key that is held down counts once', async () => {
    await page.keyboard.down('Space');
    await page.keyboard.down('Space');
    await page.keyboard.down('Space');
    await page.keyboard.up('Space');
    await titleIs('Protect yourself');
    expect(await page.locator('.said').textContent()).not.toMatch(/Not yet/);
  });

  it('a size is typed, read back and taken; the space bar does not take it', async () => {
    await walkUntil(page, ({ pad }) => pad);
    await page.keyboard.type('25.02');
    await page.keyboard.press('Enter');
    await page.locator('.read-back').waitFor();
    await page.keyboard.press('Space');
    await page.keyboard.press('x');
    await expect.poll(() => page.locator('.read-back').count()).toBe(0);
    await titleIs('Measure the bar');
    await page.keyboard.type('25.02');
    await page.keyboard.press('Enter');
    await page.locator('.read-back').waitFor();
    await page.keyboard.press('c');
    await titleIs('Mount the blank');
  });
});

describe('by touch', () => {
  beforeEach(() => beginRun(page, site.address));

  it('a double tap answers one fact only', async () => {
    await page.locator('.dock-next').click();
    await titleIs('Protect yourself');
    await openFacts().first().dblclick();
    await expect.poll(() => openFacts().count()).toBe(1);
    await saidIs(/^$/);
    expect(await openFacts().count()).toBe(1);
  });

  it('facts of a gate keep their places while others are answered', async () => {
    await walkUntil(page, ({ layout }) => layout === 'gate');
    const places = () =>
      page
        .locator('.gate-row')
        .evaluateAll((rows) =>
          rows.map(
            (row) =>
              `${row.querySelector('.gate-label')?.textContent} ${row.getBoundingClientRect().top}`,
          ),
        );
    const before = await places();
    const open = await openFacts().count();
    await openFacts().nth(1).click();
    await expect.poll(() => openFacts().count()).toBe(open - 1);
    expect(await places()).toEqual(before);
  });
});

describe('a run that is given up', () => {
  it('says so, asks for nothing more, and stands in the Logbook', async () => {
    await beginRun(page, site.address);
    await page.getByRole('button', { name: 'End this run' }).click();
    await page.getByRole('button', { name: 'Give up this run' }).click();
    await expect.poll(() => page.getByLabel('Instruction').textContent()).toMatch(/given up/);
    expect(await page.locator('.gate, .pad, .dock-next').count()).toBe(0);
    await page.getByRole('link', { name: 'See it in the Logbook' }).click();
    await page.locator('.kept').waitFor();
    expect(await page.locator('.kept .facts').first().textContent()).toContain('Given up');
  });
});

describe('a wrong number where a job begins', () => {
  it('is told beside its field, and nothing that was typed is lost', async () => {
    await page.goto(`${site.address}#/shelf`);
    await page.goto(`${site.address}#/begin/gate-hinge-pin`);
    await page.getByLabel('Who is making it').fill('Marta');
    await page.getByLabel(/^Bar diameter/).fill('1 1/8 in');
    await page.getByLabel(/^Hole depth/).fill('200');
    await page.getByRole('button', { name: /Begin the job/ }).click();
    await page.getByRole('alert').waitFor();
    expect(await page.getByRole('alert').textContent()).toContain('Hole depth must be 10 to 30 mm');
    expect(await page.getByLabel(/^Bar diameter/).inputValue()).toBe('1 1/8 in');
    expect(await page.getByText('Read as 28.575 mm').count()).toBe(1);
    await page.getByLabel(/^Hole depth/).fill('20');
    await page.getByRole('button', { name: /Begin the job/ }).click();
    await page.locator('.bench').waitFor();
  });
});
