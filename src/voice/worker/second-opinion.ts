/** Keeps what the second opinion needs from room to room and from list to list. */
import { BANDS, bandLogs } from '../shared/mel.ts';
import { warpedBands } from '../shared/vocal-tract.ts';
import type { EngineParts } from './engine.ts';
import { frameFeatures } from './frame-features.ts';
import { otherWords } from './other-words.ts';
import { type PhraseNet, phraseNet } from './phrase-net.ts';
import { type Likely, PhraseScorer } from './phrase-scorer.ts';
import { type Densities, densitiesFor } from './room-densities.ts';
import type { Room } from './room-model.ts';
import { type RoomSound, roomSound } from './room-sound.ts';
import { readSpeechModel, type SpeechModel } from './speech-model.ts';

export interface Opinion extends Likely {
  /** False for a word of everyday talk that sounds more like it than any phrase in force. */
  readonly isOurs: boolean;
}

interface Words {
  readonly net: PhraseNet;
  readonly ours: ReadonlySet<string>;
}

const SECONDS = 12;
/** The mixture of the room is fitted again at the first seconds and then now and then. */
const FIT_EVERY = 4;
/** Variance of a band's logarithm where the room is not known well; no more than this is believed. */
const UNKNOWN_VARIANCE = 0.6;
const MOST_VARIANCE = 4;
const NETS_KEPT = 12;

export class SecondOpinion {
  private readonly model: SpeechModel;
  private readonly scorer: PhraseScorer;
  private readonly nets = new Map<string, Words>();
  private phrases: readonly string[] = [];
  private sounding: readonly string[] = [];
  private waysOf: (word: string) => readonly string[] = () => [];
  private densities: Densities | undefined;
  private warp = 1;
  private seconds: Int16Array[] = [];
  private variances: Float64Array[] = [];
  private room: RoomSound | null = null;
  private heard = 0;

  constructor(files: EngineParts['model']) {
    this.model = readSpeechModel(files);
    this.scorer = new PhraseScorer(this.model);
  }

  /** `waysOf` gives the pronunciations of any word; `sounding` are rivals for this once, however like ours they are. */
  use(
    phrases: readonly string[],
    waysOf: (word: string) => readonly string[],
    sounding: readonly string[] = [],
  ): void {
    this.phrases = phrases;
    this.sounding = sounding;
    this.waysOf = waysOf;
  }

  /** Takes a second of the room without speech. */
  learnRoom(samples: Int16Array): void {
    this.seconds = [...this.seconds, samples].slice(-SECONDS);
    this.variances = [...this.variances, varianceOf(bandLogs(samples))].slice(-SECONDS);
    this.heard++;
    if (this.heard > FIT_EVERY && this.heard % FIT_EVERY > 0) return;
    this.fitRoom();
  }

  /** Lays the noise (mean band logarithms) and the channel into the model; both in bands at `warp` times their place. */
  lay({ noise, channel, warp }: Room): void {
    const room = noise && { mean: noise, variance: warpedBands(this.variance(), warp) };
    this.densities = densitiesFor(this.model, room, channel);
    if (warp === this.warp) return;
    this.warp = warp;
    if (this.room) this.fitRoom();
  }

  private fitRoom(): void {
    this.room = roomSound(this.seconds.flatMap((second) => frameFeatures(second, this.warp)));
  }

  /** What was said, most likely; null before the room was laid in, or where nothing fits at all. */
  of(samples: Int16Array): Opinion | null {
    if (!this.densities || this.phrases.length === 0) return null;
    const { net, ours } = this.words();
    const likely = this.likeliest(net, samples);
    return likely && { ...likely, isOurs: ours.has(likely.phrase) };
  }

  /** Which of these was said, most likely: phrases of known words that need not be in force, a few dozen. */
  among(phrases: readonly string[], samples: Int16Array): Likely | null {
    return this.likeliest(phraseNet(this.model, phrases, this.waysOf), samples);
  }

  private likeliest(net: PhraseNet, samples: Int16Array): Likely | null {
    if (!this.densities) return null;
    const frames = frameFeatures(samples, this.warp);
    return this.scorer.likeliest(net, frames, this.densities, this.room);
  }

  private words(): Words {
    const key = [...this.phrases, '', ...this.sounding].join('|');
    const kept = this.nets.get(key);
    if (kept) return kept;
    const others = otherWords(this.phrases, this.waysOf);
    const net = phraseNet(this.model, [...this.phrases, ...this.sounding, ...others], this.waysOf);
    const words = { net, ours: new Set(this.phrases) };
    if (this.nets.size >= NETS_KEPT) this.nets.clear();
    this.nets.set(key, words);
    return words;
  }

  private variance(): Float64Array {
    if (this.variances.length === 0) return new Float64Array(BANDS).fill(UNKNOWN_VARIANCE);
    return Float64Array.from({ length: BANDS }, (_, j) => {
      const sum = this.variances.reduce((total, each) => total + (each[j] ?? 0), 0);
      return Math.min(MOST_VARIANCE, sum / this.variances.length);
    });
  }
}

function varianceOf(rows: readonly Float64Array[]): Float64Array {
  const count = Math.max(1, rows.length);
  return Float64Array.from({ length: BANDS }, (_, j) => {
    const mean = rows.reduce((sum, row) => sum + (row[j] ?? 0), 0) / count;
    return rows.reduce((sum, row) => sum + ((row[j] ?? 0) - mean) ** 2, 0) / count;
  });
}
