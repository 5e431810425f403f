/** WAV files: 16-bit samples of one channel, in and out. Pure. */

export interface Sound {
  readonly rate: number;
  /** From -32768 to 32767. */
  readonly samples: Int16Array;
}

/** A file that is not what we can read; the message says what it is instead. */
export class WavFault extends Error {}

const PCM = 1;
const EXTENSIBLE = 0xfffe;

/**
 * Reads a 16-bit mono WAV of any rate. Throws a WavFault with a sentence for anything else.
 * Format: "Multimedia Programming Interface and Data Specifications 1.0", IBM and Microsoft, 1991.
 */
export function readWav(bytes: Uint8Array): Sound {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  if (bytes.length < 12 || tag(view, 0) !== 'RIFF' || tag(view, 8) !== 'WAVE') {
    throw new WavFault('This is not a WAV file: it does not begin with RIFF and WAVE.');
  }
  const chunks = findChunks(view);
  const format = chunks.get('fmt ');
  const data = chunks.get('data');
  if (!format || format.size < 16) throw new WavFault('The WAV file has no format part.');
  if (!data) throw new WavFault('The WAV file has no sound in it.');
  return { rate: readFormat(view, format.at), samples: readSamples(view, data) };
}

interface Chunk {
  readonly at: number;
  readonly size: number;
}

function findChunks(view: DataView): Map<string, Chunk> {
  const chunks = new Map<string, Chunk>();
  let at = 12;
  while (at + 8 <= view.byteLength) {
    const name = tag(view, at);
    // Programs that stream leave the size open; what is there counts.
    const size = Math.min(view.getUint32(at + 4, true), view.byteLength - at - 8);
    if (!chunks.has(name)) chunks.set(name, { at: at + 8, size });
    at += 8 + size + (size % 2);
  }
  return chunks;
}

function readFormat(view: DataView, at: number): number {
  const code = view.getUint16(at, true);
  const channels = view.getUint16(at + 2, true);
  const rate = view.getUint32(at + 4, true);
  const bits = view.getUint16(at + 14, true);
  if (code !== PCM && code !== EXTENSIBLE) {
    throw new WavFault(`The WAV file is packed (format ${code}); plain 16-bit PCM is needed.`);
  }
  if (channels !== 1) throw new WavFault(`The WAV file has ${channels} channels; one is needed.`);
  if (bits !== 16) throw new WavFault(`The WAV file has ${bits}-bit samples; 16-bit is needed.`);
  if (rate < 8000 || rate > 192_000) {
    throw new WavFault(`The WAV file has ${rate} samples a second; 8000 to 192000 can be read.`);
  }
  return rate;
}

function readSamples(view: DataView, { at, size }: Chunk): Int16Array {
  const samples = new Int16Array(Math.floor(size / 2));
  for (let i = 0; i < samples.length; i++) samples[i] = view.getInt16(at + 2 * i, true);
  return samples;
}

function tag(view: DataView, at: number): string {
  return String.fromCharCode(...[0, 1, 2, 3].map((i) => view.getUint8(at + i)));
}

/** The bytes of a WAV file with this sound. */
export function writeWav({ rate, samples }: Sound): Uint8Array {
  const bytes = new Uint8Array(44 + 2 * samples.length);
  const view = new DataView(bytes.buffer);
  const text = (at: number, value: string) => {
    for (let i = 0; i < value.length; i++) view.setUint8(at + i, value.charCodeAt(i));
  };
  text(0, 'RIFF');
  view.setUint32(4, 36 + 2 * samples.length, true);
  text(8, 'WAVEfmt ');
  view.setUint32(16, 16, true);
  view.setUint16(20, PCM, true);
  view.setUint16(22, 1, true);
  view.setUint32(24, rate, true);
  view.setUint32(28, 2 * rate, true);
  view.setUint16(32, 2, true);
  view.setUint16(34, 16, true);
  text(36, 'data');
  view.setUint32(40, 2 * samples.length, true);
  samples.forEach((sample, i) => {
    view.setInt16(44 + 2 * i, sample, true);
  });
  return bytes;
}
