/** The first download: what the browser must have before the Bench can be used. */

import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { parseAst } from 'vite';
import { expect, it } from 'vitest';
import { nodesIn } from '../house/imports.ts';
import { dist } from './site.ts';

const BUDGET_KB = 150;

/** index.html, the files it names, and what those import at once. Parts loaded later do not count. */
function firstDownload(): ReadonlySet<string> {
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

it(`is at most ${BUDGET_KB} kB, packed`, () => {
  const files = [...firstDownload()];
  const sizes = files.map((path) => gzipSync(readFileSync(join(dist, path)), { level: 9 }).length);
  const total = sizes.reduce((sum, size) => sum + size, 0) / 1000;
  console.log(`First download: ${total.toFixed(1)} kB packed, in ${files.length} files.`);
  expect(files.some((path) => path.endsWith('.js'))).toBe(true);
  expect(total).toBeLessThanOrEqual(BUDGET_KB);
});
