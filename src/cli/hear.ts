/** `npm run -s hear -- FILE.wav --said "next|number mm 24.8 25.2"`: what the offline ear hears in a recording. */

import { readFileSync } from 'node:fs';
import { parseArgs } from 'node:util';
import type { ListenFor } from '../bench/ports.ts';
import { readWav, type Sound, WavFault } from '../voice/shared/index.ts';
import { readNumber } from '../words/index.ts';
import { loadDictionary, loadEngine } from './hear-engine.ts';
import { saidAtStep } from './hear-flow.ts';
import { readSaid } from './hear-said.ts';
import { hearSound } from './hear-sound.ts';

const USE =
  'Use: npm run -s hear -- FILE.wav --said "next|repeat|number mm 24.8 25.2", or --flow FILE --step ID.';

const OPTIONS = {
  said: { type: 'string' },
  flow: { type: 'string' },
  step: { type: 'string' },
} as const;

class Fault extends Error {}

try {
  await hear();
} catch (problem) {
  if (!(problem instanceof Fault || problem instanceof WavFault)) throw problem;
  process.stderr.write(`${problem.message}\n`);
  process.exitCode = 2;
}

async function hear(): Promise<void> {
  const { file, said } = readArguments();
  const sound = readSound(file);
  const heard = hearSound(await loadEngine(), loadDictionary(), said, sound);
  if (heard.missing.length > 0) {
    throw new Fault(`The ear does not know how to say: ${heard.missing.join(', ')}.`);
  }
  const text = heard.utterances.find((utterance) => utterance !== null) ?? null;
  const value = text === null ? undefined : numberIn(text, said);
  const answer = {
    heard: text,
    ...(value === undefined ? {} : { value }),
    ms: heard.ms,
    audioMs: heard.audioMs,
  };
  process.stdout.write(`${JSON.stringify(answer)}\n`);
}

function numberIn(text: string, { phrases, number }: ListenFor): number | undefined {
  if (!number || phrases.includes(text)) return undefined;
  return readNumber(text, number)?.[0]?.value;
}

function readArguments(): { readonly file: string; readonly said: ListenFor } {
  const { values, positionals } = parse();
  const [file, ...more] = positionals;
  if (file === undefined || more.length > 0) throw new Fault(`Give one WAV file. ${USE}`);
  const said = saidBy(values);
  if ('fault' in said) throw new Fault(said.fault);
  return { file, said };
}

function saidBy({ said, flow, step }: ReturnType<typeof parse>['values']) {
  if (said !== undefined) return readSaid(said);
  if (flow !== undefined && step !== undefined) return saidAtStep(flow, step);
  throw new Fault(`Say what may be heard. ${USE}`);
}

function parse() {
  try {
    return parseArgs({ allowPositionals: true, options: OPTIONS });
  } catch (problem) {
    throw new Fault(`${problem instanceof Error ? problem.message : problem} ${USE}`);
  }
}

function readSound(file: string): Sound {
  let bytes: Uint8Array;
  try {
    bytes = readFileSync(file);
  } catch {
    throw new Fault(`The file "${file}" cannot be read.`);
  }
  return readWav(bytes);
}
