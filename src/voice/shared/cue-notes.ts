/** Our cue sounds, as notes. Told apart by rhythm and timbre first, since pitch alone is not. Pure. */

export interface Note {
  /** Milliseconds from the start of the cue. */
  readonly at: number;
  readonly ms: number;
  readonly hertz: number;
  readonly timbre: 'soft' | 'buzz';
}

export type Cue = 'heard' | 'unclear' | 'stop';

/** All end before 150 ms, so that they never cover the first sound of an answer. */
export const CUE_NOTES: Readonly<Record<Cue, readonly Note[]>> = {
  heard: [
    { at: 0, ms: 50, hertz: 660, timbre: 'soft' },
    { at: 60, ms: 80, hertz: 990, timbre: 'soft' },
  ],
  unclear: [
    { at: 0, ms: 60, hertz: 220, timbre: 'buzz' },
    { at: 80, ms: 65, hertz: 196, timbre: 'buzz' },
  ],
  stop: [
    { at: 0, ms: 30, hertz: 880, timbre: 'buzz' },
    { at: 50, ms: 30, hertz: 880, timbre: 'buzz' },
    { at: 100, ms: 40, hertz: 880, timbre: 'buzz' },
  ],
};

/** Milliseconds from the start of the cue to the end of its last note. */
export function cueLength(cue: Cue): number {
  return Math.max(...CUE_NOTES[cue].map((note) => note.at + note.ms));
}
