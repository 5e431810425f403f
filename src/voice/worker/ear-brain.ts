/** The offline ear itself: sound in, judged words out. Runs in the page's worker and in Node alike. */
import type { ListenFor } from '../../bench/ports.ts';
import { Endpointer } from '../shared/endpointer.ts';
import { buildGrammar } from '../shared/grammar.ts';
import { advise } from '../shared/level-advice.ts';
import { FRAME, FRAMES_PER_SECOND, loudFrames, loudnessMeter } from '../shared/loudness.ts';
import type { FromEar } from '../shared/messages.ts';
import { QUIET_ENOUGH, quietToEnd } from '../shared/patience.ts';
import type { Pronunciations } from '../shared/pronunciation.ts';
import { RoomWatch } from '../shared/room-watch.ts';
import type { Engine, EngineParts } from './engine.ts';
import { type Finding, Recogniser } from './recogniser.ts';
import { VoiceBook } from './voice-book.ts';

/** Sound kept from before speech was noticed: the quiet first consonant. */
const BEFORE = 40;
/** Fewer loud frames than this are a knock, not speech that was not understood. */
const FEWEST_LOUD = 20;
/** Less is a guess. */
const SURE = 0.5;
/** The longest utterance and what comes before it. */
const KEPT = 8 * FRAMES_PER_SECOND;

interface Kept {
  readonly samples: Int16Array;
  readonly decibels: number;
}

export class EarBrain {
  private readonly recogniser: Recogniser;
  private readonly room = new RoomWatch();
  private readonly book = new VoiceBook();
  private meter = loudnessMeter();
  private endpointer = new Endpointer();
  private kept: Kept[] = [];
  private rest = new Int16Array(0);
  private words: ListenFor = { phrases: [] };
  private isShut = false;
  private still: ListenFor | undefined;
  private begin = 0;
  private early: Finding | null = null;
  private enrolling: string | null = null;
  private sinceLevel = 0;

  constructor(
    engine: Engine,
    model: EngineParts['model'],
    private readonly dictionary: Pronunciations,
    private readonly tell: (message: FromEar) => void,
    nextEngine: () => Promise<Engine>,
    channel?: string,
  ) {
    this.recogniser = new Recogniser(engine, model, nextEngine, channel);
  }

  /** What counts from now on. Words without a pronunciation are told; the rest is listened for. */
  listenFor(words: ListenFor): void {
    this.words = words;
    if (!this.still) this.use(words);
  }

  /** Hears nothing more, or only what may break into the mouth's line; of either it learns nothing. */
  shut(still?: ListenFor): void {
    this.isShut = true;
    this.dropSpeech();
    this.still = still;
    if (still) this.use(still);
  }

  reopen(): void {
    this.isShut = false;
    this.dropSpeech();
    if (this.still) this.use(this.words);
    this.still = undefined;
  }

  private use(words: ListenFor): void {
    const built = buildGrammar(words, this.dictionary);
    this.early = null;
    this.recogniser.use(built, words.phrases);
    if (built.missing.length > 0) this.tell({ kind: 'missing', words: built.missing });
  }

  /** Frees what the engine holds for this ear. */
  dispose(): void {
    this.recogniser.dispose();
  }

  /** The next clear utterance becomes a pattern of this person's voice for the phrase. */
  enrol(phrase: string): void {
    this.enrolling = phrase;
  }

  forgetVoice(): void {
    this.book.clear();
  }

  /** Takes sound at 16 kHz, any length. While shut, sound only keeps the room's level up to date. */
  hear(samples: Int16Array): void {
    const all = join(this.rest, samples);
    let at = 0;
    for (; at + FRAME <= all.length; at += FRAME) this.frame(all.slice(at, at + FRAME));
    this.rest = all.slice(at);
  }

  private frame(samples: Int16Array): void {
    const decibels = this.meter(samples);
    if (this.isShut && !this.still) return;
    this.kept.push({ samples, decibels });
    if (this.kept.length > KEPT) this.drop(this.kept.length - KEPT);
    const event = this.endpointer.take(decibels);
    if (!this.isShut) this.tellLevel();
    if (event?.kind === 'begun') this.begun();
    else if (event?.kind === 'quiet') this.quiet(event.frames);
    else if (this.isShut) return;
    else if (event?.kind === 'too-long') this.tell({ kind: 'unclear', text: '' });
    else if (!this.endpointer.isSpeaking) this.learnRoom(samples);
  }

  private begun(): void {
    this.begin = Math.max(0, this.kept.length - BEFORE);
    this.early = null;
  }

  /** After a short quiet the words are looked at; what may still go on is given more time. */
  private quiet(frames: number): void {
    if (frames < QUIET_ENOUGH) {
      this.early = null;
      return;
    }
    if (!this.early) this.early = this.enrolling ? this.unheard() : this.find();
    const wait = quietToEnd(this.early.text, this.still ?? this.words, this.early.loud);
    if (frames < wait) return;
    // Quiet that belonged to the utterance may have changed what fits.
    const again = wait > QUIET_ENOUGH && !this.enrolling;
    const finding = again ? this.find() : this.early;
    this.endpointer.close();
    this.settle(finding);
  }

  private find(): Finding {
    const { samples, loud } = this.unheard();
    return this.recogniser.find(samples, loud);
  }

  /** The utterance so far, not yet looked at. */
  private unheard(): Finding {
    const frames = this.kept.slice(this.begin);
    const samples = joinAll(frames.map((frame) => frame.samples));
    const decibels = frames.map((frame) => frame.decibels);
    const loud = loudFrames(decibels, this.endpointer.limit);
    return { text: '', confidence: 0, samples, loud };
  }

  private settle(finding: Finding): void {
    if (this.isShut) {
      this.breakIn(finding);
      return;
    }
    this.room.utterance(this.endpointer.overRoom);
    if (this.room.changed) this.tell({ kind: 'noisy', noisy: this.room.isNoisy });
    if (this.enrolling) this.keepPattern(finding);
    else if (!this.room.isNoisy) this.answer(finding);
  }

  /** Sound of the mouth itself fits nothing here, and is not worth a word. */
  private breakIn({ text, confidence }: Finding): void {
    if (text !== '' && confidence >= SURE) this.tell({ kind: 'heard', text, confidence });
  }

  private answer(finding: Finding): void {
    const voted = this.book.vote(finding, this.words.phrases);
    if (voted.text === '' || voted.confidence < SURE) {
      const isSpeech = finding.loud.filter(Boolean).length >= FEWEST_LOUD;
      if (isSpeech) this.tell({ kind: 'unclear', text: voted.text });
      return;
    }
    this.tell({ kind: 'heard', text: voted.text, confidence: voted.confidence });
    this.recogniser.learn(finding);
    this.tell({ kind: 'channel', channel: this.recogniser.channel });
  }

  private keepPattern(finding: Finding): void {
    const phrase = this.enrolling ?? '';
    this.enrolling = null;
    const times = this.book.add(phrase, finding.samples, finding.loud);
    this.tell({ kind: 'enrolled', phrase, times });
  }

  /** The room without speech, a second at a time. */
  private learnRoom(samples: Int16Array): void {
    const piece = this.room.quietPiece(samples);
    if (piece) this.recogniser.learnRoom(piece);
  }

  private tellLevel(): void {
    if (++this.sinceLevel < FRAMES_PER_SECOND) return;
    this.sinceLevel = 0;
    const level = this.endpointer.roomLevel;
    this.room.level(level);
    if (this.room.changed) this.tell({ kind: 'noisy', noisy: this.room.isNoisy });
    const advice = advise(level, this.room.overRoom);
    this.tell({ kind: 'level', decibels: Math.round(level), ...(advice ? { advice } : {}) });
  }

  private dropSpeech(): void {
    this.endpointer.close();
    this.kept = [];
    this.begin = 0;
    this.early = null;
    this.rest = new Int16Array(0);
  }

  private drop(count: number): void {
    this.kept = this.kept.slice(count);
    this.begin = Math.max(0, this.begin - count);
  }
}

function join(a: Int16Array, b: Int16Array): Int16Array {
  return joinAll([a, b]);
}

function joinAll(pieces: readonly Int16Array[]): Int16Array {
  const whole = new Int16Array(pieces.reduce((length, piece) => length + piece.length, 0));
  let at = 0;
  for (const piece of pieces) {
    whole.set(piece, at);
    at += piece.length;
  }
  return whole;
}
