/** The one list of what may be said now. The ear, the keys, the screen and the prover all read it. */

import type { Language } from '../texts/index.ts';
import type { Quantity } from '../trade/index.ts';
import type { Adjustment } from './adjust.ts';
import { adjustItems } from './adjust-words.ts';
import { askedFacts, type FactAnswer, reportable } from './asked.ts';
import { type Ask, askIds, commandPhrases, type MoveId } from './command-words.ts';
import type { Job } from './compile.ts';
import { formatOf, shownAs } from './display.ts';
import type { FlowEvent } from './events.ts';
import type { Reading, Step } from './flow-shape.ts';
import { nextPass } from './pass.ts';
import { accepts, type FlowSnapshot, planAt, positionOf } from './position.ts';
import { plausibleRange } from './verdict.ts';

export interface SaidItem {
  /** Stable within a state: "next", "fact:guard:closed", "ask:repeat". */
  readonly id: string;
  readonly kind: 'move' | 'fact' | 'loss' | 'choice' | 'trouble' | 'adjust' | 'ask' | 'drill';
  /** The first is the one that is shown; all are understood. */
  readonly phrases: readonly string[];
  /** Only its exact words count: a gate where harm is possible. */
  readonly strict: boolean;
  readonly event?: FlowEvent;
  readonly ask?: Ask;
  /** Works the numbers out again; no event of the chart. */
  readonly adjust?: Adjustment;
}

/** The number that may be said now, in the unit it is read in on this machine. */
export interface SaidNumber {
  readonly reading: Reading;
  readonly quantity: Quantity;
  readonly unit: string;
  readonly decimals: number;
  readonly min: number;
  readonly max: number;
  /** Near this the reading is expected; far from it, it is questioned. */
  readonly expected?: number;
}

export interface SaidList {
  readonly items: readonly SaidItem[];
  readonly number?: SaidNumber;
}

export function saidList(job: Job, snapshot: FlowSnapshot): SaidList {
  const { language } = job.flow;
  const ask = askIn(language);
  if (positionOf(snapshot).phase === 'end') return { items: [ask('repeat'), ask('words')] };
  const number = numberNow(job, snapshot);
  const items = [
    ...factItems(job, snapshot),
    ...choices(job, snapshot),
    ...moveItems(snapshot, language),
    ...troubles(job, snapshot),
    ...askIds.map(ask),
  ];
  return {
    items: [...items, ...adjustments(job, snapshot, items)],
    ...(number ? { number } : {}),
  };
}

/** Words of flow and kind come first: a material never takes the word of a fact. */
function adjustments(
  job: Job,
  snapshot: FlowSnapshot,
  others: readonly SaidItem[],
): readonly SaidItem[] {
  const taken = [
    ...others.flatMap((item) => item.phrases),
    ...job.flow.kind.facts.flatMap(({ states }) =>
      states.flatMap((one) => [one.word, ...one.also]),
    ),
  ];
  return adjustItems(job, snapshot, taken).map((item) => ({
    ...item,
    kind: 'adjust',
    strict: true,
  }));
}

function askIn(language: Language): (name: Ask) => SaidItem {
  return (name) => {
    const phrases = commandPhrases(language, name);
    return { id: `ask:${name}`, kind: 'ask', phrases, strict: false, ask: name };
  };
}

/** "next" and "carry on" are listed even where they are refused, since the refusal names what is missing. */
function moveItems(snapshot: FlowSnapshot, language: Language): readonly SaidItem[] {
  const held = snapshot.hasTag('held');
  const words = (type: MoveId) => commandPhrases(language, type);
  const move = (type: MoveId, also: readonly string[] = []) =>
    moveItem(type, [...words(type), ...also]);
  const items: SaidItem[] = held ? [] : [move('next')];
  if (held || accepts(snapshot, { type: 'carry-on' })) {
    items.push(move('carry-on', held ? words('next') : []));
  }
  if (accepts(snapshot, { type: 'back' })) items.push(move('back'));
  items.push(move('hold'), { ...move('stop'), kind: 'drill' });
  return items;
}

function moveItem(type: MoveId, phrases: readonly string[]): SaidItem {
  return { id: type, kind: 'move', phrases, strict: false, event: { type } };
}

function factItems(job: Job, snapshot: FlowSnapshot): readonly SaidItem[] {
  const asked = askedFacts(job, snapshot);
  const losses = reportable(job, snapshot);
  const shared = sharedWords([...asked, ...losses]);
  return [
    ...asked.map((answer) => factItem(answer, 'fact', shared)),
    ...losses.map((answer) => factItem(answer, 'loss', shared)),
  ];
}

function factItem(
  { fact, state }: FactAnswer,
  kind: 'fact' | 'loss',
  shared: ReadonlySet<string>,
): SaidItem {
  return {
    id: `fact:${fact.id}:${state.id}`,
    kind,
    phrases: [state.word, ...state.also.filter((word) => !shared.has(word))],
    strict: kind === 'fact',
    event: { type: 'fact', fact: fact.id, state: state.id },
  };
}

/** Short forms that would answer more than one fact: none of them counts. */
function sharedWords(answers: readonly FactAnswer[]): ReadonlySet<string> {
  const seen = new Set<string>();
  const shared = new Set<string>();
  for (const { state } of answers) {
    for (const word of state.also) (seen.has(word) ? shared : seen).add(word);
  }
  return shared;
}

function choices(job: Job, snapshot: FlowSnapshot): readonly SaidItem[] {
  const step = planAt(job, snapshot)?.step;
  if (step?.kind !== 'choose') return [];
  return step.options.flatMap((option) => {
    const event: FlowEvent = { type: 'choose', option: option.id };
    if (!accepts(snapshot, event)) return [];
    const phrases = [option.word, ...option.also];
    return [{ id: `choose:${option.id}`, kind: 'choice' as const, phrases, strict: true, event }];
  });
}

function troubles(job: Job, snapshot: FlowSnapshot): readonly SaidItem[] {
  return job.flow.kind.walks.flatMap((walk) => {
    const event: FlowEvent = { type: 'trouble', walk: walk.id };
    if (!accepts(snapshot, event)) return [];
    const phrases = [walk.word, ...walk.also];
    return [{ id: `trouble:${walk.id}`, kind: 'trouble' as const, phrases, strict: false, event }];
  });
}

/** What the file expects; in a passes step, what the last dial setting should have made. */
function expectedReading(
  job: Job,
  snapshot: FlowSnapshot,
  step: Step & { readonly reading: Reading },
): number | undefined {
  const { readings, passes } = snapshot.context;
  const { expected, quantity } = step.reading;
  if (expected) return job.numbers.number(expected, readings, quantity as Quantity);
  const state = passes[step.id];
  if (step.kind !== 'passes' || !state) return undefined;
  return nextPass(step, state, readings, job.world).diameterAfter;
}

function numberNow(job: Job, snapshot: FlowSnapshot): SaidNumber | undefined {
  const step = planAt(job, snapshot)?.step;
  if (!step || !('reading' in step)) return undefined;
  const { readings } = snapshot.context;
  const range = plausibleRange(step, job.numbers, readings);
  if (!range) return undefined;
  const likely = (range.lower + range.upper) / 2;
  const open = [range.lower, likely, range.upper].some((value) =>
    accepts(snapshot, { type: 'reading', value }),
  );
  if (!open) return undefined;
  const quantity = step.reading.quantity as Quantity;
  const format = formatOf(quantity, job.card.units, step.reading);
  const inUnit = (value: number) => shownAs(value, quantity, format).value;
  const expected = expectedReading(job, snapshot, step);
  return {
    reading: step.reading,
    quantity,
    ...format,
    min: inUnit(range.lower),
    max: inUnit(range.upper),
    ...(expected === undefined ? {} : { expected: inUnit(expected) }),
  };
}
