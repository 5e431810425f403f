/** `npm start [-- --port N] [-- --host H]`: installs, builds and serves the page, and prints its address. */

import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { endWith, needNode, needPackages, repository } from './start-packages.mjs';

needNode();
const wish = readWish();
needPackages();
// Loaded only now: an old Node must get as far as the sentence above.
const { needBuild } = await import('./start-build.mjs');
const { serve } = await import('./serve.mjs');
needBuild();

const page = await serve({ folder: join(repository, 'dist'), ...wish }).catch((error) =>
  endWith(error.message),
);
console.log(`Followrest is at ${page.address} (Ctrl+C ends it)`);
if (!['127.0.0.1', 'localhost', '::1'].includes(wish.host)) {
  console.log('Browsers give the microphone only to localhost or https; elsewhere use the keys.');
}
for (const signal of ['SIGINT', 'SIGTERM']) {
  process.once(signal, () => page.close().then(() => process.exit(0)));
}

/** Reads the command line; a mistake ends the program with a sentence. */
function readWish() {
  try {
    const { values } = parseArgs({
      options: { port: { type: 'string' }, host: { type: 'string', default: '127.0.0.1' } },
    });
    const port = Number(values.port ?? 4173);
    if (!Number.isInteger(port) || port < 0 || port > 65_535) {
      endWith(`--port takes a whole number from 0 to 65535, not "${values.port}".`);
    }
    return { host: values.host, port, otherPorts: values.port === undefined };
  } catch (error) {
    return endWith(`${error instanceof Error ? error.message : error} Known: --port N, --host H.`);
  }
}
