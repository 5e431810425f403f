/** A note in the record: the person's own words, beside the run. Nothing in it moves. Pure. */

import { entryOf } from './entry.ts';
import type { Heard, RunEntry } from './ports.ts';
import type { RunState, RunStep } from './run-state.ts';

/** More than this is a letter, not a note. */
export const longestNote = 500;

const noteWord = /^(?:take a )?note[,:]?\s+(\S.*)$/i;

/** The words of "note, the jaws are worn"; nothing for any other sentence. */
export function noteIn(text: string): string | undefined {
  return noteWord.exec(text.trim())?.[1];
}

/** Kept as it was said or typed; an empty one is none. */
export function takeNote(state: RunState, heard: Heard, text: string): RunStep {
  const words = text.trim().slice(0, longestNote);
  if (words === '') return { state, effects: [] };
  const event = { type: 'note', text: words };
  const entry: RunEntry = { ...entryOf(state, heard, event, 'note'), said: 'Noted.' };
  return {
    state: { ...state, seq: state.seq + 1 },
    effects: [
      { kind: 'append', entry },
      { kind: 'cue', cue: 'heard' },
      ...(heard.from === 'speech' ? [{ kind: 'say', line: 'Noted.' } as const] : []),
    ],
  };
}

/** "Note" alone: an ear with a list of words cannot take free ones, and says so. */
export function noteHelp({ hearsFreely }: RunState): string {
  return hearsFreely
    ? 'Say note, and then its words.'
    : 'This ear hears only the words of its list. Type the note.';
}
