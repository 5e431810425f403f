/** How much the page weighs, as built. */

import { needBuild } from '../../src/cli/start-build.mjs';
import { filesIn } from '../../src/offline/build/index.ts';
import { sortFiles } from '../../src/offline/shared/index.ts';
import { firstDownload, packedKilobytes } from '../browser/first-download.ts';
import { dist } from '../browser/site.ts';
import type { Figure } from './figure.ts';

export function pageFigures(): readonly Figure[] {
  needBuild();
  const { atOnce, whenUsed } = sortFiles(filesIn(dist));
  return [
    {
      name: 'page: first download, packed',
      value: packedKilobytes(firstDownload()),
      unit: 'kB',
      target: 150,
    },
    { name: 'page: kept at once for offline work', value: kilobytes(atOnce), unit: 'kB' },
    { name: 'page: kept when used', value: kilobytes(whenUsed), unit: 'kB' },
  ];
}

function kilobytes(files: readonly { readonly bytes: number }[]): number {
  return files.reduce((sum, { bytes }) => sum + bytes, 0) / 1000;
}
