/**
 * The whole hinge-pin job by sound in Chromium: every word is spoken into the fake microphone and answered through the
 * loudspeaker, with the ear and the mouth of this page and a made voice. Takes about eight minutes.
 */

import { needBuild } from '../../src/cli/start-build.mjs';
import { startChromium } from '../browser/chromium.ts';
import { wholeJob } from '../browser/hinge-pin.ts';
import { roomOfSound } from '../browser/room-of-sound.ts';
import { serveDist } from '../browser/site.ts';
import { Speaker } from '../browser/speaker.ts';
import type { Figure } from './figure.ts';

export async function soundJobFigures(): Promise<readonly Figure[]> {
  needBuild();
  const room = roomOfSound();
  const site = await serveDist();
  const browser = await startChromium(room.switches);
  try {
    const person = await Speaker.at(browser, site.address, room);
    await person.chooseVoices(1.8);
    await person.begin();
    const since = performance.now();
    const reached = await lead(person);
    return figuresOf(person, reached, performance.now() - since);
  } finally {
    await browser.close();
    await site.close();
    room.remove();
  }
}

/** How many words of the job were led by sound; all of them when it came to its end. */
async function lead(person: Speaker): Promise<number> {
  for (const [index, word] of wholeJob.entries()) {
    if (index % 10 === 0) console.error(`${index} of ${wholeJob.length} words`);
    try {
      if (/^[\d.]+$/.test(word)) await person.saysSize(word);
      else if (word !== 'correct') await person.says(word);
    } catch (error) {
      console.error(error instanceof Error ? error.message : error);
      return index;
    }
  }
  return wholeJob.length;
}

function figuresOf(person: Speaker, reached: number, ms: number): readonly Figure[] {
  const { sayings, wrongSizes, wrongWords } = person;
  const first = sayings.filter(({ times }) => times === 1).length;
  const answers = sayings.map(({ answerMs }) => answerMs).sort((a, b) => a - b);
  const figure = (name: string, value: number, unit: string) => ({
    name: `sound job: ${name}`,
    value: Math.round(10 * value) / 10,
    unit,
  });
  return [
    figure('words led by sound', reached, `of ${wholeJob.length}`),
    figure('heard at first saying', (100 * first) / Math.max(1, sayings.length), '%'),
    figure('sizes read back wrong, and said again', wrongSizes.length, 'times'),
    figure('words taken for others, and said again', wrongWords.length, 'times'),
    figure('end of speech to answer, median', answers[Math.floor(answers.length / 2)] ?? 0, 'ms'),
    figure('time', ms / 60_000, 'min'),
  ];
}
