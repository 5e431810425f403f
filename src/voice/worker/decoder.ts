/** One decoder: words and grammars in, sound in, scored words out. */
import type { Grammar } from '../shared/grammar.ts';
import { type Engine, type EngineRecogniser, MODEL_FOLDER } from './engine.ts';

export interface Segment {
  readonly word: string;
  /** First frame and the frame after the last, ten milliseconds each. */
  readonly from: number;
  readonly to: number;
  /** Natural logarithm of the acoustic likelihood; only differences mean anything. */
  readonly score: number;
}

export interface Decoded {
  /** The words of the best way through the grammar, or null when none fits. */
  readonly words: readonly string[] | null;
  readonly segments: readonly Segment[];
}

const LOG_BASE = Math.log(1.0001);
/** The engine gives acoustic scores shifted down by ten bits. */
const SCORE_STEP = 1024 * LOG_BASE;
/** Grammars are kept in the engine for ever, so the decoder is made anew after so many. */
export const GRAMMAR_LIMIT = 150;

export class Decoder {
  private readonly recogniser: EngineRecogniser;
  private readonly known = new Set<string>();
  private readonly grammars = new Map<string, number>();

  /** `settings` are engine options such as `-cmninit`; values are passed as they are. */
  constructor(
    private readonly engine: Engine,
    settings: Readonly<Record<string, string>>,
  ) {
    const config = new engine.Config();
    for (const entry of Object.entries({ '-hmm': MODEL_FOLDER, ...settings })) {
      config.push_back(entry);
    }
    this.recogniser = new engine.Recognizer(config);
    config.delete();
  }

  get isFull(): boolean {
    return this.grammars.size >= GRAMMAR_LIMIT;
  }

  /** Adds the grammar and its words unless the same one is there; returns its number. */
  grammar(grammar: Grammar): number {
    const key = JSON.stringify(grammar);
    const kept = this.grammars.get(key);
    if (kept !== undefined) return kept;
    this.addWords(grammar.lexicon);
    const id = this.addGrammar(grammar);
    this.grammars.set(key, id);
    return id;
  }

  /** Decodes one utterance: 16 kHz, 16-bit. */
  decode(grammar: number, samples: Int16Array): Decoded {
    this.must(this.recogniser.switchSearch(grammar), 'take the grammar');
    this.must(this.recogniser.start(), 'start');
    const buffer = new this.engine.AudioBuffer();
    for (const sample of samples) buffer.push_back(sample);
    this.must(this.recogniser.process(buffer), 'take the sound');
    buffer.delete();
    this.must(this.recogniser.stop(), 'stop');
    return this.result();
  }

  dispose(): void {
    this.recogniser.delete();
  }

  private result(): Decoded {
    const text = this.recogniser.getHyp();
    const list = new this.engine.Segmentation();
    this.recogniser.getHypseg(list);
    const segments: Segment[] = [];
    for (let i = 0; i < list.size(); i++) {
      const { word, start, end, ascr } = list.get(i);
      segments.push({ word, from: start, to: end + 1, score: ascr * SCORE_STEP });
    }
    list.delete();
    return { words: text === '' ? null : text.split(' '), segments };
  }

  private addWords(lexicon: Grammar['lexicon']): void {
    const fresh = lexicon.filter(([word]) => !this.known.has(word));
    if (fresh.length === 0) return;
    const list = new this.engine.VectorWords();
    for (const [word, phones] of fresh) {
      this.known.add(word);
      list.push_back([word, phones]);
    }
    const outcome = this.recogniser.addWords(list);
    list.delete();
    this.must(outcome, 'take the words');
  }

  private addGrammar({ states, start, end, arcs }: Grammar): number {
    const transitions = new this.engine.VectorTransitions();
    for (const { from, to, word, weight } of arcs) {
      const logp = Math.round(Math.log(weight) / LOG_BASE);
      transitions.push_back({ from, to, word, logp });
    }
    const ids = new this.engine.Integers();
    const outcome = this.recogniser.addGrammar(ids, { start, end, numStates: states, transitions });
    const id = ids.size() > 0 ? ids.get(0) : -1;
    transitions.delete();
    ids.delete();
    this.must(outcome, 'take the grammar');
    return id;
  }

  private must(outcome: unknown, what: string): void {
    if (outcome === this.engine.ReturnType.SUCCESS) return;
    throw new Error(`The recogniser refused to ${what}.`);
  }
}
