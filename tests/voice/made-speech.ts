/** Made speech for tests and figures: flite from npm always, espeak-ng where the machine has it. */
import { execFileSync, spawnSync } from 'node:child_process';
import { loadMouth } from '../../src/cli/say-engine.ts';
import { readWav, resampleSound } from '../../src/voice/shared/index.ts';
import { FLITE_VOICES, type FliteProgram, fliteSound } from '../../src/voice/worker/index.ts';

const RATE = 16_000;

/** `flite:NAME:RATE` or `espeak:NAME:WORDS A MINUTE`. */
export type VoiceName = `flite:${string}` | `espeak:${string}`;

let program: Promise<FliteProgram> | undefined;
const made = new Map<string, Promise<Int16Array>>();

export function hasEspeak(): boolean {
  return spawnSync('espeak-ng', ['--version'], { stdio: 'ignore' }).status === 0;
}

/** The text in this voice, 16 kHz, the same samples each time. */
export function speech(voice: VoiceName, text: string): Promise<Int16Array> {
  const key = `${voice} ${text}`;
  const kept = made.get(key) ?? make(voice, text);
  made.set(key, kept);
  return kept;
}

async function make(voice: VoiceName, text: string): Promise<Int16Array> {
  const [engine, name = '', speed] = voice.split(':');
  const sound = engine === 'flite' ? await flite(name, speed, text) : espeak(name, speed, text);
  return resampleSound(sound.samples, sound.rate, RATE);
}

async function flite(name: string, speed: string | undefined, text: string) {
  const voice = FLITE_VOICES.find((known) => known === name);
  if (!voice) throw new Error(`flite has no voice ${name}`);
  program ??= loadMouth();
  return fliteSound(await program, text, { voice, rate: Number(speed ?? 1) });
}

function espeak(name: string, speed = '150', text: string) {
  const wav = execFileSync('espeak-ng', ['-v', name, '-s', speed, '--stdout', text], {
    maxBuffer: 1 << 26,
  });
  return readWav(new Uint8Array(wav));
}
