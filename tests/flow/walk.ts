/** A little language for walking a chart: words in, "step/phase" out. */

import {
  beginJob,
  type FlowEvent,
  type FlowSnapshot,
  type Job,
  positionOf,
  saidList,
  stepJob,
} from '../../src/flow/index.ts';

export interface Walk {
  readonly snapshot: FlowSnapshot;
  /** "face/gate", or "face/will-not-start.levers", or "end/end". */
  readonly at: string;
}

export function walkFrom(job: Job, snapshot: FlowSnapshot = beginJob(job)): Walk {
  const { step, phase, walk } = positionOf(snapshot);
  return { snapshot, at: walk ? `${step}/${walk.id}.${walk.item}` : `${step}/${phase}` };
}

/** Numbers are readings in mm; "fact=state" is an event whether asked for or not; the rest are phrases. */
export function said(job: Job, walk: Walk, ...words: readonly (string | number)[]): Walk {
  const snapshot = words.reduce<FlowSnapshot>(
    (at, word) => stepJob(job, at, eventOf(job, at, word)),
    walk.snapshot,
  );
  return walkFrom(job, snapshot);
}

const bare: ReadonlySet<string> = new Set([
  'interrupted',
  'next',
  'back',
  'hold',
  'carry-on',
  'stop',
]);

function eventOf(job: Job, at: FlowSnapshot, word: string | number): FlowEvent {
  if (typeof word === 'number') return { type: 'reading', value: word };
  const [fact = '', state] = word.split('=');
  if (state !== undefined) return { type: 'fact', fact, state };
  const item = saidList(job, at).items.find((one) => one.phrases.includes(word));
  if (item?.event) return item.event;
  if (bare.has(word)) return { type: word as 'next' };
  throw new Error(`"${word}" cannot be said at ${walkFrom(job, at).at}.`);
}

/** Answers everything that is asked for, until nothing is or the start is asked for. */
export function answerAll(job: Job, walk: Walk): Walk {
  let at = walk;
  for (let turns = 0; turns < 30; turns++) {
    const { phase } = positionOf(at.snapshot);
    if (phase === 'start' || phase === 'cutting') return at;
    const asked = saidList(job, at.snapshot).items.find((item) => item.kind === 'fact');
    if (!asked) return at;
    at = said(job, at, asked.phrases[0] ?? '');
  }
  throw new Error(`Still asking after 30 answers at ${at.at}.`);
}
