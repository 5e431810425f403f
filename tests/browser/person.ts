/** A person at the page: begins the job, says words by voice or keys, and sees where the run stands. */

import type { Browser, BrowserContext, Page } from 'playwright-core';
import { expect } from 'vitest';
import { fakeSpeech } from './fake-speech.ts';

export type By = 'voice' | 'keys';

/** Milliseconds; a busy machine is slow. */
const waits = { timeout: 15_000 };

export class Person {
  constructor(
    readonly page: Page,
    private readonly by: By,
  ) {}

  /** Opens the page in a fresh profile. */
  static async at(browser: Browser, address: string, by: By): Promise<Person> {
    const context = await browser.newContext({ viewport: { width: 1024, height: 768 } });
    return Person.in(context, address, by);
  }

  static async in(context: BrowserContext, address: string, by: By): Promise<Person> {
    const page = context.pages()[0] ?? (await context.newPage());
    if (by === 'voice') await fakeSpeech(page);
    await page.goto(address);
    return new Person(page, by);
  }

  /** Begins the shipped job from the Shelf. On a page that has proved it once, it is not proved again. */
  async begin(): Promise<void> {
    const { page } = this;
    await this.goTo('#/toolroom');
    await this.chooseEar(this.by === 'voice' ? 'browser-service' : 'keys');
    await page.getByRole('link', { name: 'Shelf', exact: true }).click();
    await page.getByLabel('Begin: Gate hinge pin').click();
    await page.getByLabel('Who is making it').fill('Ida');
    await page.locator('input[name="pace"][value="familiar"]').check({ force: true });
    await page.getByRole('button', { name: /Begin the job/ }).click();
    await this.isAt(/you may use this lathe/i);
    await this.settles();
  }

  /** To another screen of the page that is open. */
  async goTo(hash: string): Promise<void> {
    await this.page.evaluate((text) => {
      location.hash = text;
    }, hash);
  }

  /** Keys are listened to from the frame after the one that shows the Bench. */
  private async settles(): Promise<void> {
    await this.page.evaluate(
      () => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done))),
    );
  }

  private async chooseEar(id: string): Promise<void> {
    const choice = this.page.locator(`input[name="ear"][value="${id}"]`);
    await choice.waitFor({ state: 'attached' });
    await choice.check({ force: true });
  }

  /** Waits until the instruction or the question on the page matches. */
  async isAt(text: RegExp): Promise<void> {
    await expect.poll(() => this.page.getByLabel('Instruction').textContent(), waits).toMatch(text);
  }

  /** "Step 13 of 43". */
  async step(): Promise<string> {
    const text = (await this.page.locator('body').textContent()) ?? '';
    return /Step \d+ of \d+/.exec(text)?.[0] ?? 'no step';
  }

  /** The step once it has stood still for a while: the last word has been kept by then. */
  async settledStep(): Promise<string> {
    let last = await this.step();
    for (let looks = 0; looks < 40; looks++) {
      await this.page.waitForTimeout(100);
      const now = await this.step();
      if (now === last && looks > 0) return now;
      last = now;
    }
    return last;
  }

  /** Answers what a hold asks, one thing after another, and carries on. */
  async comesBack(): Promise<void> {
    for (let answers = 0; answers < 20; answers++) {
      const word = await this.page.evaluate(firstOpenGate);
      if (word === null) break;
      await this.press(word);
    }
    await this.press('carry on');
  }

  /** Waits until the page shows the text anywhere. */
  async shows(text: RegExp): Promise<void> {
    await expect.poll(() => this.page.locator('body').textContent(), waits).toMatch(text);
  }

  /** Says words one after another, each once the page is ready for it. */
  async says(...words: readonly string[]): Promise<void> {
    for (const word of words) await (this.by === 'voice' ? this.speak(word) : this.press(word));
  }

  /** Waits for an open ear, then speaks; the word must have left its mark before the next. */
  private async speak(word: string): Promise<void> {
    const { page } = this;
    const before = await page.evaluate(() => window.fakeSpeech.lines.length);
    await page.waitForFunction((text) => window.fakeSpeech.say(text), word, waits);
    await page.waitForFunction((count) => window.fakeSpeech.lines.length > count, before, waits);
  }

  /** Waits until the page shows the word, as a person would, then uses its key, or the button where it has none. */
  private async press(word: string): Promise<void> {
    const { page } = this;
    const before = await page.evaluate(textOfBench);
    if (/^[\d.]+$/.test(word)) {
      await page.getByLabel('Number pad').waitFor();
      for (const key of [...word, 'Enter']) await page.keyboard.press(key);
      return;
    }
    const button = page.locator(`button[data-word="${word}"]`).first();
    const key = await button.getAttribute('aria-keyshortcuts', waits);
    await (key === null ? button.click() : page.keyboard.press(key));
    // A word may change nothing that is seen: then it is waited for in vain, and not long.
    await page
      .waitForFunction((text) => document.querySelector('.bench')?.textContent !== text, before, {
        timeout: 1_000,
      })
      .catch(() => undefined);
  }

  async lines(): Promise<readonly string[]> {
    return this.page.evaluate(() => window.fakeSpeech.lines);
  }
}

/** Runs in the page. */
function textOfBench(): string | null {
  return document.querySelector('.bench')?.textContent ?? null;
}

/** Runs in the page. */
function firstOpenGate(): string | null {
  const open = document.querySelector<HTMLElement>(':is(.gate, .choices) button[data-gate]');
  return open?.dataset.word ?? null;
}
