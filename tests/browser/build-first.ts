/** Builds the page once before the browser tests, when it is not built from these very files. */

import { needBuild } from '../../src/cli/start-build.mjs';

export default function setup(): void {
  needBuild();
}
