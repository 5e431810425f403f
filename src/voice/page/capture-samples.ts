/** Takes samples from a microphone's stream, off the page's own thread. */
/// <reference path="./engine-files.d.ts" />
import captureAddress from '../worklet/capture.ts?worker&url';

const WANTED_RATE = 16_000;

/**
 * Calls `give` ten times a second with samples from -1 to 1 and their true rate. Returns how to
 * stop. Rejects when the browser has no audio worklets.
 */
export async function captureSamples(
  stream: MediaStream,
  give: (samples: Float32Array, rate: number) => void,
): Promise<() => void> {
  const { context, source } = openContext(stream);
  await context.audioWorklet.addModule(captureAddress);
  const capture = new AudioWorkletNode(context, 'followrest-capture', { numberOfOutputs: 0 });
  capture.port.onmessage = ({ data }: MessageEvent<Float32Array>) => give(data, context.sampleRate);
  source.connect(capture);
  const wake = () => void context.resume();
  context.addEventListener('statechange', wake);
  document.addEventListener('pointerdown', wake);
  if (context.state !== 'running') wake();
  return () => {
    document.removeEventListener('pointerdown', wake);
    context.removeEventListener('statechange', wake);
    capture.port.onmessage = null;
    source.disconnect();
    void context.close();
  };
}

/** At 16 kHz where the browser lets us; one refuses to join rates and gives its own instead. */
function openContext(stream: MediaStream) {
  try {
    const context = new AudioContext({ sampleRate: WANTED_RATE });
    return { context, source: context.createMediaStreamSource(stream) };
  } catch {
    const context = new AudioContext();
    return { context, source: context.createMediaStreamSource(stream) };
  }
}
