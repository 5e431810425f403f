/** The worker's shell of the offline mouth: text in, sound out, one line at a time. */
import type { FromMouth, ToMouth } from '../shared/messages.ts';
import { FLITE_VOICES, fliteSound } from './flite.ts';

let program: Promise<WebAssembly.Module> | undefined;

const tell = (message: FromMouth, move: Transferable[] = []) =>
  self.postMessage(message, { transfer: move });

self.onmessage = ({ data }: MessageEvent<ToMouth>) => {
  if (data.kind === 'start') void start(data.program);
  else void say(data);
};

async function start(address: string): Promise<void> {
  try {
    program = fetchProgram(address);
    await program;
    tell({ kind: 'ready' });
  } catch (problem) {
    tell({ kind: 'failed', reason: reasonOf(problem) });
  }
}

async function fetchProgram(address: string): Promise<WebAssembly.Module> {
  const response = await fetch(address);
  if (!response.ok) throw new Error(`The voice did not load (${response.status}).`);
  // Not compiled while streaming: that needs a content type which simple servers do not send.
  return WebAssembly.compile(await response.arrayBuffer());
}

async function say({ id, text, voice, rate }: Extract<ToMouth, { kind: 'say' }>): Promise<void> {
  try {
    const module = await program;
    if (!module) throw new Error('The voice was not started.');
    const sound = await fliteSound((imports) => WebAssembly.instantiate(module, imports), text, {
      voice: FLITE_VOICES.find((known) => known === voice) ?? 'slt',
      rate,
    });
    const samples = Float32Array.from(sound.samples, (sample) => sample / 32_768);
    tell({ kind: 'sound', id, samples, rate: sound.rate }, [samples.buffer]);
  } catch (problem) {
    tell({ kind: 'no-sound', id, reason: reasonOf(problem) });
  }
}

function reasonOf(problem: unknown): string {
  return problem instanceof Error ? problem.message : String(problem);
}
