import { expect, it } from 'vitest';
import { scriptedEar } from '../../../src/voice/page/scripted-ear.ts';
import { silentMouth } from '../../../src/voice/page/silent-mouth.ts';
import { cueLength } from '../../../src/voice/shared/cue-notes.ts';
import { fakeClock } from '../fake-clock.ts';

it('the scripted ear drops what comes while it is shut or closed', async () => {
  const ear = scriptedEar(fakeClock());
  const heard: string[] = [];
  await ear.open((r) => r.kind === 'heard' && heard.push(r.heard.text));
  ear.hear('next');
  await ear.shut();
  expect(ear.hear('stop')).toBe(false);
  await ear.reopen();
  ear.hear('repeat');
  await ear.close();
  expect(ear.hear('next')).toBe(false);
  expect(heard).toEqual(['next', 'repeat']);
});

it('the silent mouth takes a reading time and is cut by hush or by the next line', async () => {
  const clock = fakeClock();
  const mouth = silentMouth(clock);
  const ends: string[] = [];
  void mouth.say('close the guard and say closed').then((e) => ends.push(e));
  await clock.pass(100);
  void mouth.say('next').then((e) => ends.push(e));
  await clock.pass(5_000);
  expect(ends).toEqual(['cut', 'said']);
  expect(mouth.lines).toHaveLength(2);
});

it('the silent mouth ends at once when told to', async () => {
  expect(await silentMouth(fakeClock(), 'at-once').say('a long line')).toBe('said');
});

it('no cue lasts longer than 150 ms', () => {
  for (const cue of ['heard', 'unclear', 'stop'] as const) {
    expect(cueLength(cue)).toBeLessThan(150);
  }
});
