/** A person who stands at the page with a voice: waits for the open ear, speaks, and says it again when not heard. */

import type { Browser, BrowserContext, Page } from 'playwright-core';
import { expect } from 'vitest';
import { loadMouth } from '../../src/cli/say-engine.ts';
import type { Sound } from '../../src/voice/shared/index.ts';
import { type FliteVoice, fliteSound } from '../../src/voice/worker/index.ts';
import { normalise, sayDigits, sayNumber } from '../../src/words/index.ts';
import type { RoomOfSound } from './room-of-sound.ts';

/** Whoever is not heard four times takes the keys. */
const MOST_SAYINGS = 4;
/** What is said to a word that was not understood. */
const asksAgain = [
  'Say again.',
  'I cannot hear you well. Use the keys or the buttons.',
  'Too loud to hear you safely. Use the keys.',
  'Listening again.',
];
/** Who got no sign speaks again after so many seconds, by the ear's own clock. */
const EAR_PATIENCE_S = 4;
/** Nobody speaks at the very moment a light comes on. */
const BREATH_MS = 250;

export interface Saying {
  readonly word: string;
  /** How often it was said before it counted. */
  readonly times: number;
  /** From the last sample of speech to the first line of the answer being given to the mouth. */
  readonly answerMs: number;
}

export class Speaker {
  readonly sayings: Saying[] = [];
  /** Sizes that were read back otherwise than they were said. */
  readonly wrongSizes: string[] = [];
  /** What the ear took a word for that was said, where that was another one. */
  readonly wrongWords: string[] = [];
  private readonly sounds = new Map<string, Promise<Sound>>();
  private readonly mouth = loadMouth();

  private constructor(
    readonly page: Page,
    readonly context: BrowserContext,
    private readonly room: RoomOfSound,
    private readonly voice: FliteVoice,
  ) {}

  static async at(
    browser: Browser,
    address: string,
    room: RoomOfSound,
    voice: FliteVoice = 'rms',
  ): Promise<Speaker> {
    const context = await browser.newContext({ viewport: { width: 1024, height: 768 } });
    const page = await context.newPage();
    await room.enter(page);
    await page.goto(address);
    return new Speaker(page, context, room, voice);
  }

  /** Chooses the ear and the mouth of this page, and how fast it speaks. */
  async chooseVoices(rate: number): Promise<void> {
    const { page } = this;
    await page.getByRole('link', { name: 'Toolroom', exact: true }).click();
    for (const [name, value] of [
      ['ear', 'own'],
      ['mouth', 'own:slt'],
    ] as const) {
      const choice = page.locator(`input[name="${name}"][value="${value}"]`);
      await choice.waitFor({ state: 'attached' });
      await choice.check({ force: true });
    }
    await page.locator('#setting-rate').fill(String(rate));
  }

  async begin(): Promise<void> {
    const { page } = this;
    await page.getByRole('link', { name: 'Shelf', exact: true }).click();
    await page.getByLabel('Begin: Gate hinge pin').click();
    await page.getByLabel('Who is making it').fill('Ida');
    await page.locator('input[name="pace"][value="familiar"]').check({ force: true });
    await page.getByRole('button', { name: /Begin the job/ }).click();
    await page.getByLabel('Instruction').waitFor({ timeout: 110_000 });
  }

  /** Says words one after another, each again until the ear took it for what it was and the page answered. */
  async says(...words: readonly string[]): Promise<void> {
    for (const word of words) await this.sayUntilHeard(word);
  }

  /** Says a size until it is read back right, then agrees: nobody says "correct" to a wrong number. */
  async saysSize(size: string): Promise<void> {
    for (let times = 0; times < MOST_SAYINGS; times++) {
      await this.sayUntilHeard(size);
      const line = (await this.lines()).at(-1)?.toLowerCase() ?? '';
      if (readBackOf(line) === readBackOf(`${sayDigits(Number(size), '', 2)} millimetres`)) {
        return this.sayUntilHeard('correct');
      }
      this.wrongSizes.push(line);
    }
    throw new Error(`${size} was never read back right: ${this.wrongSizes.join(' / ')}`);
  }

  private async sayUntilHeard(word: string): Promise<void> {
    for (let times = 1; times <= MOST_SAYINGS; times++) {
      const answerMs = await this.answerTo(word);
      if (answerMs === null) continue;
      this.sayings.push({ word, times, answerMs });
      return;
    }
    const told = (await this.lines()).slice(-4).join(' / ');
    const made = (await this.decisions()).slice(-MOST_SAYINGS).join(' / ');
    throw new Error(
      `"${word}" was not heard in ${MOST_SAYINGS} sayings. The ear heard: ${made}. Told last: ${told}`,
    );
  }

  /** Says it once; null when the ear did not take it for what it was, or the page asked to say it again. */
  private async answerTo(word: string): Promise<number | null> {
    await this.untilListening();
    const before = (await this.lines()).length;
    const decided = (await this.decisions()).length;
    const over = await this.room.say(this.page, await this.soundOf(word));
    await this.untilDecided(before);
    const answer = (await this.lines()).slice(before);
    if (!this.isTaken(word, (await this.decisions()).slice(decided))) return null;
    if (answer.every((line) => asksAgain.includes(line))) return null;
    return this.page
      .evaluate((index) => window.room.times[index] ?? 0, before)
      .then((at) => at - over);
  }

  /** A size is known by its read-back. */
  private isTaken(word: string, taken: readonly (string | null)[]): boolean {
    if (isSize(word) || taken.includes(word)) return true;
    this.wrongWords.push(...taken.flatMap((other) => (other ? [`${word} → ${other}`] : [])));
    return false;
  }

  /** Until the page has answered, or the ear has listened on for a while and made nothing of what was said. */
  private async untilDecided(linesBefore: number): Promise<void> {
    const heardBy = await this.page.evaluate(() => window.room.earSeconds);
    await this.page.waitForFunction(
      ({ lines, until }) => window.room.lines.length > lines || window.room.earSeconds >= until,
      { lines: linesBefore, until: heardBy + EAR_PATIENCE_S },
      { timeout: 120_000 },
    );
  }

  /** Says a word into the middle of what the page says, with a headset on. True when the ear took it. */
  async breaksIn(word: string): Promise<boolean> {
    const { page } = this;
    await page.evaluate(() => window.room.setEcho(0.02));
    await page.locator('.sound[data-sound="speaking"]').waitFor();
    const before = (await this.decisions()).length;
    await this.utters(word);
    const over = (count: number) =>
      window.room.decisions.length > count ||
      document.querySelector('.sound[data-sound="speaking"]') === null;
    await page.waitForFunction(over, before, { timeout: 120_000 });
    return (await this.decisions()).slice(before).includes(word);
  }

  /** Says it into the open microphone, whatever the page makes of it. */
  async utters(word: string, breathMs = BREATH_MS): Promise<void> {
    await this.page.waitForTimeout(breathMs);
    await this.room.say(this.page, await this.soundOf(word));
  }

  async untilListening(): Promise<void> {
    await this.page.locator('.sound[data-sound="listening"]').waitFor({ timeout: 120_000 });
    await this.page.waitForTimeout(BREATH_MS);
  }

  lines(): Promise<readonly string[]> {
    return this.page.evaluate(() => [...window.room.lines]);
  }

  private decisions(): Promise<readonly (string | null)[]> {
    return this.page.evaluate(() => [...window.room.decisions]);
  }

  private soundOf(word: string): Promise<Sound> {
    const made = this.sounds.get(word) ?? this.speak(word);
    this.sounds.set(word, made);
    return made;
  }

  private async speak(word: string): Promise<Sound> {
    return fliteSound(await this.mouth, spokenForm(word), { voice: this.voice });
  }

  async instruction(): Promise<string> {
    return (await this.page.getByLabel('Instruction').textContent()) ?? '';
  }

  async isAt(text: RegExp): Promise<void> {
    await expect.poll(() => this.instruction(), { timeout: 60_000 }).toMatch(text);
  }
}

/** The digits of a read-back, without zeros at the end. */
function readBackOf(line: string): string {
  const [digits = ''] = line.toLowerCase().split(' millimetres');
  return digits.replace(/(?: zero)+$/, '').replace(/ point$/, '');
}

function isSize(word: string): boolean {
  return /^\d+(\.\d+)?$/.test(word);
}

/** "22.16" as a person says it. */
export function spokenForm(word: string): string {
  if (!isSize(word)) return normalise(word);
  const decimals = word.split('.')[1]?.length ?? 0;
  return sayNumber(Number(word), '', decimals).replaceAll('-', ' ');
}
