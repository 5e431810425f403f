/** `npm run types`: compiles every room with its own tsconfig.json, so each keeps to its own globals. */

import { spawn } from 'node:child_process';
import { readdirSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { repository } from './start-packages.mjs';

const AT_A_TIME = 2;

const waiting = ['tsconfig.json', ...configsUnder('src'), ...configsUnder('tests')].filter(hasCode);
const total = waiting.length;
let failed = 0;

await Promise.all(Array.from({ length: AT_A_TIME }, compileNext));
console.log(failed === 0 ? `${total} compilers agree.` : `${failed} of ${total} compilers object.`);
process.exit(failed === 0 ? 0 : 1);

async function compileNext() {
  for (let config = waiting.shift(); config !== undefined; config = waiting.shift()) {
    const { status, output } = await compile(config);
    if (status !== 0) {
      failed += 1;
      console.error(`${config}\n${output}`);
    }
  }
}

/**
 * @param {string} config
 * @returns {Promise<{ status: number | null, output: string }>}
 */
function compile(config) {
  const tsc = join(repository, 'node_modules/typescript/bin/tsc');
  const child = spawn(process.execPath, [tsc, '-p', config, '--pretty', 'false'], {
    cwd: repository,
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  let output = '';
  for (const stream of [child.stdout, child.stderr]) {
    stream.on('data', (text) => {
      output += text;
    });
  }
  return new Promise((done) => child.on('close', (status) => done({ status, output })));
}

/**
 * @param {string} folder
 * @returns {string[]}
 */
function configsUnder(folder) {
  return readdirSync(join(repository, folder), { recursive: true })
    .map((path) => `${folder}/${String(path).replaceAll('\\', '/')}`)
    .filter((path) => path.endsWith('/tsconfig.json'))
    .sort();
}

/**
 * A room that is still empty has nothing to compile, which the compiler would call an error.
 * @param {string} config
 */
function hasCode(config) {
  const files = readdirSync(join(repository, dirname(config)), {
    recursive: dirname(config) !== '.',
  });
  return files.some((path) => /\.tsx?$/.test(String(path)));
}
