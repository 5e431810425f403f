/** Why a walk ends before it is done. */

/** Thrown when the walk was stopped from outside. */
export class Cancelled extends Error {}

/** Thrown when it would need more room than it may have; the message is the limit. */
export class TooLarge extends Error {}
