/** `npm run -s say -- "TEXT" out.wav [--voice NAME]`: speaks one line into a file with the offline mouth. */

import { writeFileSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { writeWav } from '../voice/shared/index.ts';
import { FLITE_VOICES, type FliteVoice, fliteSound } from '../voice/worker/index.ts';
import { loadMouth } from './say-engine.ts';

const USE = 'Use: npm run -s say -- "TEXT" out.wav [--voice NAME]';

class Fault extends Error {}

try {
  await say();
} catch (problem) {
  if (!(problem instanceof Fault)) throw problem;
  process.stderr.write(`${problem.message}\n`);
  process.exitCode = 2;
}

async function say(): Promise<void> {
  const { text, file, voice } = readArguments();
  const sound = await fliteSound(await loadMouth(), text, { voice });
  try {
    writeFileSync(file, writeWav(sound));
  } catch {
    throw new Fault(`The file "${file}" cannot be written.`);
  }
  const ms = Math.round((1000 * sound.samples.length) / sound.rate);
  process.stdout.write(`${JSON.stringify({ file, voice, rate: sound.rate, audioMs: ms })}\n`);
}

function readArguments() {
  const { values, positionals } = parse();
  const [text, file, ...more] = positionals;
  if (text === undefined || file === undefined || more.length > 0) {
    throw new Fault(`Give a text and a file. ${USE}`);
  }
  if (!/[a-z0-9]/i.test(text)) throw new Fault(`There is nothing to say in "${text}". ${USE}`);
  return { text, file, voice: voiceNamed(values.voice ?? 'slt') };
}

function voiceNamed(name: string): FliteVoice {
  const voice = FLITE_VOICES.find((known) => known === name);
  if (voice) return voice;
  throw new Fault(`There is no voice "${name}". There are: ${FLITE_VOICES.join(', ')}.`);
}

function parse() {
  try {
    return parseArgs({ allowPositionals: true, options: { voice: { type: 'string' } } });
  } catch (problem) {
    throw new Fault(`${problem instanceof Error ? problem.message : problem} ${USE}`);
  }
}
