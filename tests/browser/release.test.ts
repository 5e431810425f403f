/** An instructor's release in real Chromium: nothing gets by it but the passphrase, and every try is on record. */

import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { RunEntry } from '../../src/bench/ports.ts';
import { releaseFirst } from '../../src/flow/index.ts';
import { sources } from '../bench/scripted.ts';
import { startChromium } from './chromium.ts';
import { fakeSpeech } from './fake-speech.ts';
import * as words from './hinge-pin.ts';
import { entriesBySaying, fileOf, takeIn, to } from './plant.ts';
import { serveDist } from './site.ts';

/** Milliseconds: a passphrase is slow to look at, on purpose. */
const waits = { timeout: 15_000 };
const phrase = 'blue anvil morning';
const texts = { ...sources(), flow: releaseFirst(sources().flow) };
const lead = entriesBySaying([...words.protect, ...words.mount], texts).get('face')?.entries ?? [];

/** A release as this device would write it, but for its seal. */
const forged: RunEntry = {
  ...{ version: 1, runId: 'forged', seq: lead.length, at: 2_500, step: 'face' },
  heard: { text: 'Released by Ruth.', from: 'touch', confidence: 1 },
  event: { type: 'release', step: 'face', by: 'ruth', byName: 'Ruth', seal: 'ab'.repeat(32) },
  outcome: 'moved',
};

let browser: Browser;
let site: Awaited<ReturnType<typeof serveDist>>;
let page: Page;

beforeAll(async () => {
  [browser, site] = await Promise.all([startChromium(), serveDist()]);
  page = await (await browser.newContext({ serviceWorkers: 'block' })).newPage();
  await fakeSpeech(page);
  await page.goto(`${site.address}#/toolroom`);
  await page.locator('input[name="ear"][value="browser-service"]').check({ force: true });
  await makeInstructor();
  const runs = ['asked', 'edited', 'shortened'].map((id) => ({ id, entries: lead }));
  await takeIn(page, await fileOf([...runs, { id: 'forged', entries: [...lead, forged] }], texts));
});
afterAll(async () => {
  await browser.close();
  await site.close();
});

async function makeInstructor(): Promise<void> {
  await page.locator('#operator-new').fill('Ruth');
  await page.getByRole('button', { name: 'Add', exact: true }).click();
  await page.getByRole('button', { name: 'Change Ruth' }).click();
  await page.getByLabel('New passphrase').fill(phrase);
  await page.getByRole('button', { name: 'Set the passphrase' }).click();
  await page.getByText('The passphrase is set.').waitFor();
}

const word = (text: string) => page.locator(`.bench [data-word="${text}"]`).first();
const panel = () => page.locator('.release');

/** From a hold, or from the step before, to the first cut with nothing open but the release. */
async function comeToTheGate(): Promise<void> {
  await answerAll();
  await isWaiting();
}

/** Answers what is asked, and goes on, until nothing but a release or the start is waited for. */
async function answerAll(): Promise<void> {
  for (let answers = 0; answers < 40; answers++) {
    const next = await page.evaluate(openWord);
    if (next === null) return;
    await word(next).click();
    await expect.poll(() => page.evaluate(openWord), waits).not.toBe(next);
  }
}

/** Runs in the page: what is to be pressed next, if anything but the release is open. */
function openWord(): string | null {
  const here = (selector: string) => document.querySelector<HTMLElement>(selector)?.dataset.word;
  if (document.querySelector(':is(.gate, .choices) [data-word="spindle running"]')) return null;
  const onward = document.querySelector('.release') ? undefined : here('.dock-next');
  return here('.gate-row.open') ?? onward ?? null;
}

/** The panel asks, and the word that would tell of a start is not on the list. */
async function isWaiting(): Promise<void> {
  await panel().waitFor();
  expect(await page.locator('.gate-row.open, [data-word="spindle running"]').count()).toBe(0);
}

async function isReleased(): Promise<void> {
  await panel().waitFor({ state: 'detached' });
  await answerAll();
  await word('spindle running').waitFor();
}

/** By keyboard alone: no letter of it is a key of the Bench. */
async function types(secret: string): Promise<void> {
  await panel().getByLabel('Passphrase').focus();
  await page.keyboard.type(secret);
  await page.keyboard.press('Enter');
}

async function entriesOf(run: string): Promise<readonly RunEntry[]> {
  const all = await page.evaluate(rows, 'entries');
  return (all as readonly RunEntry[]).filter(({ runId }) => runId === run);
}

/** Runs in the page. */
function rows(store: string): Promise<readonly unknown[]> {
  return new Promise((done, fail) => {
    const opening = indexedDB.open('followrest');
    opening.onerror = () => fail(opening.error);
    opening.onsuccess = () => {
      const asked = opening.result.transaction(store).objectStore(store).getAll();
      asked.onsuccess = () => {
        opening.result.close();
        done(asked.result);
      };
    };
  });
}

/** Writes a row past the page, as with the developer tools. */
function putRow(store: string, row: unknown): Promise<void> {
  return page.evaluate(
    ([name, value]) =>
      new Promise<void>((done, fail) => {
        const opening = indexedDB.open('followrest');
        opening.onerror = () => fail(opening.error);
        opening.onsuccess = () => {
          const tx = opening.result.transaction(name, 'readwrite');
          tx.objectStore(name).put(value);
          tx.oncomplete = () => {
            opening.result.close();
            done();
          };
        };
      }),
    [store, row] as const,
  );
}

async function isRefused(run: string, why: RegExp): Promise<void> {
  await to(page, '#/shelf', '.shelf');
  await to(page, `#/run/${run}`, '.bench-wait h1');
  expect(await page.locator('.bench-wait').textContent()).toMatch(why);
}

describe('a run that was changed past the page is not led on', () => {
  it('when a file brings a release of another device', () =>
    isRefused('forged', /not given on this device/));

  it('when a release was written into the row of an entry', async () => {
    await putRow('entries', { ...forged, runId: 'edited' });
    await isRefused('edited', /not given on this device/);
  });

  it('when a file brings a job with a condition less, though all its keys fit', async () => {
    const flow = texts.flow.replace(/"chuck-key": "out",\s*/, '');
    expect(flow).not.toBe(texts.flow);
    await takeIn(page, await fileOf([{ id: 'unproved', entries: lead }], { ...texts, flow }));
    await isRefused('unproved', /No proof says/);
  });

  it('when the release was taken out of its flow', async () => {
    const all = (await page.evaluate(rows, 'sources')) as readonly { readonly flow: string }[];
    const source = all.find((one) => one.flow === texts.flow);
    const flow = source?.flow.replace('"release": true', '"release": false') ?? '';
    expect(flow).not.toBe(source?.flow);
    await putRow('sources', { ...source, flow });
    try {
      await isRefused('shortened', /not the text/);
    } finally {
      await putRow('sources', source);
    }
  });
});

describe('the first cut of a run that waits for an instructor', () => {
  it('is not begun by keys, by speech, or by events that a script makes', async () => {
    await to(page, '#/run/asked', '.bench');
    await comeToTheGate();
    for (const key of ['Space', 'Enter', 'c', 'k', '1']) await page.keyboard.press(key);
    for (const said of ['released by the instructor', 'released', 'next', 'carry on']) {
      await expect
        .poll(() => page.evaluate((text) => window.fakeSpeech.say(text), said), waits)
        .toBe(true);
    }
    await page.evaluate(craftEvents);
    await expect
      .poll(async () => (await entriesOf('asked')).at(-1)?.said, waits)
      .toMatch(/passphrase/);
    await isWaiting();
  });

  it('is not begun after a reload', async () => {
    await page.reload();
    await page.locator('.held-band').waitFor();
    await comeToTheGate();
  });

  it('is not begun by a wrong passphrase, which is on record without it', async () => {
    await types('brown anvil evening');
    await panel().getByText('That is not the passphrase.').waitFor();
    await isWaiting();
    const last = (await entriesOf('asked')).at(-1);
    expect(last).toMatchObject({ outcome: 'refused', event: null });
    expect(JSON.stringify(last)).toContain('Ruth');
    expect(JSON.stringify(await entriesOf('asked'))).not.toContain('brown anvil evening');
  });

  it('is begun by the right one, on record with name and time', async () => {
    const since = Date.now();
    await types(phrase);
    await isReleased();
    const made = (await entriesOf('asked')).find(({ event }) => event?.type === 'release');
    expect(made?.event).toMatchObject({ step: 'face', byName: 'Ruth' });
    expect(made?.at).toBeGreaterThanOrEqual(since);
    expect(made?.at).toBeLessThanOrEqual(Date.now());
  });

  it('asks for a new release after going back and coming again', async () => {
    await page.keyboard.press('b');
    await expect
      .poll(() => page.locator('.bench-title').textContent(), waits)
      .not.toBe('Face the end');
    await comeToTheGate();
  });

  it('asks for a new release after a reload, and the old one cannot be written again', async () => {
    await page.reload();
    await page.locator('.held-band').waitFor();
    await comeToTheGate();
    const all = await entriesOf('asked');
    const old = all.find(({ event }) => event?.type === 'release');
    await putRow('entries', { ...old, seq: all.length });
    await isRefused('asked', /not given on this device/);
    await to(page, '#/logbook/asked', '.kept');
    expect(await page.locator('.kept').textContent()).toContain('Ruth');
  });
});

/** Runs in the page: what a script could try that has no passphrase. */
function craftEvents(): void {
  const key = (name: string) =>
    new KeyboardEvent('keydown', { key: name, bubbles: true, cancelable: true });
  for (const name of ['r', 'Enter', ' ', 'g']) window.dispatchEvent(key(name));
  for (const target of [window, document, document.querySelector('.release')]) {
    target?.dispatchEvent(
      new CustomEvent('release', { bubbles: true, detail: { type: 'release' } }),
    );
  }
  window.postMessage({ type: 'release' }, '*');
  const stop = document.querySelector<HTMLElement>('.dock-next');
  stop?.setAttribute('data-word', 'released by the instructor');
  stop?.click();
  // The form is sent with nothing typed: a try like any other, and refused.
  document
    .querySelector('.release')
    ?.dispatchEvent(new SubmitEvent('submit', { bubbles: true, cancelable: true }));
}
