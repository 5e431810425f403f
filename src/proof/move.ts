/** What one small step does, told without the names of steps. */

export interface Move {
  /**
   * Refused, or where it leads: a slot of the frame, and the spot inside that step. Or it stays where it is: after an event
   * more may follow, and where nothing follows it comes to rest.
   */
  readonly to: Target | 'here' | 'rests' | null;
  /** Variables that are set, by the frame's names. */
  readonly writes: readonly (readonly [name: string, held: string | number | null])[];
  /** The claim that the move itself breaks. */
  readonly broken: string | null;
}

export interface Target extends SpotName {
  readonly slot: number;
}

/** A spot of a step: a state of its chart, with where a hold goes on. */
export interface SpotName {
  /** The state inside the step, as JSON; empty at the end of the job. */
  readonly inner: string;
  readonly held: string | null;
  /** False where more may follow by itself: just after an event, before the chart has looked. */
  readonly rests: boolean;
}

export const refused: Move = { to: null, writes: [], broken: null };

/** True for what changes nothing and breaks nothing. */
export const isDull = (move: Move): boolean => move.to === null && move.broken === null;

export function insideOf({ inner, held, rests }: SpotName): string {
  return `${rests ? '' : '~'}${inner} ${held ?? ''}`;
}

/** Where a move leads from a spot; what stays has still to see whether anything follows by itself. */
export function targetFrom({ inner, held }: SpotName, { to }: Move): Target | null {
  return to === 'here' || to === 'rests' ? { slot: 0, inner, held, rests: to === 'rests' } : to;
}
