/** Starts the real Chromium that the browser tests look through. */

import { type Browser, type BrowserContext, chromium } from 'playwright-core';
import { findChromium } from '../../src/cli/browser-path.mjs';

/**
 * A Chromium without a window.
 *
 * @param args further switches of the program
 * @throws a sentence when there is none; `npm test` installs one
 */
export async function startChromium(args: readonly string[] = []): Promise<Browser> {
  return chromium.launch(await howToStart(args));
}

/** For the ways of starting that take their own options, such as a profile that stays. */
export async function howToStart(args: readonly string[] = []) {
  const executablePath = await findChromium();
  if (executablePath === null) throw new Error('No Chromium here. `npm test` gets one.');
  // Its own sandbox needs rights that root and containers do not have; it only sees our page.
  return { executablePath, args: ['--no-sandbox', ...args] };
}

/** Ends the browser at once, as the kernel does when memory runs out. A power cut is not tried here. */
export async function kill(context: BrowserContext): Promise<void> {
  const session = await context.browser()?.newBrowserCDPSession();
  const { processInfo = [] } = (await session?.send('SystemInfo.getProcessInfo')) ?? {};
  const browser = processInfo.find(({ type }) => type === 'browser');
  if (browser === undefined) throw new Error('The browser does not tell its process.');
  const closed = new Promise((done) => context.once('close', done));
  process.kill(browser.id, 'SIGKILL');
  await closed;
}
