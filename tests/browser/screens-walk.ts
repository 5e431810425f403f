/** Leads a run to each of its moods by its own buttons, so that the screens can be looked at there. */

import type { Page } from 'playwright-core';

/** What the Bench shows now, as far as the way on depends on it. */
interface Seen {
  readonly layout: string;
  readonly title: string;
  readonly lead: string;
  /** What the cross dial is to read. */
  readonly dial: string;
  /** Whether a size is asked for. */
  readonly pad: boolean;
  readonly all: string;
}

/** More than any part of the job needs. */
const MOST_STEPS = 120;

export async function beginRun(page: Page, address: string): Promise<void> {
  await page.goto(`${address}#/begin/gate-hinge-pin`);
  await page.getByLabel('Who is making it').fill('Marta');
  await page.locator('input[name="pace"][value="familiar"]').check({ force: true });
  await page.getByRole('button', { name: /Begin the job/ }).click();
  // The pictures come a moment after the words.
  await page.locator('.bench .picture').first().waitFor();
}

/** Does what the Bench asks for until it looks as wanted. */
export async function walkUntil(page: Page, wanted: (seen: Seen) => boolean): Promise<void> {
  for (let step = 0; step < MOST_STEPS; step++) {
    const seen = await page.evaluate(look);
    if (wanted(seen)) return;
    if (seen.pad) await type(page, sizeFor(seen));
    else await page.evaluate(press);
    await page
      .waitForFunction((old) => document.querySelector('.bench')?.textContent !== old, seen.all)
      .catch(() => {
        throw new Error(`Nothing follows at: ${seen.title}, ${seen.lead}`);
      });
  }
  throw new Error(`Not reached in ${MOST_STEPS} steps.`);
}

/** Runs in the page. */
function look(): Seen {
  const text = (selector: string) => document.querySelector(selector)?.textContent ?? '';
  const dial = [...document.querySelectorAll('.figure')].find(
    (one) => one.querySelector('.figure-label')?.textContent === 'Dial',
  );
  return {
    layout: document.querySelector<HTMLElement>('.bench')?.dataset.layout ?? '',
    title: text('.bench-title'),
    lead: text('.lead-line'),
    dial: dial?.querySelector('.figure-number')?.textContent ?? '',
    pad: document.querySelector('.pad') !== null && document.querySelector('.read-back') === null,
    all: text('.bench'),
  };
}

/** Runs in the page: presses what leads on. */
function press(): void {
  const ways = ['.read-back .main', '.gate-row.open', '.choice', '.dock-next'];
  const way = ways.map((one) => document.querySelector<HTMLElement>(one)).find((one) => one);
  way?.click();
}

async function type(page: Page, size: string): Promise<void> {
  await page.keyboard.type(size);
  await page.keyboard.press('Enter');
}

/** Sizes as a careful hand would make them: the bar less what the dial took off. */
function sizeFor({ title, dial }: Seen): string {
  const sizes: Readonly<Record<string, string>> = {
    'Measure the bar': '25.02',
    'Check the hole': '20.0',
    'Measure the length': '73.10',
    'Check the length': '70.02',
    'Inspect the shank': '15.978',
  };
  return sizes[title] ?? (25.02 - Number(dial)).toFixed(2);
}
