/**
 * Nothing the mouth says can move the flow. While it speaks, the ear takes only "stop" and "hold", and not even these
 * in a line that says them. Here the mouth's own sound goes into the ear at full strength, as through a loudspeaker
 * beside the microphone.
 */
import { beforeAll, expect, it } from 'vitest';
import { interrupts, type Meanwhile } from '../../src/bench/index.ts';
import { loadDictionary, loadEngine } from '../../src/cli/hear-engine.ts';
import { loadMouth } from '../../src/cli/say-engine.ts';
import { type FromEar, resampleSound } from '../../src/voice/shared/index.ts';
import { EarBrain, type FliteProgram, fliteSound } from '../../src/voice/worker/index.ts';
import { begun, hears, type Turn } from '../bench/scripted.ts';
import { wholeJob } from '../browser/hinge-pin.ts';
import { random } from './shop-noise.ts';

const RATE = 16_000;
const PAUSE = new Int16Array(1.2 * RATE);
let mouth: FliteProgram;
let told: FromEar[] = [];
let ear: EarBrain;

beforeAll(async () => {
  const { engine, model, next } = await loadEngine();
  mouth = await loadMouth();
  ear = new EarBrain(engine, model, loadDictionary(), (message) => told.push(message), next);
}, 30_000);

/** Sound in a room that hisses a little. */
function inRoom(sound: Int16Array, gain: number): Int16Array {
  const next = random(5);
  return Int16Array.from(sound, (value) => Math.round(gain * value + 30 * (2 * next() - 1)));
}
const TURNING: Meanwhile = { line: 'Turn the outside.', still: ['stop', 'hold'] };
const ROOM = inRoom(PAUSE, 1);

/** What the ear takes from this, which sounds at full strength while it is shut. */
async function taken(sounds: string, meanwhile: Meanwhile): Promise<readonly string[]> {
  const { samples, rate } = await fliteSound(mouth, sounds, { voice: 'slt' });
  told = [];
  ear.shut(meanwhile);
  for (const piece of [PAUSE, resampleSound(samples, rate, RATE), PAUSE]) ear.hear(piece);
  return told.flatMap((message) => (message.kind === 'heard' ? [message.text] : []));
}

/** Each line of the whole job once, with the state it is said in. */
function linesOfJob(): readonly Turn[] {
  const turns: Turn[] = [begun()];
  for (const word of wholeJob) {
    const last = turns.at(-1);
    if (last) turns.push(hears(last, word));
  }
  return [...new Map(turns.map((turn) => [turn.line, turn])).values()];
}

it('no line of the whole job, played into the ear, is taken for "stop" or "hold"', async () => {
  const mistaken: string[] = [];
  const all = linesOfJob();
  expect(all.length).toBeGreaterThan(40);
  // One in eight keeps the test short; all of them were tried once: none was taken.
  const turns = all.filter((_, index) => index % 8 === 0);
  for (const { state, line } of turns) {
    const meanwhile = interrupts(state, line);
    if (meanwhile.still.length === 0) continue;
    const words = await taken(line, meanwhile);
    mistaken.push(...words.map((word) => `${line} ${word}`));
  }
  expect(mistaken).toEqual([]);
}, 120_000);

it('"stop", said by somebody, is taken', async () => {
  expect(await taken('stop', TURNING)).toEqual(['stop']);
});

it('"hold", as softly as the mouth sounds in a headset, is not taken once a person has been heard', async () => {
  const { samples, rate } = await fliteSound(mouth, 'hold', { voice: 'slt' });
  const hold = resampleSound(samples, rate, RATE);
  const hears = (gain: number) => {
    told = [];
    ear.shut(TURNING);
    for (const piece of [ROOM, inRoom(hold, gain), ROOM]) ear.hear(piece);
    return told.map((message) => (message.kind === 'heard' ? message.text : message.kind));
  };
  ear.reopen();
  ear.listenFor({ phrases: ['guard closed', 'hold'] });
  for (const piece of [ROOM, inRoom(hold, 1), ROOM]) ear.hear(piece);
  expect(hears(0.02)).toEqual([]);
  expect(hears(1)).toEqual(['hold']);
});

it('what was learnt and told while the mouth speaks is nothing but the word', async () => {
  ear.reopen();
  ear.listenFor({ phrases: ['guard closed', 'next'] });
  await taken('stop', TURNING);
  expect(told.map(({ kind }) => kind)).toEqual(['heard']);
  await taken('guard closed', TURNING);
  expect(told).toEqual([]);
});

it('a word that the line itself says cannot break into it', () => {
  const { state } = hears(begun(), 'next');
  expect(interrupts(state, 'Nothing here.').still).toContain('stop');
  expect(interrupts(state, 'Stop the spindle.').still).not.toContain('stop');
  expect(interrupts(state, 'Say when the spindle has stopped.').still).not.toContain('stop');
});
