import { describe, expect, it } from 'vitest';
import {
  fileAt,
  HEAVY_BYTES,
  type KeptFile,
  keyOf,
  sortFiles,
  staleKeys,
} from '../../../src/offline/shared/index.ts';

const file = (path: string, bytes = 100, hash = 'a1'): KeptFile => ({ path, bytes, hash });

const kept = sortFiles([
  file('sw.js'),
  file('.built-from'),
  file('assets/.hidden'),
  file('models/ear.wasm', HEAVY_BYTES + 1),
  file('index.html'),
  file('assets/main-1a2b.js', HEAVY_BYTES),
]);

describe('the list of kept files', () => {
  it('has light files at once, heavy ones when used, and neither the worker nor hidden files', () => {
    expect(kept.atOnce.map(({ path }) => path)).toEqual(['assets/main-1a2b.js', 'index.html']);
    expect(kept.whenUsed.map(({ path }) => path)).toEqual(['models/ear.wasm']);
  });

  it('is the same whatever the order in which files were found', () => {
    const files = [file('b'), file('a'), file('c')];
    expect(sortFiles(files)).toEqual(sortFiles(files.toReversed()));
  });

  it('finds files by path, and index.html for the bare folder', () => {
    expect(fileAt(kept, '')?.path).toBe('index.html');
    expect(fileAt(kept, 'models/ear.wasm')?.path).toBe('models/ear.wasm');
    expect(fileAt(kept, 'assets')).toBeNull();
    expect(fileAt(kept, 'sw.js')).toBeNull();
  });

  it('knows the keys that another version left behind', () => {
    const current = file('index.html');
    const older = keyOf(file('index.html', 100, 'b2'));
    const keys = [keyOf(current), older, 'something-else'];
    expect(staleKeys(kept, keys)).toEqual([older, 'something-else']);
  });
});
