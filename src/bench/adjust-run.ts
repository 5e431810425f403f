/** A change of tool, material or speed in the middle of a run: worked out again, kept, and said. Pure. */

import {
  type Adjusted,
  type Adjustment,
  adjustJob,
  figuresNow,
  type Job,
  type Pace,
  positionOf,
  speedSpoken,
  speedWorking,
  workOut,
} from '../flow/index.ts';
import { benchTexts, midSentence, sayIn } from '../texts/index.ts';
import { announce, joinLines } from './announce.ts';
import type { RunEntry } from './ports.ts';
import type { RunState } from './run-state.ts';
import { sentence } from './sentence.ts';

/** More figures than this are not told at once; the screen has them. */
const mostTold = 3;

export type AdjustedRun =
  | { readonly ok: true; readonly next: Pick<RunState, 'job' | 'snapshot'>; readonly line: string }
  /** `source` where a limit refused it. */
  | { readonly ok: false; readonly line: string; readonly source?: string };

/** The run with its numbers worked out again and the line that tells it, or the sentence that refuses it. */
export function adjustRun(state: RunState, change: Adjustment, word: string): AdjustedRun {
  const { job, snapshot } = state;
  if (change.type === 'adjust' && job.numbers.inputs[change.input] === change.value) {
    return {
      ok: false,
      line: sayIn(job.flow.language, benchTexts)('already', { word: sentence(word) }),
    };
  }
  const adjusted = adjustJob(job, snapshot, change);
  if (!adjusted.ok) {
    const { fault: line, source } = adjusted;
    return { ok: false, line, ...(source === undefined ? {} : { source }) };
  }
  const { job: next, snapshot: after } = adjusted;
  return {
    ok: true,
    next: { job: next, snapshot: after },
    line: [
      headOf(change, word, job),
      told(change, state, { job: next, snapshot: after }),
      sceneLine(adjusted, state.pace),
    ]
      .filter((text) => text !== '')
      .join(' '),
  };
}

function headOf(change: Adjustment, word: string, job: Job): string {
  if (change.type === 'adjust') return `${sentence(word)}.`;
  const { language } = job.flow;
  if (change.type === 'feeding') return '';
  const speed = sentence(speedSpoken(job, change.speed));
  if (change.toSet) return `${speed}.`;
  return sayIn(language, benchTexts)('asYouRun', { speed });
}

/** "Speed seven hundred and fifty-five, feed zero point two millimetres a rev." */
function told(
  change: Adjustment,
  before: Pick<RunState, 'job' | 'snapshot' | 'pace'>,
  after: Pick<RunState, 'job' | 'snapshot'>,
): string {
  const old = new Map(
    figuresNow(before.job, before.snapshot).map((figure) => [figure.id, figure.text]),
  );
  const news = figuresNow(after.job, after.snapshot)
    .filter(({ id, text }) => old.get(id) !== text)
    .filter(({ id }) => change.type === 'adjust' || id !== 'speed')
    .slice(0, mostTold)
    .map((figure) => `${midSentence(before.job.flow.language, figure.label)} ${figure.spoken}`);
  const changed = news.length > 0 ? `${sentence(news.join(', '))}.` : '';
  if (change.type === 'running')
    return joinLines([changed, tooFast(change.speed, before.job, after), feedStays(before, after)]);
  return changed || sayIn(before.job.flow.language, benchTexts)('nothingChanges');
}

/** The feed of a turn does not go with the speed: said, so that nobody has to ask. Who goes at their own pace knows. */
function feedStays(
  before: Pick<RunState, 'job' | 'snapshot' | 'pace'>,
  after: Pick<RunState, 'job' | 'snapshot'>,
): string {
  const [was, is] = [before, after].map(({ job, snapshot }) =>
    figuresNow(job, snapshot).find(({ id }) => id === 'feed'),
  );
  if (before.pace === 'own-pace' || !is || was?.text !== is.text) return '';
  return sayIn(before.job.flow.language, benchTexts)('feedStays', { feed: is.spoken });
}

/** Common practice, no source: the rule of what a running speed means for the edge has the same share. */
const fastShare = 1.2;

/** A speed far above the worked one is told once, with both figures. */
function tooFast(
  speed: number,
  { flow, card, numbers }: Job,
  { job, snapshot }: Pick<RunState, 'job' | 'snapshot'>,
): string {
  const working = speedWorking(job, snapshot);
  const plain = workOut(flow, card, numbers.inputs);
  if (working === undefined || !plain.ok) return '';
  const wanted = plain.numbers.number({ working }, snapshot.context.readings);
  if (wanted === undefined || speed <= wanted * fastShare) return '';
  return sayIn(flow.language, benchTexts)('fast', { speed: speedSpoken(job, wanted) });
}

/** Where the change moved the job or took a belief away, what is to be done now. */
function sceneLine({ job, before, snapshot }: Extract<Adjusted, { ok: true }>, pace: Pace): string {
  const same =
    JSON.stringify(positionOf(before)) === JSON.stringify(positionOf(snapshot)) &&
    JSON.stringify(before.context) === JSON.stringify(snapshot.context);
  return same ? '' : announce(job, before, snapshot, undefined, pace);
}

/** The change an entry of a run stands for, if it stands for one. */
export function adjustmentIn(event: RunEntry['event']): Adjustment | undefined {
  if (event?.type === 'running' && typeof event.speed === 'number') {
    const toSet = event.toSet === true ? { toSet: true } : {};
    return { type: 'running', speed: event.speed, ...toSet };
  }
  if (event?.type === 'feeding' && typeof event.feed === 'number')
    return { type: 'feeding', feed: event.feed };
  if (event?.type !== 'adjust') return undefined;
  const { input, value } = event;
  if (typeof input !== 'string' || typeof value !== 'string') return undefined;
  return { type: 'adjust', input, value };
}
