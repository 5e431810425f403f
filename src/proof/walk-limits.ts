/** Why a walk ends before it is done. */

/** Thrown when the walk was stopped from outside. */
export class Cancelled extends Error {}

/** Thrown when it would need more room than it may have; the message is the limit. */
export class TooLarge extends Error {}

/** Thrown when a job cannot even begin: what follows by itself at its first step never comes to rest. */
export class NeverBegins extends Error {}
