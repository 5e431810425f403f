/** The byte budget of the first download, measured on the built page. */

import { expect, it } from 'vitest';
import { firstDownload, packedKilobytes } from './first-download.ts';

const BUDGET_KB = 150;

it(`keeps the first download to ${BUDGET_KB} kB, packed`, () => {
  const files = [...firstDownload()];
  const total = packedKilobytes(files);
  console.log(`First download: ${total.toFixed(1)} kB packed, in ${files.length} files.`);
  expect(files.some((path) => path.endsWith('.js'))).toBe(true);
  expect(total).toBeLessThanOrEqual(BUDGET_KB);
});
