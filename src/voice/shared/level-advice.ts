/** What to tell the person about the sound that arrives. Pure. */

/** `room` in decibels of full scale; `overRoom` how far speech stood above it, null when none was heard yet. */
export function advise(room: number, overRoom: number | null): string | undefined {
  if (room < -85) return 'No sound arrives at all. Is the microphone switched off?';
  if (overRoom === null) {
    return room > -35 ? 'The room is loud. Use a headset, close to the mouth.' : undefined;
  }
  if (overRoom < 12) return 'Your voice hardly stands out. Move the microphone closer.';
  return room + overRoom > -3
    ? 'The sound is too strong. Move the microphone away a little.'
    : undefined;
}
