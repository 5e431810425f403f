/** A page with the logbook and its screen and nothing else, filled and measured by tests/speed/logbook.ts. */

import '../../../src/screens/styles/index.css';
import { openDB, unwrap } from 'idb';
import { h, render } from 'preact';
import type { RunHead } from '../../../src/bench/ports.ts';
import { type Logbook, openLogbook } from '../../../src/logbook/index.ts';
import { ALL_RUNS, findRuns, shelve } from '../../../src/screens/logbook/find-runs.ts';
import { Logbook as Screen } from '../../../src/screens/logbook/Logbook.tsx';
import type { AppWorld } from '../../../src/screens/world.ts';
import { englishLanguage } from '../../../src/texts/index.ts';
import { entry, sampleRun } from '../../logbook/sample-run.ts';

const FLOWS = ['Gate hinge pin', 'Hinge plate', 'Latch bolt', 'Spacer ring', 'Drift', 'Punch'];
const PEOPLE = ['Ida', 'Ruth', 'Marta', 'Jonas', 'Emil', 'Selma', 'Tove', 'Anton'];
const DAY = 86_400_000;
/** Runs of one transaction: fewer wait for the disk more often, more hold too many rows in memory. */
const AT_ONCE = 500;

function headOf(n: number): RunHead {
  const { head } = sampleRun(`run-${n}`);
  const flow = n % FLOWS.length;
  return {
    ...head,
    flowId: `flow-${flow}`,
    flowTitle: FLOWS[flow] ?? '',
    operator: PEOPLE[n % PEOPLE.length] ?? '',
    operatorId: `operator-${n % PEOPLE.length}`,
    pace: n % 3 === 0 ? 'familiar' : 'own-pace',
    // About eight runs a working day, over five years.
    startedAt: head.startedAt - Math.floor(n / 8) * DAY + (n % 8) * 3_600_000,
    inputs: { ...head.inputs, diameter: 10 + (n % 200) / 10, length: 40 + (n % 70) },
    tally: {
      ...{ unclear: n % 4, refused: n % 3, within: 2, rework: n % 2, lost: 0, notes: 0 },
      releases: [],
    },
  };
}

/**
 * Writes rows as the logbook would, past it; the days are left to the logbook to make. Bare requests, of which only the
 * end of each transaction is waited for: a promise for each of 600,000 rows takes longer than the rows.
 */
async function fill(runs: number, entries: number): Promise<void> {
  const logbook = await openLogbook(() => undefined);
  const { source, readings } = sampleRun('run-0');
  const db = await openDB('followrest');
  await db.put('sources', source);
  const bare = unwrap(db);
  for (let first = 0; first < runs; first += AT_ONCE) {
    const stores = ['runs', 'entries', 'readings'];
    const tx = bare.transaction(stores, 'readwrite', { durability: 'relaxed' });
    const [heads, rows, sizes] = stores.map((name) => tx.objectStore(name));
    for (let n = first; n < Math.min(runs, first + AT_ONCE); n++) {
      heads?.put(headOf(n));
      for (let seq = 0; seq < entries; seq++) rows?.put(entry(`run-${n}`, seq));
      readings.forEach((reading, place) => {
        sizes?.put({ runId: `run-${n}`, place, reading });
      });
    }
    await new Promise<void>((done, failed) => {
      tx.oncomplete = () => done();
      tx.onabort = () => failed(tx.error);
    });
  }
  await db.put('days', { day: '2000-01-01', heads: 'to be made' });
  db.close();
  await logbook.list();
  logbook.close();
}

const WANTED = [
  { text: 'ida' },
  { text: 'hinge plate' },
  { text: 'selma punch finished' },
  { text: '2026' },
  { text: 'no such word' },
  { operator: 'operator-3' },
  { flow: 'flow-2', operator: 'operator-1' },
  { from: '2025-01-01', until: '2025-03-31' },
  { piece: '12.5' },
  { text: 'r', piece: 'low-carbon' },
];

/** Milliseconds. */
interface First {
  /** From asking for the list to a screen full of rows in the page, laid out. */
  readonly rows: number;
  /** To all runs, on the screen and ready to be searched. */
  readonly whole: number;
}

/** So many are drawn first. */
const SCREENFUL = 30;

/** The Logbook's own screen, in a page that has read nothing yet. */
async function first(): Promise<First> {
  const logbook = await openLogbook(() => undefined);
  const place = document.body.appendChild(document.createElement('main'));
  let asked = Number.NaN;
  const world = worldOf(() => {
    asked = performance.now();
  }, logbook);
  const rows = changed(place, () => place.querySelectorAll('.run-row').length >= SCREENFUL);
  const status = () => place.querySelector('.runs')?.previousElementSibling?.textContent ?? '';
  const whole = changed(place, () => /^[\d,]+ runs$/.test(status()));
  render(h(Screen, { world }), place);
  const times = { rows: (await rows) - asked, whole: (await whole) - asked };
  logbook.close();
  return times;
}

/** What the screen asks of the world. */
function worldOf(onAsked: () => void, logbook: Logbook): AppWorld {
  const world: Partial<AppWorld> = {
    runs(newest) {
      onAsked();
      return logbook.list(newest);
    },
    troubles: () => [],
    persistent: async () => null,
    operators: { all: () => [] } as unknown as AppWorld['operators'],
  };
  return world as AppWorld;
}

/** When the page was changed so that it is as wanted, and laid out. */
function changed(place: Element, isSo: () => boolean): Promise<number> {
  return new Promise((done) => {
    const seen = new MutationObserver(() => {
      if (!isSo()) return;
      seen.disconnect();
      place.getBoundingClientRect();
      done(performance.now());
    });
    seen.observe(place, { childList: true, subtree: true, characterData: true });
  });
}

interface Times {
  /** Reading the list and making it ready to be searched, as when the Logbook is come back to. */
  readonly lists: readonly number[];
  readonly searches: readonly number[];
  /** One run, whole, with its entries. */
  readonly reads: readonly number[];
}

async function measure(times: number): Promise<Times> {
  const logbook = await openLogbook(() => undefined);
  let shelved = shelve(await logbook.list(), englishLanguage);
  const lists: number[] = [];
  const searches: number[] = [];
  const reads: number[] = [];
  for (let n = 0; n < times; n++) {
    const list = performance.now();
    shelved = shelve(await logbook.list(), englishLanguage);
    lists.push(performance.now() - list);
    const search = performance.now();
    findRuns(shelved, { ...ALL_RUNS, ...WANTED[n % WANTED.length] });
    searches.push(performance.now() - search);
    const read = performance.now();
    await logbook.read(`run-${(n * 97) % shelved.length}`);
    reads.push(performance.now() - read);
  }
  logbook.close();
  return { lists, searches, reads };
}

declare global {
  interface Window {
    logbookPage: { fill: typeof fill; first: typeof first; measure: typeof measure };
  }
}

window.logbookPage = { fill, first, measure };
document.title = 'ready';
