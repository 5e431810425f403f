/** Plays the mouth's own lines into the ear, shut as it is while the mouth speaks, and wide open. */
import { hear, interrupts, listenFor } from '../../src/bench/index.ts';
import { loadDictionary, loadEngine } from '../../src/cli/hear-engine.ts';
import { loadMouth } from '../../src/cli/say-engine.ts';
import { type FromEar, resampleSound } from '../../src/voice/shared/index.ts';
import { EarBrain, fliteSound } from '../../src/voice/worker/index.ts';
import { begun, heardAs, hears, type Turn } from '../bench/scripted.ts';
import { wholeJob } from '../browser/hinge-pin.ts';
import type { LineSaid } from './flow-lines.ts';

const RATE = 16_000;
const PAUSE = new Int16Array(1.2 * RATE);

export interface OwnLines {
  readonly lines: number;
  /** What the ear took from a line: from an open one, a question or the number just read back, without consequence. */
  readonly heard: readonly string[];
  /** What of that moved the flow: must be nothing. */
  readonly moved: readonly string[];
}

/** Each line of the whole job once, every so many of them, into an ear that is open, which it never is meanwhile. */
export function hearOwnLines(every: number, from = 0): Promise<OwnLines> {
  const lines = linesOfJob().filter((_, i) => i % every === from);
  return playLines(lines, (ear, { state }) => ear.listenFor(listenFor(state)));
}

/** Into the ear as it is while the mouth speaks: shut, but for what may break in. `played` is told of each line. */
export function hearWhileShut(
  lines: readonly LineSaid[],
  played?: (heard: readonly string[]) => void,
): Promise<OwnLines> {
  return playLines(lines, (ear, { line, state }) => ear.shut(interrupts(state, line)), played);
}

async function playLines(
  lines: readonly LineSaid[],
  prepare: (ear: EarBrain, said: LineSaid) => void,
  played: (heard: readonly string[]) => void = () => {},
): Promise<OwnLines> {
  const { engine, model, next } = await loadEngine();
  const mouth = await loadMouth();
  let told: FromEar[] = [];
  const ear = new EarBrain(engine, model, loadDictionary(), (message) => told.push(message), next);
  const heard: string[] = [];
  const moved: string[] = [];
  for (const said of lines) {
    const { samples, rate } = await fliteSound(mouth, said.line, { voice: 'slt' });
    told = [];
    prepare(ear, said);
    for (const piece of [PAUSE, resampleSound(samples, rate, RATE), PAUSE]) ear.hear(piece);
    const texts = told.flatMap((message) => (message.kind === 'heard' ? [message.text] : []));
    const sentences = texts.map((text) => `${said.line} → ${text}`);
    heard.push(...sentences);
    moved.push(...sentences.filter((_, i) => moves(said, texts[i] ?? '')));
    played(sentences);
  }
  ear.dispose();
  return { lines: lines.length, heard, moved };
}

function linesOfJob(): readonly LineSaid[] {
  const turns: Turn[] = [begun()];
  for (const word of wholeJob) {
    const last = turns.at(-1);
    if (last) turns.push(hears(last, word));
  }
  return [...new Map(turns.map((turn) => [turn.line, turn])).values()];
}

/** Whether the chart stands elsewhere, knows something else, or has other numbers, after this was heard. */
function moves({ state }: LineSaid, text: string): boolean {
  const after = hear(state, heardAs(text, { from: 'speech' })).state;
  const known = ({ value, context }: typeof state.snapshot) => JSON.stringify([value, context]);
  return after.job !== state.job || known(after.snapshot) !== known(state.snapshot);
}
