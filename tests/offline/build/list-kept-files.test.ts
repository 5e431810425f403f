import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { filesIn } from '../../../src/offline/build/index.ts';

// SHA-256 of "abc", first 32 digits: FIPS 180-2, appendix B.1.
it('finds files in folders, with size and hash', () => {
  const folder = mkdtempSync(join(tmpdir(), 'followrest-list-'));
  mkdirSync(join(folder, 'assets'));
  writeFileSync(join(folder, 'assets', 'a.txt'), 'abc');
  expect(filesIn(folder)).toEqual([
    { path: 'assets/a.txt', bytes: 3, hash: 'ba7816bf8f01cfea414140de5dae2223' },
  ]);
  rmSync(folder, { recursive: true });
});
