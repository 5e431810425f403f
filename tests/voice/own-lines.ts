/** Plays the mouth's own lines into an ear that is wide open, with the words that count in each state. */
import { listenFor } from '../../src/bench/index.ts';
import { loadDictionary, loadEngine } from '../../src/cli/hear-engine.ts';
import { loadMouth } from '../../src/cli/say-engine.ts';
import { type FromEar, resampleSound } from '../../src/voice/shared/index.ts';
import { EarBrain, fliteSound } from '../../src/voice/worker/index.ts';
import { begun, hears, type Turn } from '../bench/scripted.ts';
import { wholeJob } from '../browser/hinge-pin.ts';

const RATE = 16_000;
const PAUSE = new Int16Array(1.2 * RATE);

export interface OwnLines {
  readonly lines: number;
  /** What the ear took from a line, a question or the number just read back, without consequence. */
  readonly heard: readonly string[];
  /** What moved the flow: must be nothing. */
  readonly moved: readonly string[];
}

/** Each line of the whole job once, every so many of them. */
export async function hearOwnLines(every: number, from = 0): Promise<OwnLines> {
  const { engine, model, next } = await loadEngine();
  const mouth = await loadMouth();
  let told: FromEar[] = [];
  const ear = new EarBrain(engine, model, loadDictionary(), (message) => told.push(message), next);
  const turns = linesOfJob().filter((_, i) => i % every === from);
  const heard: string[] = [];
  const moved: string[] = [];
  for (const turn of turns) {
    const { samples, rate } = await fliteSound(mouth, turn.line, { voice: 'slt' });
    told = [];
    ear.listenFor(listenFor(turn.state));
    for (const piece of [PAUSE, resampleSound(samples, rate, RATE), PAUSE]) ear.hear(piece);
    for (const message of told) {
      if (message.kind !== 'heard') continue;
      const sentence = `${turn.line} → ${message.text}`;
      heard.push(sentence);
      if (moves(turn, message.text)) moved.push(sentence);
    }
  }
  ear.dispose();
  return { lines: turns.length, heard, moved };
}

function linesOfJob(): readonly Turn[] {
  const turns: Turn[] = [begun()];
  for (const word of wholeJob) {
    const last = turns.at(-1);
    if (last) turns.push(hears(last, word));
  }
  return [...new Map(turns.map((turn) => [turn.line, turn])).values()];
}

/** Whether the chart stands elsewhere, or knows something else, after this was heard. */
function moves(turn: Turn, text: string): boolean {
  const after = hears(turn, text).state.snapshot;
  const before = turn.state.snapshot;
  const known = ({ value, context }: typeof before) => JSON.stringify([value, context]);
  return known(after) !== known(before);
}
