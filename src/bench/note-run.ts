/** A note in the record: the person's own words, beside the run. Nothing in it moves. Pure. */

import { commandPhrases } from '../flow/index.ts';
import { benchTexts, type Language, sayIn } from '../texts/index.ts';
import { entryOf } from './entry.ts';
import type { Heard, RunEntry } from './ports.ts';
import { restAfter } from './rest-after.ts';
import type { RunState, RunStep } from './run-state.ts';

/** More than this is a letter, not a note. */
const longestNote = 500;

/** The words of "note, the jaws are worn"; nothing for any other sentence. */
export function noteIn(text: string, language: Language): string | undefined {
  return restAfter(text.trim(), commandPhrases(language, 'noteHead'));
}

/** Kept as it was said or typed; an empty one is none. */
export function takeNote(state: RunState, heard: Heard, text: string): RunStep {
  const words = text.trim().slice(0, longestNote);
  if (words === '') return { state, effects: [] };
  const event = { type: 'note', text: words };
  const noted = sayIn(state.job.flow.language, benchTexts)('noted');
  const entry: RunEntry = { ...entryOf(state, heard, event, 'note'), said: noted };
  return {
    state: { ...state, seq: state.seq + 1 },
    effects: [
      { kind: 'append', entry },
      { kind: 'cue', cue: 'heard' },
      ...(heard.from === 'speech' ? [{ kind: 'say', line: noted } as const] : []),
    ],
  };
}

/** "Note" alone: an ear with a list of words cannot take free ones, and says so. */
export function noteHelp({ hearsFreely, job }: RunState): string {
  return sayIn(job.flow.language, benchTexts)(hearsFreely ? 'noteHow' : 'noteType');
}
