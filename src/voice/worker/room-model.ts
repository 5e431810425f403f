/**
 * Lays the room's own noise and the microphone's colour into the acoustic model, so that the model
 * expects speech as it sounds here. Each mean of the model is moved to where speech plus noise would
 * lie: log(exp(speech + channel) + exp(noise)) in every mel band; its slopes shrink by the same
 * share. Method: parallel model combination by log-add, Gales and Young, Speech Communication 12
 * (1993). Variances are left as they are: widening them made recognition worse on made noise.
 */
import { BANDS, bandsOf, COSINES, cosinesOf, frontEndFor } from '../shared/mel.ts';
import type { EngineParts } from './engine.ts';

export interface Room {
  /** Mean logarithm of the noise in each mel band; null in a silent room. */
  readonly noise: Float64Array | null;
  /** Mean cosines of clean speech at this microphone. */
  readonly channel: Float64Array;
  /** The bands stand at so many times their frequencies, here and in what is given above. */
  readonly warp: number;
}

/** Static, slope and curvature: the three streams of the model. */
const STREAMS = 3;
const FLOAT = 4;

/** The model's files for this room. They take the channel out, so the engine must not do it too. */
export function modelForRoom(model: EngineParts['model'], room: Room): EngineParts['model'] {
  return {
    ...model,
    means: withoutChecksum(movedMeans(model.means, room)),
    'feat.params': frontEnd(model['feat.params'], room.warp),
  };
}

function movedMeans(file: Uint8Array, room: Room): Uint8Array {
  const moved = file.slice();
  const { view, start, codebooks, densities } = layout(moved);
  const row = COSINES * FLOAT;
  const stream = densities * row;
  for (let book = 0; book < codebooks; book++) {
    for (let density = 0; density < densities; density++) {
      const at = start + book * STREAMS * stream + density * row;
      const kept = moveStatic(view, at, room);
      if (!kept) continue;
      shrink(view, at + stream, kept);
      shrink(view, at + 2 * stream, kept);
    }
  }
  return moved;
}

/** Moves one mean; returns in each band the share of speech in what is heard, or null without noise. */
function moveStatic(view: DataView, at: number, { noise, channel }: Room): Float64Array | null {
  const mean = readRow(view, at).map((value, i) => value + (channel[i] ?? 0));
  if (!noise) {
    writeRow(view, at, mean);
    return null;
  }
  const speech = bandsOf(mean);
  const share = new Float64Array(BANDS);
  // Only the difference is turned back into cosines: what the bands cannot show stays as it was.
  const added = speech.map((band, j) => {
    const over = (noise[j] ?? 0) - band;
    share[j] = 1 / (1 + Math.exp(over));
    return over > 30 ? over : Math.log1p(Math.exp(over));
  });
  const difference = cosinesOf(added);
  writeRow(
    view,
    at,
    mean.map((value, i) => value + (difference[i] ?? 0)),
  );
  return share;
}

function shrink(view: DataView, at: number, share: Float64Array): void {
  const bands = bandsOf(readRow(view, at));
  writeRow(view, at, cosinesOf(bands.map((band, j) => band * (share[j] ?? 1))));
}

function readRow(view: DataView, at: number): Float64Array {
  return Float64Array.from({ length: COSINES }, (_, i) => view.getFloat32(at + i * FLOAT, true));
}

function writeRow(view: DataView, at: number, row: Float64Array): void {
  for (let i = 0; i < COSINES; i++) view.setFloat32(at + i * FLOAT, row[i] ?? 0, true);
}

const HEAD_END = 'endhdr\n';

/** A text head, a byte-order mark, then codebooks, streams, densities, a length a stream, a total. */
function layout(file: Uint8Array) {
  const view = new DataView(file.buffer, file.byteOffset, file.byteLength);
  const numbers = headLength(file) + FLOAT;
  const [codebooks = 0, streams = 0, densities = 0] = [0, 1, 2].map((i) =>
    view.getInt32(numbers + i * FLOAT, true),
  );
  if (streams !== STREAMS) throw new Error(`The speech model has ${streams} streams, not 3.`);
  const start = numbers + (3 + streams + 1) * FLOAT;
  return { view, start, codebooks, densities };
}

function headLength(file: Uint8Array): number {
  const head = String.fromCharCode(...file.subarray(0, 200));
  const end = head.indexOf(HEAD_END);
  if (end < 0) throw new Error('The speech model has no head.');
  return end + HEAD_END.length;
}

/** The sum at the end no longer fits; the head must not promise one. */
function withoutChecksum(file: Uint8Array): Uint8Array {
  const head = String.fromCharCode(...file.subarray(0, headLength(file)));
  const at = head.indexOf('chksum0');
  if (at < 0) return file;
  file.set(new TextEncoder().encode('nosum00'), at);
  return file.subarray(0, file.length - FLOAT);
}

function frontEnd(file: Uint8Array, warp: number): Uint8Array {
  const text = new TextDecoder().decode(file).replace(/-cmn \w+/, '-cmn none');
  const bands = text.replace(/-lowerf \S+\s*|-upperf \S+\s*/g, '').trimEnd();
  return new TextEncoder().encode(warp === 1 ? text : `${bands}\n${frontEndFor(warp)}`);
}
