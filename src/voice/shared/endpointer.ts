/** Finds where speech begins and ends by loudness over the room's own. Pure: frames in, events out. */
import { FRAMES_PER_SECOND } from './loudness.ts';

/** Decibels over the room that count as speech; a word lies at least this far above what it is heard over. */
const OVER_ROOM = 6;
const FRAMES_TO_BEGIN = 7;
const WINDOW_TO_BEGIN = 10;
/** Longer than any said phrase or number: this is talk or noise, not a word for us. */
const LONGEST = 7 * FRAMES_PER_SECOND;
/** The room's level follows quickly downwards, slowly upwards. */
const FALL = 0.15;
const RISE = 0.004;
const ROOM_AT_FIRST = 20;

export type SpeechEvent =
  | { readonly kind: 'begun' }
  /** So many frames quiet since the last loud one, while an utterance is open. */
  | { readonly kind: 'quiet'; readonly frames: number }
  | { readonly kind: 'too-long' };

export class Endpointer {
  private room = Number.NaN;
  private seen = 0;
  private recent: boolean[] = [];
  private speaking = false;
  private length = 0;
  private quiet = 0;
  private loudest = Number.NEGATIVE_INFINITY;

  /** Decibels of the room without speech. */
  get roomLevel(): number {
    return this.room;
  }

  /** How far the loudest of the last utterance stood above the room, in decibels. */
  get overRoom(): number {
    return this.loudest - this.room;
  }

  get isSpeaking(): boolean {
    return this.speaking;
  }

  /** Takes the next frame's loudness in decibels. */
  take(decibels: number): SpeechEvent | null {
    this.follow(decibels);
    const loud = this.seen > ROOM_AT_FIRST && decibels > this.room + OVER_ROOM;
    this.recent = [...this.recent.slice(1 - WINDOW_TO_BEGIN), loud];
    return this.speaking ? this.goOn(loud, decibels) : this.perhapsBegin();
  }

  /** Closes the utterance: the caller has its answer. */
  close(): void {
    this.speaking = false;
    this.recent = [];
    this.length = 0;
    this.quiet = 0;
  }

  private perhapsBegin(): SpeechEvent | null {
    if (this.recent.filter(Boolean).length < FRAMES_TO_BEGIN) return null;
    this.speaking = true;
    this.loudest = Number.NEGATIVE_INFINITY;
    this.length = WINDOW_TO_BEGIN;
    this.quiet = 0;
    return { kind: 'begun' };
  }

  private goOn(loud: boolean, decibels: number): SpeechEvent | null {
    this.length++;
    this.loudest = Math.max(this.loudest, decibels);
    this.quiet = loud ? 0 : this.quiet + 1;
    if (this.length > LONGEST) {
      // What sounds this long is the room: a machine was switched on.
      this.room = decibels;
      this.close();
      return { kind: 'too-long' };
    }
    return this.quiet > 0 ? { kind: 'quiet', frames: this.quiet } : null;
  }

  private follow(decibels: number): void {
    this.seen++;
    if (Number.isNaN(this.room)) this.room = decibels;
    // At first the room is unknown, so it is learnt in a fifth of a second.
    if (this.seen <= ROOM_AT_FIRST) this.room += (decibels - this.room) / this.seen;
    else if (decibels < this.room) this.room += FALL * (decibels - this.room);
    else if (!this.speaking) this.room += Math.min(0.3, RISE * (decibels - this.room) + 0.01);
  }
}
