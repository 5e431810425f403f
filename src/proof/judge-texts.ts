/** Looks for values that are shown or spoken before they are worked out. */

import {
  type Figure,
  type FlowSnapshot,
  figureOf,
  figuresNow,
  fill,
  type Job,
  joined,
  limitFigures,
  type Phase,
  passFigures,
  planAt,
  positionOf,
  viewOf,
} from '../flow/index.ts';
import type { Question } from './judge-state.ts';
import { tell } from './tell.ts';

const claim = 'FORMAT-SPOKEN';
const unfinished = /[{}]|NaN|undefined/;

/** Everything that the view shows and speaks at one snapshot. */
export function textsOfView(job: Job, snapshot: FlowSnapshot): string | undefined {
  const view = viewOf(job, snapshot);
  const asks = view.gate.flatMap(({ ask }) =>
    ask ? [fill(job, snapshot, ask.remedy).spoken, fill(job, snapshot, ask.question).spoken] : [],
  );
  const line = joined(view.lead, view.ask);
  const texts = [line.shown, line.spoken, view.why ?? '', ...view.cautions, ...asks];
  if (line.spoken.trim() === '') return tell(job)`Nothing is said here.`;
  return openText(job, texts) ?? openFigure(job, snapshot);
}

function openText(job: Job, texts: readonly string[]): string | undefined {
  const open = texts.find((text) => unfinished.test(text));
  return open === undefined
    ? undefined
    : tell(job)`"${open}" is said before its value is worked out.`;
}

function openFigure(job: Job, snapshot: FlowSnapshot): string | undefined {
  const step = planAt(job, snapshot)?.step;
  if (!step) return undefined;
  const figures = figuresNow(job, snapshot);
  const shown = figures.filter((figure) => figure.id.startsWith('own:')).length;
  const lacks = shown < step.figures.length;
  return openIn(job, figures) ?? (lacks ? neverWorkedOut(job) : undefined);
}

export interface TextQuestion extends Question {
  /** The value's name in braces, or which figure. Of one step and one text, the answer is the same everywhere. */
  readonly about: string;
}

/**
 * The same without the view, for the reduced walk: which sentences can be said at a place does not need the facts,
 * and filling them in reads only readings. The view itself would ask every fact at once.
 */
export function textQuestions(job: Job, at: FlowSnapshot): readonly TextQuestion[] {
  const texts = templatesAt(job, at, positionOf(at).phase);
  const names = texts.flatMap((text) => text.match(named) ?? []);
  const plain = texts.find((text) => unfinished.test(text.replaceAll(named, '')));
  return [
    ...[...new Set(names)].map((name): TextQuestion => {
      const ask = (one: FlowSnapshot) => openText(job, [fill(job, one, name).spoken]);
      return { claim, about: name, ask };
    }),
    ...(plain === undefined ? [] : [{ claim, about: plain, ask: () => openText(job, [plain]) }]),
    ...figureQuestions(job, at),
  ];
}

const named = /\{[^{}]*\}/g;

/** Figure by figure, since each reads few readings, and all at once would read every one of them. */
function figureQuestions(job: Job, at: FlowSnapshot): readonly TextQuestion[] {
  const step = planAt(job, at)?.step;
  if (!step) return [];
  const own = step.figures.map(({ label, value }, index): TextQuestion => {
    const made = (one: FlowSnapshot) => figureOf(job, one, `own:${index}`, label, value);
    const ask = (one: FlowSnapshot) => {
      const figure = made(one);
      return figure ? openIn(job, [figure]) : neverWorkedOut(job);
    };
    return { claim, about: `own:${index}`, ask };
  });
  const powered = 'speed' in step ? [step.speed, step.feed, step.depth, step.length] : [];
  const shown = powered.map((ref, index): TextQuestion => {
    const made = (one: FlowSnapshot) => (ref ? figureOf(job, one, '', '', ref) : undefined);
    return { claim, about: `powered:${index}`, ask: (one) => openIn(job, [made(one)]) };
  });
  return [
    ...own,
    ...shown,
    { claim, about: 'pass', ask: (one) => openIn(job, passFigures(job, one)) },
    { claim, about: 'limits', ask: (one) => openIn(job, limitFigures(job, one)) },
  ];
}

function neverWorkedOut(job: Job): string {
  return tell(job)`A figure that is to be shown is not worked out.`;
}

function openIn(job: Job, figures: readonly (Figure | undefined)[]): string | undefined {
  const open = figures.some(
    (one) => one && (unfinished.test(one.text) || unfinished.test(one.spoken)),
  );
  return open ? tell(job)`A figure is shown before it is worked out.` : undefined;
}

function templatesAt(job: Job, at: FlowSnapshot, phase: Phase): readonly string[] {
  const { walk } = positionOf(at);
  const step = planAt(job, at)?.step;
  if (!step) return [];
  const { prompts, facts, walks } = job.flow.kind;
  const items = walks.find((one) => one.id === walk?.id)?.items ?? [];
  const item = items.find((one) => one.id === walk?.item);
  return [
    ...[step.say, step.long, step.short].flatMap((say) => phaseTexts(phase, say ?? '', prompts)),
    ...phaseTexts(phase, '', { ...prompts, ...prompts.short }),
    ...(phase === 'gate' && 'speed' in step
      ? [prompts.setSpeed, prompts.short.setSpeed ?? '']
      : []),
    ...(item ? [item.say, item.why ?? ''] : []),
    step.why ?? '',
    ...step.cautions,
    ...facts.flatMap((fact) => [fact.ask, step.remedies[fact.id] ?? fact.remedy]),
  ];
}

function phaseTexts(
  phase: Phase,
  say: string,
  prompts: Job['flow']['kind']['prompts'],
): readonly string[] {
  switch (phase) {
    case 'dial':
      return [prompts.setDial];
    case 'start':
      return [prompts.start];
    case 'cutting':
      return [say, prompts.watch];
    case 'stopping':
      return [prompts.stop];
    case 'measure':
      return [prompts.measure];
    case 'gate':
    case 'hold':
      return [];
    default:
      return [say];
  }
}
