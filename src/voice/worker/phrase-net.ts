/** The phrases as one net of sounds, each phrase a chain of its words with their ways to be said. Pure. */
import {
  BEGIN,
  END,
  INSIDE,
  type Neighboured,
  SINGLE,
  type SpeechModel,
  STATES,
} from './speech-model.ts';

/** A state where nothing of ours sounds: between two words. */
export const GAP = -1;
/** How a state is come to: from the one before it, from those in the list, or at any time from outside. */
export const FROM_BEFORE = 0;
export const FROM_LIST = 1;
export const FROM_OUTSIDE = 2;

export interface PhraseNet {
  readonly phrases: readonly string[];
  /** Of each state. */
  readonly sounds: Int32Array;
  readonly stay: Float32Array;
  readonly entry: Uint8Array;
  readonly fromBefore: Float32Array;
  /** Where the state's list begins in `from`; one more than there are states. */
  readonly listAt: Int32Array;
  readonly from: Int32Array;
  readonly fromLog: Float32Array;
  /** States in which a phrase may end, and which phrase. */
  readonly ends: Int32Array;
  readonly endOf: Int32Array;
  /** Fewest frames of each phrase: nobody speaks faster. */
  readonly least: Int32Array;
}

const STAY_IN_GAP = Math.log(0.9);
const INTO_GAP = Math.log(0.3);
const OUT_OF_GAP = Math.log(0.1);
const LEAST_FRAMES = 10;
const LEAST_A_PHONE = 3;

/** `waysOf` gives the pronunciations of a word; a phrase with a word that has none is left out. */
export function phraseNet(
  model: SpeechModel,
  phrases: readonly string[],
  waysOf: (word: string) => readonly string[],
): PhraseNet {
  const builder = new Builder(model);
  for (const phrase of phrases) {
    const words = phrase.split(' ').map((word) => waysOf(word).map((way) => way.split(' ')));
    if (words.every((ways) => ways.length > 0)) builder.add(phrase, words);
  }
  return builder.finish();
}

interface Exit {
  readonly at: number;
  readonly log: number;
}

type Ways = readonly (readonly number[])[];

class Builder {
  private readonly index: ReadonlyMap<string, number>;
  private readonly phrases: string[] = [];
  private readonly sounds: number[] = [];
  private readonly stay: number[] = [];
  private readonly entry: number[] = [];
  private readonly fromBefore: number[] = [];
  private readonly listAt: number[] = [];
  private readonly from: number[] = [];
  private readonly fromLog: number[] = [];
  private readonly ends: number[] = [];
  private readonly endOf: number[] = [];
  private readonly least: number[] = [];

  constructor(private readonly model: SpeechModel) {
    this.index = new Map(model.phones.map((name, i) => [name, i]));
  }

  add(phrase: string, words: readonly (readonly (readonly string[])[])[]): void {
    const known = words.map((ways) =>
      ways.map((way) => way.map((name) => this.index.get(name) ?? this.model.silence)),
    );
    let exits: readonly Exit[] = [];
    known.forEach((ways, i) => {
      const before = known[i - 1]?.[0]?.at(-1) ?? this.model.silence;
      const after = known[i + 1]?.[0]?.[0] ?? this.model.silence;
      exits = this.word(ways, i === 0 ? null : this.gap(exits), before, after);
    });
    for (const { at } of exits) {
      this.ends.push(at);
      this.endOf.push(this.phrases.length);
    }
    const phones = known.reduce((n, ways) => n + Math.min(...ways.map((way) => way.length)), 0);
    this.least.push(LEAST_FRAMES + LEAST_A_PHONE * phones);
    this.phrases.push(phrase);
  }

  finish(): PhraseNet {
    return {
      phrases: this.phrases,
      sounds: Int32Array.from(this.sounds),
      stay: Float32Array.from(this.stay),
      entry: Uint8Array.from(this.entry),
      fromBefore: Float32Array.from(this.fromBefore),
      listAt: Int32Array.from([...this.listAt, this.from.length]),
      from: Int32Array.from(this.from),
      fromLog: Float32Array.from(this.fromLog),
      ends: Int32Array.from(this.ends),
      endOf: Int32Array.from(this.endOf),
      least: Int32Array.from(this.least),
    };
  }

  /** A pause that may stand before the next word. */
  private gap(exits: readonly Exit[]): readonly Exit[] {
    this.state(GAP, STAY_IN_GAP, FROM_LIST);
    this.list(exits.map(({ at, log }) => ({ at, log: log + INTO_GAP })));
    return [...exits, { at: this.sounds.length - 1, log: OUT_OF_GAP }];
  }

  private word(
    ways: Ways,
    entries: readonly Exit[] | null,
    before: number,
    after: number,
  ): readonly Exit[] {
    return ways.map((way) => {
      way.forEach((phone, i) => {
        const left = way[i - 1] ?? before;
        const right = way[i + 1] ?? after;
        const cameFrom = i === 0 ? entries : way[i - 1];
        this.phone({ position: positionIn(way, i), phone, left, right }, cameFrom);
      });
      const last = way.at(-1) ?? this.model.silence;
      return { at: this.sounds.length - 1, log: this.model.leave(last, STATES - 1) };
    });
  }

  /** `cameFrom` is the phone before, a list of exits, or null at the beginning of the phrase. */
  private phone(wanted: Neighboured, cameFrom: number | readonly Exit[] | null | undefined): void {
    const { phone } = wanted;
    this.model.soundsBetween(wanted).forEach((sound, state) => {
      const stay = this.model.stay(phone, state);
      if (state > 0) this.state(sound, stay, FROM_BEFORE, this.model.leave(phone, state - 1));
      else if (typeof cameFrom === 'number') {
        this.state(sound, stay, FROM_BEFORE, this.model.leave(cameFrom, STATES - 1));
      } else {
        this.state(sound, stay, cameFrom ? FROM_LIST : FROM_OUTSIDE);
        this.list(cameFrom ?? []);
      }
    });
  }

  private state(sound: number, stay: number, entry: number, fromBefore = 0): void {
    this.listAt.push(this.from.length);
    this.sounds.push(sound);
    this.stay.push(stay);
    this.entry.push(entry);
    this.fromBefore.push(fromBefore);
  }

  private list(exits: readonly Exit[]): void {
    for (const { at, log } of exits) {
      this.from.push(at);
      this.fromLog.push(log);
    }
  }
}

function positionIn(way: readonly number[], i: number): number {
  if (way.length === 1) return SINGLE;
  if (i === 0) return BEGIN;
  return i === way.length - 1 ? END : INSIDE;
}
