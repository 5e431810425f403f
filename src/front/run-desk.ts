/** Opens runs, one at a time: from the logbook to the Bench and back. */

import type { EarlierPieces, RunStep } from '../bench/index.ts';
import type { Clock } from '../bench/ports.ts';
import {
  askForPermanence,
  type Logbook,
  openOwnership,
  type TabOwnership,
} from '../logbook/index.ts';
import type { Opened } from '../screens/world.ts';
import { frontTexts, type Language, type Say, sayIn, sentenceOf } from '../texts/index.ts';
import { earlierPieces } from './batch-pieces.ts';
import type { LiveSession, openLiveRun } from './live-run.ts';
import type { ProvedJobs } from './proved-jobs.ts';
import type { Releases } from './releases.ts';
import { browserScreenLock } from './screen-lock.ts';
import type { SettingsKeeper } from './settings.ts';
import type { LateVoices } from './voices.ts';

/** Rooms echo: the ear stays shut this long after the last sound of ours. */
const tailMs = 350;

export interface RunDesk {
  open(runId: string): Promise<Opened>;
  /** Takes up a changed ear or mouth in the run that is open. */
  voicesChanged(part: { readonly ear?: string; readonly mouth?: string }): Promise<void>;
  anyRunOpen(): Promise<boolean>;
}

export interface DeskWorld {
  readonly logbook: Logbook;
  readonly settings: SettingsKeeper;
  /** Changes what a person may also change on the screens, which then show it. */
  readonly changeSettings: (part: { rate: number; volume: number }) => Promise<void>;
  readonly voices: LateVoices;
  readonly clock: Clock;
  readonly releases: Releases;
  readonly provedJobs: ProvedJobs;
  /** Of the page; a run brings its own. */
  readonly language: Language;
}

/** A piece of a batch knows what those before it measured. */
function inBatch(step: RunStep, earlier: EarlierPieces | undefined): RunStep {
  return earlier ? { ...step, state: { ...step.state, batch: { earlier } } } : step;
}

export function openRunDesk(world: DeskWorld): RunDesk {
  return new Desk(world);
}

class Desk implements RunDesk {
  private live: LiveSession | null = null;
  private readonly screen = browserScreenLock();
  private readonly tabs: TabOwnership;
  private readonly say: Say<typeof frontTexts>;

  constructor(private readonly world: DeskWorld) {
    this.say = sayIn(world.language, frontTexts);
    this.tabs = openOwnership(() => void this.live?.leave());
  }

  anyRunOpen(): Promise<boolean> {
    return this.tabs.anyLed();
  }

  async open(runId: string): Promise<Opened> {
    await this.live?.leave();
    if (!(await this.tabs.claim(runId)) && !(await this.tabs.takeOver(runId))) {
      return { ok: false, fault: this.say('otherTab') };
    }
    try {
      return await this.lead(runId);
    } catch (error) {
      return this.refused(runId, sentenceOf(error, this.world.language));
    }
  }

  async voicesChanged({ ear, mouth }: { ear?: string; mouth?: string }): Promise<void> {
    const { settings } = this.world;
    if (ear === undefined && mouth === undefined) return;
    if (!this.live) return;
    const { language } = this.live.current().state.job.flow;
    const voices = await this.world.voices.inLanguage(language);
    if (!this.live) return;
    if (ear !== undefined) await this.live.session.listenWith(voices.ear(settings.current()));
    if (mouth !== undefined) this.live.session.speakWith(voices.mouth(settings.current()));
  }

  private async lead(runId: string): Promise<Opened> {
    const { logbook, clock } = this.world;
    const kept = await logbook.read(runId);
    if (!kept) return this.refused(runId, this.say('noRun'));
    if (kept.head.status !== 'open') return this.refused(runId, this.say('runOver'));
    const { resumeKept } = await import('./begin.ts');
    const resumed = await resumeKept(kept, clock.now(), this.world.releases, this.world.language);
    if (!resumed.ok) return this.refused(runId, resumed.fault);
    const { language } = resumed.step.state.job.flow;
    if (!(await this.world.provedJobs.isProved(kept, language))) {
      return this.refused(runId, this.say('unprovedRun'));
    }
    const earlier = await earlierPieces(logbook, kept.head);
    this.live = await this.begin(runId, inBatch(resumed.step, earlier));
    void this.screen.hold();
    void askForPermanence();
    return { ok: true, run: this.live, resumed: resumed.resumed };
  }

  private async begin(
    runId: string,
    step: Parameters<typeof openLiveRun>[0],
  ): Promise<LiveSession> {
    const { logbook, clock, settings, releases } = this.world;
    const [voices, liveRun] = await Promise.all([
      this.world.voices.inLanguage(step.state.job.flow.language),
      import('./live-run.ts'),
    ]);
    const chosen = settings.current();
    const manner = () => {
      const { rate, volume, pitch } = settings.current();
      return { rate, volume, pitch };
    };
    const session = {
      ledger: logbook,
      releases,
      clock,
      tailMs,
      manner,
      changeManner: ({ rate, volume }: { rate: number; volume: number }) =>
        void this.world.changeSettings({ rate, volume }),
      mouth: voices.mouth(chosen),
      ear: voices.ear(chosen),
    };
    return liveRun.openLiveRun(step, session, async () => {
      this.live = null;
      this.tabs.release(runId);
      await this.screen.release();
    });
  }

  private refused(runId: string, fault: string): Opened {
    this.tabs.release(runId);
    return { ok: false, fault };
  }
}
