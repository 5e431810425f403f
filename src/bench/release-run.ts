/** An instructor's release, taken into a run or refused. No word leads here, and the seal was checked before. Pure. */

import { accepts, positionOf, stepJob } from '../flow/index.ts';
import { benchTexts, sayIn } from '../texts/index.ts';
import { entryOf } from './entry.ts';
import type { Heard, Release, RunEntry } from './ports.ts';
import type { Effect, RunState, RunStep } from './run-state.ts';
import { tell } from './tell.ts';

/** A release older than this was made for another moment. */
const freshMs = 60_000;

/** Why a genuine release does not count here; nothing when it does. */
export function staleRelease(state: RunState, release: Release, now: number): string | undefined {
  const say = sayIn(state.job.flow.language, benchTexts);
  if (release.runId !== state.head.id) return say('releaseOtherRun');
  if (release.step !== positionOf(state.snapshot).step) return say('releaseOtherStep');
  if (release.at > now || now - release.at > freshMs) return say('releaseOld');
  return accepts(state.snapshot, { type: 'release' }) ? undefined : say('releaseNotAsked');
}

/** The step is released: kept with the instructor's name and time, and never taken back by "wrong". */
export function takeRelease(state: RunState, release: Release): RunStep {
  const snapshot = stepJob(state.job, state.snapshot, { type: 'release' });
  const said = sayIn(state.job.flow.language, benchTexts)('releasedBy', { name: release.byName });
  const { explained, question, ...told } = tell(state, snapshot);
  const line = `${said} ${told.line}`;
  const event = { type: 'release', ...release };
  const entry: RunEntry = {
    ...entryOf(state, heardOf(said, release.at), event, 'moved'),
    said: line,
  };
  const learnt = { explained, question };
  const next = { ...state, ...learnt, snapshot, seq: state.seq + 1, undo: null, lastLine: line };
  const cue: Effect = { kind: 'cue', cue: 'heard' };
  return {
    state: next,
    effects: [{ kind: 'append', entry }, cue, { kind: 'say', line, urgent: true }],
  };
}

/** A try that failed is on record with the instructor's name, never with what was typed. */
export function refuseRelease(state: RunState, byName: string, why: string, at: number): RunStep {
  const said = sayIn(state.job.flow.language, benchTexts)('releaseBy', { name: byName });
  const heard = heardOf(said, at);
  const entry: RunEntry = { ...entryOf(state, heard, null, 'refused'), said: why };
  return {
    state: { ...state, seq: state.seq + 1 },
    effects: [
      { kind: 'append', entry },
      { kind: 'say', line: why, urgent: true },
    ],
  };
}

/** The release in an entry, whoever wrote it: its seal tells whether this device did. */
export function releaseIn({ event, at, runId, outcome }: RunEntry): Release | undefined {
  if (event?.type !== 'release' || outcome !== 'moved') return undefined;
  const word = (name: string) => (typeof event[name] === 'string' ? event[name] : '');
  const said = { step: word('step'), by: word('by'), byName: word('byName'), seal: word('seal') };
  return { runId, at, ...said };
}

function heardOf(text: string, at: number): Heard {
  return { text, alternatives: [], confidence: 1, from: 'touch', at };
}
