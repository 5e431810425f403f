/**
 * Tells a person who breaks into the mouth's line from that line's own sound in the room. Pure: numbers in, a state out.
 * All levels in decibels of full scale, at the loudest of an utterance: over the room they would sink when the machine
 * starts, and a person would then be taken for softer than before.
 */

/** A person who breaks in speaks hardly more softly than else. */
const SOFTER_THAN_ELSE = 5;
/** A person who is so much louder than the lines is known by loudness alone, from half way on. */
const APART = 8;
/** Utterances remembered: enough that a person among them does not pass for the line. */
const LAST_FEW = 7;

export class BreakIn {
  private lines: readonly number[] = [];
  private words: readonly number[] = [];

  /** Call with each utterance that was understood while the mouth was silent: knocks and other talk are no person here. */
  word(level: number): void {
    this.words = [...this.words, level].slice(-LAST_FEW);
  }

  /** Call with each utterance in the mouth's own time that nothing was taken from. */
  line(level: number): void {
    this.lines = [...this.lines, level].slice(-LAST_FEW);
  }

  /** The person is known, and so much louder than the lines that loudness alone tells them apart. */
  get isApart(): boolean {
    const person = median(this.words);
    const line = median(this.lines);
    return person !== undefined && line !== undefined && person - line >= APART;
  }

  /** Whether a word that was found may count. `isDoubted`: one of two opinions did not find it. */
  lets(level: number, isDoubted: boolean): boolean {
    const person = median(this.words);
    if (person === undefined) return !isDoubted;
    if (level < person - SOFTER_THAN_ELSE) return false;
    const line = median(this.lines) ?? person;
    return this.isApart ? level > (person + line) / 2 : !isDoubted;
  }
}

function median(levels: readonly number[]): number | undefined {
  return [...levels].sort((a, b) => a - b)[Math.floor(levels.length / 2)];
}
