/**
 * A second opinion on which phrase was said, worked out beside the engine's: the same acoustic model, but with the
 * room's noise in its variances too, with the room's own sounds as a rival for every frame, and with every phrase
 * scored to its end, so that it is known how far the best one leads. Viterbi over whole phrases; method of the
 * rival: free phones (Rose and Paul, ICASSP 1990).
 */
import { frameScores, type SoundSet, soundSet } from './frame-scores.ts';
import { FROM_BEFORE, FROM_OUTSIDE, GAP, type PhraseNet } from './phrase-net.ts';
import type { Densities } from './room-densities.ts';
import type { RoomSound } from './room-sound.ts';
import { type SpeechModel, STATES, speechPhones } from './speech-model.ts';

export interface Likely {
  readonly phrase: string;
  /** Against free phones and the room, natural logarithm a frame of the phrase. */
  readonly fit: number;
  /** Over the next phrase, natural logarithm. */
  readonly lead: number;
  /** The next phrase. */
  readonly next: string;
  readonly frames: number;
}

/** A frame fits nothing worse than this: one blow must not undo a word. */
const WORST = 15;
/** The room may sound in the middle of a phrase, at this price a frame. */
const MASKED = 8;
/** Outside the phrase the room is a little less likely than a phrase, else the shortest would win. */
const OUTSIDE = 1;
/** The price of each free phone. */
const FREE_PHONE = -3;
const NEVER = -1e30;

export class PhraseScorer {
  private readonly loop: readonly number[];
  private readonly loopSounds: Int32Array;
  private readonly silent: readonly number[];
  private readonly sets = new WeakMap<PhraseNet, SoundSet>();

  constructor(private readonly model: SpeechModel) {
    this.loop = speechPhones(model);
    this.loopSounds = Int32Array.from(this.loop.flatMap(model.soundsOf));
    this.silent = model.soundsOf(model.silence);
  }

  /** The likeliest phrase of the net in these frames (`frameFeatures`), or null where none has room. */
  likeliest(
    net: PhraseNet,
    frames: readonly Float32Array[],
    densities: Densities,
    room: RoomSound | null,
  ): Likely | null {
    const set = this.sets.get(net) ?? this.setFor(net);
    const { rows, tops } = frameScores(set, densities, frames);
    const alone = frames.map((frame, t) =>
      room ? room.likelihood(frame) - (tops[t] ?? 0) : NEVER,
    );
    const masked = rows.map((row, t) => {
      const low = Math.max(-WORST, (alone[t] ?? NEVER) - MASKED);
      return row.map((score) => Math.max(score, low));
    });
    const silent = this.silent.map((sound) => set.placeOf[sound] ?? 0);
    const outside = masked.map((row, t) => {
      const best = Math.max(alone[t] ?? NEVER, ...silent.map((place) => row[place] ?? NEVER));
      return Math.max(-WORST, best - OUTSIDE);
    });
    const free = this.free(set, masked, outside);
    return ranked(net, bestWays(net, set, masked, outside), free);
  }

  private setFor(net: PhraseNet): SoundSet {
    const own = net.sounds.filter((sound) => sound !== GAP);
    const set = soundSet(this.model, [...own, ...this.loopSounds, ...this.silent]);
    this.sets.set(net, set);
    return set;
  }

  /** The best way through free phones and what is outside. */
  private free(set: SoundSet, rows: readonly Float32Array[], outside: readonly number[]): number {
    const states = this.loopSounds.length;
    let now = new Float64Array(states).fill(NEVER);
    let exit = 0;
    let quiet = NEVER;
    for (const [t, row] of rows.entries()) {
      const next = new Float64Array(states);
      let out = NEVER;
      for (let i = 0; i < states; i++) {
        const phone = this.loop[Math.floor(i / STATES)] ?? 0;
        const state = i % STATES;
        const stayed = (now[i] ?? NEVER) + this.model.stay(phone, state);
        const came =
          state === 0
            ? exit + FREE_PHONE
            : (now[i - 1] ?? NEVER) + this.model.leave(phone, state - 1);
        const score = row[set.placeOf[this.loopSounds[i] ?? 0] ?? 0] ?? NEVER;
        next[i] = Math.max(stayed, came) + score;
        if (state === STATES - 1)
          out = Math.max(out, (next[i] ?? NEVER) + this.model.leave(phone, state));
      }
      quiet = Math.max(quiet, exit) + (outside[t] ?? NEVER);
      now = next;
      exit = Math.max(out, quiet);
    }
    return exit;
  }
}

/**
 * How well the phrase of a net of one explains these frames, of which some may be left out: natural logarithm, all
 * together; null where it has no room. `outside` is what each frame is worth before and after the phrase.
 */
export function alignedScore(
  net: PhraseNet,
  set: SoundSet,
  rows: readonly Float32Array[],
  outside: readonly number[],
): number | null {
  const [score = NEVER] = bestWays({ ...net, least: new Int32Array(1) }, set, rows, outside).scores;
  return score <= NEVER / 2 ? null : score;
}

interface Ways {
  readonly scores: Float64Array;
  readonly frames: Int32Array;
}

/** The best score of each phrase, with what is outside before and after it, and its frames. */
function bestWays(
  net: PhraseNet,
  set: SoundSet,
  rows: readonly Float32Array[],
  outside: readonly number[],
): Ways {
  const before = sums(outside);
  const whole = before.at(-1) ?? 0;
  const scores = new Float64Array(net.phrases.length).fill(NEVER);
  const frames = new Int32Array(net.phrases.length);
  const step = new Step(net, set);
  for (const [t, row] of rows.entries()) {
    step.take(t, row, outside[t] ?? NEVER, before[t] ?? 0);
    const rest = whole - (before[t + 1] ?? 0);
    for (let n = 0; n < net.ends.length; n++) {
      const end = net.ends[n] ?? 0;
      const phrase = net.endOf[n] ?? 0;
      const score = (step.now[end] ?? NEVER) + rest;
      const length = t + 1 - (step.begun[end] ?? 0);
      if (score <= (scores[phrase] ?? NEVER) || length < (net.least[phrase] ?? 0)) continue;
      scores[phrase] = score;
      frames[phrase] = length;
    }
  }
  return { scores, frames };
}

/** One frame after another through all states of the net. */
class Step {
  now: Float32Array;
  /** The frame in which the way to each state began. */
  begun: Int32Array;
  private next: Float32Array;
  private nextBegun: Int32Array;
  private readonly places: Int32Array;

  constructor(
    private readonly net: PhraseNet,
    set: SoundSet,
  ) {
    const states = net.sounds.length;
    this.now = new Float32Array(states).fill(NEVER);
    this.next = new Float32Array(states);
    this.begun = new Int32Array(states);
    this.nextBegun = new Int32Array(states);
    this.places = net.sounds.map((sound) => (sound === GAP ? GAP : (set.placeOf[sound] ?? 0)));
  }

  take(t: number, row: Float32Array, outside: number, before: number): void {
    const { entry, stay, fromBefore } = this.net;
    for (let i = 0; i < entry.length; i++) {
      let best = (this.now[i] ?? NEVER) + (stay[i] ?? 0);
      let begun = this.begun[i] ?? 0;
      const kind = entry[i];
      if (kind === FROM_BEFORE) {
        const came = (this.now[i - 1] ?? NEVER) + (fromBefore[i] ?? 0);
        if (came > best) {
          best = came;
          begun = this.begun[i - 1] ?? 0;
        }
      } else if (kind === FROM_OUTSIDE) {
        if (before > best) {
          best = before;
          begun = t;
        }
      } else {
        const from = this.bestFrom(i);
        const came = from < 0 ? NEVER : this.cameBest;
        if (came > best) {
          best = came;
          begun = this.begun[from] ?? 0;
        }
      }
      const place = this.places[i] ?? GAP;
      this.next[i] = best + (place === GAP ? outside : (row[place] ?? NEVER));
      this.nextBegun[i] = begun;
    }
    [this.now, this.next] = [this.next, this.now];
    [this.begun, this.nextBegun] = [this.nextBegun, this.begun];
  }

  private cameBest = NEVER;

  private bestFrom(i: number): number {
    const { listAt, from, fromLog } = this.net;
    let found = -1;
    this.cameBest = NEVER;
    for (let n = listAt[i] ?? 0; n < (listAt[i + 1] ?? 0); n++) {
      const state = from[n] ?? 0;
      const came = (this.now[state] ?? NEVER) + (fromLog[n] ?? 0);
      if (came <= this.cameBest) continue;
      this.cameBest = came;
      found = state;
    }
    return found;
  }
}

function sums(values: readonly number[]): Float64Array {
  const all = new Float64Array(values.length + 1);
  for (const [t, value] of values.entries()) all[t + 1] = (all[t] ?? 0) + value;
  return all;
}

function ranked(net: PhraseNet, { scores, frames }: Ways, free: number): Likely | null {
  const order = [...scores.keys()].sort((a, b) => (scores[b] ?? NEVER) - (scores[a] ?? NEVER));
  const [first = -1, second = -1] = order;
  const best = scores[first] ?? NEVER;
  if (best <= NEVER / 2) return null;
  const length = frames[first] ?? 1;
  return {
    phrase: net.phrases[first] ?? '',
    fit: (best - free) / length,
    lead: Math.min(1e6, best - (scores[second] ?? NEVER)),
    next: net.phrases[second] ?? '',
    frames: length,
  };
}
