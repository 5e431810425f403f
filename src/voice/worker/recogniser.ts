/** Finds words in one utterance: the grammar's best answer, weighed against free phones. */
import { type BuiltGrammar, type Grammar, phoneLoop } from '../shared/grammar.ts';
import { judge } from '../shared/judge.ts';
import { type Decoded, Decoder } from './decoder.ts';
import type { Engine } from './engine.ts';

export interface Finding {
  /** Empty when nothing fits. */
  readonly text: string;
  /** 0 to 1; below one half it was not said clearly enough. */
  readonly confidence: number;
  readonly samples: Int16Array;
  readonly loud: readonly boolean[];
}

/** Probability of each step between free phones: higher makes the ear refuse more. Tuned by bench. */
const FREE_PHONES = phoneLoop(0.02);
/** A word that explains this part of the loud sound, or less, is an accident in other talk. */
const MOST_UNCOVERED = 0.3;
/** Margin at which confidence is one half, and the margin over it that makes it nearly one. */
const ENOUGH = 0;
const SURE_ABOVE = 1;
/** Natural logarithm of how much likelier a reading inside its range is than one outside. */
const LIKELIER_INSIDE = 12;
/** Noise alone must stay this far below what is accepted. */
const ABOVE_ROOM = 0.25;
const MEAN = /cmn_live\.c.*Update to\s+<(.*)>/;
const ROOM_PIECES = 10;
/** However loud the room, words stay within reach. */
const HARDEST = 0.8;

export class Recogniser {
  private decoder: Decoder;
  private grammar: Grammar | null = null;
  private inside: Grammar | null = null;
  private threshold = ENOUGH;
  private roomMargins: number[] = [];
  private mean: string | undefined;

  constructor(
    private readonly engine: Engine,
    channel?: string,
  ) {
    this.mean = channel;
    this.decoder = this.makeDecoder();
  }

  /** The channel's mean spectrum so far, as the engine takes it. */
  get channel(): string | undefined {
    return this.mean;
  }

  /** Takes a line of the engine's log, where it tells the channel's mean and nowhere else. */
  noteLog(line: string): void {
    this.mean = MEAN.exec(line)?.[1]?.trim().split(/\s+/).join(',') ?? this.mean;
  }

  use({ grammar, inside }: Pick<BuiltGrammar, 'grammar' | 'inside'>): void {
    this.grammar = grammar.arcs.length > 0 ? grammar : null;
    this.inside = inside ?? null;
  }

  find(samples: Int16Array, loud: readonly boolean[]): Finding {
    const judged = this.weigh(withFloor(samples), loud);
    if (!judged) return { text: '', confidence: 0, samples, loud };
    return { text: judged.text, confidence: this.confidence(judged.worst), samples, loud };
  }

  /** Takes a second of the room alone; after ten, noise can no longer pass for a word. */
  learnRoom(samples: Int16Array): void {
    if (this.roomMargins.length >= ROOM_PIECES) return;
    const everything = Array.from({ length: Math.floor(samples.length / 160) }, () => true);
    const judged = this.weigh(samples, everything, 1);
    this.roomMargins.push(judged?.worst ?? Number.NEGATIVE_INFINITY);
    if (this.roomMargins.length === ROOM_PIECES) {
      const reached = Math.max(...this.roomMargins) + ABOVE_ROOM;
      this.threshold = Math.max(ENOUGH, Math.min(HARDEST, reached));
    }
  }

  private weigh(samples: Int16Array, loud: readonly boolean[], mostUncovered = MOST_UNCOVERED) {
    if (!this.grammar) return null;
    if (this.decoder.isFull) this.renew();
    const found = this.likelier(this.grammar, samples);
    const coarse = judge(found.segments, [], loud);
    if (!found.words || !coarse || coarse.uncovered > mostUncovered) return null;
    const free = this.decoder.decode(this.decoder.grammar(FREE_PHONES), samples);
    return judge(found.segments, free.segments, loud);
  }

  /** A number inside the range wins unless one outside explains the sound much better. */
  private likelier(grammar: Grammar, samples: Int16Array): Decoded {
    const anywhere = this.decoder.decode(this.decoder.grammar(grammar), samples);
    if (!this.inside || !anywhere.words) return anywhere;
    const inside = this.decoder.decode(this.decoder.grammar(this.inside), samples);
    if (!inside.words) return anywhere;
    return total(inside) + LIKELIER_INSIDE >= total(anywhere) ? inside : anywhere;
  }

  private confidence(margin: number): number {
    const over = (margin - this.threshold) / SURE_ABOVE;
    return Math.max(0, Math.min(0.99, 0.5 + 0.49 * over));
  }

  dispose(): void {
    this.decoder.dispose();
  }

  private renew(): void {
    this.decoder.dispose();
    this.decoder = this.makeDecoder();
  }

  private makeDecoder(): Decoder {
    const settings: Record<string, string> = { '-remove_noise': 'yes' };
    if (this.mean) settings['-cmninit'] = this.mean;
    return new Decoder(this.engine, settings);
  }
}

/** A noise floor this far below the loudest part (decibels); recorded or made sound may have none. */
const FLOOR = -45;

function total({ segments }: Decoded): number {
  return segments.reduce((sum, segment) => sum + segment.score, 0);
}

/** Adds a noise floor: digital silence breaks the decoder's measure of the channel. Same sound, same noise. */
function withFloor(samples: Int16Array): Int16Array {
  const size = loudestPart(samples) * 10 ** (FLOOR / 20) * Math.sqrt(12);
  let seed = 1;
  return samples.map((sample) => {
    seed = (Math.imul(seed, 1_664_525) + 1_013_904_223) >>> 0;
    const noisy = sample + size * (seed / 2 ** 32 - 0.5);
    return Math.max(-32_768, Math.min(32_767, Math.round(noisy)));
  });
}

/** Root mean square of the loudest hundredth of a second. */
function loudestPart(samples: Int16Array): number {
  let loudest = 0;
  for (let at = 0; at + 160 <= samples.length; at += 160) {
    const energy = samples.subarray(at, at + 160).reduce((sum, s) => sum + s * s, 0);
    loudest = Math.max(loudest, energy);
  }
  return Math.sqrt(loudest / 160);
}
