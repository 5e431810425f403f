/**
 * The ear is set up by a person before work, in Chromium with its fake microphone: level, room, voice. And the Slate's
 * microphone, with the ear of this page and with a fake recogniser of the browser.
 */
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { startChromium } from './chromium.ts';
import { fakeSpeech } from './fake-speech.ts';
import { type RoomOfSound, roomOfSound } from './room-of-sound.ts';
import { serveDist } from './site.ts';
import { Speaker } from './speaker.ts';

let site: Awaited<ReturnType<typeof serveDist>>;
let browser: Browser;
let room: RoomOfSound;

beforeAll(async () => {
  room = roomOfSound();
  site = await serveDist();
  browser = await startChromium(room.switches);
});

afterAll(async () => {
  await browser?.close();
  await site?.close();
  room?.remove();
});

describe('the ear of this page', () => {
  it('is set up: a room is measured, a word is learnt in two sayings, heard, and forgotten', async () => {
    const person = await Speaker.at(browser, `${site.address}#/ear`, room);
    const { page } = person;
    await page.getByRole('button', { name: 'Open the microphone' }).click();
    await page.getByRole('button', { name: 'Measure the room' }).click();
    await page.getByText(/Measured: .* heard safely/).waitFor({ timeout: 20_000 });

    await page.getByRole('button', { name: 'Begin', exact: true }).click();
    await page.getByText('Say: stop').waitFor();
    for (const takes of ['Kept.', 'Say: hold']) {
      await person.utters('stop');
      await page.getByText(takes).first().waitFor();
    }
    await page.getByRole('button', { name: 'Pause' }).click();
    await page.getByText('1 of').waitFor();
    await person.utters('stop');
    await page.getByText('Heard: stop').waitFor();

    await page.reload();
    await page.getByText('nobody named: 1 word').waitFor();
    await page.getByRole('button', { name: 'Forget the voice of nobody named' }).click();
    await page.getByText('No voice is kept.').waitFor();
    await person.context.close();
  });

  it('hears a question on the Slate and lets the microphone go', async () => {
    const person = await Speaker.at(browser, site.address, room);
    const { page } = person;
    await person.chooseVoices(1.6);
    await page.getByRole('link', { name: 'Slate', exact: true }).click();
    await page.getByRole('button', { name: 'Say it' }).click();
    await page.getByRole('button', { name: 'Listening: say it' }).waitFor();
    await person.utters('speed for thirty brass');
    await page.locator('.answer-value').waitFor();
    await page.getByRole('button', { name: 'Say it' }).waitFor();
    await person.context.close();
  });
});

describe('the speech of the browser', () => {
  it('hears a question on the Slate in free words', async () => {
    const context = await browser.newContext();
    const page = await context.newPage();
    await fakeSpeech(page);
    await page.goto(site.address);
    await page.getByRole('link', { name: 'Toolroom', exact: true }).click();
    await page.locator('input[name="ear"][value="browser-service"]').check({ force: true });
    await page.getByText('Sound leaves this device').waitFor();
    await page.getByRole('link', { name: 'Slate', exact: true }).click();
    await page.getByRole('button', { name: 'Say it' }).click();
    await expect
      .poll(() => page.evaluate(() => window.fakeSpeech.say('speed for thirty millimetres brass')))
      .toBe(true);
    await page.locator('.answer-value').waitFor();
    await context.close();
  });
});
