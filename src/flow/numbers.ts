/** The numbers of one job: this flow on this machine with these inputs, worked out by the trade's rules. */

import { figureIn, flowTexts, type Language, sayIn, unitIn, whyTexts } from '../texts/index.ts';
import {
  findRule,
  type Quantity,
  type RuleAnswer,
  type RuleValue,
  type RuleValues,
} from '../trade/index.ts';
import { barFaults } from './bar-faults.ts';
import { blockFaults } from './block-faults.ts';
import type { Card } from './card.ts';
import { constantInBase } from './constant.ts';
import { dialFaults } from './dial-faults.ts';
import type { FlowInput } from './flow-shape.ts';
import { answerOn } from './own-materials.ts';
import { readingsBehind } from './readings-behind.ts';
import type { Flow } from './resolve.ts';
import { speedBaseUnit } from './speed-told.ts';
import type { ValueRef } from './words-shape.ts';

/** Input name → number in base unit, or the chosen word. */
export type JobInputs = Readonly<Record<string, number | string>>;
/** Reading name → number in base unit. */
export type Readings = Readonly<Record<string, number>>;

/** Working of a speed or feed → what the machine is said to be set to, in rev/min (of a band in m/min) or mm/rev. */
export type Running = Readonly<Record<string, number>>;

export interface Numbers {
  readonly inputs: JobInputs;
  readonly running: Running;
  /** Whose words the answers have. */
  readonly language: Language;
  /**
   * The value in base units, or undefined when a reading behind it is not taken or a rule refuses.
   * `quantity` is what the place wants: "um" is a roughness in one place and a length in another.
   */
  value(ref: ValueRef, readings: Readings, quantity?: Quantity): RuleValue | undefined;
  /** The same where only a number makes sense. */
  number(ref: ValueRef, readings: Readings, quantity?: Quantity): number | undefined;
  /** The whole answer of a working: value, line of working, the limit that ruled, or why there is none. */
  working(id: string, readings: Readings): RuleAnswer;
}

export type NumbersResult =
  | { readonly ok: true; readonly numbers: Numbers }
  /** One sentence each: which input or working, what came, and what is possible. */
  | { readonly ok: false; readonly faults: readonly string[] };

/** The inputs as the flow proposes them, in base units. */
export function defaultInputs(flow: Flow): JobInputs {
  return Object.fromEntries(flow.file.inputs.map((input) => [input.id, defaultOf(input)]));
}

function defaultOf(input: FlowInput): number | string {
  return 'options' in input ? input.default : inBase(input, input.default);
}

/**
 * Works out everything that no reading is needed for; a rule that refuses is a fault of the job.
 * A speed or feed in `running` stands in place of the one its working would give.
 */
export function workOut(
  flow: Flow,
  card: Card,
  given: JobInputs,
  running: Running = {},
): NumbersResult {
  const inputs = { ...defaultInputs(flow), ...given };
  const faults = inputFaults(flow, card, inputs);
  if (faults.length > 0) return { ok: false, faults };
  const numbers = makeNumbers(flow, card, inputs, running);
  const refused = flow.file.workings.flatMap((working) => {
    if (readingsBehind({ working: working.id }, flow.scope).length > 0) return [];
    const answer = numbers.working(working.id, {});
    return answer.ok ? [] : [`${working.label}: ${answer.fault}`];
  });
  const tooFine = dialFaults(flow, card, numbers);
  const all = [...refused, ...tooFine];
  // A rule that refuses a bar for its size has said what its features would say again.
  if (all.length === 0)
    all.push(...barFaults(flow, card, numbers), ...blockFaults(flow, card, numbers));
  return all.length > 0 ? { ok: false, faults: all } : { ok: true, numbers };
}

function inputFaults(flow: Flow, card: Card, inputs: JobInputs): readonly string[] {
  const faults = flow.file.inputs.flatMap((input) => {
    const fault = inputFault(input, inputs[input.id], flow.language);
    return fault === undefined ? [] : [fault];
  });
  if (card.machineKind !== flow.file.machineKind) {
    const kinds = { kind: card.machineKind, wanted: flow.file.machineKind };
    faults.push(sayIn(flow.language, flowTexts)('wrongMachine', { card: card.title, ...kinds }));
  } else if (card.speedQuantity !== flow.kind.speedQuantity) {
    const wanted = unitIn(flow.language, speedBaseUnit({ flow }));
    faults.push(sayIn(flow.language, flowTexts)('wrongSpeeds', { card: card.title, wanted }));
  }
  return faults;
}

function inputFault(
  input: FlowInput,
  value: number | string | undefined,
  language: Language,
): string | undefined {
  const say = sayIn(language, flowTexts);
  const { label } = input;
  if ('options' in input) {
    if (typeof value === 'string' && input.options.includes(value)) return undefined;
    return say('noChoice', { label, value: String(value), options: input.options.join(', ') });
  }
  const low = inBase(input, input.min);
  const high = inBase(input, input.max);
  const slack = 1e-9 * Math.max(Math.abs(low), Math.abs(high));
  if (typeof value === 'number' && value >= low - slack && value <= high + slack) return undefined;
  const shown = (one: unknown) => figureIn(language, String(one));
  const limits = { least: shown(input.min), most: shown(input.max) };
  const unit = unitIn(language, input.unit);
  return say('outside', { label, is: shown(value), ...limits, unit });
}

type NumberInput = Exclude<FlowInput, { options: string[] }>;

function inBase(input: NumberInput, value: number): number {
  return constantInBase(value, input.unit, input.quantity as Quantity);
}

/** Answers kept for one working. */
const mostAnswers = 2_000;

function makeNumbers(flow: Flow, card: Card, inputs: JobInputs, running: Running): Numbers {
  // By the values behind it: the same sizes are asked about again and again, and by the proof thousands of times.
  const known = new Map<string, Map<string, RuleAnswer>>();

  function working(id: string, readings: Readings): RuleAnswer {
    const behind = readingsBehind({ working: id }, flow.scope);
    const key = behind.map((reading) => readings[reading]).join();
    const answers = known.get(id) ?? new Map<string, RuleAnswer>();
    known.set(id, answers);
    const old = answers.get(key);
    if (old) return old;
    const answer = answerAnew(id, readings);
    if (answers.size >= mostAnswers) answers.clear();
    answers.set(key, answer);
    return answer;
  }

  function answerAnew(id: string, readings: Readings): RuleAnswer {
    const file = flow.scope.workings.get(id);
    const rule = file && findRule(file.rule, flow.language);
    if (!file || !rule) return { ok: false, fault: `There is no working "${id}".` };
    const given: Record<string, RuleValue> = {};
    for (const [name, ref] of Object.entries(file.given)) {
      const why =
        'working' in ref ? working(ref.working, readings) : notMeasured(flow, ref, readings);
      if (why?.ok === false) return why;
      const input = rule.inputs.find((one) => one.name === name);
      const found = value(ref, readings, input?.kind === 'number' ? input.quantity : undefined);
      if (found !== undefined) given[name] = found;
    }
    const answer = answerOn(card, rule, given as RuleValues);
    const set = running[id];
    if (set === undefined) return answer;
    const asSet = rule.output.quantity === 'feedPerRev' ? asItFeeds : asItRuns;
    return asSet(set, answer, flow);
  }

  function value(ref: ValueRef, readings: Readings, quantity?: Quantity): RuleValue | undefined {
    if ('input' in ref) return inputs[ref.input];
    if ('reading' in ref) return readings[ref.reading];
    if ('card' in ref) return card.values[ref.card];
    if ('word' in ref) return ref.word;
    if ('is' in ref) return constantInBase(ref.is, ref.unit, quantity);
    const answer = working(ref.working, readings);
    if (!answer.ok) return undefined;
    return ref.part === undefined ? answer.value : answer.parts?.[ref.part]?.value;
  }

  return {
    inputs,
    running,
    language: flow.language,
    value,
    working,
    number: (ref, readings, quantity) => {
      const found = value(ref, readings, quantity);
      return typeof found === 'number' ? found : undefined;
    },
  };
}

/** Without this a rule would take its default for a size that is still to be measured. */
function notMeasured(flow: Flow, ref: ValueRef, readings: Readings): RuleAnswer | undefined {
  if (!('reading' in ref) || readings[ref.reading] !== undefined) return undefined;
  const label = flow.scope.readings.get(ref.reading)?.reading.label ?? ref.reading;
  return { ok: false, fault: sayIn(flow.language, flowTexts)('notMeasured', { label }) };
}

/** The machine is set to it, so nothing rounds or limits it here: what it must not exceed was refused before. */
function asItRuns(speed: number, worked: RuleAnswer, flow: Flow): RuleAnswer {
  const { language } = flow;
  const say = sayIn(language, whyTexts);
  const unit = unitIn(language, speedBaseUnit({ flow }));
  const set = `${figureIn(language, String(speed))} ${unit}`;
  if (!worked.ok) return { ok: true, value: speed, working: say('asYouRun', { speed: set }) };
  const { value, working, parts } = worked;
  return {
    ok: true,
    value: speed,
    working: say('asYouRunElse', { speed: set, working }),
    ...(parts ? { parts: atSpeed(parts, speed / value) } : {}),
  };
}

/** Another feed of the card, taken in a fault walk. */
function asItFeeds(feed: number, worked: RuleAnswer, { language }: Flow): RuleAnswer {
  const say = sayIn(language, whyTexts);
  const set = figureIn(language, String(feed));
  const working = worked.ok
    ? say('asYouFeedElse', { feed: set, working: worked.working })
    : say('asYouFeed', { feed: set });
  return { ok: true, value: feed, working };
}

type Parts = NonNullable<Extract<RuleAnswer, { ok: true }>['parts']>;

/** The surface speed goes with the spindle; what was wanted stays. */
function atSpeed(parts: Parts, share: number): Parts {
  const surface = parts.surfaceSpeed;
  if (typeof surface?.value !== 'number') return parts;
  return { ...parts, surfaceSpeed: { ...surface, value: surface.value * share } };
}
