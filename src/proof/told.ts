/** Tells a path as a conversation, and reads such a line back into events. */

import {
  beginJob,
  commandSaid,
  type FlowEvent,
  type FlowSnapshot,
  type Job,
  joined,
  planAt,
  saidList,
  stepJob,
  viewOf,
} from '../flow/index.ts';
import { figureIn, type Language, typedIn, wordedIn } from '../texts/index.ts';
import { findUnit, fromBase, type Quantity, toBase } from '../trade/index.ts';
import { eventsAt } from './alphabet.ts';
import { wordFor } from './judge-state.ts';

export interface Turn {
  readonly who: 'you' | 'bench';
  readonly says: string;
}

/** How a break is written in a line to replay: nobody says it. */
const breakWord = '(break)';
const between = ' · ';

/** What the person says and what is answered, turn by turn, beginning with the first instruction. */
export function toldAs(job: Job, events: readonly FlowEvent[]): readonly Turn[] {
  let snapshot = beginJob(job);
  const turns: Turn[] = [benchTurn(job, snapshot)];
  for (const event of events) {
    turns.push({ who: 'you', says: wordsFor(job, snapshot, event) });
    const after = stepSafely(job, snapshot, event);
    if (!after) break;
    snapshot = after;
    turns.push(benchTurn(job, snapshot));
  }
  return turns;
}

/** One line of what was said, to be pasted behind --replay. */
export function replayLine(job: Job, events: readonly FlowEvent[]): string {
  let snapshot: FlowSnapshot | undefined = beginJob(job);
  const words: string[] = [];
  for (const event of events) {
    if (!snapshot) break;
    words.push(wordsFor(job, snapshot, event));
    snapshot = stepSafely(job, snapshot, event);
  }
  return words.join(between);
}

export type ReplayResult =
  | {
      readonly ok: true;
      readonly events: readonly FlowEvent[];
      readonly snapshot: FlowSnapshot;
    }
  | { readonly ok: false; readonly fault: string };

/** Reads a line made by `replayLine`, or typed in its manner, and plays it. */
export function playBack(job: Job, line: string): ReplayResult {
  let snapshot = beginJob(job);
  const events: FlowEvent[] = [];
  for (const words of line.split('·').map((part) => part.trim())) {
    if (words === '') continue;
    const event = eventFor(job, snapshot, words);
    if (!event) {
      const can = saidList(job, snapshot).items.flatMap(({ event: said, phrases }) =>
        said ? [phrases[0]] : [],
      );
      return {
        ok: false,
        fault: `Nothing is meant by "${words}" here. You can say: ${can.join(', ')}.`,
      };
    }
    events.push(event);
    snapshot = stepJob(job, snapshot, event);
  }
  return { ok: true, events, snapshot };
}

/** An event that makes the chart go round for ever has no snapshot after it. */
function stepSafely(job: Job, snapshot: FlowSnapshot, event: FlowEvent): FlowSnapshot | undefined {
  try {
    return stepJob(job, snapshot, event);
  } catch {
    return undefined;
  }
}

function benchTurn(job: Job, snapshot: FlowSnapshot): Turn {
  const { lead, ask } = viewOf(job, snapshot);
  return { who: 'bench', says: joined(lead, ask).shown };
}

function wordsFor(job: Job, snapshot: FlowSnapshot, event: FlowEvent): string {
  const { language } = job.flow;
  switch (event.type) {
    case 'interrupted':
      return wordedIn(language, breakWord);
    case 'fact':
      return wordFor(job, event.fact, event.state);
    case 'reading':
      return sizeText(job, snapshot, event.value);
    case 'choose':
    case 'trouble':
      return chosenWord(job, snapshot, event);
    default:
      return commanded(language, event.type === 'carry-on' ? 'carry on' : event.type);
  }
}

/** A command in the words of the language, and what else moves the chart by its name. */
function commanded(language: Language, word: string): string {
  return wordedIn(language, commandSaid(language, word));
}

function chosenWord(
  job: Job,
  snapshot: FlowSnapshot,
  event: Extract<FlowEvent, { type: 'choose' | 'trouble' }>,
): string {
  if (event.type === 'trouble') {
    return job.flow.kind.walks.find(({ id }) => id === event.walk)?.word ?? event.walk;
  }
  const step = planAt(job, snapshot)?.step;
  const options = step?.kind === 'choose' ? step.options : [];
  return options.find(({ id }) => id === event.option)?.word ?? event.option;
}

/** In the unit of the flow file, to a hundredth of what readings are told apart by. */
function sizeText(job: Job, snapshot: FlowSnapshot, value: number): string {
  const step = planAt(job, snapshot)?.step;
  if (!step || !('reading' in step)) return String(value);
  const { unit, quantity } = step.reading;
  const size = fromBase(value, unit, quantity as Quantity);
  return `${figureIn(job.flow.language, String(Number(size.toFixed(7))))} ${unit}`;
}

function eventFor(job: Job, snapshot: FlowSnapshot, words: string): FlowEvent | undefined {
  if (words === breakWord) return { type: 'interrupted' };
  const said = saidList(job, snapshot).items.find((item) => item.phrases.includes(words))?.event;
  if (said) return said;
  const any = eventsAt(job, snapshot).find(
    (event) => event.type !== 'reading' && wordsFor(job, snapshot, event) === words,
  );
  return any ?? sizeEvent(typedIn(job.flow.language, words));
}

function sizeEvent(words: string): FlowEvent | undefined {
  const [number = '', unit = ''] = words.split(' ');
  const value = Number(number);
  if (number === '' || (Number.isNaN(value) && number !== 'NaN')) return undefined;
  if (unit === '') return { type: 'reading', value };
  const quantity = (['length', 'angle', 'time'] as const).find((one) => findUnit(unit, one));
  return {
    type: 'reading',
    value: quantity ? toBase(value, unit, quantity) : value,
  };
}
