/** The offline ear itself: sound in, judged words out. Runs in the page's worker and in Node alike. */
import type { ListenFor, Meanwhile } from '../../bench/ports.ts';
import { BreakIn } from '../shared/break-in.ts';
import { Endpointer } from '../shared/endpointer.ts';
import { buildGrammar, spokenAs } from '../shared/grammar.ts';
import { advise } from '../shared/level-advice.ts';
import { partsOf } from '../shared/line-parts.ts';
import { FRAME, FRAMES_PER_SECOND, loudFrames, loudnessMeter } from '../shared/loudness.ts';
import type { FromEar, KeptEar } from '../shared/messages.ts';
import { QUIET_TO_LOOK, quietToEnd } from '../shared/patience.ts';
import type { Pronunciations } from '../shared/pronunciation.ts';
import { RoomMeasure } from '../shared/room-measure.ts';
import { RoomWatch } from '../shared/room-watch.ts';
import type { Verdict } from '../shared/vote.ts';
import type { Engine, EngineParts } from './engine.ts';
import { type Finding, Recogniser } from './recogniser.ts';
import { VoiceBook } from './voice-book.ts';

/** Sound kept from before speech was noticed: the quiet first consonant. */
const BEFORE = 40;
/** Frames: a phrase of the list is shorter. */
const LONGEST_PHRASE = 130;
/** Decibels under the loudest part that still belong to a word, and where that gives too long a one. */
const BELOW_LOUDEST = [22, 16, 12];
/** What begins so soon (frames) after speech that was not understood may be the rest of it: "hands", "clear". */
const GOES_ON = 40;
/** Fewer loud frames than this are a knock, not speech that was not understood. */
const FEWEST_LOUD = 20;
/** A take for a voice pattern: decibels over the room, and frames; in a room of knocks a blow must not be taken. */
const FAINTEST = 8;
const SHORTEST_TAKE = { even: 10, uneven: 20 };
const LONGEST_TAKE = 350;
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
  private readonly book: VoiceBook;
  private readonly breaks = new BreakIn();
  private meter = loudnessMeter();
  private endpointer = new Endpointer();
  private kept: Kept[] = [];
  private rest = new Int16Array(0);
  private words: ListenFor = { phrases: [] };
  private isShut = false;
  private still: ListenFor | undefined;
  /** What is spoken → the phrase of the said list it stands for. */
  private plain: ReadonlyMap<string, string> = new Map();
  private measuring: RoomMeasure | null = null;
  private begin = 0;
  /** Where the last utterance began and ended, when it was speech that was not understood. */
  private before: { readonly begin: number; readonly end: number } | null = null;
  /** The utterance that is open began with that one; none is gone on with twice. */
  private goesOn = false;
  private early: Finding | null = null;
  private enrolling: string | null = null;
  private sinceLevel = 0;

  constructor(
    engine: Engine,
    model: EngineParts['model'],
    private readonly dictionary: Pronunciations,
    private readonly tell: (message: FromEar) => void,
    nextEngine: () => Promise<Engine>,
    kept: KeptEar = {},
  ) {
    this.recogniser = new Recogniser(engine, model, nextEngine, kept);
    this.book = new VoiceBook(kept.voice);
  }

  /** What counts from now on. Words without a pronunciation are told; the rest is listened for. */
  listenFor(words: ListenFor): void {
    this.words = words;
    if (!this.still) this.use(words);
  }

  /** Hears nothing more, or only what may break into the mouth's line; of either it learns nothing. */
  shut(meanwhile?: Meanwhile): void {
    this.isShut = true;
    this.measuring = null;
    this.dropSpeech();
    this.still = undefined;
    if (!meanwhile || meanwhile.still.length === 0) return;
    const { line, still } = meanwhile;
    // It only makes the job wait, so it is heard sooner, where the line's own sound is known by its loudness.
    this.still = { phrases: still, ...(this.breaks.isApart ? { pausing: still } : {}) };
    this.use(this.still, line);
  }

  reopen(): void {
    this.isShut = false;
    this.dropSpeech();
    if (this.still) this.use(this.words);
    this.still = undefined;
  }

  /** `line` sounds meanwhile: what fits a part of it as well was not said by a person. */
  private use(words: ListenFor, line = ''): void {
    const built = buildGrammar(words, this.dictionary);
    this.early = null;
    this.endpointer.awaits = words.number ? 'number' : 'word';
    const spoken = new Map(words.phrases.map((phrase) => [spokenAs(phrase, words), phrase]));
    this.plain = spoken;
    this.recogniser.use(built, [...spoken.keys()], words, partsOf(line));
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

  stopEnrolling(): void {
    this.enrolling = null;
  }

  /** Takes the next seconds as the room alone and tells what came of it; nothing is heard meanwhile. */
  measureRoom(seconds = 10): void {
    this.dropSpeech();
    this.measuring = new RoomMeasure(seconds);
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
    if (this.measuring) {
      this.measure(this.measuring, samples, decibels);
      return;
    }
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
    const { before } = this;
    this.goesOn = before !== null && this.kept.length - before.end < GOES_ON;
    this.begin = before && this.goesOn ? before.begin : Math.max(0, this.kept.length - BEFORE);
    this.before = null;
    this.early = null;
  }

  /** After a short quiet the words are looked at; what may still go on is given more time. */
  private quiet(frames: number): void {
    if (frames < QUIET_TO_LOOK) {
      this.early = null;
      return;
    }
    if (!this.early) this.early = this.enrolling ? this.unheard() : this.find();
    const wait = quietToEnd(this.early.text, this.still ?? this.words, this.early.loud);
    if (frames < wait) return;
    const finding = this.early;
    this.endpointer.close();
    this.settle(finding);
  }

  private find(): Finding {
    const { samples, loud } = this.unheard();
    const found = this.recogniser.find(samples, loud);
    const { also } = found;
    const second = also === undefined ? {} : { also: this.plain.get(also) ?? also };
    return { ...found, text: this.plain.get(found.text) ?? found.text, ...second };
  }

  /** The utterance so far, not yet looked at. */
  private unheard(): Finding {
    const frames = this.kept.slice(this.begin);
    const samples = joinAll(frames.map((frame) => frame.samples));
    const decibels = frames.map((frame) => frame.decibels);
    return { text: '', confidence: 0, samples, loud: this.loudestWord(decibels) };
  }

  /** What lasts longer than a phrase is not one word: then only its loudest part may be. */
  private loudestWord(decibels: readonly number[]): readonly boolean[] {
    let loud = loudFrames(decibels, this.endpointer.limit);
    if (this.endpointer.awaits === 'number') return loud;
    for (const below of BELOW_LOUDEST) {
      loud = loudFrames(decibels, this.endpointer.limitInside(below));
      if (loud.lastIndexOf(true) - loud.indexOf(true) < LONGEST_PHRASE) break;
    }
    return loud;
  }

  private settle(finding: Finding): void {
    if (this.isShut) {
      this.breakIn(finding);
      return;
    }
    if (this.enrolling) {
      this.keepPattern(finding, this.enrolling);
      return;
    }
    const isSpeech = finding.loud.filter(Boolean).length >= FEWEST_LOUD;
    const voted = this.voted(finding, isSpeech);
    const isUnderstood = voted.text !== '' && voted.confidence >= SURE;
    if (isSpeech) this.room.utterance(this.endpointer.overRoom, isUnderstood);
    if (isUnderstood) this.breaks.word(this.endpointer.loudestLevel);
    if (this.room.changed) this.tellNoisy();
    if (this.room.isNoisy) return;
    const mayGoOn = isSpeech && !isUnderstood && !this.goesOn;
    this.before = mayGoOn ? { begin: this.begin, end: this.kept.length } : null;
    if (isUnderstood) this.answer(finding, voted);
    else if (isSpeech) this.tell({ kind: 'unclear', text: voted.text });
  }

  /** In a room of knocks a short sound is never weighed against words. */
  private voted(finding: Finding, isSpeech: boolean): Verdict {
    const { isUneven } = this.endpointer;
    if (isUneven && !isSpeech) return finding;
    return this.book.vote(finding, this.words.phrases, this.recogniser.noise, isUneven);
  }

  /** The mouth's own sound may fit by accident. */
  private breakIn({ text, confidence, isShared = false }: Finding): void {
    const { loudestLevel } = this.endpointer;
    const isFound = text !== '' && confidence >= SURE;
    if (isFound && this.breaks.lets(loudestLevel, !isShared)) {
      this.tell({ kind: 'heard', text, confidence });
    } else this.breaks.line(loudestLevel);
  }

  private answer(finding: Finding, { text, confidence }: Verdict): void {
    this.tell({ kind: 'heard', text, confidence });
    this.recogniser.learn(finding, text);
    this.tell({ kind: 'channel', channel: this.recogniser.channel });
  }

  private keepPattern(finding: Finding, phrase: string): void {
    const fault = this.faultOf(finding);
    const times = fault ? null : this.book.add(phrase, finding, this.recogniser.noise);
    if (times === null) {
      this.tell({ kind: 'not-enrolled', phrase, reason: fault ?? 'unlike' });
      return;
    }
    this.enrolling = null;
    this.tell({ kind: 'enrolled', phrase, times, voice: this.book.kept() });
  }

  private faultOf({ loud }: Finding): 'too-quiet' | 'too-short' | 'too-long' | null {
    const frames = loud.filter(Boolean).length;
    if (this.endpointer.overRoom < FAINTEST) return 'too-quiet';
    const shortest = SHORTEST_TAKE[this.endpointer.isUneven ? 'uneven' : 'even'];
    if (frames < shortest) return 'too-short';
    return frames > LONGEST_TAKE ? 'too-long' : null;
  }

  private measure(measuring: RoomMeasure, samples: Int16Array, decibels: number): void {
    if (!measuring.take(samples, decibels)) return;
    this.measuring = null;
    const accident = this.recogniser.measureRoom(measuring.seconds);
    const noise = [...(this.recogniser.noise ?? [])];
    const room = { version: 1, decibels: measuring.decibels, noise, accident } as const;
    this.endpointer.knowRoom(measuring.decibels);
    const advice = advise(measuring.decibels, this.room.overRoom);
    this.tell({
      kind: 'room-measured',
      decibels: measuring.decibels,
      room,
      isSafe: this.room.lets(measuring.decibels),
      ...(advice ? { advice } : {}),
    });
  }

  private tellNoisy(): void {
    const advice = advise(this.endpointer.roomLevel, this.room.overRoom);
    this.tell({ kind: 'noisy', noisy: this.room.isNoisy, ...(advice ? { advice } : {}) });
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
    if (this.room.changed) this.tellNoisy();
    const advice = advise(level, this.room.overRoom);
    this.tell({ kind: 'level', decibels: Math.round(level), ...(advice ? { advice } : {}) });
  }

  private dropSpeech(): void {
    this.endpointer.close();
    this.kept = [];
    this.begin = 0;
    this.before = null;
    this.early = null;
    this.rest = new Int16Array(0);
  }

  private drop(count: number): void {
    this.kept = this.kept.slice(count);
    this.begin = Math.max(0, this.begin - count);
    const { before } = this;
    if (before) this.before = { begin: Math.max(0, before.begin - count), end: before.end - count };
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
