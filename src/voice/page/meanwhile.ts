/** What an ear of the page knows of the line it is shut for. Pure. */
import type { Meanwhile } from '../../bench/ports.ts';

/** Shut, and nothing breaks in. */
export const NOTHING: Meanwhile = { line: '', still: [] };

export function isSame(a: Meanwhile, b: Meanwhile): boolean {
  return a.line === b.line && a.still.join() === b.still.join();
}
