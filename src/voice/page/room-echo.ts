/** Knows when the room has fallen silent after the mouth: the tail is measured, not guessed. Pure. */

/** Decibels above the room that still count as its own silence. */
const OVER_ROOM = 6;
/** A room is taken to be no quieter than this: below it lies the noise of the microphone. */
const QUIETEST = -70;
/** How fast a louder room is believed, in decibels a piece. */
const RISE = 0.2;

export class RoomEcho {
  private room: number | null = null;

  /** Takes a piece of sound that came while the mouth was silent. Speech in it lifts the room only a little. */
  learn(piece: Float32Array): void {
    const level = levelOf(piece);
    this.room = this.room === null ? level : Math.min(level, this.room + RISE);
  }

  /** True when nothing of ours rings in this piece. A room nobody has listened to yet counts as silent. */
  isOver(piece: Float32Array): boolean {
    if (this.room === null) return true;
    return levelOf(piece) <= Math.max(QUIETEST, this.room) + OVER_ROOM;
  }
}

/** Decibels of full scale. */
export function levelOf(piece: Float32Array): number {
  let sum = 0;
  for (const sample of piece) sum += sample * sample;
  return 10 * Math.log10(sum / Math.max(1, piece.length) + 1e-12);
}
