/** The files of the first download: what the browser must have before the Bench can be used. */

import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { parseAst } from 'vite';
import { nodesIn } from '../house/imports.ts';
import { dist } from './site.ts';

/** index.html, the files it names, and what those import at once. Parts loaded later do not count. */
export function firstDownload(): ReadonlySet<string> {
  const html = readFileSync(join(dist, 'index.html'), 'utf8');
  const named = [...html.matchAll(/(?:src|href)="\.\/([^"]+\.(?:js|css))"/g)];
  const files = new Set(['index.html', ...named.map(([, path = '']) => path)]);
  for (const path of files) {
    if (!path.endsWith('.js')) continue;
    for (const other of importedAtOnce(path)) files.add(other);
  }
  return files;
}

function importedAtOnce(path: string): readonly string[] {
  return nodesIn(parseAst(readFileSync(join(dist, path), 'utf8')))
    .filter(({ type }) => /^(Import|ExportAll|ExportNamed)Declaration$/.test(type))
    .map(({ source }) => Reflect.get(Object(source), 'value'))
    .filter((from) => typeof from === 'string')
    .map((from) => join(path, '..', from));
}

/** Thousands of bytes of these files, each packed with gzip. */
export function packedKilobytes(paths: Iterable<string>): number {
  const sizes = [...paths].map(
    (path) => gzipSync(readFileSync(join(dist, path)), { level: 9 }).length,
  );
  return sizes.reduce((sum, size) => sum + size, 0) / 1000;
}
