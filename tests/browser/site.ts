/** Serves the built page, or a copy of it that a test may change. */

import { cpSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { serve } from '../../src/cli/serve.mjs';

export const dist = fileURLToPath(new URL('../../dist/', import.meta.url));

/** Serves dist/ on a free port. Give the same port again to come back at the same address. */
export function serveDist(port = 0) {
  return serve({ folder: dist, port });
}

/** A copy of dist/ in a folder of its own, with what takes it away. */
export function copyOfDist() {
  const outer = mkdtempSync(join(tmpdir(), 'followrest-site-'));
  const folder = join(outer, 'dist');
  cpSync(dist, folder, { recursive: true });
  return { folder, remove: () => rmSync(outer, { recursive: true }) };
}
