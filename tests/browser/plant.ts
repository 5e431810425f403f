/** Runs that were led elsewhere, taken into the page's logbook as a file, so that a test begins where it has to. */

import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import type { Page } from 'playwright-core';
import { beginRun, hear, type RunEntry, type RunState, startJob } from '../../src/bench/index.ts';
import { positionOf } from '../../src/flow/index.ts';
import { sourceKey } from '../../src/front/begin.ts';
import { openLogbook } from '../../src/logbook/index.ts';
import { head, heardAs, sources } from '../bench/scripted.ts';

export interface Entered {
  readonly state: RunState;
  readonly entries: readonly RunEntry[];
}

/** The job by words, as it stands when each step is come to, in the order of coming. */
export function entriesBySaying(
  words: readonly string[],
  texts = sources(),
): ReadonlyMap<string, Entered> {
  const found = new Map<string, Entered>();
  const started = startJob(texts, {});
  if (!started.ok) throw new Error(started.faults.join('\n'));
  let { state } = beginRun(started.job, head);
  const entries: RunEntry[] = [];
  const note = () => {
    const { step } = positionOf(state.snapshot);
    if (!found.has(step)) found.set(step, { state, entries: [...entries] });
  };
  note();
  for (const word of words) {
    const next = hear(state, heardAs(word));
    entries.push(...next.effects.flatMap((one) => (one.kind === 'append' ? [one.entry] : [])));
    state = next.state;
    note();
  }
  return found;
}

export interface Planted {
  readonly id: string;
  readonly entries: readonly RunEntry[];
}

/** An export of another device that holds these runs. */
export async function fileOf(runs: readonly Planted[], texts = sources()): Promise<string> {
  globalThis.indexedDB = new IDBFactory();
  const logbook = await openLogbook(() => undefined);
  const key = await sourceKey(texts);
  for (const { id, entries } of runs) {
    await logbook.start({ ...head, id, sourceKey: key }, { key, ...texts });
    for (const entry of entries) await logbook.append({ ...entry, runId: id });
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
