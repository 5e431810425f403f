/** The list of files that the page keeps for work without a network, and how each is named. */

export interface KeptFile {
  /** From the page's folder, with "/" between parts: "assets/main-1a2b.js". */
  readonly path: string;
  /** The first 32 hexadecimal digits of its SHA-256. */
  readonly hash: string;
  readonly bytes: number;
}

export interface KeptFiles {
  /** Kept before the page counts as ready to work without a network. */
  readonly atOnce: readonly KeptFile[];
  /** Heavy files, kept when they are first used. */
  readonly whenUsed: readonly KeptFile[];
}

export const HASH_DIGITS = 32;
/** Larger files wait until they are used: recognisers, voices, dictionaries. */
export const HEAVY_BYTES = 512 * 1024;

/** Sorts what was built. The service worker itself and hidden files are never kept. */
export function sortFiles(files: readonly KeptFile[]): KeptFiles {
  const kept = files
    .filter(({ path }) => path !== 'sw.js' && !/(^|\/)\./.test(path))
    .sort((one, other) => (one.path < other.path ? -1 : 1));
  return {
    atOnce: kept.filter(({ bytes }) => bytes <= HEAVY_BYTES),
    whenUsed: kept.filter(({ bytes }) => bytes > HEAVY_BYTES),
  };
}

export function allFiles({ atOnce, whenUsed }: KeptFiles): readonly KeptFile[] {
  return [...atOnce, ...whenUsed];
}

/** The file that an address asks for; the bare folder asks for index.html. */
export function fileAt(kept: KeptFiles, path: string): KeptFile | null {
  const wanted = path === '' ? 'index.html' : path;
  return allFiles(kept).find((file) => file.path === wanted) ?? null;
}

/** Where a file stands in the cache. The hash is in it, so two versions can stand side by side. */
export function keyOf({ path, hash }: KeptFile): string {
  return `${path}?kept=${hash}`;
}

/** The keys in the cache that this list does not have. */
export function staleKeys(kept: KeptFiles, keys: readonly string[]): readonly string[] {
  const current = new Set(allFiles(kept).map(keyOf));
  return keys.filter((key) => !current.has(key));
}
