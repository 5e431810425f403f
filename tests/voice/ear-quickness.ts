/** How quickly the offline ear answers and the mouth begins. */
import type { ListenFor } from '../../src/bench/ports.ts';
import { loadDictionary, loadEngine } from '../../src/cli/hear-engine.ts';
import { loadMouth } from '../../src/cli/say-engine.ts';
import { EarBrain, fliteSound } from '../../src/voice/worker/index.ts';
import type { Figure } from '../speed/figure.ts';
import { speech } from './made-speech.ts';
import { makeNoise } from './shop-ear.ts';
import { mixed, random } from './shop-noise.ts';

const RATE = 16_000;
/** The microphone gives a tenth of a second at a time. */
const PIECE = RATE / 10;

/** Speed, memory, and the time from the end of speech to the answer, sound fed as it would arrive. */
export async function quickness(
  list: ListenFor,
  said: readonly string[],
): Promise<readonly Figure[]> {
  const { engine, model, next } = await loadEngine();
  /** Computing time at the word: what the ear learns from it afterwards keeps nobody waiting. */
  let heardAt: number | null = null;
  const ear = new EarBrain(
    engine,
    model,
    loadDictionary(),
    (message) => {
      if (message.kind === 'heard') heardAt ??= cpuMs();
    },
    next,
  );
  ear.listenFor(list);
  const waits: number[] = [];
  let spent = 0;
  let audio = 0;
  for (const phrase of said) {
    const sound = trimmed(await speech('flite:rms', phrase));
    const noise = makeNoise('broadband', sound.length + 3 * RATE, random(5), []);
    const whole = mixed(padded(sound), noise, 35, 2000);
    heardAt = null;
    let after = 0;
    // When the ear is done with the sound so far: it cannot begin before that has arrived.
    let done = 0;
    for (let at = 0; at + PIECE <= whole.length; at += PIECE) {
      const since = cpuMs();
      ear.hear(whole.subarray(at, at + PIECE));
      const ms = cpuMs() - since;
      const begun = Math.max(done, milliseconds(at + PIECE));
      const untilWord = heardAt === null ? 0 : heardAt - since;
      if (untilWord > 0 && after === 0)
        after = begun + untilWord - milliseconds(RATE + sound.length);
      done = begun + ms;
      spent += ms;
      audio += milliseconds(PIECE);
    }
    if (after > 0) waits.push(after);
  }
  waits.sort((a, b) => a - b);
  const median = Math.round(waits[Math.floor(waits.length / 2)] ?? 0);
  return [
    { name: 'end of speech to heard, median', value: median, unit: 'ms', target: 600 },
    {
      name: 'ear: computing time a second of sound',
      value: Math.round(1000 * (spent / audio)) / 1000,
      unit: 's',
    },
    {
      name: 'memory of the whole process',
      value: Math.round(process.memoryUsage().rss / 1e6),
      unit: 'MB',
    },
  ];
}

/** Computing time of this process: a busy machine does not count against the ear. */
function cpuMs(): number {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
}

const milliseconds = (samples: number) => (samples * 1000) / RATE;

function trimmed(sound: Int16Array): Int16Array {
  const loudest = sound.reduce((most, s) => Math.max(most, Math.abs(s)), 0);
  const last = sound.findLastIndex((s) => Math.abs(s) > loudest / 20);
  return sound.subarray(0, last + 1);
}

function padded(sound: Int16Array): Int16Array {
  const whole = new Int16Array(sound.length + 3 * RATE);
  whole.set(sound, RATE);
  return whole;
}

/** From a short line to the first sample of its sound. */
export async function mouthSpeed(): Promise<Figure> {
  const mouth = await loadMouth();
  const times: number[] = [];
  for (const line of ['Next.', 'Close the guard.', 'Twenty four point nine. Correct?']) {
    const since = performance.now();
    await fliteSound(mouth, line, { voice: 'slt' });
    times.push(performance.now() - since);
  }
  times.sort((a, b) => a - b);
  return {
    name: 'line to first sample of the reply, median',
    value: Math.round(times[1] ?? 0),
    unit: 'ms',
  };
}
