/** Runs that were led elsewhere, taken into the page's logbook as a file, so that a test begins where it has to. */

import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import type { Page } from 'playwright-core';
import {
  beginRun,
  hear,
  type RunEntry,
  type RunHead,
  type RunState,
  startJob,
} from '../../src/bench/index.ts';
import type { Ledger } from '../../src/bench/ports.ts';
import { positionOf } from '../../src/flow/index.ts';
import { sourceKey } from '../../src/front/begin.ts';
import { openLogbook } from '../../src/logbook/index.ts';
import type { Language } from '../../src/texts/index.ts';
import { head, heardAs, sources } from '../bench/scripted.ts';

export type Texts = ReturnType<typeof sources>;
type RunEnd = Parameters<Ledger['finish']>[1];

export interface Entered {
  readonly state: RunState;
  readonly entries: readonly RunEntry[];
}

/** What is said, in its order; or what is said next to each state, until the job is done. */
type Script = readonly string[] | ((state: RunState) => string);
/** More than any job takes. */
const mostWords = 400;

/** The job by words, as it stands when each step is come to, in the order of coming. */
export function entriesBySaying(
  script: Script,
  texts = sources(),
  language?: Language,
): ReadonlyMap<string, Entered> {
  const found = new Map<string, Entered>();
  const started = startJob(texts, {}, language);
  if (!started.ok) throw new Error(started.faults.join('\n'));
  let { state } = beginRun(started.job, head);
  const entries: RunEntry[] = [];
  for (let words = 0; words < mostWords; words++) {
    const { step, phase } = positionOf(state.snapshot);
    if (!found.has(step)) found.set(step, { state, entries: [...entries] });
    const word = typeof script === 'function' ? script(state) : script[words];
    if (word === undefined || phase === 'end') break;
    const next = hear(state, heardAs(word));
    entries.push(...next.effects.flatMap((one) => (one.kind === 'append' ? [one.entry] : [])));
    state = next.state;
  }
  return found;
}

export interface Planted {
  readonly id: string;
  readonly entries: readonly RunEntry[];
  /** What is not as in every run. */
  readonly head?: Partial<RunHead>;
  readonly end?: RunEnd;
  readonly texts?: Texts;
}

/** An export of another device that holds these runs. */
export async function fileOf(runs: readonly Planted[], texts = sources()): Promise<string> {
  globalThis.indexedDB = new IDBFactory();
  const logbook = await openLogbook(() => undefined);
  for (const { id, entries, end, texts: own = texts, ...run } of runs) {
    const key = await sourceKey(own);
    await logbook.start({ ...head, ...run.head, id, sourceKey: key }, { key, ...own });
    for (const entry of entries) await logbook.append({ ...entry, runId: id });
    if (end) await logbook.finish(id, end);
  }
  const { parts } = await logbook.exportRuns(runs.map(({ id }) => id));
  logbook.close();
  return parts.join('');
}

/** Takes the file in as a person does, in the Logbook. */
export async function takeIn(page: Page, text: string): Promise<void> {
  await to(page, '#/logbook', '#keep-title');
  await page
    .getByLabel('File to take in')
    .setInputFiles({ name: 'runs.json', mimeType: 'application/json', buffer: Buffer.from(text) });
  await page.getByText(/taken in/i).waitFor();
}

/** To another screen of the page that is open. */
export async function to(page: Page, hash: string, landmark: string): Promise<void> {
  await page.evaluate((text) => {
    location.hash = text;
  }, hash);
  await page.locator(landmark).first().waitFor();
}
