/** Finds the warp that fits a person's vocal tract, from utterance to utterance. */
import { withoutKnocks } from '../shared/loudness.ts';
import { WARPS, warpedBands, warpedCosines } from '../shared/vocal-tract.ts';
import type { EngineParts } from './engine.ts';
import { frameFeatures } from './frame-features.ts';
import { frameScores, type SoundSet, soundSet } from './frame-scores.ts';
import { phraseNet } from './phrase-net.ts';
import { alignedScore } from './phrase-scorer.ts';
import { quickDensities } from './room-densities.ts';
import { readSpeechModel, type SpeechModel, speechPhones } from './speech-model.ts';

/** One utterance and where it was heard; noise and channel in the usual bands. */
export interface Heard {
  /** 16 kHz. */
  readonly samples: Int16Array;
  readonly loud: readonly boolean[];
  readonly noise: Float64Array | null;
  readonly channel: Float64Array;
}

/** What was learnt fades, since somebody else may stand here now. */
const FADE = 0.9;
/** Natural logarithm a frame that one hundredth of warp costs, squared: unlikely tracts must fit better. */
const UNUSUAL = 0.006;
/** A tract that is remembered counts as so many utterances. */
const REMEMBERED = 2;
/** Without knowing the words a warp must fit so much better than none, in natural logarithm a frame. */
const GUESS_BETTER = 0.4;
/** Every so many frames tell enough: with the words, and without them, when only loud ones count. */
const EVERY = { aligned: 2, guessed: 3 };
const GUESSES: readonly number[] = [1, 1.04, 1.08, 1.12];
/** Of an utterance with fewer loud frames little more than its noise is heard. */
const FEWEST_FRAMES = 30;
/** After so many utterances only every so many are learnt from: it takes a tenth of a second. */
const AT_FIRST = 16;
const LATER_EVERY = 4;

export class TractSearch {
  private readonly model: SpeechModel;
  private readonly anySound: SoundSet;
  private readonly silent: readonly number[];
  private scores: Float64Array = WARPS_ALIKE;
  private guesses: Float64Array = GUESSES_ALIKE;
  private guessed = 0;
  private learnt = 0;
  private isKnown = false;

  /** `kept` as `text` gave it. */
  constructor(files: EngineParts['model'], kept?: string) {
    this.model = readSpeechModel(files);
    this.anySound = soundSet(this.model, speechPhones(this.model).flatMap(this.model.soundsOf));
    this.silent = this.model.soundsOf(this.model.silence);
    const warp = Number(kept);
    if (!kept || !WARPS.includes(warp)) return;
    this.isKnown = true;
    this.scores = Float64Array.from(WARPS, (one) => -REMEMBERED * Math.abs(one - warp) * 10);
  }

  get text(): string {
    return this.isKnown ? String(this.warp) : '';
  }

  /** The warp that fits best so far; 1 before anything is known. */
  get warp(): number {
    if (!this.isKnown) return this.guessedWarp();
    const fit = WARPS.map((warp, i) => (this.scores[i] ?? 0) - UNUSUAL * (100 * (warp - 1)) ** 2);
    return WARPS[fit.indexOf(Math.max(...fit))] ?? 1;
  }

  /** Learns from an utterance whose words are known. */
  learn(phrase: string, heard: Heard, waysOf: (word: string) => readonly string[]): void {
    if (this.learnt++ > AT_FIRST && this.learnt % LATER_EVERY > 0) return;
    const net = phraseNet(this.model, [phrase], waysOf);
    if (net.phrases.length === 0) return;
    const own = [...net.sounds].filter((sound) => sound >= 0);
    const set = soundSet(this.model, [...own, ...this.silent]);
    const every = (t: number) => t % EVERY.aligned === 0;
    const rows = WARPS.map((warp) => wholeRows(this.scoredAt(warp, set, heard, every)));
    // What is no speech is worth the same at every warp: the noise must not choose.
    const silent = this.silent.map((sound) => set.placeOf[sound] ?? 0);
    const outside = (rows[WARPS.indexOf(1)] ?? []).map((row) =>
      Math.max(...silent.map((place) => row[place] ?? 0)),
    );
    const fits = rows.map((scored) => alignedScore(net, set, scored, outside));
    if (fits.some((fit) => fit === null)) return;
    const frames = Math.max(FEWEST_FRAMES, heard.loud.filter(Boolean).length) / EVERY.aligned;
    this.scores = this.scores.map((score, i) => score * FADE + (fits[i] ?? 0) / frames);
    this.isKnown = true;
  }

  /** Before anything was understood: what the sound tells without the words. */
  guess(heard: Heard): void {
    if (this.isKnown) return;
    this.guessed++;
    const loud = withoutKnocks(heard.loud);
    const counts = (t: number) => (loud[t] ?? false) && t % EVERY.guessed === 0;
    this.guesses = this.guesses.map((sum, i) => {
      const { tops } = this.scoredAt(GUESSES[i] ?? 1, this.anySound, heard, counts);
      return sum + tops.reduce((all, top) => all + top, 0) / Math.max(1, tops.length);
    });
  }

  private guessedWarp(): number {
    const plain = this.guesses[GUESSES.indexOf(1)] ?? 0;
    const best = Math.max(...this.guesses);
    if (this.guessed === 0 || best - plain < GUESS_BETTER * this.guessed) return 1;
    return GUESSES[this.guesses.indexOf(best)] ?? 1;
  }

  private scoredAt(
    warp: number,
    set: SoundSet,
    { samples, noise, channel }: Heard,
    counts: (frame: number) => boolean,
  ) {
    const books = set.books.map(({ book }) => book);
    const here = noise && warpedBands(noise, warp);
    const densities = quickDensities(this.model, books, here, warpedCosines(channel, warp));
    const frames = frameFeatures(samples, warp).filter((_, t) => counts(t));
    return frameScores(set, densities, frames);
  }
}

function wholeRows({ rows, tops }: ReturnType<typeof frameScores>): readonly Float32Array[] {
  return rows.map((row, t) => row.map((score) => score + (tops[t] ?? 0)));
}

const WARPS_ALIKE = new Float64Array(WARPS.length);
const GUESSES_ALIKE = new Float64Array(GUESSES.length);
