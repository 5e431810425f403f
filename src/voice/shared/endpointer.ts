/** Finds where speech begins and ends by loudness over the room's own. Pure: frames in, events out. */
import { FRAMES_PER_SECOND } from './loudness.ts';

/** Decibels over the room that count as speech: more in a room that is itself uneven. */
const LEAST_OVER_ROOM = 6;
const MOST_OVER_ROOM = 13;
const SPREADS_OVER_ROOM = 2;
/** What lies so far below the loudest part of an utterance no longer belongs to it: talk farther off goes on meanwhile. */
const BELOW_LOUDEST = { word: 16, number: 28 };
/** Frames that the loudest part lasts: a blow is shorter. */
const LOUDEST_LASTS = 16;
const FRAMES_TO_BEGIN = 7;
const WINDOW_TO_BEGIN = 10;
/** Frames remembered: the longest of the windows. */
const MEMORY = 16;
/** A knock shorter than this does not keep an utterance open. */
const TO_GO_ON = { frames: 4, window: 6 };
/** In a room of knocks (mean distance from its level, decibels) a blow rings longer than that. */
const UNEVEN = 2.2;
const TO_GO_ON_IN_KNOCKS = { frames: 11, window: 16 };
/** Longer than any said phrase or number: this is talk or noise, not a word for us. */
const LONGEST = 7 * FRAMES_PER_SECOND;
/** The room is followed within about half a second, at first quicker. */
const FOLLOW = 0.02;
const FRAMES_TO_KNOW_ROOM = 20;
/** Sound that may be speech lifts the room only so much slower. */
const SLOWER_WHEN_LOUD = 0.25;
/** In a room of knocks (mean distance from its level, decibels) loud frames are the room. */
const KNOCKS = 5;

export type SpeechEvent =
  | { readonly kind: 'begun' }
  /** So many frames quiet since the last loud one, while an utterance is open. */
  | { readonly kind: 'quiet'; readonly frames: number }
  | { readonly kind: 'too-long' };

export class Endpointer {
  /** The digits of a number are said less and less loudly. */
  awaits: keyof typeof BELOW_LOUDEST = 'word';
  private room = Number.NaN;
  private spread = 0;
  private seen = 0;
  private recent: boolean[] = [];
  private speaking = false;
  private length = 0;
  private quiet = 0;
  private loudest = Number.NEGATIVE_INFINITY;
  /** The loudest frames of this utterance, loudest first. */
  private top: readonly number[] = [];

  /** Decibels of the room without speech. */
  get roomLevel(): number {
    return this.room;
  }

  /** The loudest of the last utterance, in decibels of full scale. */
  get loudestLevel(): number {
    return this.loudest;
  }

  /** How far the loudest of the last utterance stood above the room, in decibels. */
  get overRoom(): number {
    return this.loudest - this.room;
  }

  /** Decibels above which a frame counts as speech now. */
  get limit(): number {
    const uneven = LEAST_OVER_ROOM / 2 + SPREADS_OVER_ROOM * this.spread;
    const over = Math.min(MOST_OVER_ROOM, Math.max(LEAST_OVER_ROOM, uneven));
    return Math.max(this.room + over, this.underLoudest(BELOW_LOUDEST[this.awaits]));
  }

  /** The same for the frames of an utterance that is open, `below` decibels under its loudest part at most. */
  limitInside(below: number): number {
    return Math.max(this.room + LEAST_OVER_ROOM, this.underLoudest(below));
  }

  private underLoudest(below: number): number {
    const lasting = this.speaking ? this.top[LOUDEST_LASTS - 1] : undefined;
    return lasting === undefined ? Number.NEGATIVE_INFINITY : lasting - below;
  }

  /** A room of knocks or of talk: what sounds shortly in it need not be a word. */
  get isUneven(): boolean {
    return this.spread > UNEVEN;
  }

  get isSpeaking(): boolean {
    return this.speaking;
  }

  /** Takes the next frame's loudness in decibels. */
  take(decibels: number): SpeechEvent | null {
    this.seen++;
    if (!this.speaking) this.follow(decibels);
    const loud = this.seen > FRAMES_TO_KNOW_ROOM && decibels > this.limit;
    this.recent = [...this.recent.slice(1 - MEMORY), loud];
    return this.speaking ? this.goOn(decibels) : this.perhapsBegin(decibels);
  }

  /** The room's level as it was measured, in decibels. */
  knowRoom(decibels: number): void {
    this.room = decibels;
    this.seen = Math.max(this.seen, FRAMES_TO_KNOW_ROOM + 1);
  }

  /** Closes the utterance: the caller has its answer. */
  close(): void {
    this.speaking = false;
    this.recent = [];
    this.length = 0;
    this.quiet = 0;
  }

  private perhapsBegin(decibels: number): SpeechEvent | null {
    const loud = this.recent.slice(-WINDOW_TO_BEGIN).filter(Boolean).length;
    if (loud < FRAMES_TO_BEGIN) return null;
    this.speaking = true;
    this.loudest = decibels;
    this.top = [];
    this.length = WINDOW_TO_BEGIN;
    this.quiet = 0;
    return { kind: 'begun' };
  }

  private goOn(decibels: number): SpeechEvent | null {
    this.length++;
    this.loudest = Math.max(this.loudest, decibels);
    this.top = [...this.top, decibels].sort((a, b) => b - a).slice(0, LOUDEST_LASTS);
    const { frames, window } = this.isUneven ? TO_GO_ON_IN_KNOCKS : TO_GO_ON;
    const loud = this.recent.slice(-window).filter(Boolean).length >= frames;
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
    if (Number.isNaN(this.room)) this.room = decibels;
    const isKnown = this.seen > FRAMES_TO_KNOW_ROOM && this.spread < KNOCKS;
    const mayBeSpeech = isKnown && decibels > this.limit;
    const pace = Math.max(FOLLOW * (mayBeSpeech ? SLOWER_WHEN_LOUD : 1), 1 / this.seen);
    this.spread += pace * (Math.abs(decibels - this.room) - this.spread);
    // The beginning of a word must not lift the room before it is noticed.
    const step = Math.min(decibels - this.room, this.seen > FRAMES_TO_KNOW_ROOM ? 12 : 60);
    this.room += pace * step;
  }
}
