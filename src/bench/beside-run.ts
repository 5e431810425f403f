/** What is said beside the run: nothing in it moves, and the answer is on record. Pure. */

import { entryOf } from './entry.ts';
import type { Heard, RunEntry } from './ports.ts';
import type { Effect, RunState, RunStep } from './run-state.ts';
import { stepTalk, type TalkEvent } from './talk-chart.ts';

export function asked(state: RunState, heard: Heard, line: string, event?: RunEntry['event']) {
  return told(state, heard, line, 'asked', event);
}

export function refused(state: RunState, heard: Heard, line: string): RunStep {
  return told(state, heard, line, 'refused');
}

/** `event` is for the record only: a replay does not step the chart by it. */
function told(
  state: RunState,
  heard: Heard,
  line: string,
  outcome: 'refused' | 'asked',
  event: RunEntry['event'] = null,
): RunStep {
  const entry = { ...entryOf(state, heard, event, outcome), said: line };
  return {
    state: { ...state, seq: state.seq + 1 },
    effects: [{ kind: 'append', entry }, ...speak(line)],
  };
}

export function speak(line: string): readonly Effect[] {
  return [{ kind: 'say', line, urgent: true }];
}

export function talked(state: RunState, event: TalkEvent): RunState {
  return { ...state, talk: stepTalk(state.talk, event) };
}
