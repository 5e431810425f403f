/** A page with nothing but the voice room, for the tests in voice.test.ts to play with. */
import type { EarReport, ListenFor } from '../../../src/bench/ports.ts';
import { startEarWorker } from '../../../src/voice/page/ear-worker-start.ts';
import { chooseEar, chooseMouth, voiceWorld } from '../../../src/voice/page/index.ts';
import type { FromEar, ToEar } from '../../../src/voice/shared/messages.ts';

const clock = {
  now: () => Date.now(),
  after(ms: number, call: () => void) {
    const timer = setTimeout(call, ms);
    return () => clearTimeout(timer);
  },
};

/** One recording for the ear: what counts, and 16-bit samples at 16 kHz. */
interface Piece {
  readonly words: ListenFor;
  readonly samples: readonly number[];
}

/** What no dictionary has: the ear tells at once that it is missing, and so that all before it is done. */
const MARK = 'xqzzk';

/** Plays recordings straight into the ear's worker, one after another; what it told of each. */
async function workerHears(pieces: readonly Piece[]): Promise<readonly (readonly FromEar[])[]> {
  const { worker, start } = startEarWorker();
  const told: FromEar[] = [];
  let wake = () => {};
  worker.onmessage = ({ data }: MessageEvent<FromEar>) => {
    told.push(data);
    wake();
  };
  const until = async (is: (message: FromEar) => boolean): Promise<readonly FromEar[]> => {
    while (!told.some(is)) {
      await new Promise<void>((more) => {
        wake = more;
      });
    }
    return told.splice(0);
  };
  const send = (message: ToEar) => worker.postMessage(message);
  send(start({ channel: undefined, room: undefined, voice: undefined }));
  await until(({ kind }) => kind === 'ready' || kind === 'failed');
  const all = [];
  for (const { words, samples } of pieces) {
    send({ kind: 'listen-for', words });
    send({
      kind: 'sound',
      samples: Float32Array.from(samples, (one) => one / 32_768),
      rate: 16_000,
    });
    send({ kind: 'listen-for', words: { phrases: [MARK] } });
    all.push(await until((message) => message.kind === 'missing' && message.words.includes(MARK)));
  }
  worker.terminate();
  return all;
}

async function trial() {
  const world = voiceWorld(clock);
  const [ears, mouths] = await Promise.all([chooseEar(world), chooseMouth(world)]);
  const reports: EarReport[] = [];
  const ear = ears.make('own');
  const report = (one: EarReport) => void reports.push(one);
  return { ears, mouths, ear, reports, report, workerHears };
}

declare global {
  interface Window {
    trial: ReturnType<typeof trial>;
  }
}

window.trial = trial();
