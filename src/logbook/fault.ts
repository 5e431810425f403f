/** What can go wrong with the logbook, each with a sentence for the person. */

import { keepingTexts, type Say, sayIn, ToldFault } from '../texts/index.ts';

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

export type SayKeeping = Say<typeof keepingTexts>;

/** A text that waits for the language of whoever reads it. */
export type Told = (say: SayKeeping) => string;

/** Thrown by every promise of the logbook that does not keep its word. */
export class LogbookFault extends ToldFault {
  readonly kind: FaultKind;

  constructor(kind: FaultKind, told: Told, cause?: unknown) {
    super((language) => told(sayIn(language, keepingTexts)), cause);
    this.name = 'LogbookFault';
    this.kind = kind;
  }
}

/** Turns what the browser's store threw into a fault with a sentence; a fault stays as it is. */
export function asFault(error: unknown): LogbookFault {
  if (error instanceof LogbookFault) return error;
  if (nameOf(error) === 'QuotaExceededError') {
    return new LogbookFault('full', (say) => say('full'), error);
  }
  if (nameOf(error) === 'VersionError') {
    return new LogbookFault('taken', (say) => say('newerVersion'), error);
  }
  if (nameOf(error) === 'DataCloneError') {
    return new LogbookFault('unfit', (say) => say('plainData'), error);
  }
  const name = nameOf(error);
  return new LogbookFault('failing', (say) => say('failing', { name }), error);
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
