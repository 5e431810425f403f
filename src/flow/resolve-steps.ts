/** Checks that the steps of a flow meet: targets, facts, parts, values and words. */

import type { Language } from '../texts/index.ts';
import { findUnit, type Quantity, toBase } from '../trade/index.ts';
import type { Path } from './fault.ts';
import type { CheckQuestion, FlowFile, Reading, Step } from './flow-shape.ts';
import type { MachineKind } from './kind-shape.ts';
import { listed, suggestion } from './nearest.ts';
import { readingsBehind } from './readings-behind.ts';
import { checkFact, checkMoment, checkPart, checkUnique, checkWanted } from './resolve-kind.ts';
import { checkAnswerPhrases } from './resolve-phrases.ts';
import { namesIn } from './resolve-texts.ts';
import { type Complain, checkRef, checkUnit } from './resolve-values.ts';
import { meaningOf, readingOf, type Scope } from './scope.ts';
import { alwaysAfter, endStep, type StepGraph } from './step-graph.ts';
import type { ValueRef, WantedFacts } from './words-shape.ts';

export interface StepCheck {
  readonly flow: FlowFile;
  readonly kind: MachineKind;
  readonly language: Language;
  readonly scope: Scope;
  readonly graph: StepGraph;
  readonly complain: Complain;
}

export function checkSteps(check: StepCheck): void {
  const { flow, kind, complain } = check;
  checkUnique(flow.steps, ['steps'], 'step', complain);
  for (const [name, wanted] of Object.entries(flow.gates)) {
    checkWanted(wanted, kind, ['gates', name], complain);
  }
  flow.steps.forEach((step, index) => {
    checkStep(step, ['steps', index], check);
  });
}

function checkStep(step: Step, path: Path, check: StepCheck): void {
  const { kind, complain, flow } = check;
  if (step.id === endStep)
    complain([...path, 'id'], '"end" means the end of the flow. Give the step another id.');
  step.gates.forEach((gate, index) => {
    const names = Object.keys(flow.gates);
    if (names.includes(gate)) return;
    complain(
      [...path, 'gates', index],
      `This flow has no gate "${gate}".${suggestion(gate, names)} It has: ${listed(names)}.`,
    );
  });
  checkWanted(step.needs, kind, [...path, 'needs'], complain);
  for (const fact of Object.keys(step.remedies))
    checkFact(fact, kind, [...path, 'remedies', fact], complain);
  if (step.part !== undefined) checkPart(step.part, kind, [...path, 'part'], complain);
  if (step.moment !== undefined) checkMoment(step.moment, kind, [...path, 'moment'], complain);
  checkGates(step, path, check);
  checkOwnChanges(step, path, check);
  checkTargets(step, path, check);
  checkFigures(step, path, check);
  checkByKind(step, path, check);
  checkSentences(step, path, check);
}

/** What a step needs, fact by fact, with the place that asks for it. */
function askedBy(step: Step, path: Path, { flow }: StepCheck): readonly Asked[] {
  const gates = step.gates.flatMap((gate, index) =>
    asked(flow.gates[gate] ?? {}, `the gate "${gate}"`, () => [...path, 'gates', index]),
  );
  return [...gates, ...asked(step.needs, '"needs"', (fact) => [...path, 'needs', fact])];
}

interface Asked {
  readonly fact: string;
  readonly state: string;
  readonly by: string;
  readonly path: Path;
}

function asked(wanted: WantedFacts, by: string, path: (fact: string) => Path): readonly Asked[] {
  return Object.entries(wanted).map(([fact, state]) => ({ fact, state, by, path: path(fact) }));
}

/** Two gates that want different states of one fact could never both be met. */
function checkGates(step: Step, path: Path, check: StepCheck): void {
  const first = new Map<string, Asked>();
  for (const now of askedBy(step, path, check)) {
    const other = first.get(now.fact) ?? now;
    first.set(now.fact, other);
    if (other.state === now.state) continue;
    check.complain(
      now.path,
      `Step "${step.id}" can never open: ${other.by} wants "${now.fact}" to be "${other.state}", ${now.by} wants it "${now.state}". Take one of them out.`,
    );
  }
}

/** A step cannot ask to be let in by a fact that it changes itself: after a hold nobody could answer it. */
function checkOwnChanges(step: Step, path: Path, check: StepCheck): void {
  const changed =
    step.kind === 'do' ? [...Object.keys(step.begins), ...Object.keys(step.ends)] : [];
  const forgotten = check.kind.facts.filter((fact) => fact.handsForget).map((fact) => fact.id);
  for (const { fact, by, path: place } of askedBy(step, path, check)) {
    if (changed.includes(fact)) {
      check.complain(
        place,
        `Step "${step.id}" changes "${fact}" itself, so ${by} cannot ask for it. Take it out there, or ask for it in a step before.`,
      );
    }
    if (handsIn(step) && forgotten.includes(fact)) {
      check.complain(
        place,
        `Hands are in at step "${step.id}", so ${by} cannot ask for "${fact}": nobody can vouch for it while hands are near. Take it out there.`,
      );
    }
  }
}

function handsIn(step: Step): boolean {
  return step.hands || step.kind === 'measure' || step.kind === 'inspect';
}

/** Named gates and own needs of a step, put together. */
export function stepNeeds(step: Step, flow: FlowFile): WantedFacts {
  return Object.assign({}, ...step.gates.map((gate) => flow.gates[gate] ?? {}), step.needs);
}

const targetKeys = ['next', 'within', 'rework', 'lost'] as const;

function checkTargets(step: Step, path: Path, check: StepCheck): void {
  for (const key of targetKeys) {
    const target = (step as Partial<Record<(typeof targetKeys)[number], string>>)[key];
    if (target !== undefined) checkTarget(step, target, [...path, key], check);
  }
  if (step.kind !== 'choose') return;
  step.options.forEach((option, index) => {
    checkTarget(step, option.next, [...path, 'options', index, 'next'], check);
  });
  checkUnique(step.options, [...path, 'options'], 'option', check.complain);
  checkAnswerPhrases(step.options, check, [...path, 'options'], check.complain);
}

function checkTarget(step: Step, target: string, path: Path, { flow, complain }: StepCheck): void {
  const ids = flow.steps.map((one) => one.id);
  if (target === endStep || ids.includes(target)) return;
  complain(
    path,
    `Step "${step.id}" goes to "${target}", which this flow does not have.${suggestion(target, [...ids, endStep])} It has: ${listed(ids)}.`,
  );
}

function checkFigures(step: Step, path: Path, check: StepCheck): void {
  step.figures.forEach((figure, index) => {
    checkValue(figure.value, 'number', [...path, 'figures', index, 'value'], step, check);
  });
}

function checkByKind(step: Step, path: Path, check: StepCheck): void {
  const { kind, complain } = check;
  if (step.kind === 'check') checkWanted(step.facts, kind, [...path, 'facts'], complain);
  if (step.kind === 'do') {
    checkWanted(step.begins, kind, [...path, 'begins'], complain);
    checkWanted(step.ends, kind, [...path, 'ends'], complain);
  }
  if (step.question) checkQuestion(step.question, [...path, 'question'], check);
  if (step.kind === 'cut' || step.kind === 'passes') {
    checkTroubles(step.troubles, [...path, 'troubles'], check);
    for (const key of ['speed', 'workLimit'] as const) {
      const value = step[key];
      if (value) checkValue(value, kind.speedQuantity, [...path, key], step, check);
    }
    for (const key of ['depth', 'length'] as const) {
      const value = step[key];
      if (value) checkValue(value, 'length', [...path, key], step, check);
    }
    if (step.feed)
      checkValue(step.feed, feedQuantity(step.feed, check), [...path, 'feed'], step, check);
  }
  const reading = readingOf(step);
  if (reading) checkReading(reading, step, path, check);
}

/** A feed is told a turn, or a minute where the table is fed. */
function feedQuantity(ref: ValueRef, { scope }: StepCheck): 'feedPerRev' | 'feedRate' {
  if ('is' in ref) return findUnit(ref.unit, 'feedRate') ? 'feedRate' : 'feedPerRev';
  const meaning = meaningOf(ref, scope);
  const isRate =
    typeof meaning === 'object' && meaning.kind === 'number' && meaning.quantity === 'feedRate';
  return isRate ? 'feedRate' : 'feedPerRev';
}

/** One answer is right, and no answer is a word that moves the job. */
function checkQuestion(question: CheckQuestion, path: Path, check: StepCheck): void {
  const { complain } = check;
  const right = question.options.filter((option) => option.right).length;
  if (right !== 1) {
    complain(
      [...path, 'options'],
      `A question has one right answer; this one has ${right}. Mark one.`,
    );
  }
  const options = question.options.map((option) => ({ ...option, id: option.word, also: [] }));
  checkAnswerPhrases(options, check, [...path, 'options'], complain);
}

function checkTroubles(
  troubles: readonly string[],
  path: Path,
  { kind, complain }: StepCheck,
): void {
  troubles.forEach((id, index) => {
    const known = kind.walks.filter((walk) => !walk.everywhere).map((walk) => walk.id);
    if (known.includes(id)) return;
    const everywhere = kind.walks.some((walk) => walk.id === id);
    complain(
      [...path, index],
      everywhere
        ? `The walk "${id}" is at every start already. Take it out.`
        : `The ${kind.id} has no walk "${id}".${suggestion(id, known)} It has: ${listed(known)}.`,
    );
  });
}

const sizeKeys = ['lower', 'upper', 'from', 'finish', 'deepest', 'finishAllowance'] as const;

function checkReading(reading: Reading, step: Step, path: Path, check: StepCheck): void {
  const place = [...path, 'reading'];
  if (!checkUnit(reading.quantity, reading.unit, place, check.complain)) return;
  const quantity: Quantity = reading.quantity;
  for (const key of ['min', 'max', 'expected'] as const) {
    const value = reading[key];
    if (value) checkValue(value, quantity, [...place, key], step, check);
  }
  const sizes = step as Partial<Record<(typeof sizeKeys)[number], ValueRef>>;
  for (const key of sizeKeys) {
    const value = sizes[key];
    if (value) checkValue(value, quantity, [...path, key], step, check);
  }
  checkOrder([reading.min, reading.max], quantity, [...place, 'min'], check.complain);
  checkOrder([sizes.lower, sizes.upper], quantity, [...path, 'lower'], check.complain);
}

/** Of two fixed sizes the lower must not be above the upper; worked-out ones are known only in the job. */
function checkOrder(
  [low, high]: readonly [ValueRef | undefined, ValueRef | undefined],
  quantity: Quantity,
  path: Path,
  complain: Complain,
): void {
  if (!low || !high || !('is' in low) || !('is' in high)) return;
  if (!findUnit(low.unit, quantity) || !findUnit(high.unit, quantity)) return;
  if (toBase(low.is, low.unit, quantity) <= toBase(high.is, high.unit, quantity)) return;
  complain(
    path,
    `The least value, ${low.is} ${low.unit}, is above the most, ${high.is} ${high.unit}. Exchange them.`,
  );
}

function checkValue(
  ref: ValueRef,
  wanted: Quantity | 'number',
  path: Path,
  step: Step,
  check: StepCheck,
): void {
  checkRef(
    ref,
    wanted === 'number' ? 'number' : { quantity: wanted },
    check.scope,
    path,
    check.complain,
  );
  for (const reading of readingsBehind(ref, check.scope)) checkTaken(reading, step, path, check);
}

/** A value may be used only where every path has taken the reading behind it. */
function checkTaken(reading: string, step: Step, path: Path, check: StepCheck): void {
  const taken = check.scope.readings.get(reading);
  if (!taken || alwaysAfter(check.graph, step.id, taken.step.id)) return;
  check.complain(
    path,
    `Step "${step.id}" uses the reading "${reading}", but not every path to it goes through step "${taken.step.id}", where it is taken.`,
  );
}

/** Names that a step can put into its sentences beside inputs, workings and readings. */
function ownNames(step: Step): readonly string[] {
  if (step.kind === 'passes')
    return ['speed', 'feed', 'depth', 'dial', 'left', 'size', 'lower', 'upper'];
  if (step.kind === 'cut') return ['speed', 'feed', 'depth', 'length'];
  return step.kind === 'inspect' ? ['lower', 'upper'] : [];
}

function checkSentences(step: Step, path: Path, check: StepCheck): void {
  const place = (key: string): Path => [...path, key];
  for (const key of ['say', 'long', 'short', 'why'] as const) {
    const text = step[key];
    if (text !== undefined) checkText(text, place(key), step, check);
  }
  step.cautions.forEach((text, index) => {
    checkText(text, [...path, 'cautions', index], step, check);
  });
  for (const [fact, text] of Object.entries(step.remedies)) {
    checkText(text, [...path, 'remedies', fact], step, check);
  }
}

function checkText(text: string, path: Path, step: Step, check: StepCheck): void {
  const { names, strange } = namesIn(text);
  for (const one of strange) {
    check.complain(
      path,
      `"${one}" in braces is no name of a value. Write {name} or {name.part}; formulas are trade rules, not text.`,
    );
  }
  for (const name of names) {
    if (ownNames(step).includes(name)) continue;
    const ref = refOfName(name, check.scope);
    if (ref) checkSpoken(ref, path, step, check);
    else {
      const known = [
        ...check.scope.inputs.keys(),
        ...check.scope.workings.keys(),
        ...check.scope.readings.keys(),
        ...ownNames(step),
      ];
      check.complain(
        path,
        `There is no value "${name}" to put into this sentence.${suggestion(name, known)} There are: ${listed(known)}.`,
      );
    }
  }
}

function checkSpoken(ref: ValueRef, path: Path, step: Step, check: StepCheck): void {
  const meaning = meaningOf(ref, check.scope);
  if (typeof meaning === 'string') check.complain(path, meaning);
  for (const reading of readingsBehind(ref, check.scope)) {
    const own = readingOf(step)?.id === reading;
    if (!own) checkTaken(reading, step, path, check);
  }
}

/** What {name} or {name.part} in a sentence stands for. */
export function refOfName(name: string, scope: Scope): ValueRef | undefined {
  const [head = '', part] = name.split('.');
  if (scope.workings.has(head))
    return part === undefined ? { working: head } : { working: head, part };
  if (part !== undefined) return undefined;
  if (scope.inputs.has(head)) return { input: head };
  return scope.readings.has(head) ? { reading: head } : undefined;
}
