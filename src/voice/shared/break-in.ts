/**
 * Tells a person who breaks into the mouth's line from that line's own sound in the room. Pure: numbers in, a state out.
 * All levels in decibels over the room, at the loudest of an utterance.
 */

/** A person who breaks in speaks hardly more softly than else. */
const SOFTER_THAN_ELSE = 9;
/** What stands so far over the line's own sound is not the line. */
const OVER_LINE = 5;
/** Utterances remembered: enough that a person among them does not pass for the line. */
const LAST_FEW = 7;

export class BreakIn {
  private lines: readonly number[] = [];

  /** Call with each utterance in the mouth's own time that nothing was taken from. */
  line(overRoom: number): void {
    this.lines = [...this.lines, overRoom].slice(-LAST_FEW);
  }

  /**
   * Whether a word that was found may count. `person`: how loudly the person spoke before, null before the first word
   * was understood; `isDoubted`: one of two opinions did not find it.
   */
  lets(overRoom: number, person: number | null, isDoubted: boolean): boolean {
    if (person !== null && overRoom < person - SOFTER_THAN_ELSE) return false;
    return !isDoubted || (person !== null && overRoom > this.usual + OVER_LINE);
  }

  /** Median of the lines; before the first, nothing is told apart by loudness. */
  private get usual(): number {
    const sorted = [...this.lines].sort((a, b) => a - b);
    return sorted[Math.floor(sorted.length / 2)] ?? Number.POSITIVE_INFINITY;
  }
}
