/** Whether this browser can recognise speech without sending it away; and fetching what it needs for that. */
import type { Clock } from '../../bench/ports.ts';
import type { RecognitionConstructor } from './recognition.ts';
import { within } from './within.ts';

export type OnDevice = 'ready' | 'needs-install' | 'none';

const ASK_LIMIT_MS = 3_000;
const INSTALL_LIMIT_MS = 120_000;

/** Some browsers say "downloading" for ever, so that counts as not there yet, never as ready. */
export async function onDeviceState(
  recognition: RecognitionConstructor | undefined,
  lang: string,
  clock: Clock,
): Promise<OnDevice> {
  if (!recognition?.available || !recognition.install) return 'none';
  const asked = attempt(() => recognition.available?.(request(lang)));
  const status = await within(clock, ASK_LIMIT_MS, asked, 'unavailable');
  if (status === 'available') return 'ready';
  return status === 'downloadable' || status === 'downloading' ? 'needs-install' : 'none';
}

/**
 * Fetches the language pack. Call it from a tap: the browser refuses otherwise.
 * True when the pack is there; false when refused, failed, or not done within two minutes.
 */
export async function installOnDevice(
  recognition: RecognitionConstructor | undefined,
  lang: string,
  clock: Clock,
): Promise<boolean> {
  if (!recognition?.install) return false;
  const asked = attempt(() => recognition.install?.(request(lang)));
  const done = await within(clock, INSTALL_LIMIT_MS, asked, false);
  return done === true && (await onDeviceState(recognition, lang, clock)) === 'ready';
}

function request(lang: string) {
  return { langs: [lang], processLocally: true, quality: 'command' } as const;
}

/** A call that throws at once becomes a promise that fails. */
async function attempt<T>(call: () => Promise<T> | undefined): Promise<T | undefined> {
  return await call();
}
