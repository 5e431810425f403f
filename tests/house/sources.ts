/** Reads the project's own source files. */

import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { Sources } from './judge-imports.ts';

const repository = fileURLToPath(new URL('../../', import.meta.url));

/** All program files under a folder of the repository, by their path in it. */
export function sourcesIn(folder: 'src' | 'tests'): Sources {
  const paths = readdirSync(`${repository}${folder}`, { recursive: true })
    .map((path) => String(path).replaceAll('\\', '/'))
    .filter((path) => /\.(ts|tsx|mjs)$/.test(path))
    .sort();
  return Object.fromEntries(
    paths.map((path) => [path, readFileSync(`${repository}${folder}/${path}`, 'utf8')]),
  );
}
