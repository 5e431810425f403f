/** What is to be seen and said at a snapshot. Texts are filled in here, so that screen and voice never differ. */

import { flowTexts, sayIn } from '../texts/index.ts';
import { askedFacts, releaseAwaited } from './asked.ts';
import { commandWord } from './command-words.ts';
import type { Job } from './compile.ts';
import { type Facts, unknownState } from './events.ts';
import { stateOf } from './facts.ts';
import {
  type Figure,
  namedFigure as figureNamed,
  figureNow,
  figureOf,
  figuresNow,
} from './figures.ts';
import type { Step, StepOf } from './flow-shape.ts';
import type { Fact, MachineKind, WalkItem } from './kind-shape.ts';
import { askedTogether, type Pace, promptAt, sayAt } from './pace.ts';
import { type FlowSnapshot, type Phase, planAt, positionOf } from './position.ts';
import { refOfName } from './resolve-steps.ts';
import { fillText, namesIn } from './resolve-texts.ts';
import { offerLine, walkNow } from './walk-view.ts';

/** A sentence in two dresses. */
export interface Line {
  readonly shown: string;
  readonly spoken: string;
  /** The figures it tells, in their order: each can be asked "why that?". */
  readonly figures?: readonly Figure[];
}

/** One condition of the gate or hold, and how it stands. */
export interface GateLine {
  readonly fact: string;
  readonly label: string;
  readonly met: boolean;
  /** Asked for now: the word to say, the question, and what to do about it. */
  readonly ask?: { readonly word: string; readonly question: string; readonly remedy: string };
  readonly why?: string;
  readonly part?: string;
}

export interface View {
  readonly step: {
    readonly id: string;
    readonly title: string;
    readonly index: number;
    readonly of: number;
  };
  readonly phase: Phase;
  readonly mood: 'doing' | 'answering' | 'cutting' | 'held' | 'done';
  /** What is to be done or known here. */
  readonly lead: Line;
  /** What is asked for next, if anything is. */
  readonly ask: Line;
  readonly gate: readonly GateLine[];
  readonly figures: readonly Figure[];
  readonly why?: string;
  readonly cautions: readonly string[];
  readonly part?: string;
  readonly direction?: string;
  readonly held?: { readonly by: string; readonly lost: readonly string[] };
}

/** `pace` changes how much is told and nothing else. */
export function viewOf(job: Job, snapshot: FlowSnapshot, pace: Pace = 'familiar'): View {
  const { step: id, phase } = positionOf(snapshot);
  const step = job.flow.steps.get(id);
  const index = job.flow.file.steps.findIndex((one) => one.id === id);
  const of = job.flow.file.steps.length;
  if (!step) return endView(job, of);
  const item = walkNow(job, snapshot)?.item;
  const own = partOfPhase(job.flow.kind, phase);
  const part = item?.part ?? own ?? firstPart(job, snapshot) ?? step.part;
  const why = item?.why ?? step.why;
  const { held } = snapshot.context;
  return {
    step: { id, title: item?.title ?? step.title, index, of },
    phase,
    mood: moodOf(phase),
    ...linesOf(job, snapshot, step, phase, pace),
    gate: gateLines(job, snapshot),
    figures: figuresNow(job, snapshot),
    ...(why === undefined ? {} : { why: fill(job, snapshot, why).shown }),
    cautions: step.cautions.map((text) => fill(job, snapshot, text).shown),
    ...(part === undefined ? {} : { part }),
    ...(step.direction === undefined || part !== step.part ? {} : { direction: step.direction }),
    ...(held ? { held: { by: held.by, lost: labels(job.flow.kind, held.lost) } } : {}),
  };
}

function endView(job: Job, of: number): View {
  const say = saysOf(job);
  const text = say('doneLine');
  return {
    step: { id: 'end', title: say('done'), index: of, of },
    phase: 'end',
    mood: 'done',
    lead: { shown: text, spoken: text },
    ask: silent,
    gate: [],
    figures: [],
    cautions: [],
  };
}

function moodOf(phase: Phase): View['mood'] {
  if (phase === 'hold') return 'held';
  if (phase === 'start' || phase === 'cutting' || phase === 'stopping') return 'cutting';
  return phase === 'gate' || phase === 'measure' ? 'answering' : 'doing';
}

function labels(kind: MachineKind, facts: readonly string[]): readonly string[] {
  return facts.map((id) => kind.facts.find((fact) => fact.id === id)?.label ?? id);
}

function partOfPhase({ phaseParts }: MachineKind, phase: Phase): string | undefined {
  return phase in phaseParts ? phaseParts[phase as keyof typeof phaseParts] : undefined;
}

function firstPart(job: Job, snapshot: FlowSnapshot): string | undefined {
  return askedFacts(job, snapshot)[0]?.fact.part;
}

const saysOf = (job: Job) => sayIn(job.flow.language, flowTexts);

const silent: Line = { shown: '', spoken: '' };

function plain(text: string): Line {
  return { shown: text, spoken: text };
}

function linesOf(
  job: Job,
  snapshot: FlowSnapshot,
  step: Step,
  phase: Phase,
  pace: Pace,
): Pick<View, 'lead' | 'ask'> {
  const say = (text: string) => fill(job, snapshot, text);
  const prompt = (name: Parameters<typeof promptAt>[1]) => say(promptAt(job.flow.kind, name, pace));
  const question = questionAt(job, snapshot, step, pace);
  switch (phase) {
    case 'gate':
      return { lead: gateLead(job, snapshot, step), ask: question };
    case 'dial':
      return { lead: prompt('setDial'), ask: silent };
    case 'start':
      return { lead: prompt('start'), ask: silent };
    case 'cutting':
      return { lead: say(sayAt(step, pace)), ask: prompt('watch') };
    case 'stopping':
      return { lead: prompt('stop'), ask: silent };
    case 'measure':
      return { lead: prompt('measure'), ask: silent };
    case 'hold':
      return { lead: heldLine(job, snapshot), ask: heldAsk(job, snapshot, question) };
    case 'walk':
      return walkLines(job, snapshot, question);
    default:
      // At one's own pace what is asked for is the whole instruction of a check.
      return pace === 'own-pace' && step.kind === 'check' && question !== silent
        ? { lead: question, ask: silent }
        : { lead: say(sayAt(step, pace)), ask: openAsk(job, snapshot, step, question, pace) };
  }
}

/** At the gate of the next pass: what is left comes first. */
function gateLead(job: Job, snapshot: FlowSnapshot, step: Step): Line {
  const left = figuresNow(job, snapshot).find((figure) => figure.id === 'left');
  const passes = step.kind === 'passes' && snapshot.context.readings[step.reading.id] !== undefined;
  if (!left || !passes) return plain(`${step.title}.`);
  const say = saysOf(job);
  const [shown, spoken] = [left.text, left.spoken].map((size) => say('left', { size }));
  return { shown: shown ?? '', spoken: spoken ?? '', figures: [left] };
}

function heldLine(job: Job, snapshot: FlowSnapshot): Line {
  const { held } = snapshot.context;
  return plain(saysOf(job)(held?.by === 'interruption' ? 'afterBreak' : 'hold'));
}

/** While held: first what turns is stopped, then each fact, then the person carries on. */
function heldAsk(job: Job, snapshot: FlowSnapshot, question: Line): Line {
  const [first] = askedFacts(job, snapshot);
  if (!first)
    return question === silent
      ? sayWord(job, commandWord(job.flow.language, 'carry-on'))
      : question;
  const { roles, prompts } = job.flow.kind;
  return first.fact.id === roles.power.fact ? plain(prompts.stop) : question;
}

function walkLines(job: Job, snapshot: FlowSnapshot, question: Line): Pick<View, 'lead' | 'ask'> {
  const { walk, item } = walkNow(job, snapshot) ?? {};
  if (!item) return { lead: plain(walk?.settle ?? ''), ask: question };
  return { lead: fill(job, snapshot, item.say), ask: walkAsk(job, snapshot, item) };
}

/** What a cause asks for: the word of its fact, a number, or whether to take another speed. */
function walkAsk(job: Job, snapshot: FlowSnapshot, item: WalkItem): Line {
  if (item.advice) return plain(item.advice.ask);
  if (item.offer) return offerLine(job, snapshot);
  if (Object.keys(item.needs).length === 0) return silent;
  const next = commandWord(job.flow.language, 'next');
  return sayWord(job, askedFacts(job, snapshot)[0]?.state.word ?? next);
}

/** A step that asks for facts while it is open tells the word of the one that ends it. */
function openAsk(job: Job, snapshot: FlowSnapshot, step: Step, question: Line, pace: Pace): Line {
  if (step.kind === 'check') return question;
  if (pace === 'own-pace') return silent;
  const word = askedFacts(job, snapshot)[0]?.state.word;
  return word === undefined ? silent : sayWord(job, word);
}

function sayWord(job: Job, word: string): Line {
  return plain(saysOf(job)('sayWord', { word }));
}

/** One question, or at one's own pace all of them in one breath, the speed last. */
function questionAt(job: Job, snapshot: FlowSnapshot, step: Step, pace: Pace): Line {
  const asked = askedFacts(job, snapshot);
  const one = firstQuestion(job, snapshot, step) ?? silent;
  const { speed } = job.flow.kind.roles;
  const [first] = asked;
  if (first === undefined || pace === 'familiar') return one;
  if (pace === 'first-time') {
    return first.fact.id === speed.fact ? one : joined(one, sayWord(job, first.state.word));
  }
  const others = asked.filter(({ fact }) => fact.id !== speed.fact);
  const sets = others.length < asked.length && 'speed' in step;
  const set = sets ? fill(job, snapshot, promptAt(job.flow.kind, 'setSpeed', pace)) : silent;
  return joined(plain(askedTogether(others, job.flow.language)), set);
}

/** What a person can answer is asked first; then the instructor is sent for. */
function firstQuestion(job: Job, snapshot: FlowSnapshot, step: Step): Line | undefined {
  const first = askedFacts(job, snapshot)[0];
  if (!first)
    return releaseAwaited(job, snapshot) === undefined
      ? undefined
      : plain(saysOf(job)('releaseAsk'));
  const { roles, prompts } = job.flow.kind;
  if (first.fact.id !== roles.speed.fact || !('speed' in step)) {
    return fill(job, snapshot, first.fact.ask);
  }
  return joined(fill(job, snapshot, prompts.setSpeed), sayWord(job, first.state.word));
}

/** Two lines as one. */
export function joined(first: Line, second: Line): Line {
  const join = (a: string, b: string) => [a, b].filter((text) => text !== '').join(' ');
  const figures = [...(first.figures ?? []), ...(second.figures ?? [])];
  return {
    shown: join(first.shown, second.shown),
    spoken: join(first.spoken, second.spoken),
    ...(figures.length > 0 ? { figures } : {}),
  };
}

/** The conditions in force: those of the gate, or of the hold, or what an open step asks. */
function gateLines(job: Job, snapshot: FlowSnapshot): readonly GateLine[] {
  const { phase } = positionOf(snapshot);
  const plan = planAt(job, snapshot);
  const asked = new Map(askedFacts(job, snapshot).map(({ fact, state }) => [fact.id, state]));
  const wanted: Facts = {
    ...(phase === 'gate' || phase === 'hold' ? plan?.gate : {}),
    ...(plan?.step.kind === 'check' && phase !== 'hold' ? plan.step.facts : {}),
  };
  return job.flow.kind.facts
    .filter((fact) => fact.id in wanted || asked.has(fact.id))
    .map((fact) =>
      gateLine(
        fact,
        plan?.step,
        stateOf(snapshot.context.facts, fact.id),
        wanted[fact.id],
        asked.get(fact.id)?.word,
      ),
    );
}

function gateLine(
  fact: Fact,
  step: Step | undefined,
  state: string,
  wanted: string | undefined,
  word: string | undefined,
): GateLine {
  const remedy = step?.remedies[fact.id] ?? fact.remedy;
  return {
    fact: fact.id,
    label: fact.label,
    met: state !== unknownState && state === wanted,
    ...(word === undefined ? {} : { ask: { word, question: fact.ask, remedy } }),
    ...(fact.why === undefined ? {} : { why: fact.why }),
    ...(fact.part === undefined ? {} : { part: fact.part }),
  };
}

/** Puts figures into a sentence, once as shown and once as spoken. */
export function fill(job: Job, snapshot: FlowSnapshot, text: string): Line {
  const step = planAt(job, snapshot)?.step;
  const figures = namesIn(text).names.flatMap((name) => {
    const figure = namedFigure(job, snapshot, step, name);
    return figure ? [[name, figure] as const] : [];
  });
  const byName = new Map(figures);
  return {
    shown: fillText(text, (name) => byName.get(name)?.text),
    spoken: fillText(text, (name) => byName.get(name)?.spoken),
    ...(byName.size > 0 ? { figures: [...byName.values()] } : {}),
  };
}

function namedFigure(
  job: Job,
  snapshot: FlowSnapshot,
  step: Step | undefined,
  name: string,
): Figure | undefined {
  const own = step && ownFigure(job, snapshot, step, name);
  if (own) return own;
  const ref = refOfName(name, job.flow.scope);
  return ref && figureNamed(job, snapshot, name, ref);
}

function ownFigure(job: Job, snapshot: FlowSnapshot, step: Step, name: string): Figure | undefined {
  const powered = step as Partial<StepOf<'passes'>>;
  if (name === 'depth' && step.kind === 'passes') return figureNow(job, snapshot, 'cut');
  if (['speed', 'feed', 'depth', 'length'].includes(name)) {
    const ref = powered[name as 'speed'];
    const shown = figureNow(job, snapshot, name);
    return shown ?? (ref && figureOf(job, snapshot, name, name, ref));
  }
  return figureNow(job, snapshot, name);
}
