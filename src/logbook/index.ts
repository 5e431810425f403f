/**
 * The logbook keeps runs, readings, machine cards and settings on this device, each durably before
 * it counts. It never gives back a row it has not parsed, and never sends anything anywhere.
 */

export { type FaultKind, LogbookFault } from './fault.ts';
export type { Keep, Parse } from './keep.ts';
export { askForPermanence, type Logbook, openLogbook } from './logbook.ts';
export type { Exported, Imported, ImportFault } from './move-runs.ts';
export { readingsCsv } from './readings-csv.ts';
export { openOwnership, type TabOwnership } from './tabs.ts';
