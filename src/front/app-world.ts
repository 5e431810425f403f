/** Joins the rooms for the screens: shelf, toolroom, runs and voices behind one door. */

import {
  askForPermanence,
  type Logbook,
  openLogbook,
  openOwnership,
  readingsCsv,
} from '../logbook/index.ts';
import type { AppWorld, CardEntry, Opened, Settings } from '../screens/world.ts';
import { beginInLogbook, resumeKept } from './begin.ts';
import { browserClock } from './clock.ts';
import { type LiveSession, openLiveRun } from './live-run.ts';
import { browserScreenLock } from './screen-lock.ts';
import { openSettings } from './settings.ts';
import { readCardEntry, shippedCards, shippedFlows } from './texts.ts';
import { findVoices } from './voices.ts';

/** Rooms echo: the ear stays shut this long after the last sound of ours. */
const tailMs = 350;
const cardKey = 'card/';

export interface Front {
  readonly world: AppWorld;
  /** Whether a run is open in any tab: then no newer version is taken. */
  anyRunOpen(): Promise<boolean>;
}

export async function openFront(): Promise<Front> {
  const clock = browserClock;
  const troubles: string[] = [];
  const logbook = await openLogbook((fault) => troubles.push(fault.message));
  const settings = await openSettings(logbook);
  const voices = await findVoices(clock);
  const screen = browserScreenLock();
  const shelf = shippedFlows();
  const shipped = shippedCards();
  let own = await ownCards(logbook);
  let live: LiveSession | null = null;
  const subscribers = new Set<() => void>();
  const changed = () => {
    for (const call of subscribers) call();
  };
  const tabs = openOwnership(() => void live?.leave());
  const cards = (): readonly CardEntry[] => [...own, ...shipped];
  const manner = () => {
    const { rate, volume, pitch } = settings.current();
    return { rate, volume, pitch };
  };

  async function open(runId: string): Promise<Opened> {
    await live?.leave();
    if (!(await tabs.claim(runId))) {
      return {
        ok: false,
        fault: 'This run is led in another tab. Go on there, or close that tab first.',
      };
    }
    const kept = await logbook.read(runId);
    if (!kept) return refused(runId, 'This run is not in the Logbook of this device.');
    const resumed = resumeKept(kept, clock.now());
    if (!resumed.ok) return refused(runId, resumed.fault);
    const run = await openLiveRun(
      resumed.step,
      {
        ledger: logbook,
        clock,
        mouth: await voices.mouth(settings.current()),
        ear: await voices.ear(settings.current()),
        tailMs,
        manner,
      },
      async () => {
        live = null;
        tabs.release(runId);
        await screen.release();
      },
    );
    live = run;
    void screen.hold();
    void askForPermanence();
    return { ok: true, run, resumed: resumed.resumed };
  }

  function refused(runId: string, fault: string): Opened {
    tabs.release(runId);
    return { ok: false, fault };
  }

  async function change(part: Partial<Settings>): Promise<void> {
    await settings.change(part);
    if (live && part.ear !== undefined) {
      await live.session.listenWith(await voices.ear(settings.current()));
    }
    if (live && part.mouth !== undefined) {
      live.session.speakWith(await voices.mouth(settings.current()));
    }
    changed();
  }

  const world: AppWorld = {
    shelf,
    cards,
    async keepCard(text) {
      const read = readCardEntry(text, true);
      if (!read.ok) return read.faults;
      await logbook.keep(cardKey + read.value.id, text);
      own = await ownCards(logbook);
      changed();
      return [];
    },
    async removeCard(id) {
      await logbook.forget(cardKey + id);
      own = await ownCards(logbook);
      changed();
    },
    settings: () => settings.current(),
    change,
    subscribe(call) {
      subscribers.add(call);
      return () => subscribers.delete(call);
    },
    ears: () => voices.ears(),
    mouths: () => voices.mouths(),
    async begin(choice) {
      const entry = shelf.find((one) => one.id === choice.flowId);
      const card = cards().find((one) => one.id === choice.cardId);
      if (!entry || !card)
        return { ok: false, faults: ['Choose a flow and a machine card first.'] };
      return beginInLogbook(choice, entry, card, logbook, clock.now());
    },
    open,
    runs: () => logbook.list(),
    read: (runId) => logbook.read(runId),
    exportAll: async () => (await logbook.exportRuns()).text,
    async importAll(text) {
      const result = await logbook.importRuns(text);
      changed();
      return { ok: result.ok, message: importMessage(result) };
    },
    readingsTable: (runs) => readingsCsv(runs),
    troubles: () => troubles,
    persistent: () => navigator.storage?.persisted?.() ?? Promise.resolve(null),
  };
  return { world, anyRunOpen: () => tabs.anyLed() };
}

async function ownCards(logbook: Logbook): Promise<readonly CardEntry[]> {
  const texts = await logbook.recallAll(cardKey, (value) => String(value));
  return [...texts.values()].flatMap((text) => {
    const read = readCardEntry(text, true);
    return read.ok ? [read.value] : [];
  });
}

function importMessage(result: Awaited<ReturnType<Logbook['importRuns']>>): string {
  if (!result.ok) return result.faults.map((fault) => fault.message).join(' ');
  return `Taken in: ${result.added} new runs; ${result.alreadyHere} were here already.`;
}
