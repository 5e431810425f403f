/**
 * `npm test [-- --only STAGE,STAGE]`: gets what the tests need, runs every stage in order, stops at
 * the first that fails, and closes with the line "N passed, N failed" over all tests run.
 */

import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { endWith, needNode, needPackages, repository, run } from './start-packages.mjs';
import { count } from './test-count.mjs';

/** Stages in order. Each gives its exit code. */
const STAGES = {
  types: () => node('src/cli/types.mjs'),
  lint: () => node('node_modules/@biomejs/biome/bin/biome', 'check', '.'),
  unit: () => vitest('unit'),
  build: async () => {
    const { needBuild } = await import('./start-build.mjs');
    needBuild();
    return 0;
  },
  browser: async () => {
    const { needChromium } = await import('./browser-path.mjs');
    const path = await needChromium().catch((error) => endWith(error.message));
    console.log(`Using ${path}`);
    return vitest('browser*', { CHROMIUM_PATH: path });
  },
};

const tally = { passed: 0, failed: 0 };

needNode();
const chosen = readChoice();
needPackages();
const stopped = await runStages(chosen);
if (stopped !== null) console.error(`\nStopped: the stage "${stopped}" failed; see above.`);
console.log(`\n${tally.passed} passed, ${tally.failed} failed`);
process.exit(stopped === null ? 0 : 1);

/**
 * @param {(keyof typeof STAGES)[]} names
 * @returns {Promise<string | null>} the stage that failed
 */
async function runStages(names) {
  for (const name of names) {
    console.log(`\n== ${name}`);
    const failedBefore = tally.failed;
    if ((await STAGES[name]()) === 0) continue;
    // A stage may fail without one failing test, such as lint; the closing line must not hide it.
    if (tally.failed === failedBefore) tally.failed += 1;
    return name;
  }
  return null;
}

/**
 * Runs the vitest projects of this name, with * for any letters, and adds its tests to the tally.
 * @param {string} project
 * @param {NodeJS.ProcessEnv} [env]
 */
function vitest(project, env = {}) {
  const folder = mkdtempSync(join(tmpdir(), 'followrest-test-'));
  const report = join(folder, 'report.json');
  const status = run(
    process.execPath,
    [
      join(repository, 'node_modules/vitest/vitest.mjs'),
      ...['run', '--project', project, '--reporter=default', '--reporter=json'],
      `--outputFile.json=${report}`,
    ],
    env,
  );
  const { passed, failed } = count(readReport(report));
  tally.passed += passed;
  tally.failed += failed;
  rmSync(folder, { recursive: true });
  return status;
}

/** @param {string} path */
function readReport(path) {
  try {
    return JSON.parse(readFileSync(path, 'utf8'));
  } catch {
    return {};
  }
}

/**
 * @param {string} script
 * @param {...string} args
 */
function node(script, ...args) {
  return run(process.execPath, [join(repository, script), ...args]);
}

/** @returns {(keyof typeof STAGES)[]} the stages to run */
function readChoice() {
  const known = /** @type {(keyof typeof STAGES)[]} */ (Object.keys(STAGES));
  try {
    const { values } = parseArgs({ options: { only: { type: 'string' } } });
    const wanted = values.only?.split(',') ?? known;
    const unknown = wanted.find((name) => !known.some((stage) => stage === name));
    if (unknown !== undefined)
      endWith(`There is no stage "${unknown}". It has: ${known.join(', ')}.`);
    return known.filter((name) => wanted.includes(name));
  } catch (error) {
    return endWith(`${error instanceof Error ? error.message : error} Known: --only STAGE,STAGE.`);
  }
}
