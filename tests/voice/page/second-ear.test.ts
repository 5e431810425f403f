/** Two ears as one: the browser's, and the one of this page behind it. */
import { expect, it } from 'vitest';
import type { Deafness, EarReport } from '../../../src/bench/ports.ts';
import { englishLanguage } from '../../../src/texts/index.ts';
import { deafness } from '../../../src/voice/page/deafness.ts';
import { scriptedEar } from '../../../src/voice/page/scripted-ear.ts';
import { secondEar } from '../../../src/voice/page/second-ear.ts';
import { fakeClock } from '../fake-clock.ts';

const settled = () => new Promise((resolve) => setTimeout(resolve, 0));

async function openedEars() {
  const clock = fakeClock();
  const order: string[] = [];
  const told = (name: string) => {
    const ear = scriptedEar(clock);
    return Object.assign(Object.create(ear) as typeof ear, {
      hearsFreely: name === 'first',
      soundLeavesDevice: name === 'first' ? 'yes' : 'no',
      open: async (report: (report: EarReport) => void) => {
        order.push(`${name} opens`);
        await ear.open(report);
      },
      close: async () => {
        await settled();
        order.push(`${name} is closed`);
        await ear.close();
      },
    });
  };
  const [first, second] = [told('first'), told('second')];
  const reports: EarReport[] = [];
  const ears = secondEar(first, () => second);
  await ears.open((report) => reports.push(report));
  const goDeaf = async (why: Deafness) => {
    first.goDeaf(why);
    await settled();
    await settled();
  };
  return { ears, first, second, order, reports, goDeaf };
}

const noNetwork = deafness(englishLanguage, 'noNetwork');

it('the second hears on where the browser reaches no service, for the same words', async () => {
  const { ears, second, order, reports, goDeaf } = await openedEars();
  ears.listenFor({ phrases: ['next'] });
  await goDeaf(noNetwork);
  expect(order).toEqual(['first opens', 'first is closed', 'second opens']);
  expect(second.words).toEqual({ phrases: ['next'] });
  expect(reports.map(({ kind }) => kind)).toEqual(['listening', 'deaf', 'listening']);
  expect([ears.hearsFreely, ears.soundLeavesDevice]).toEqual([false, 'no']);
  second.hear('next');
  expect(reports.at(-1)).toMatchObject({ kind: 'heard', heard: { text: 'next' } });
});

it('the second is shut where the first was, until it is opened again', async () => {
  const { ears, second, goDeaf } = await openedEars();
  await ears.shut({ line: '', still: ['stop'] });
  await goDeaf(noNetwork);
  expect([second.hear('next'), second.hear('stop')]).toEqual([false, true]);
  await ears.reopen();
  expect(second.hear('next')).toBe(true);
});

it.each(['refused', 'otherTab', 'noUsableMicrophone'] as const)(
  'the first stays where a second could do no better: %s',
  async (why) => {
    const { order, goDeaf } = await openedEars();
    await goDeaf(deafness(englishLanguage, why));
    expect(order).toEqual(['first opens']);
  },
);

it('nothing is opened any more once both were closed', async () => {
  const { ears, order, goDeaf } = await openedEars();
  const closed = ears.close();
  await goDeaf(noNetwork);
  await closed;
  expect(order).not.toContain('second opens');
});
