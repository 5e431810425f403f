/** Builds the page into dist/ when what it is made of has changed. */

import { createHash } from 'node:crypto';
import { existsSync, readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { endWith, repository, run } from './start-packages.mjs';

/** What the page is made of. */
const SOURCES = ['src', 'flows', 'vite.config.ts', 'tsconfig.json', 'package-lock.json'];
/** Holds the hash of what dist/ was built from; a hash, because file dates change on checkout. */
const NOTE = join(repository, 'dist', '.built-from');

/** Builds with Vite unless dist/ is already the build of these very files. Ends the program on failure. */
export function needBuild() {
  const hash = hashOfSources();
  if (existsSync(NOTE) && readFileSync(NOTE, 'utf8') === hash) return;
  console.error('Building the page ...');
  const vite = join(repository, 'node_modules/vite/bin/vite.js');
  // Its hints are for whoever works on the build (`npm run build` tells them), and fill the screen of whoever starts.
  const status = run(process.execPath, [vite, 'build', '--logLevel', 'error']);
  if (status !== 0) endWith('The build failed; the message of Vite is above.');
  writeFileSync(NOTE, hash);
}

function hashOfSources() {
  const hash = createHash('sha256');
  for (const path of SOURCES.flatMap(filesUnder)) {
    hash
      .update(`${path}\0`)
      .update(readFileSync(join(repository, path)))
      .update('\0');
  }
  return hash.digest('hex');
}

/**
 * All files under a path of the repository, in a fixed order.
 * @param {string} path
 * @returns {string[]}
 */
function filesUnder(path) {
  const whole = join(repository, path);
  if (!existsSync(whole)) return [];
  if (statSync(whole).isFile()) return [path];
  return readdirSync(whole)
    .sort()
    .flatMap((name) => filesUnder(`${path}/${name}`));
}
