/**
 * The whole job in real Chromium: by voice at the browser's own door, by keys, with breaks in between. All on one page,
 * as in a shop: what it has proved once is not proved again.
 */

import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { startChromium } from './chromium.ts';
import * as words from './hinge-pin.ts';
import { Person } from './person.ts';
import { serveDist } from './site.ts';

let browser: Browser;
let site: Awaited<ReturnType<typeof serveDist>>;
/** The same person at the same page, heard or at the keys. */
let speaking: Person;
let ida: Person;

beforeAll(async () => {
  [browser, site] = await Promise.all([startChromium(), serveDist()]);
  speaking = await Person.at(browser, site.address, 'voice');
  ida = new Person(speaking.page, 'keys');
});
afterAll(async () => {
  await browser.close();
  await site.close();
});

describe('the hinge pin', () => {
  it("is begun by voice at the browser's own door, up to the first cut and a lost guard", async () => {
    await speaking.begin();
    await speaking.says(...words.protect, ...words.mount, ...words.face.slice(0, 5));
    await speaking.isAt(/face from the outside/i);
    await speaking.says('guard open');
    await speaking.isAt(/stop the spindle/i);
    await speaking.says('next');
    expect((await speaking.lines()).at(-1)).toBe('Not yet: spindle.');
  });

  it('is made by keys to the kept record, which opens again with its numbers', async () => {
    await ida.begin();
    await ida.says(...words.wholeJob);
    await ida.isAt(/job is done/i);
    await ida.goTo('#/logbook');
    await ida.page
      .getByRole('link', { name: /Gate hinge pin/ })
      .first()
      .click();
    await ida.shows(/Ida/);
    await ida.shows(/15\.980/);
    await ida.page
      .getByRole('link', { name: /same numbers/i })
      .or(ida.page.getByRole('button', { name: /same numbers/i }))
      .first()
      .click();
    await ida.shows(/Begin the job/);
    expect(await ida.page.getByLabel(/Shank diameter/).inputValue()).toBe('16');
  });

  it('leads through what goes wrong: it will not start, a size said wrong, a hole too shallow', async () => {
    await ida.begin();
    await ida.says(...words.protect, ...words.mount, ...words.face.slice(0, 4));
    await ida.says('will not start', 'spindle stopped', 'next', 'guard closed', 'next');
    await ida.shows(/emergency stop/i);
    await ida.says('stop released', 'next', 'next', 'next', 'next');
    await ida.says('tool clear', ...words.afterHands, ...words.turned, ...words.touch);
    await ida.says('next', ...words.turned, '22.61', 'wrong', '22.16', 'correct');
    await ida.shows(/6\.18/);
    await ida.says(...words.pass('19.32'), ...words.pass('16.48'), ...words.pass('15.98'));
    await ida.says(...words.chamfer, ...words.drillHole.slice(0, -2), '19', 'correct');
    await ida.shows(/Drill on/);
    await ida.says(...words.afterHands, ...words.turned, '20', 'correct');
    await ida.shows(/Tailstock back/);
  });

  it('goes on with keys when the microphone is refused', async () => {
    await speaking.page.evaluate(() => {
      window.fakeSpeech.failWith = 'not-allowed';
    });
    await speaking.begin();
    await speaking.shows(/microphone/i);
    await speaking.page.keyboard.press('Space');
    await speaking.isAt(/eyes and clothing/i);
    await speaking.page.evaluate(() => {
      window.fakeSpeech.failWith = null;
    });
  });
});

describe('an address that changes while the page opens', () => {
  it('is followed', async () => {
    const page = await ida.page.context().newPage();
    await page.addInitScript(() => {
      // The first moment after the first screen is drawn, before it is painted.
      new MutationObserver((_, observer) => {
        if (document.querySelector('#page > *') === null) return;
        observer.disconnect();
        location.hash = '#/logbook';
      }).observe(document, { childList: true, subtree: true });
    });
    await page.goto(`${site.address}#/toolroom`);
    await page.locator('#logbook-title').waitFor();
    await page.close();
  });
});

describe('a second tab on the same run', () => {
  it('is told that it is a second tab', async () => {
    await ida.begin();
    const second = await ida.page.context().newPage();
    await second.goto(ida.page.url());
    await second
      .getByText(/another tab/i)
      .first()
      .waitFor();
    await second.close();
    await ida.says('next');
    await ida.isAt(/eyes and clothing/i);
  });
});

describe('a run that was broken off', () => {
  it('comes back to the same step after a reload, says so, and asks for the facts anew', async () => {
    await ida.begin();
    await ida.says(...words.protect, ...words.mount, ...words.face, 'spindle running');
    await ida.page.reload();
    await ida.shows(/back after a break/i);
    await ida.shows(/Step 13 of 43/);
    await ida.says(
      'spindle stopped',
      ...words.allFacts,
      'carry on',
      'speed set',
      'spindle running',
    );
    await ida.isAt(/touch the bar/i);
  });
});
