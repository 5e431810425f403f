/** Looks for values that are shown or spoken before they are worked out. */

import {
  type FlowSnapshot,
  figuresNow,
  fill,
  type Job,
  joined,
  type Phase,
  planAt,
  positionOf,
  viewOf,
} from '../flow/index.ts';
import type { Question } from './judge-state.ts';

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
  if (line.spoken.trim() === '') return 'Nothing is said here.';
  return openText(texts) ?? openFigure(job, snapshot);
}

function openText(texts: readonly string[]): string | undefined {
  const open = texts.find((text) => unfinished.test(text));
  return open === undefined ? undefined : `"${open}" is said before its value is worked out.`;
}

function openFigure(job: Job, snapshot: FlowSnapshot): string | undefined {
  const step = planAt(job, snapshot)?.step;
  if (!step) return undefined;
  const figures = figuresNow(job, snapshot);
  if (figures.some(({ text, spoken }) => unfinished.test(text) || unfinished.test(spoken)))
    return 'A figure is shown before it is worked out.';
  const shown = figures.filter((figure) => figure.id.startsWith('own:')).length;
  return shown < step.figures.length
    ? 'A figure that is to be shown is not worked out.'
    : undefined;
}

/**
 * The same without the view, for the reduced walk: which sentences can be said at a place does not need the facts,
 * and filling them in reads only readings. The view itself would ask every fact at once.
 */
export function textQuestions(job: Job, at: FlowSnapshot): readonly Question[] {
  const { phase } = positionOf(at);
  const texts = templatesAt(job, at, phase).filter((text) => text.includes('{'));
  const sentence = (text: string): Question => ({
    claim,
    ask: (snapshot) => openText([fill(job, snapshot, text).spoken]),
  });
  return [...texts.map(sentence), { claim, ask: (snapshot) => openFigure(job, snapshot) }];
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
