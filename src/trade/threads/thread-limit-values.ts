/** The limits of one thread in mm. What a standard leaves open is not there. */

export interface ThreadLimits {
  readonly className: '6g' | '6H' | '2A' | '2B';
  readonly pitchMin: number;
  readonly pitchMax: number;
  readonly majorMin: number;
  /** Nut threads have none: the tap may cut deeper. */
  readonly majorMax?: number;
  readonly minorMax: number;
  /** Not stated for Unified screws. */
  readonly minorMin?: number;
}
