/** Watches whether the room lets words through. Pure: numbers in, a state out. */

/** Decibels of full scale in the band of speech. Above it a voice at arm's length drowns. */
const TOO_LOUD = -22;
const QUIET_AGAIN = -26;
/** Speech must stand at least so far above the room (decibels), at the median of the last few. */
const LEAST_OVER_ROOM = 6;
const LAST_FEW = 4;
const SECONDS_TO_BELIEVE = 3;

const SAMPLES_A_PIECE = 16_000;

export class RoomWatch {
  private noisy = false;
  private told = false;
  private loudFor = 0;
  private quietFor = 0;
  private levelWhenNoisy = 0;
  private over: number[] = [];
  private piece = new Int16Array(SAMPLES_A_PIECE);
  private filled = 0;

  get isNoisy(): boolean {
    return this.noisy;
  }

  /** Whether a room of this level (decibels of full scale) lets the voice heard so far through. */
  lets(decibels: number): boolean {
    const over = this.overRoom;
    return decibels <= TOO_LOUD && (over === null || over >= LEAST_OVER_ROOM);
  }

  /** True once after each change of `isNoisy`. */
  get changed(): boolean {
    const isNew = this.noisy !== this.told;
    this.told = this.noisy;
    return isNew;
  }

  /** Median of how far the last utterances stood above the room, or null before the first. */
  get overRoom(): number | null {
    const sorted = [...this.over].sort((a, b) => a - b);
    return sorted[Math.floor(sorted.length / 2)] ?? null;
  }

  /** Call once a second with the room's level. */
  level(decibels: number): void {
    this.loudFor = decibels > TOO_LOUD ? this.loudFor + 1 : 0;
    const calm = Math.min(QUIET_AGAIN, this.levelWhenNoisy - 4);
    this.quietFor = decibels < calm ? this.quietFor + 1 : 0;
    if (!this.noisy && this.loudFor >= SECONDS_TO_BELIEVE) this.becomeNoisy(0);
    if (this.noisy && this.quietFor >= SECONDS_TO_BELIEVE) {
      this.noisy = false;
      this.over = [];
    }
    this.lastLevel = decibels;
  }
  private lastLevel = -60;

  /** Call at the end of an utterance with how far its loudest part stood above the room, and whether it was understood. */
  utterance(overRoom: number, isUnderstood: boolean): void {
    if (isUnderstood) {
      this.over = [overRoom, ...this.over.filter((over) => over >= LEAST_OVER_ROOM)].slice(
        0,
        LAST_FEW,
      );
      return;
    }
    this.over = [...this.over, overRoom].slice(-LAST_FEW);
    const median = this.overRoom;
    if (this.over.length === LAST_FEW && median !== null && median < LEAST_OVER_ROOM) {
      this.becomeNoisy(this.lastLevel);
    }
  }

  /** Collects sound without speech; gives a second of it when there is one. */
  quietPiece(samples: Int16Array): Int16Array | null {
    const room = Math.min(samples.length, SAMPLES_A_PIECE - this.filled);
    this.piece.set(samples.subarray(0, room), this.filled);
    this.filled += room;
    if (this.filled < SAMPLES_A_PIECE) return null;
    this.filled = 0;
    return this.piece.slice();
  }

  private becomeNoisy(level: number): void {
    this.noisy = true;
    this.levelWhenNoisy = level;
    this.quietFor = 0;
  }
}
