/** A Vite plugin that writes the list of built files into the service worker. */

import { createHash } from 'node:crypto';
import { readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import type { Plugin } from 'vite';
import { HASH_DIGITS, type KeptFile, sortFiles } from '../shared/kept-files.ts';

const WORKER = 'sw.js';

/** Runs after everything is written, so that copied files are on the list like built ones. */
export function listKeptFiles(): Plugin {
  let folder = '';
  return {
    name: 'followrest-kept-files',
    apply: 'build',
    configResolved({ root, build }) {
      folder = resolve(root, build.outDir);
    },
    writeBundle(_options, bundle) {
      const worker = bundle[WORKER];
      if (worker?.type !== 'chunk') this.error(`The build has no ${WORKER}.`);
      // Older browsers run service workers as plain scripts, which cannot import.
      if (worker.imports.length > 0 || worker.dynamicImports.length > 0) {
        this.error(`${WORKER} must stand alone, but imports ${worker.imports.join(', ')}.`);
      }
      const list = JSON.stringify(sortFiles(filesIn(folder)));
      writeFileSync(join(folder, WORKER), `self.keptFiles = ${list};\n${worker.code}`);
    },
  };
}

/** Every file under a folder, with its hash. */
export function filesIn(folder: string): readonly KeptFile[] {
  return readdirSync(folder, { recursive: true })
    .map((path) => String(path).replaceAll('\\', '/'))
    .filter((path) => statSync(join(folder, path)).isFile())
    .map((path) => {
      const content = readFileSync(join(folder, path));
      const hash = createHash('sha256').update(content).digest('hex').slice(0, HASH_DIGITS);
      return { path, hash, bytes: content.length };
    });
}
