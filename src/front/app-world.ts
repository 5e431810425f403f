/** Joins the rooms for the screens: shelf, toolroom, runs and voices behind one door. */

import { type Logbook, openLogbook, readingsCsv } from '../logbook/index.ts';
import type { AppWorld } from '../screens/world.ts';
import { type Cards, openCards } from './cards.ts';
import { browserClock } from './clock.ts';
import { openRunDesk, type RunDesk } from './run-desk.ts';
import { openSettings, type SettingsKeeper } from './settings.ts';
import { openSlateDesk } from './slate-desk.ts';
import { shippedFlows } from './texts.ts';
import { type LateVoices, voicesInTime } from './voices.ts';

export interface Front {
  readonly world: AppWorld;
  /** Whether a run is open in any tab: then no newer version is taken. */
  anyRunOpen(): Promise<boolean>;
}

interface Rooms {
  readonly logbook: Logbook;
  readonly settings: SettingsKeeper;
  readonly voices: LateVoices;
  readonly cards: Cards;
  readonly desk: RunDesk;
  readonly troubles: readonly string[];
  readonly news: News;
}

/** Who wants to hear of changed settings, cards or voices. */
interface News {
  readonly subscribers: Set<() => void>;
  readonly changed: () => void;
}

/** Rejects when this browser keeps nothing: a run that cannot be kept is not led. */
export async function openFront(): Promise<Front> {
  const clock = browserClock;
  const troubles: string[] = [];
  const logbook = await openLogbook((fault) => troubles.push(fault.message));
  const settings = await openSettings(logbook);
  const cards = await openCards(logbook);
  const news = newsDesk();
  const voices = voicesInTime(clock, news.changed);
  const desk = openRunDesk({ logbook, settings, voices, clock });
  const rooms = { logbook, settings, voices, cards, desk, troubles, news };
  return { world: worldOf(rooms), anyRunOpen: () => desk.anyRunOpen() };
}

function newsDesk(): News {
  const subscribers = new Set<() => void>();
  const changed = () => {
    for (const call of subscribers) call();
  };
  return { subscribers, changed };
}

function worldOf(rooms: Rooms): AppWorld {
  const { settings, voices, cards, desk, troubles, news } = rooms;
  const { subscribers, changed } = news;
  return {
    cards: () => cards.all(),
    async keepCard(text) {
      const faults = await cards.keep(text);
      changed();
      return faults;
    },
    async removeCard(id) {
      await cards.remove(id);
      changed();
    },
    settings: () => settings.current(),
    async change(part) {
      await settings.change(part);
      changed();
      await desk.voicesChanged(part);
    },
    subscribe(call) {
      subscribers.add(call);
      return () => subscribers.delete(call);
    },
    ears: () => voices.ears(),
    mouths: () => voices.mouths(),
    open: (runId) => desk.open(runId),
    slate: openSlateDesk(rooms),
    troubles: () => troubles,
    persistent: async () => (await navigator.storage?.persisted?.()) ?? null,
    ...records(rooms),
  };
}

/** The part of the world that reads and writes the logbook. */
function records({ logbook, cards, news }: Rooms) {
  const shelf = shippedFlows();
  return {
    shelf,
    begin: async (choice) => {
      const entry = shelf.find((one) => one.id === choice.flowId);
      const card = cards.all().find((one) => one.id === choice.cardId);
      if (!entry || !card) {
        return { ok: false, faults: ['Choose a flow and a machine card first.'] };
      }
      const { beginInLogbook } = await import('./begin.ts');
      return beginInLogbook(choice, entry, card, logbook, browserClock.now());
    },
    runs: () => logbook.list(),
    read: (runId) => logbook.read(runId),
    exportAll: async () => (await logbook.exportRuns()).text,
    importAll: async (text) => {
      const result = await logbook.importRuns(text);
      news.changed();
      return { ok: result.ok, message: importMessage(result) };
    },
    readingsTable: (runs) => readingsCsv(runs),
  } satisfies Partial<AppWorld>;
}

function importMessage(result: Awaited<ReturnType<Logbook['importRuns']>>): string {
  if (!result.ok) return result.faults.map((fault) => fault.message).join(' ');
  return `Taken in: ${result.added} new runs; ${result.alreadyHere} were here already.`;
}
