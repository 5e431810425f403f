/** The mouth of this page with a fake worker behind it. No sound is played: there is no audio here. */
import { expect, it } from 'vitest';
import { offlineMouth } from '../../../src/voice/page/offline-mouth.ts';
import type { FromMouth, ToMouth } from '../../../src/voice/shared/messages.ts';
import { fakeClock } from '../fake-clock.ts';

function mouthOverFake() {
  const clock = fakeClock();
  const workers: { onerror: (() => void) | null; terminated: boolean; said: string[] }[] = [];
  const startWorker = async () => {
    const worker = {
      onmessage: null as ((event: { data: FromMouth }) => void) | null,
      onerror: null as (() => void) | null,
      terminated: false,
      said: [] as string[],
      postMessage(message: ToMouth) {
        if (message.kind === 'start')
          queueMicrotask(() => worker.onmessage?.({ data: { kind: 'ready' } }));
        else worker.said.push(message.text);
      },
      terminate() {
        worker.terminated = true;
      },
    };
    workers.push(worker);
    const start = { kind: 'start' } as ToMouth;
    return { worker: worker as unknown as Worker, start };
  };
  const audio = { context: () => null, prime: async () => false };
  const cues = { play: async () => undefined };
  return { mouth: offlineMouth({ clock, audio, cues, startWorker }), clock, workers };
}

it('a worker that breaks down while it makes a line fails that line at once, and the next starts another', async () => {
  const { mouth, clock, workers } = mouthOverFake();
  const first = mouth.say('Next.');
  await clock.pass(1);
  expect(workers[0]?.said).toEqual(['Next.']);
  workers[0]?.onerror?.();
  expect(await first).toBe('failed');
  void mouth.say('Close the guard.');
  await clock.pass(1);
  expect(workers.map(({ terminated }) => terminated)).toEqual([true, false]);
  expect(workers[1]?.said).toEqual(['Close the guard.']);
});

it('a worker that gives no sound in ten seconds is given up', async () => {
  const { mouth, clock, workers } = mouthOverFake();
  const line = mouth.say('Next.');
  await clock.pass(10_001);
  expect(await line).toBe('failed');
  expect(workers[0]?.terminated).toBe(true);
});
