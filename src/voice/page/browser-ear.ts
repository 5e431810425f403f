/** The browser's own speech recognition as an ear: sessions one after another, half duplex. */
import type { Clock, Ear, EarReport, ListenFor } from '../../bench/ports.ts';
import { englishLanguage, hearingTexts, type Language, sayIn } from '../../texts/index.ts';
import { deafness, type WhyDeaf } from './deafness.ts';
import type { MicrophoneLock } from './microphone-lock.ts';
import { onDeviceState } from './on-device.ts';
import type { PhraseConstructor, Recognition, RecognitionConstructor } from './recognition.ts';
import { judgeEnd, NO_TROUBLES, restartDelay, type SessionEnd } from './recognition-policy.ts';
import { type Session, startSession } from './recognition-session.ts';
import { pause } from './within.ts';

/** What the ear needs from the page; tests give a fake one. */
export interface BrowserEarWorld {
  /** What is spoken: American English without it. */
  readonly lang?: string;
  /** Of the sentences about trouble; English without it. */
  readonly language?: Language;
  readonly Recognition: RecognitionConstructor;
  readonly Phrase?: PhraseConstructor;
  readonly clock: Clock;
  readonly lock: MicrophoneLock;
  readonly page: {
    visible(): boolean;
    /** Calls back at every change of visibility or of audio devices; returns how to stop. */
    onChange(call: () => void): () => void;
  };
}

/** `on-device` never sends sound away; `service` lets the browser send it to whoever it likes. */
export type BrowserEarMode = 'on-device' | 'service';

const PHRASE_BOOST = 5;
/** A browser that takes longer to start is in trouble, which is told elsewhere. */
const START_WAIT_MS = 2_000;

/** Makes the ear. Nothing is started and no permission is asked before `open`. */
export function browserEar(world: BrowserEarWorld, mode: BrowserEarMode): Ear {
  return new BrowserEar(world, mode);
}

class BrowserEar implements Ear {
  readonly name: string;
  readonly hearsFreely = true;
  readonly soundLeavesDevice: Ear['soundLeavesDevice'];
  private words: ListenFor = { phrases: [] };
  private report: (report: EarReport) => void = () => {};
  private troubles = NO_TROUBLES;
  private isOpen = false;
  private isShut = false;
  private isDeaf = false;
  private saidListening = false;
  private session: Session | undefined;
  private sessionEnded: Promise<void> = Promise.resolve();
  private startedAt = Number.NEGATIVE_INFINITY;
  private cancelRestart = () => {};
  private hasStarted = () => {};
  private stopWatching = () => {};
  private unlock = () => {};

  constructor(
    private readonly world: BrowserEarWorld,
    private readonly mode: BrowserEarMode,
  ) {
    this.name = this.say(mode === 'on-device' ? 'earOnDevice' : 'earService');
    this.soundLeavesDevice = mode === 'on-device' ? 'no' : 'yes';
  }

  private get language(): Language {
    return this.world.language ?? englishLanguage;
  }

  private get say() {
    return sayIn(this.language, hearingTexts);
  }

  private get lang(): string {
    return this.world.lang ?? 'en-US';
  }

  async open(report: (report: EarReport) => void): Promise<void> {
    await this.close();
    this.report = report;
    this.isOpen = true;
    const unlock = await this.world.lock();
    if (!this.isOpen) return unlock?.();
    if (!unlock) return this.goDeaf('otherTab');
    this.unlock = unlock;
    if (!(await this.packIsThere())) return this.goDeaf('noPack');
    if (!this.isOpen) return;
    this.stopWatching = this.world.page.onChange(() => this.pageChanged());
    this.begin();
  }

  listenFor(words: ListenFor): void {
    this.words = words;
  }

  async shut(): Promise<void> {
    this.isShut = true;
    await this.dropSession();
  }

  /** Resolves when the browser listens: a word said before that is lost. */
  async reopen(): Promise<void> {
    if (!this.isShut) return;
    this.isShut = false;
    this.begin();
    if (this.wanted) await this.untilStarted();
  }

  async close(): Promise<void> {
    this.isOpen = false;
    this.isShut = false;
    this.isDeaf = false;
    this.saidListening = false;
    this.troubles = NO_TROUBLES;
    this.stopWatching();
    this.stopWatching = () => {};
    await this.dropSession();
    this.unlock();
    this.unlock = () => {};
  }

  private untilStarted(): Promise<void> {
    return new Promise((resolve) => {
      const cancel = this.world.clock.after(START_WAIT_MS, resolve);
      this.hasStarted = () => {
        cancel();
        resolve();
      };
    });
  }

  private get wanted(): boolean {
    return this.isOpen && !this.isShut && !this.isDeaf;
  }

  private async packIsThere(): Promise<boolean> {
    if (this.mode === 'service') return true;
    return (await onDeviceState(this.world.Recognition, this.lang, this.world.clock)) === 'ready';
  }

  /** Starts a session when one is wanted and none runs, never sooner than the policy allows. */
  private begin(): void {
    this.cancelRestart();
    if (!this.wanted || this.session) return;
    const delay = restartDelay(this.troubles, this.world.clock.now() - this.startedAt);
    this.cancelRestart = this.world.clock.after(delay, () => {
      // Asked again here: it may have been shut or closed during the wait.
      if (this.wanted && !this.session && this.world.page.visible()) this.startNow();
    });
  }

  private startNow(): void {
    this.startedAt = this.world.clock.now();
    let ended = () => {};
    this.sessionEnded = new Promise((resolve) => {
      ended = resolve;
    });
    const mine = startSession(this.makeRecogniser(), this.world.clock, {
      started: () => {
        this.hasStarted();
        this.sayListening();
      },
      spoken: (spoken) => this.wanted && this.session === mine && this.sayHeard(spoken),
      unclear: () => this.wanted && this.session === mine && this.report(UNCLEAR),
      ended: (end) => {
        ended();
        if (this.session === mine) this.sessionOver(end);
      },
    });
    this.session = mine;
  }

  /** A fresh object a session: an old one keeps its settings and fires late events. */
  private makeRecogniser(): Recognition {
    const recogniser = new this.world.Recognition();
    recogniser.lang = this.lang;
    recogniser.continuous = false;
    recogniser.interimResults = false;
    recogniser.maxAlternatives = 5;
    if (this.mode === 'on-device') {
      recogniser.processLocally = true;
      this.addPhrases(recogniser);
    }
    return recogniser;
  }

  /** Phrases only lean the recogniser towards the said list; anything may still come back. */
  private addPhrases(recogniser: Recognition): void {
    const { Phrase } = this.world;
    if (!Phrase || !('phrases' in recogniser) || this.troubles.phrasesOff) return;
    try {
      recogniser.phrases = this.words.phrases.map((phrase) => new Phrase(phrase, PHRASE_BOOST));
    } catch {
      this.troubles = { ...this.troubles, phrasesOff: true };
    }
  }

  private sessionOver(end: SessionEnd): void {
    this.session = undefined;
    if (!this.wanted) return;
    const { troubles, next } = judgeEnd(this.troubles, end, this.world.page.visible());
    this.troubles = troubles;
    if (next.kind === 'deaf') this.goDeaf(next.why);
    else if (next.kind === 'again') this.begin();
  }

  /** Leaves nothing running: resolves when the browser has let go, which has a limit of its own. */
  private async dropSession(): Promise<void> {
    this.cancelRestart();
    const dropped = this.session;
    this.session = undefined;
    if (!dropped) return;
    dropped.abort();
    await this.sessionEnded;
    // Some browsers refuse sound output for a moment after the microphone was let go.
    await pause(this.world.clock, 50);
  }

  private pageChanged(): void {
    if (!this.world.page.visible()) return;
    if (this.isDeaf && this.troubles.device > 0) {
      this.isDeaf = false;
      this.troubles = NO_TROUBLES;
    }
    this.begin();
  }

  private goDeaf(why: WhyDeaf): void {
    this.isDeaf = true;
    this.saidListening = false;
    this.report({ kind: 'deaf', deafness: deafness(this.language, why) });
  }

  private sayListening(): void {
    if (!this.wanted || this.saidListening) return;
    this.saidListening = true;
    this.report({ kind: 'listening' });
  }

  private sayHeard(spoken: {
    readonly text: string;
    readonly alternatives: readonly string[];
    readonly confidence: number;
  }): void {
    const heard = { ...spoken, from: 'speech', at: this.world.clock.now() } as const;
    this.report({ kind: 'heard', heard });
  }
}

const UNCLEAR: EarReport = { kind: 'unclear', text: '' };
