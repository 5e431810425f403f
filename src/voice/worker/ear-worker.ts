/** The worker's shell: fetches the parts, changes the sample rate, passes messages. */
/// <reference path="./engine-script.d.ts" />
import { startEngine as startScript } from 'followrest-engine/engine.mjs';
import type { EarAddresses, FromEar, KeptEar, ToEar } from '../shared/messages.ts';
import { readDictionary } from '../shared/pronunciation.ts';
import { resampler } from '../shared/resample.ts';
import { EarBrain } from './ear-brain.ts';
import { type EngineParts, MODEL_FILES, startEngine } from './engine.ts';

const RATE = 16_000;

let brain: EarBrain | undefined;
let waiting: ToEar[] = [];
let toOurRate: ((piece: Float32Array) => Float32Array) | undefined;

const tell = (message: FromEar) => self.postMessage(message);

self.onmessage = ({ data }: MessageEvent<ToEar>) => {
  if (data.kind === 'start') void start(data.addresses, data);
  else if (brain) take(brain, data);
  else if (data.kind !== 'sound') waiting.push(data);
};

async function start(addresses: EarAddresses, kept: KeptEar): Promise<void> {
  try {
    const [parts, dictionary] = await Promise.all([
      fetchParts(addresses),
      fetchBytes(addresses.dictionary),
    ]);
    const nextEngine = () => startEngine(parts, () => {});
    const engine = await nextEngine();
    const words = readDictionary(new TextDecoder().decode(dictionary));
    const ready = new EarBrain(engine, parts.model, words, tell, nextEngine, kept);
    brain = ready;
    for (const message of waiting) take(ready, message);
    waiting = [];
    tell({ kind: 'ready' });
  } catch (problem) {
    tell({ kind: 'failed', reason: problem instanceof Error ? problem.message : String(problem) });
  }
}

function take(ear: EarBrain, message: ToEar): void {
  if (message.kind === 'sound') ear.hear(samplesOf(message));
  else if (message.kind === 'listen-for') ear.listenFor(message.words);
  else if (message.kind === 'shut') ear.shut(message.meanwhile);
  else if (message.kind === 'reopen') ear.reopen();
  else if (message.kind === 'measure-room') ear.measureRoom(message.seconds);
  else if (message.kind === 'enrol') ear.enrol(message.phrase);
  else if (message.kind === 'stop-enrolling') ear.stopEnrolling();
  else if (message.kind === 'forget-voice') ear.forgetVoice();
}

function samplesOf({ samples, rate }: Extract<ToEar, { kind: 'sound' }>): Int16Array {
  toOurRate ??= resampler(rate, RATE);
  return Int16Array.from(toOurRate(samples), (value) =>
    Math.max(-32_768, Math.min(32_767, Math.round(value * 32_768))),
  );
}

async function fetchParts({ wasm, model }: EarAddresses): Promise<EngineParts> {
  const files = await Promise.all(
    MODEL_FILES.map(async (name) => [name, await fetchBytes(model[name] ?? '')] as const),
  );
  return {
    start: startScript,
    wasm: await fetchBytes(wasm),
    model: Object.fromEntries(files) as EngineParts['model'],
  };
}

async function fetchBytes(address: string): Promise<Uint8Array> {
  const response = await fetch(address);
  if (!response.ok) throw new Error(`A part of the ear did not load (${response.status}).`);
  return new Uint8Array(await response.arrayBuffer());
}
