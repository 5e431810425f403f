/** Finds words in one utterance: the grammar's best answer, weighed against free phones. */
import type { ListenFor } from '../../bench/ports.ts';
import { agree, type First, type Weight } from '../shared/agree.ts';
import { agreeOnNumber, SURE_OF_NUMBER } from '../shared/agree-on-number.ts';
import { Channel } from '../shared/channel.ts';
import { type BuiltGrammar, type Grammar, phoneLoop } from '../shared/grammar.ts';
import { type Judged, judge } from '../shared/judge.ts';
import { withoutKnocks } from '../shared/loudness.ts';
import { BANDS, bandLogs, meanOf } from '../shared/mel.ts';
import type { KeptEar, KeptRoom } from '../shared/messages.ts';
import { nearNumbers } from '../shared/near-numbers.ts';
import { withFloor } from '../shared/noise-floor.ts';
import { warpedBands, warpedCosines } from '../shared/vocal-tract.ts';
import { type Decoded, Decoder } from './decoder.ts';
import { type Engine, type EngineParts, placeModel } from './engine.ts';
import { modelForRoom, type Room } from './room-model.ts';
import { SecondOpinion } from './second-opinion.ts';
import { TractSearch } from './tract-search.ts';

export interface Finding {
  /** Empty when nothing fits. */
  readonly text: string;
  /** 0 to 1; below one half it was not said clearly enough. */
  readonly confidence: number;
  /** The phrase that the second opinion took it for. */
  readonly also?: string;
  /** Each of the two opinions is sure of it by itself. */
  readonly isShared?: boolean;
  readonly samples: Int16Array;
  readonly loud: readonly boolean[];
}

/** `bands` are those of the loud frames. */
interface Utterance extends Pick<Finding, 'samples' | 'loud'> {
  readonly bands: readonly Float64Array[];
}

/** Probability of each step between free phones: higher makes the ear refuse more. */
const FREE_PHONES = phoneLoop(0.02);
/** When more of the loud sound is outside the words, they were an accident in other talk. */
const MOST_UNCOVERED = 0.42;
/**
 * Margin at which confidence is one half. A single short word is the easiest to find in other talk;
 * a number is read back before it counts, and a question taken for another changes nothing.
 */
const ENOUGH = { word: 0, phrase: -0.15, number: 0, harmless: -0.15, pausing: -0.3 };
/** So far a word must stand above what the room's own sound reached by accident. */
const ABOVE_ACCIDENT = 0.2;
/** Margin over it that makes confidence nearly one. */
const SURE_ABOVE = 1;
/** Natural logarithm of how much likelier a reading inside its range is than one outside. */
const LIKELIER_INSIDE = 12;
/** The model is laid anew when the room's noise has changed by so much in some band, on average. */
const NOISE_CHANGED = 0.5;
const SECONDS_OF_ROOM = 8;
/** Frames kept around the loud ones: room enough for a quiet consonant, too little to mistake noise for one. */
const AROUND = 15;
const SAMPLES_A_FRAME = 160;
/** Frames that the second opinion is asked for: no phrase of ours is longer. */
const LONGEST_PHRASE = 400;
const FEWEST_LOUD = 12;
/** Natural logarithm of power over the room, mean of the bands: in more noise a tract was found that was a wrong one. */
const OVER_ROOM = { learn: 2, guess: 5 };
/** Between the channel's mean and the tract in what is kept. */
const AFTER_MEAN = ';';
const DECODERS_AN_ENGINE = 5;
const MOST_DECODERS = 8;
/** Change of the first cosine, which is loudness: about four decibels. */
const LOUDER = 5;
/** The channel changes quickly at first; then the model is laid anew less often. */
const LEARN_AFTER = [1, 2, 4, 8, 16];

export class Recogniser {
  private decoder: Decoder | undefined;
  private grammar: Grammar | null = null;
  private inside: Grammar | null = null;
  private phrases: ReadonlySet<string> = new Set();
  private harmless: ReadonlySet<string> = new Set();
  private pausing: ReadonlySet<string> = new Set();
  private accident = Number.NEGATIVE_INFINITY;
  private readonly tract: TractSearch;
  private waysOf: (word: string) => readonly string[] = () => [];
  private laidWarp = 1;
  private isMouthHeard = false;
  private readonly mean: Channel;
  private seconds: Float64Array[] = [];
  private laidFor: Float64Array | null = null;
  private utterances = 0;
  private isStale = false;
  private laidChannel: Channel | undefined;
  private freshEngine: Engine | undefined;
  private decoders = 0;
  private isFetching = false;
  private readonly second: SecondOpinion;

  constructor(
    private engine: Engine,
    private readonly model: EngineParts['model'],
    private readonly nextEngine: () => Promise<Engine>,
    { channel, room }: KeptEar,
  ) {
    this.second = new SecondOpinion(model);
    const [mean, tract] = (channel ?? '').split(AFTER_MEAN);
    this.mean = new Channel(mean);
    this.tract = new TractSearch(model, tract);
    if (room) this.recallRoom(room);
  }

  /** The channel and the vocal tract so far, to be given to the next ear at this microphone. */
  get channel(): string {
    return `${this.mean.text}${AFTER_MEAN}${this.tract.text}`;
  }

  /** Mean band logarithms of the room without speech; null before a second of it was heard. */
  get noise(): Float64Array | null {
    return this.seconds.length > 0 ? meanOf(this.seconds) : null;
  }

  /** `phrases` as they are spoken, which of them change nothing or only make the job wait, and rivals that sound now. */
  use(
    { grammar, inside, spoken, waysOf }: BuiltGrammar,
    phrases: readonly string[],
    { harmless = [], pausing = [] }: Pick<ListenFor, 'harmless' | 'pausing'>,
    sounding: readonly string[],
  ): void {
    this.grammar = grammar.arcs.length > 0 ? grammar : null;
    this.inside = inside ?? null;
    this.phrases = new Set(phrases);
    this.harmless = new Set(harmless);
    this.pausing = new Set(pausing);
    this.waysOf = waysOf;
    this.isMouthHeard = sounding.length > 0;
    this.second.use(spoken, waysOf, sounding);
  }

  /** Looks for words in an utterance. It may be called again with more of the same utterance. */
  find(samples: Int16Array, loud: readonly boolean[]): Finding {
    const heard = aroundLoud({ samples, loud });
    if (isKnock(loud)) return { text: '', confidence: 0, ...heard };
    const sound = withFloor(heard.samples);
    const bands = loudBands(sound, heard.loud);
    const overRoom = this.overRoom(bands);
    if (!this.mean.isKnown)
      this.guessChannel({ samples: sound, loud: heard.loud, bands }, overRoom);
    const judged = this.weigh(sound, heard.loud);
    const first = { text: judged?.text ?? '', confidence: judged ? this.confidence(judged) : 0 };
    const opinion = this.mayNeedSecond(first, sound) ? this.second.of(sound) : null;
    const weightOf = (text: string) => this.weightOf(text);
    const also = opinion?.isOurs ? opinion.phrase : undefined;
    const isShared = first.confidence >= 0.5 && also === first.text;
    const agreed = this.lookAgain(agree(first, opinion, { weightOf, overRoom }), sound);
    return { ...agreed, ...(also === undefined ? {} : { also }), isShared, ...heard };
  }

  /**
   * Takes several seconds of the room alone, a second each. From now on a word must fit better than
   * any of this did by accident, which is returned as margin a frame; null when nothing did.
   */
  measureRoom(seconds: readonly Int16Array[]): number | null {
    for (const second of seconds) this.learnRoom(second);
    const accidents = seconds.flatMap((second) => {
      const loud = bandLogs(second).map(() => true);
      const margin = this.weigh(withFloor(second), loud)?.margin;
      return margin === undefined ? [] : [margin];
    });
    const most = Math.max(...accidents);
    this.accident = most;
    return accidents.length > 0 ? most : null;
  }

  /** What an earlier measurement told; a damaged one is left aside. */
  private recallRoom({ noise, accident }: KeptRoom): void {
    if (noise.length !== BANDS || !noise.every(Number.isFinite)) return;
    this.seconds = [Float64Array.from(noise)];
    if (accident !== null && Number.isFinite(accident)) this.accident = accident;
  }

  /** Call once at the end of an utterance that was understood: it tells how speech sounds here. */
  learn({ samples, loud }: Finding, words: string): void {
    this.utterances++;
    const sound = withFloor(samples);
    const bands = loudBands(sound, loud);
    const { noise } = this;
    this.mean.learn(bands, noise);
    if (this.overRoom(bands) > OVER_ROOM.learn) {
      const channel = this.channelOf(bands).mean;
      this.tract.learn(words, { samples: sound, loud, noise, channel }, this.waysOf);
    }
    const isOtherTract = this.tract.warp !== this.laidWarp;
    if (isOtherTract || LEARN_AFTER.includes(this.utterances)) this.isStale = true;
  }

  /** Takes a second of the room without speech, and lays the model anew when the room has changed. */
  learnRoom(samples: Int16Array): void {
    this.seconds = [...this.seconds, meanOf(bandLogs(samples))].slice(-SECONDS_OF_ROOM);
    this.second.learnRoom(samples);
    if (this.isStale || (this.decoder && differs(this.noise, this.laidFor))) this.lay();
  }

  dispose(): void {
    this.decoder?.dispose();
    this.decoder = undefined;
  }

  /** Before the first word was understood, each utterance is all there is to tell the channel by. */
  private guessChannel({ samples, loud, bands }: Utterance, overRoom: number): void {
    const channel = this.channelOf(bands);
    if (!this.isMouthHeard && overRoom > OVER_ROOM.guess) {
      this.tract.guess({ samples, loud, noise: this.noise, channel: channel.mean });
    }
    const louder = Math.abs((channel.mean[0] ?? 0) - (this.laidChannel?.mean[0] ?? 0));
    const isOtherTract = this.tract.warp !== this.laidWarp;
    if (!this.decoder || louder > LOUDER || isOtherTract) this.lay(channel);
  }

  /** The channel as the loud frames of one utterance alone tell it. */
  private channelOf(bands: readonly Float64Array[]): Channel {
    const channel = new Channel();
    channel.learn(bands, this.noise);
    return channel;
  }

  private weigh(samples: Int16Array, loud: readonly boolean[]): Judged | null {
    if (!this.grammar) return null;
    const found = this.likelier(this.grammar, samples);
    const speech = withoutKnocks(loud);
    const coarse = judge(found.segments, [], speech);
    if (!found.words || !coarse || coarse.uncovered > MOST_UNCOVERED) return null;
    const free = this.decode(FREE_PHONES, samples);
    return judge(found.segments, free.segments, speech);
  }

  /** A number inside the range wins unless one outside explains the sound much better. */
  private likelier(grammar: Grammar, samples: Int16Array): Decoded {
    const anywhere = this.decode(grammar, samples);
    if (!this.inside || !anywhere.words) return anywhere;
    const inside = this.decode(this.inside, samples);
    if (!inside.words) return anywhere;
    return total(inside) + LIKELIER_INSIDE >= total(anywhere) ? inside : anywhere;
  }

  private decode(grammar: Grammar, samples: Int16Array): Decoded {
    if (this.decoder?.isFull) this.lay();
    const decoder = this.decoder ?? this.lay();
    return decoder.decode(decoder.grammar(grammar), samples);
  }

  private confidence({ text, margin }: Judged): number {
    const enough = Math.max(ENOUGH[this.kindOf(text)], this.accident + ABOVE_ACCIDENT);
    return Math.max(0, Math.min(0.99, 0.5 + (0.49 * (margin - enough)) / SURE_ABOVE));
  }

  /** Weighs a doubtful number against those it may be mistaken for; one outside its range is left as it is. */
  private lookAgain(first: First, sound: Int16Array): First {
    const numbers = this.inside ?? this.grammar;
    const isNumber = first.text !== '' && this.weightOf(first.text) === 'number';
    if (!numbers || !isNumber || first.confidence >= SURE_OF_NUMBER) return first;
    const near = nearNumbers(first.text, numbers, this.phrases);
    return near.includes(first.text) ? agreeOnNumber(first, this.second.among(near, sound)) : first;
  }

  /** A sure number is read back anyway, and long talk is no phrase of ours: both would only take time. */
  private mayNeedSecond({ text, confidence }: First, sound: Int16Array): boolean {
    if (!this.grammar || sound.length > LONGEST_PHRASE * SAMPLES_A_FRAME) return false;
    return confidence < 0.5 || this.weightOf(text) !== 'number';
  }

  /** Infinity while the room is not known. */
  private overRoom(bands: readonly Float64Array[]): number {
    const { noise } = this;
    const heard = meanOf(bands);
    if (!noise || heard.length === 0) return Number.POSITIVE_INFINITY;
    return heard.reduce((sum, band, j) => sum + band - (noise[j] ?? 0), 0) / heard.length;
  }

  private weightOf(text: string): Weight {
    if (this.pausing.has(text)) return 'pausing';
    if (this.harmless.has(text)) return 'harmless';
    return this.phrases.has(text) ? 'phrase' : 'number';
  }

  private kindOf(text: string): keyof typeof ENOUGH {
    if (this.pausing.has(text)) return 'pausing';
    if (this.harmless.has(text)) return 'harmless';
    if (!this.phrases.has(text)) return 'number';
    return text.includes(' ') ? 'phrase' : 'word';
  }

  /** A new decoder whose model expects this room and this channel; takes about a tenth of a second. */
  private lay(channel = this.mean): Decoder {
    // Without a fresh engine the old decoder must do: an engine out of memory stops for good.
    const isUsedUp = this.decoders >= MOST_DECODERS && !this.freshEngine;
    if (this.decoder && isUsedUp) return this.decoder;
    this.decoder?.dispose();
    this.changeEngine();
    this.laidFor = this.noise;
    this.laidChannel = channel;
    this.laidWarp = this.tract.warp;
    this.isStale = false;
    const room = roomFor(this.laidFor, channel, this.laidWarp);
    placeModel(this.engine, modelForRoom(this.model, room));
    this.decoder = new Decoder(this.engine, {});
    this.second.lay(room);
    return this.decoder;
  }

  /** Each decoder leaves some of the engine's memory unfreed, so a fresh engine is fetched in time. */
  private changeEngine(): void {
    if (this.freshEngine) {
      this.engine = this.freshEngine;
      this.freshEngine = undefined;
      this.decoders = 0;
    }
    this.decoders++;
    if (this.decoders < DECODERS_AN_ENGINE || this.isFetching) return;
    this.isFetching = true;
    const done = () => {
      this.isFetching = false;
    };
    this.nextEngine().then((engine) => {
      this.freshEngine = engine;
      done();
    }, done);
  }
}

/** The loud part with a little around it: what lies outside can only be mistaken. */
function aroundLoud({ samples, loud }: Pick<Finding, 'samples' | 'loud'>) {
  const from = Math.max(0, loud.indexOf(true) - AROUND);
  const to = loud.lastIndexOf(true) + 1 + AROUND;
  return {
    samples: samples.subarray(from * SAMPLES_A_FRAME, to * SAMPLES_A_FRAME),
    loud: loud.slice(from, to),
  };
}

/** Noise and channel are measured in the usual bands. */
function roomFor(noise: Float64Array | null, channel: Channel, warp: number): Room {
  return {
    noise: noise && warpedBands(noise, warp),
    channel: warpedCosines(channel.mean, warp),
    warp,
  };
}

function loudBands(samples: Int16Array, loud: readonly boolean[]): readonly Float64Array[] {
  return bandLogs(samples).filter((_, i) => loud[i]);
}

/** Too short for a word: the shortest of them last about a fifth of a second. */
function isKnock(loud: readonly boolean[]): boolean {
  return loud.filter(Boolean).length < FEWEST_LOUD;
}

function differs(noise: Float64Array | null, laidFor: Float64Array | null): boolean {
  if (!noise || !laidFor) return noise !== laidFor;
  const change = noise.reduce((sum, value, j) => sum + Math.abs(value - (laidFor[j] ?? 0)), 0);
  return change / noise.length > NOISE_CHANGED;
}

function total({ segments }: Decoded): number {
  return segments.reduce((sum, segment) => sum + segment.score, 0);
}
