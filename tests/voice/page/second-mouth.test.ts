import { expect, it } from 'vitest';
import type { Mouth, SayEnd } from '../../../src/bench/ports.ts';
import { secondMouth } from '../../../src/voice/page/second-mouth.ts';

function mouthThat(end: () => SayEnd | Promise<SayEnd>) {
  const lines: string[] = [];
  const mouth: Mouth = {
    name: 'a mouth',
    async say(line) {
      lines.push(line);
      return end();
    },
    cue: async () => {},
    hush() {},
  };
  return { mouth, lines };
}

it('a line that the first mouth fails to say is said by the second', async () => {
  const first = mouthThat(() => 'failed');
  const second = mouthThat(() => 'said');
  const both = secondMouth(first.mouth, () => second.mouth);
  expect(await both.say('Next.')).toBe('said');
  expect(second.lines).toEqual(['Next.']);
});

it('a line that was said or cut is not said again', async () => {
  const ends: SayEnd[] = ['said', 'cut'];
  const first = mouthThat(() => ends.shift() ?? 'said');
  const second = mouthThat(() => 'said');
  const both = secondMouth(first.mouth, () => second.mouth);
  expect([await both.say('One.'), await both.say('Two.')]).toEqual(['said', 'cut']);
  expect(second.lines).toEqual([]);
});

it('a mouth that fails twice in a row is not tried a third time', async () => {
  const first = mouthThat(() => 'failed');
  const second = mouthThat(() => 'said');
  const both = secondMouth(first.mouth, () => second.mouth);
  for (const line of ['One.', 'Two.', 'Three.']) await both.say(line);
  expect(first.lines).toEqual(['One.', 'Two.']);
  expect(second.lines).toEqual(['One.', 'Two.', 'Three.']);
});

it('a line that fails after it was hushed stays unsaid', async () => {
  let fail = (_: SayEnd) => {};
  const first = mouthThat(() => new Promise((resolve) => (fail = resolve)));
  const second = mouthThat(() => 'said');
  const both = secondMouth(first.mouth, () => second.mouth);
  const end = both.say('One.');
  both.hush();
  fail('failed');
  expect(await end).toBe('cut');
  expect(second.lines).toEqual([]);
});
