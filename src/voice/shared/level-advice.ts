/** What to tell the person about the sound that arrives. Pure. */

/** Names of sentences about the level, in `hearingTexts`. */
export type LevelAdvice = 'switchedOff' | 'loudRoom' | 'closer' | 'tooStrong';

/** `room` in decibels of full scale; `overRoom` how far speech stood above it, null when none was heard yet. */
export function advise(room: number, overRoom: number | null): LevelAdvice | undefined {
  if (room < -85) return 'switchedOff';
  if (overRoom === null) {
    return room > -35 ? 'loudRoom' : undefined;
  }
  if (overRoom < 12) return 'closer';
  return room + overRoom > -3 ? 'tooStrong' : undefined;
}
