/** Joins the rooms for the screens: shelf, toolroom, runs and voices behind one door. */

import { type Imported, type Logbook, openLogbook, readingsCsv } from '../logbook/index.ts';
import type {
  AppWorld,
  MaterialsDesk,
  OperatorsDesk,
  Settings,
  ShelfEntry,
} from '../screens/world.ts';
import {
  beginTexts,
  frontTexts,
  type Language,
  type Say,
  sayIn,
  sentenceOf,
} from '../texts/index.ts';
import { piecesOfBatch } from './batch-pieces.ts';
import { type Cards, openCards } from './cards.ts';
import { browserClock } from './clock.ts';
import { openEarBench } from './ear-bench.ts';
import { judgeKept } from './kept-shapes.ts';
import { languageChoices, loadLanguage } from './language.ts';
import { type Materials, openMaterials } from './materials.ts';
import { type Operators, openOperators } from './operators.ts';
import { pageMemory } from './page-memory.ts';
import { openPhotos } from './photos.ts';
import { openProofs, type ProofFront } from './proof-front.ts';
import { openProvedJobs, type ProvedJobs } from './proved-jobs.ts';
import { openReleases, type Releases } from './releases.ts';
import { openRunDesk, type RunDesk } from './run-desk.ts';
import { openSettings, type SettingsKeeper } from './settings.ts';
import { openSlateDesk } from './slate-desk.ts';
import { shippedFlows, shippedFlowsIn } from './texts.ts';
import { type LateVoices, voicesInTime } from './voices.ts';

export interface Front {
  readonly world: AppWorld;
  /** Whether a run is open in any tab: then no newer version is taken. */
  anyRunOpen(): Promise<boolean>;
}

interface Rooms {
  readonly language: Language;
  readonly shelf: readonly ShelfEntry[];
  readonly logbook: Logbook;
  readonly settings: SettingsKeeper;
  readonly voices: LateVoices;
  readonly cards: Cards;
  readonly materials: Materials;
  readonly desk: RunDesk;
  readonly operators: Operators;
  readonly releases: Releases;
  readonly proofs: ProofFront;
  readonly provedJobs: ProvedJobs;
  /** Faults, or sentences. */
  readonly troubles: readonly unknown[];
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
  const troubles: unknown[] = [];
  const logbook = await openLogbook((fault) => troubles.push(fault));
  const settings = await openSettings(logbook);
  const language = await loadLanguage(settings.current().language);
  document.documentElement.lang = language.code;
  const shelf = language.spoken ? await shippedFlowsIn(language) : shippedFlows();
  const say = sayIn(language, frontTexts);
  const cards = await openCards(logbook, language);
  const materials = openMaterials(logbook, say, (sentence) => troubles.push(sentence));
  const news = newsDesk();
  const voices = voicesInTime(clock, () => settings.current().operator, news.changed, language);
  const patience = pageMemory('passphrase-tries');
  const operators = await openOperators(logbook, clock.now, language, patience);
  const releases = openReleases(operators, logbook.secrets, clock.now, language);
  const changeSettings = async (part: Partial<Settings>) => {
    await settings.change(part);
    news.changed();
  };
  const proofs = openProofs(shelf, () => cards.all().map(materials.onCardNow), language);
  const provedJobs = openProvedJobs(logbook.secrets, proofs.isJobProved);
  const desk = openRunDesk({
    ...{ logbook, settings, changeSettings, voices, clock, releases, provedJobs, language },
  });
  const people = { operators, releases, proofs, provedJobs };
  const rooms = {
    language,
    shelf,
    logbook,
    settings,
    voices,
    cards,
    materials,
    desk,
    ...people,
    troubles,
    news,
  };
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
  const { language, shelf, logbook, settings, voices, cards, desk, releases, troubles, news } =
    rooms;
  const { subscribers, changed } = news;
  return {
    language,
    languages: languageChoices,
    languageNamed: loadLanguage,
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
      // Every text of the page is another one then: it is opened anew, at the same address.
      if (part.language !== undefined && part.language !== language.code) location.reload();
      changed();
      await desk.voicesChanged(part);
    },
    subscribe(call) {
      subscribers.add(call);
      return () => subscribers.delete(call);
    },
    ears: () => voices.ears(),
    async fetchPack() {
      const fetched = await (await voices.found).fetchPack();
      changed();
      return fetched;
    },
    earBench: openEarBench({
      language,
      voices,
      cards,
      shelf,
      person: () => settings.current().operator,
    }),
    mouths: () => voices.mouths(),
    open: (runId) => desk.open(runId),
    slate: openSlateDesk(rooms),
    troubles: () => troubles.map((one) => sentenceOf(one, language)),
    materials: materialsIn(rooms),
    operators: operatorsIn(rooms),
    photos: openPhotos(logbook, browserClock.now, language),
    releasesGenuine: async (run) => (await import('./begin.ts')).allGenuine(run, releases),
    persistent: async () => (await navigator.storage?.persisted?.()) ?? null,
    ...records(rooms),
  };
}

/** The part of the world that reads and writes the logbook. */
function records(rooms: Rooms) {
  const { language, shelf, logbook, cards, materials, settings, operators, news, proofs } = rooms;
  const say = sayIn(language, frontTexts);
  return {
    shelf,
    proofs,
    begin: async (choice) => {
      const entry = shelf.find((one) => one.id === choice.flowId);
      const card = cards.all().find((one) => one.id === choice.cardId);
      if (!entry || !card) {
        return { ok: false, faults: [sayIn(language, beginTexts)('chooseFirst')] };
      }
      const whole = await materials.onCard(card);
      const { beginInLogbook } = await import('./begin.ts');
      const operator = await operators.named(choice.operator);
      const begun = await beginInLogbook(choice, {
        entry,
        card: whole,
        operator,
        logbook,
        now: browserClock.now(),
        isProved: proofs.isJobProved,
        language,
      });
      if (!begun.ok) return begun;
      await rooms.provedJobs.note(begun.head);
      return { ok: true, runId: begun.head.id };
    },
    runs: (newest) => logbook.list(newest),
    read: (runId) => logbook.read(runId),
    batch: async (runId) => {
      const head = (await logbook.list()).find((one) => one.id === runId);
      return head ? await piecesOfBatch(logbook, head) : [];
    },
    exportAll: async () =>
      new Blob([...(await logbook.exportRuns()).parts], { type: 'application/json' }),
    importAll: async (text) => {
      const result = await logbook.importRuns(text, judgeKept(say), language);
      materials.again();
      await Promise.all([cards.again(), settings.again(), operators.again()]);
      news.changed();
      return { ok: result.ok, message: importMessage(result, say) };
    },
    readingsTable: (runs) => readingsCsv(runs),
  } satisfies Partial<AppWorld>;
}

function materialsIn({ materials, news }: Rooms): MaterialsDesk {
  return {
    all: () => materials.all(),
    async keep(row) {
      const faults = await materials.keep(row);
      news.changed();
      return faults;
    },
    async remove(name) {
      await materials.remove(name);
      news.changed();
    },
  };
}

/** Every change is told to the screens. */
function operatorsIn({ operators, news }: Rooms): OperatorsDesk {
  const told = async (change: Promise<string | null>) => {
    const why = await change;
    news.changed();
    return why;
  };
  return {
    all: () => operators.all(),
    add: (name) => told(operators.add(name)),
    rename: (id, name) => told(operators.rename(id, name)),
    remove: (id, passphrase) => told(operators.remove(id, passphrase)),
    makeInstructor: (id, passphrase, by) => told(operators.makeInstructor(id, passphrase, by)),
  };
}

function importMessage(result: Imported, say: Say<typeof frontTexts>): string {
  if (!result.ok) {
    const reasons = result.faults.map(({ path, message }) => `${path} ${message}`.trim());
    return say('refused', { reasons: reasons.join(' ') });
  }
  const { added, alreadyHere: here, keptAdded: kept, keptLeft, photosAdded: photos } = result;
  const taken = say('takenIn', { added, here, photos, kept });
  return keptLeft.length > 0 ? say('leftHere', { taken, names: keptLeft.join(', ') }) : taken;
}
