/** Gets ready what every command needs: a Node new enough, and the npm packages of the lock file. */

import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

/** The repository's folder, ending in a slash. */
export const repository = fileURLToPath(new URL('../../', import.meta.url));

/** @param {string} path from the repository's folder */
const readJson = (path) => JSON.parse(readFileSync(repository + path, 'utf8'));

/** Ends the program with one sentence when this Node is older than package.json asks for. */
export function needNode() {
  const wanted = String(readJson('package.json').engines.node).replace(/[^\d.]/g, '');
  if (!isOlder(process.versions.node, wanted)) return;
  endWith(`Followrest needs Node ${wanted} or newer; this is Node ${process.versions.node}.`);
}

/**
 * Compares two dotted versions by their first two numbers.
 * @param {string} version
 * @param {string} wanted
 */
export function isOlder(version, wanted) {
  const [major = 0, minor = 0] = version.split('.').map(Number);
  const [wantedMajor = 0, wantedMinor = 0] = wanted.split('.').map(Number);
  return major < wantedMajor || (major === wantedMajor && minor < wantedMinor);
}

/** Runs `npm ci` when the installed packages are not those of the lock file. */
export function needPackages() {
  if (packagesAreInstalled()) return;
  console.error('Installing the npm packages of the lock file ...');
  // Development packages are part of building; a production setting must not leave them out.
  const status = npm(['ci', '--include=dev', '--no-audit', '--no-fund', '--loglevel=error']);
  if (status !== 0) endWith('`npm ci` failed; its message is above. Is there a network?');
}

/**
 * Compares what npm noted as installed with the lock file, rather than file dates, which change on
 * checkout. Packages for other systems are optional and may be missing.
 */
function packagesAreInstalled() {
  const note = 'node_modules/.package-lock.json';
  if (!existsSync(repository + note)) return false;
  const installed = readJson(note).packages;
  return Object.entries(readJson('package-lock.json').packages).every(
    ([path, wanted]) =>
      path === '' ||
      installed[path]?.version === wanted.version ||
      (wanted.optional === true && installed[path] === undefined),
  );
}

/**
 * Runs npm: the one that started us when there is one, else the one on the path.
 * @param {string[]} args
 */
function npm(args) {
  const own = process.env.npm_execpath;
  const [command, first] = own?.endsWith('npm-cli.js')
    ? [process.execPath, [own]]
    : [process.platform === 'win32' ? 'npm.cmd' : 'npm', []];
  return run(command, [...first, ...args]);
}

/**
 * Runs a program to its end with our output and no input, and gives its exit code.
 * @param {string} command
 * @param {string[]} args
 * @param {NodeJS.ProcessEnv} [env] added to ours
 */
export function run(command, args, env = {}) {
  const done = spawnSync(command, args, {
    cwd: repository,
    stdio: ['ignore', 'inherit', 'inherit'],
    env: { ...process.env, ...env },
  });
  return done.status ?? 1;
}

/**
 * Ends the program unsuccessfully with one sentence.
 * @param {string} sentence
 * @returns {never}
 */
export function endWith(sentence) {
  console.error(sentence);
  process.exit(1);
}
