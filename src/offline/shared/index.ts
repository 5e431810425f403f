/**
 * Names the files that are kept for work without a network. It never fetches or stores one.
 */

export {
  allFiles,
  fileAt,
  HASH_DIGITS,
  HEAVY_BYTES,
  type KeptFile,
  type KeptFiles,
  keyOf,
  sortFiles,
  staleKeys,
} from './kept-files.ts';
