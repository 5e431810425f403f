/** What can go wrong with the logbook, each with a sentence for the person. */

export type FaultKind =
  /** The device has no room left. */
  | 'full'
  /** A kept row is not what we write. */
  | 'damaged'
  /** What came to be written is not what a row holds. */
  | 'unfit'
  /** Another tab got there first, or has the logbook open in an older version. */
  | 'taken'
  /** The browser has no store, forbids it, or lost it. */
  | 'failing';

/** Thrown by every promise of the logbook that does not keep its word. */
export class LogbookFault extends Error {
  readonly kind: FaultKind;

  constructor(kind: FaultKind, sentence: string, cause?: unknown) {
    super(sentence, cause === undefined ? {} : { cause });
    this.name = 'LogbookFault';
    this.kind = kind;
  }
}

/** Turns what the browser's store threw into a fault with a sentence; a fault stays as it is. */
export function asFault(error: unknown): LogbookFault {
  if (error instanceof LogbookFault) return error;
  if (nameOf(error) === 'QuotaExceededError') {
    return new LogbookFault(
      'full',
      'This device has no room left for the logbook. Export the runs to a file, free some space, and answer again: the last word was not kept.',
      error,
    );
  }
  if (nameOf(error) === 'VersionError') {
    return new LogbookFault(
      'taken',
      'The logbook was opened by a newer version. Reload this page.',
      error,
    );
  }
  if (nameOf(error) === 'DataCloneError') {
    return new LogbookFault('unfit', 'Only plain data can be kept, no functions.', error);
  }
  return new LogbookFault(
    'failing',
    `The logbook could not be read or written (${nameOf(error)}). Reload the page; if it stays, leave private browsing or allow site data.`,
    error,
  );
}

/** True for the errors by which a browser says that it dropped the connection under us. */
export function isLostConnection(error: unknown): boolean {
  if (!(error instanceof Error)) return false;
  // Safari: "Connection to Indexed Database server lost", "The database connection is closing".
  return error.name === 'InvalidStateError' || /connection .*(lost|clos)/i.test(error.message);
}

function nameOf(error: unknown): string {
  return error instanceof Error ? error.name : String(error);
}
