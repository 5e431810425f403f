/** Where the ear of this page is set up: its level watched, a room measured, a voice learnt. No run is open meanwhile. */

import type { EarReport } from '../bench/ports.ts';
import type { EarBench, OpenEarBench, ShelfEntry } from '../screens/world.ts';
import { hearingTexts, type Language, sayIn } from '../texts/index.ts';
import { browserShelf, type OfflineEar, voicesOn } from '../voice/page/index.ts';
import type { Cards } from './cards.ts';
import type { LateVoices } from './voices.ts';

export interface EarBenchWorld {
  readonly language: Language;
  readonly voices: LateVoices;
  readonly cards: Pick<Cards, 'all'>;
  readonly shelf: readonly ShelfEntry[];
  readonly person: () => string;
}

export function openEarBench({ language, voices, cards, shelf, person }: EarBenchWorld): EarBench {
  const kept = browserShelf();
  let live: OfflineEar | null = null;
  return {
    person,
    async open(report) {
      const ear = (await voices.found).ownEar();
      if (!ear) return { ok: false, fault: sayIn(language, hearingTexts)('insecurePage') };
      live = ear;
      return opened(ear, report);
    },
    async words(flowId) {
      const entry = shelf.find((one) => one.id === flowId);
      const card = cards.all().find((one) => one.machineKind === entry?.machineKind);
      if (!entry || !card) return [];
      const { startJob, wordsToEnrol } = await import('../bench/index.ts');
      const started = startJob({ flow: entry.flow, kind: entry.kind, card: card.card }, {});
      return started.ok ? wordsToEnrol(started.job) : [];
    },
    voices: () => voicesOn(kept),
    forget(key) {
      // An open ear would write it again with the next word.
      if (live?.voiceKey === key) live.forgetVoice();
      kept.remove(key);
    },
  };
}

/** The first word of the ear, that it listens or why it cannot, settles whether it is open. */
async function opened(
  ear: OfflineEar,
  report: (report: EarReport) => void,
): Promise<Awaited<ReturnType<EarBench['open']>>> {
  let fault: string | undefined;
  await ear.open((heard) => {
    if (heard.kind === 'deaf' && heard.deafness.kind !== 'noisy') fault = heard.deafness.sentence;
    report(heard);
  });
  if (fault !== undefined) {
    await ear.close();
    return { ok: false, fault };
  }
  return { ok: true, bench: benchOf(ear) };
}

function benchOf(ear: OfflineEar): OpenEarBench {
  return {
    known: () => ear.known,
    measureRoom: () => ear.measureRoom(),
    enrol(phrase) {
      ear.listenFor({ phrases: [phrase] });
      return ear.enrol(phrase);
    },
    stopEnrolling: () => ear.stopEnrolling(),
    tryWords: (phrases) => ear.listenFor({ phrases }),
    close: () => ear.close(),
  };
}
