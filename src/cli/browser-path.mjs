/** Finds a Chromium for the browser tests, or gets one. */

import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { repository, run } from './start-packages.mjs';

const NAMES = ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable', 'chrome'];
const PLACES = [
  '/usr/lib/chromium/chromium',
  '/opt/google/chrome/chrome',
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  'C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe',
];
const NONE_WORKS =
  'No Chromium was found and none could be installed. Install Chromium or Chrome, or set CHROMIUM_PATH to its program.';

/**
 * The path of a Chromium that runs here: CHROMIUM_PATH, else an installed one, else that of
 * playwright-core. Installs nothing.
 * @returns {Promise<string | null>}
 */
export async function findChromium() {
  const chosen = process.env.CHROMIUM_PATH;
  if (chosen) return runs(chosen) ? chosen : null;
  const folders = (process.env.PATH ?? '').split(delimiter).filter((folder) => folder !== '');
  const onPath = NAMES.flatMap((name) => folders.map((folder) => join(folder, name)));
  return [...onPath, ...PLACES, await pathOfPlaywright()].find(runs) ?? null;
}

/**
 * A Chromium that runs here, installed when there is none: Debian's package when we may, else the
 * download of playwright-core.
 * @returns {Promise<string>} rejects with a sentence when none works
 */
export async function needChromium() {
  const chosen = process.env.CHROMIUM_PATH;
  const found = await findChromium();
  if (found !== null) return found;
  if (chosen) throw new Error(`CHROMIUM_PATH names "${chosen}", which does not run.`);
  installFromDebian();
  const fromDebian = await findChromium();
  if (fromDebian !== null) return fromDebian;
  downloadWithPlaywright();
  const downloaded = await findChromium();
  if (downloaded === null) throw new Error(NONE_WORKS);
  return downloaded;
}

/**
 * Asked for its version rather than only looked at: on some systems the name is a stub that tells
 * where to get the real one.
 * @param {string} path
 */
function runs(path) {
  if (!existsSync(path)) return false;
  const asked = spawnSync(path, ['--version'], { stdio: 'pipe', timeout: 30_000 });
  return asked.status === 0 && /chrom/i.test(String(asked.stdout));
}

async function pathOfPlaywright() {
  const { chromium } = await import('playwright-core');
  return chromium.executablePath();
}

function mayInstallPackages() {
  return process.getuid?.() === 0 && existsSync('/usr/bin/apt-get');
}

function installFromDebian() {
  if (!mayInstallPackages()) return;
  console.log('Installing the chromium package ...');
  const quietly = { DEBIAN_FRONTEND: 'noninteractive' };
  // One unreachable list makes the update fail, and yet the package may be there.
  run('apt-get', ['-q', 'update'], quietly);
  run('apt-get', ['-q', 'install', '-y', '--no-install-recommends', 'chromium'], quietly);
}

function downloadWithPlaywright() {
  console.log('Downloading a Chromium with playwright-core ...');
  const cli = join(repository, 'node_modules/playwright-core/cli.js');
  const withLibraries = mayInstallPackages() ? ['--with-deps'] : [];
  run(process.execPath, [cli, 'install', ...withLibraries, '--no-shell', 'chromium']);
}
