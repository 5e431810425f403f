/**
 * The logbook keeps runs, readings, machine cards and settings on this device, each durably before
 * it counts. It never gives back a row it has not parsed, and never sends anything anywhere.
 */

export type { Exported } from './export-file.ts';
export { type FaultKind, LogbookFault } from './fault.ts';
export { type ImportFault, type LogbookFile, logbookFileShape } from './file-shape.ts';
export type { Imported, JudgeKept } from './import-file.ts';
export type { Keep, Parse } from './keep.ts';
export { askForPermanence, type Logbook, openLogbook } from './logbook.ts';
export { SHORTEST_PASSPHRASE } from './passphrase.ts';
export { PHOTO_MOST_BYTES } from './photo-shape.ts';
export { PHOTOS_A_RUN, type Photo, type Photos } from './photos.ts';
export { readingsCsv } from './readings-csv.ts';
export type { Secrets } from './secrets.ts';
export { openOwnership, type TabOwnership } from './tabs.ts';
