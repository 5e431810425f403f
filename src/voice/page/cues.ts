/** Plays our cue sounds through Web Audio. */
import type { Clock } from '../../bench/ports.ts';
import { CUE_NOTES, type Cue, cueLength, type Note } from '../shared/cue-notes.ts';
import { pause } from './within.ts';

export interface Cues {
  /** Resolves when the sound is over; at once when no sound can be made. Never rejects. */
  play(cue: Cue): Promise<void>;
}

const LOUDNESS = 0.25;
const FADE_S = 0.005;

/** The audio is asked for at each cue: it exists only after the first tap. */
export function audioCues(audio: () => AudioContext | null, clock: Clock): Cues {
  return {
    async play(cue) {
      const context = audio();
      if (context?.state !== 'running') return;
      for (const note of CUE_NOTES[cue]) playNote(context, note);
      await pause(clock, cueLength(cue));
    },
  };
}

function playNote(context: AudioContext, note: Note): void {
  const start = context.currentTime + note.at / 1000;
  const end = start + note.ms / 1000;
  const tone = new OscillatorNode(context, {
    frequency: note.hertz,
    type: note.timbre === 'soft' ? 'triangle' : 'square',
  });
  const loudness = new GainNode(context, { gain: 0 });
  loudness.gain.setValueAtTime(0, start);
  loudness.gain.linearRampToValueAtTime(LOUDNESS, start + FADE_S);
  loudness.gain.setValueAtTime(LOUDNESS, end - FADE_S);
  loudness.gain.linearRampToValueAtTime(0, end);
  tone.connect(loudness).connect(context.destination);
  tone.start(start);
  tone.stop(end);
}
