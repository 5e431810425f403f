/** Collects some seconds of the room without speech. Pure but for what it has collected. */
import { FRAME, FRAMES_PER_SECOND } from './loudness.ts';

const MOST_SECONDS = 60;

export class RoomMeasure {
  private readonly pieces: Int16Array[] = [];
  private readonly levels: number[] = [];
  private readonly frames: number;

  constructor(seconds: number) {
    this.frames = Math.round(FRAMES_PER_SECOND * Math.max(1, Math.min(MOST_SECONDS, seconds)));
  }

  /** Takes a frame of 160 samples and its loudness; true when it was the last that is needed. */
  take(samples: Int16Array, decibels: number): boolean {
    this.pieces.push(samples);
    this.levels.push(decibels);
    return this.levels.length >= this.frames;
  }

  /** Median level, in decibels of full scale: a single knock does not count. */
  get decibels(): number {
    const sorted = [...this.levels].sort((a, b) => a - b);
    return Math.round(sorted[Math.floor(sorted.length / 2)] ?? 0);
  }

  /** The sound, a second at a time; what is left over is dropped. */
  get seconds(): readonly Int16Array[] {
    const count = Math.floor(this.pieces.length / FRAMES_PER_SECOND);
    return Array.from({ length: count }, (_, i) => {
      const second = new Int16Array(FRAME * FRAMES_PER_SECOND);
      const from = i * FRAMES_PER_SECOND;
      for (const [at, piece] of this.pieces.slice(from, from + FRAMES_PER_SECOND).entries()) {
        second.set(piece, at * FRAME);
      }
      return second;
    });
  }
}
