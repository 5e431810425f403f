/** The figures that matter now, each with its unit and the working behind it. */

import { flowTexts, type Language, optionText, sayIn, whyTexts } from '../texts/index.ts';
import { findRule, type Quantity } from '../trade/index.ts';
import type { Job } from './compile.ts';
import { displayOf, formatOf, type Shown, shownAs } from './display.ts';
import {
  type Behind,
  behindOf,
  type FigureWorld,
  labelOf,
  type ReadingsHeld,
  textsOf,
} from './figure-behind.ts';
import type { Step, StepOf } from './flow-shape.ts';
import { nextPass } from './pass.ts';
import type { FlowSnapshot } from './position.ts';
import { planAt } from './position.ts';
import { limitsOf } from './verdict.ts';
import type { ValueRef } from './words-shape.ts';

const sayWhy = ({ flow }: Pick<Job, 'flow'>) => sayIn(flow.language, whyTexts);

export interface Figure extends Partial<Behind> {
  readonly id: string;
  readonly label: string;
  /** "450 rpm", with a space that does not break. */
  readonly text: string;
  /** "four hundred and fifty". */
  readonly spoken: string;
}

/** A figure with what stands behind it; undefined while it cannot be worked out. */
export function figureOf(
  job: FigureWorld,
  snapshot: ReadingsHeld,
  id: string,
  label: string,
  ref: ValueRef,
): Figure | undefined {
  const value = job.numbers.value(ref, snapshot.context.readings);
  if (value === undefined || Array.isArray(value)) return undefined;
  if (typeof value === 'string') {
    return { ...wordFigure(job.flow.language, id, label, value), ...behindOf(job, snapshot, ref) };
  }
  const display = displayOf(ref, job.flow, job.card.units);
  if (!display || typeof value !== 'number') return undefined;
  const shown = shownAs(value, display.quantity, display.format);
  return { id, label, ...textsOf(shown, job.flow.language), ...behindOf(job, snapshot, ref) };
}

function wordFigure(language: Language, id: string, label: string, word: string): Figure {
  const text = optionText(language, word);
  return { id, label, text, spoken: text };
}

/** One decimal more where the dial is set between two marks. */
function exactly(shown: Shown): Shown {
  const { value, decimals } = shown;
  const lost = Math.abs(value - Number(value.toFixed(decimals)));
  const isBetween = Math.abs(lost * 10 ** decimals - 0.5) < 1e-3;
  return isBetween ? { ...shown, decimals: decimals + 1 } : shown;
}

/** A length of this machine's own working: dial, size or what is left. */
function lengthFigure(
  job: Job,
  id: string,
  label: string,
  value: number,
  behind: Behind | undefined,
): Figure {
  const shown = shownAs(value, 'length', formatOf('length', job.card.units));
  return { id, label, ...textsOf(exactly(shown), job.flow.language), ...behind };
}

/** Every working of a flow that can be told now: what the numbers given to a job come to. */
export function workingFigures(job: FigureWorld, held: ReadingsHeld): readonly Figure[] {
  return [...job.flow.scope.workings].flatMap(
    ([id, { label }]) => figureOf(job, held, id, label, { working: id }) ?? [],
  );
}

/** The inputs of a job, as given. */
export function inputFigures(job: FigureWorld, held: ReadingsHeld): readonly Figure[] {
  return [...job.flow.scope.inputs].flatMap(
    ([id, { label }]) => figureOf(job, held, id, label, { input: id }) ?? [],
  );
}

/** The figure of a value named in a sentence, under the flow's own label. */
export function namedFigure(
  job: FigureWorld,
  held: ReadingsHeld,
  name: string,
  ref: ValueRef,
): Figure | undefined {
  return figureOf(job, held, name, labelOf(job, ref) ?? name, ref);
}

/** Speed, feed, depth, dial and the rest of the step a snapshot stands in. */
export function figuresNow(job: Job, snapshot: FlowSnapshot): readonly Figure[] {
  const step = planAt(job, snapshot)?.step;
  if (!step) return [];
  const powered = poweredIds.map((id) => poweredFigure(job, snapshot, step, id));
  const own = step.figures.map(({ label, value }, index) =>
    figureOf(job, snapshot, `own:${index}`, label, value),
  );
  return [...passFigures(job, snapshot), ...powered, ...own, ...limitFigures(job, snapshot)].filter(
    (figure) => figure !== undefined,
  );
}

/** The one of them that a sentence can name: no other is worked out, and no reading looked at for it. */
export function figureNow(job: Job, snapshot: FlowSnapshot, name: string): Figure | undefined {
  const step = planAt(job, snapshot)?.step;
  if (!step) return undefined;
  const named = ({ id }: Figure) => id === name;
  const ofPass = passIds.has(name) ? passFigures(job, snapshot).find(named) : undefined;
  if (ofPass) return ofPass;
  const powered = poweredIds.find((id) => id === name);
  if (powered) return poweredFigure(job, snapshot, step, powered);
  return limitIds.some((id) => id === name) ? limitFigures(job, snapshot).find(named) : undefined;
}

const passIds: ReadonlySet<string> = new Set(['dial', 'cut', 'left', 'size']);
const poweredIds = ['speed', 'feed', 'depth', 'length'] as const;
const limitIds = ['lower', 'upper'] as const;

function poweredFigure(
  job: Job,
  snapshot: FlowSnapshot,
  step: Step,
  id: (typeof poweredIds)[number],
): Figure | undefined {
  const ref = step.kind === 'cut' || step.kind === 'passes' ? step[id] : undefined;
  // A spindle turns and a band runs: German has two words for it.
  const band = id === 'speed' && job.flow.kind.speedQuantity === 'surfaceSpeed';
  const label = sayIn(job.flow.language, flowTexts)(band ? 'bandSpeed' : id);
  return ref && figureOf(job, snapshot, id, label, ref);
}

/** The next pass: what the dial must read, the depth a side, what is left. */
export function passFigures(job: Job, snapshot: FlowSnapshot): readonly Figure[] {
  return passNow(job, snapshot)?.figures ?? [];
}

/** The size that the last dial setting should have made. */
export function expectedAfterPass(job: Job, snapshot: FlowSnapshot): Figure | undefined {
  const now = passNow(job, snapshot);
  if (!now) return undefined;
  const { pass, given } = now;
  return lengthFigure(job, 'expected', sayWhy(job)('expected'), pass.diameterAfter, given);
}

function passNow(job: Job, snapshot: FlowSnapshot) {
  const step = planAt(job, snapshot)?.step;
  const state = step && snapshot.context.passes[step.id];
  if (step?.kind !== 'passes' || !state) return undefined;
  const pass = nextPass(step, state, snapshot.context.readings, job.world);
  const size = lengthFigure(
    job,
    'size',
    sayWhy(job)('now'),
    state.size,
    behindSize(job, snapshot, step),
  );
  const goal = figureOf(job, snapshot, 'finish', sayWhy(job)('finish'), step.finish);
  const from = goal ? [size, goal] : [size];
  const so = lengthFigure(job, 'dial-so-far', sayWhy(job)('dialSoFar'), state.dial, undefined);
  const given = behindPass(pass, [...from, so], job.flow.language);
  const say = sayIn(job.flow.language, flowTexts);
  const row = { now: size.text, goal: goal?.text ?? '' };
  const figures = [
    lengthFigure(job, 'dial', say('dial'), pass.dial, given),
    lengthFigure(job, 'cut', say('depthASide'), pass.depthASide, given),
    lengthFigure(job, 'left', say('leftLabel'), pass.left, {
      working: goal ? say(step.side === 'outside' ? 'less' : 'upTo', row) : size.text,
      given: from,
      formula: sayWhy(job)(step.side === 'outside' ? 'leftOutside' : 'leftInside'),
      source: sayWhy(job)('subtraction'),
    }),
    size,
  ];
  return { pass, given, figures };
}

/** A rule that refuses says why no cut comes out; the dial stays where it is. */
function behindPass(
  { answer }: ReturnType<typeof nextPass>,
  given: Behind['given'],
  language: Language,
): Behind | undefined {
  const rule = findRule('next-pass', language);
  if (!rule) return undefined;
  const source = (answer.ok ? answer.source : undefined) ?? rule.source;
  const working = answer.ok ? answer.working : answer.fault;
  return { working, given, formula: rule.formula, source };
}

/** Before the first measurement the size is what the step begins from. */
function behindSize(job: Job, snapshot: FlowSnapshot, step: StepOf<'passes'>): Behind | undefined {
  const taken = snapshot.context.readings[step.reading.id] !== undefined;
  return behindOf(job, snapshot, taken ? { reading: step.reading.id } : step.from);
}

export function limitFigures(job: Job, snapshot: FlowSnapshot): readonly Figure[] {
  const step = planAt(job, snapshot)?.step;
  if (step?.kind !== 'inspect' && step?.kind !== 'passes') return [];
  const limits = limitsOf(step, job.numbers, snapshot.context.readings);
  if (!limits) return [];
  const quantity = step.reading.quantity as Quantity;
  const format = formatOf(quantity, job.card.units, step.reading);
  return limitIds.map((key) => ({
    id: key,
    label: sayWhy(job)(key === 'lower' ? 'least' : 'most'),
    ...textsOf(shownAs(limits[key], quantity, format), job.flow.language),
    ...behindOf(job, snapshot, step[key]),
  }));
}
