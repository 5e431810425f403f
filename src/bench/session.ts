/** Runs a job against the world: one thing heard at a time, kept before it counts, then shown and said. */

import { benchTexts, sayIn, sentenceOf } from '../texts/index.ts';
import { leaveSlate } from './ask-slate.ts';
import { deafLine, hearsAgainLine } from './deaf-line.ts';
import { giveUp } from './give-up.ts';
import { breaksIn, interrupts, silent } from './interrupt.ts';
import { listenFor } from './listen-for.ts';
import type { SpeechManner } from './manner-run.ts';
import { takeNote } from './note-run.ts';
import type {
  Clock,
  Deafness,
  Ear,
  EarReport,
  Heard,
  Ledger,
  Mouth,
  Release,
  ReleaseCheck,
} from './ports.ts';
import { refuseRelease, staleRelease, takeRelease } from './release-run.ts';
import type { Effect, RunState, RunStep } from './run-state.ts';
import {
  beginSound,
  earOpen,
  type SoundEvent,
  type SoundSnapshot,
  soundShown,
  stepSound,
} from './sound-chart.ts';
import { hear, missed } from './step-run.ts';

export interface SessionWorld {
  readonly ledger: Ledger;
  /** Without one, no release is ever taken. */
  readonly releases?: ReleaseCheck;
  readonly clock: Clock;
  readonly mouth: Mouth;
  readonly ear: Ear | null;
  /** After the last sound, the ear stays shut this long: rooms echo. */
  readonly tailMs: number;
  readonly manner: () => { readonly rate: number; readonly volume: number; readonly pitch: number };
  /** Keeps how the mouth speaks from now on, when it was changed by a word. */
  readonly changeManner?: (manner: SpeechManner) => void;
  /** Called after every change, with what is to be shown. */
  readonly show: (state: RunState, notice: Notice) => void;
}

/** What the person must know about the devices, beside the run itself. */
export interface Notice {
  readonly sound: 'speaking' | 'listening' | 'deaf';
  readonly trouble: string | null;
  readonly advice: string | null;
  /** Decibels of the last sound level, for a meter; null without an ear. */
  readonly level: number | null;
  /** Whether what is said here leaves the device, by the ear in use. */
  readonly soundLeaves?: Ear['soundLeavesDevice'];
  /** Words met in the run that the ear in use has no pronunciation of, each once. */
  readonly unpronounced?: readonly string[];
}

export interface Session {
  /** The door for keys, buttons, foot switch, gauge and tests. */
  heard(heard: Heard): Promise<void>;
  giveUp(): Promise<void>;
  /** A note that was typed. */
  note(text: string): Promise<void>;
  /** Takes a release that this device has sealed, for the step that waits for one; any other is refused. */
  release(release: Release): Promise<void>;
  /** Puts on record that a release was tried in vain. */
  releaseRefused(byName: string, why: string): Promise<void>;
  /** Speaks the present line again from the start, such as after the first tap allowed sound. */
  repeat(): void;
  state(): RunState;
  /** Changes the ear in use; null is keys only. */
  listenWith(ear: Ear | null): Promise<void>;
  speakWith(mouth: Mouth): void;
  close(): Promise<void>;
}

/** Opens a session on a run that has begun or come back; `first` is what beginRun or comeBack gave. */
export async function openSession(first: RunStep, world: SessionWorld): Promise<Session> {
  const session = new LiveSession(first.state, world);
  await session.begin(first);
  return session;
}

/** So long a question to the Slate is waited for, from when the ear opens. */
const slatePatienceMs = 12_000;

const nothing = { text: '', alternatives: [], confidence: 1, from: 'speech' } as const;

class LiveSession implements Session {
  private run: RunState;
  private mouth: Mouth;
  private ear: Ear | null = null;
  private sounding: SoundSnapshot = beginSound();
  private notice: Notice = { sound: 'deaf', trouble: null, advice: null, level: null };
  private queue: Promise<void> = Promise.resolve();
  private line = 0;
  private earIsShut = false;
  /** The line after which the ear opens: what it reports meanwhile does not shut it again. */
  private opening = 0;
  /** What may break into the line that sounds. */
  private meanwhile = silent;
  /** To be said when the line that sounds is over. */
  private aside = '';
  private toldDeaf = false;
  private cancelSlate = () => {};
  private closed = false;

  constructor(
    state: RunState,
    private readonly world: SessionWorld,
  ) {
    this.run = state;
    this.mouth = world.mouth;
  }

  async begin(first: RunStep): Promise<void> {
    await this.carryOut(first);
    // Not waited for: the browser may ask whether the microphone is allowed, and keys count from the first line on.
    void this.listenWith(this.world.ear);
  }

  private get says() {
    return sayIn(this.run.job.flow.language, benchTexts);
  }

  state(): RunState {
    return this.run;
  }

  private get language() {
    return this.run.job.flow.language;
  }

  /** Sliders may have moved it. */
  private withManner(): RunState {
    const { rate, volume } = this.world.manner();
    return { ...this.run, manner: { rate, volume } };
  }

  heard(heard: Heard): Promise<void> {
    this.cancelSlate();
    return this.inTurn(() => this.carryOut(hear(this.withManner(), heard)));
  }

  giveUp(): Promise<void> {
    const heard: Heard = {
      text: this.says('giveUp'),
      alternatives: [],
      confidence: 1,
      from: 'touch',
      at: this.world.clock.now(),
    };
    return this.inTurn(() => this.carryOut(giveUp(this.run, heard)));
  }

  note(text: string): Promise<void> {
    const heard: Heard = { text, alternatives: [], confidence: 1, from: 'key', at: this.now() };
    return this.inTurn(() => this.carryOut(takeNote(this.run, heard, text)));
  }

  /** The seal is looked at in turn, so that it is judged against the step that stands then. */
  release(release: Release): Promise<void> {
    return this.inTurn(async () => {
      const genuine = (await this.world.releases?.genuine(release)) === true;
      const why = genuine
        ? staleRelease(this.run, release, this.now())
        : this.says('notThisDevice');
      if (why === undefined) return this.carryOut(takeRelease(this.run, release));
      return this.carryOut(refuseRelease(this.run, release.byName, why, this.now()));
    });
  }

  releaseRefused(byName: string, why: string): Promise<void> {
    return this.inTurn(() => this.carryOut(refuseRelease(this.run, byName, why, this.now())));
  }

  private now(): number {
    return this.world.clock.now();
  }

  repeat(): void {
    this.speak(this.run.lastLine);
  }

  speakWith(mouth: Mouth): void {
    this.mouth.hush();
    this.mouth = mouth;
  }

  async listenWith(ear: Ear | null): Promise<void> {
    const old = this.ear;
    this.ear = ear;
    const { unpronounced: _ofOld, ...notice } = this.notice;
    this.notice = notice;
    this.adopt(ear);
    if (old && old !== ear) await old.close();
    if (!ear) {
      this.talk({
        type: 'deaf',
        deafness: { kind: 'off', sentence: this.says('notListening') },
      });
      return;
    }
    this.earIsShut = false;
    await ear.open((report) => this.report(ear, report));
    this.tune();
  }

  /** What depends on the ear; one may hand over to another. */
  private adopt(ear: Ear | null): void {
    this.run = this.heardBy(ear, this.run);
    const { soundLeaves: _old, ...notice } = this.notice;
    this.notice = ear ? { ...notice, soundLeaves: ear.soundLeavesDevice } : notice;
  }

  private heardBy(ear: Ear | null, run: RunState): RunState {
    return { ...run, hearsFreely: ear?.hearsFreely === true };
  }

  async close(): Promise<void> {
    this.closed = true;
    this.mouth.hush();
    await this.ear?.close();
    this.ear = null;
  }

  /** Strictly one after the other: a word is never judged against a state that is about to change. */
  private inTurn(work: () => Promise<void>): Promise<void> {
    const done = this.queue.then(work);
    this.queue = done.catch(() => undefined);
    return done;
  }

  private report(from: Ear, report: EarReport): void {
    if (from !== this.ear || this.closed) return;
    switch (report.kind) {
      case 'listening':
        this.adopt(from);
        this.notice = { ...this.notice, trouble: null };
        this.talk({ type: 'hearing' });
        if (this.toldDeaf) this.sayAside(hearsAgainLine(this.language));
        this.toldDeaf = false;
        break;
      case 'deaf':
        this.notice = { ...this.notice, trouble: report.deafness.sentence };
        this.talk({ type: 'deaf', deafness: report.deafness });
        this.tellDeaf(report.deafness);
        break;
      case 'level':
        this.notice = { ...this.notice, level: report.decibels, advice: report.advice ?? null };
        this.world.show(this.run, this.notice);
        break;
      case 'unpronounced':
        this.cannotHear(report.words);
        break;
      case 'heard':
        if (this.counts(report.heard.text)) void this.heard(report.heard);
        break;
      case 'unclear':
        if (earOpen(this.sounding)) void this.unclear(report.text);
        break;
    }
  }

  private cannotHear(words: readonly string[]): void {
    const unpronounced = [...new Set([...(this.notice.unpronounced ?? []), ...words])];
    this.notice = { ...this.notice, unpronounced };
    this.world.show(this.run, this.notice);
  }

  /** While the mouth speaks, only what may break in. */
  private counts(text: string): boolean {
    return earOpen(this.sounding) || (this.earIsShut && breaksIn(this.meanwhile, text));
  }

  /** Said once, shown as long as it lasts. */
  private tellDeaf(deafness: Deafness): void {
    if (this.toldDeaf || deafness.kind === 'off') return;
    this.toldDeaf = true;
    this.sayAside(deafLine(this.language, deafness.kind));
  }

  /** Never cuts a line of the job short: it waits for its end. */
  private sayAside(line: string): void {
    if (this.sounding.value.mouth === 'speaking') this.aside = line;
    else this.speak(line);
  }

  private unclear(text: string): Promise<void> {
    this.cancelSlate();
    const heard: Heard = {
      text,
      alternatives: [],
      confidence: 0,
      from: 'speech',
      at: this.world.clock.now(),
    };
    return this.inTurn(() => this.carryOut(missed(this.run, heard)));
  }

  /** Keeps first; only what is kept counts. A word that could not be kept changes nothing. */
  private async carryOut(step: RunStep): Promise<void> {
    if (this.closed) return;
    try {
      for (const effect of step.effects) await this.keep(effect, step.state);
    } catch (error) {
      this.notKept(error);
      return;
    }
    this.run = this.heardBy(this.ear, step.state);
    this.world.show(this.run, this.notice);
    for (const effect of step.effects) this.sound(effect);
    this.tune();
  }

  private async keep(effect: Effect, state: RunState): Promise<void> {
    if (effect.kind === 'append') await this.world.ledger.append(effect.entry);
    if (effect.kind === 'finish') {
      const { status, endedAt, readings } = effect;
      await this.world.ledger.finish(state.head.id, { status, endedAt, readings });
    }
  }

  private notKept(error: unknown): void {
    const why = sentenceOf(error, this.run.job.flow.language);
    const trouble = this.says('notKept', { why });
    this.notice = { ...this.notice, trouble };
    this.world.show(this.run, this.notice);
    this.speak(this.says('notKeptSay'));
  }

  private sound(effect: Effect): void {
    if (effect.kind === 'say') this.speak(effect.line);
    if (effect.kind === 'cue') void this.mouth.cue(effect.cue);
    if (effect.kind === 'manner') this.world.changeManner?.(effect.manner);
  }

  /** A newer line cuts the older one short; only the newest may open the ear again. */
  private speak(line: string): void {
    if (line === '' || this.closed) return;
    const turn = ++this.line;
    this.meanwhile = interrupts(this.run, line);
    this.mouth.hush();
    this.talk({ type: 'say' });
    void this.mouth.say(line, this.world.manner()).then(() => {
      if (turn !== this.line) return;
      const { aside } = this;
      this.aside = '';
      if (aside !== '') return this.speak(aside);
      this.talk({ type: 'said' });
      this.world.clock.after(this.world.tailMs, () => void this.fallSilent(turn));
    });
  }

  /** "Listening" is shown when the ear is open, not before: it may wait for the room to fall silent. */
  private async fallSilent(turn: number): Promise<void> {
    if (turn !== this.line) return;
    this.opening = turn;
    await this.ear?.reopen();
    if (turn !== this.line || this.closed) return;
    this.earIsShut = false;
    this.talk({ type: 'quiet' });
    this.cancelSlate();
    if (this.run.slateAsked === undefined) return;
    this.cancelSlate = this.world.clock.after(slatePatienceMs, () => void this.dropSlate());
  }

  /** A question that does not come leaves the job waiting no longer. */
  private dropSlate(): Promise<void> {
    const heard = { ...nothing, at: this.now() };
    return this.inTurn(async () => {
      if (this.run.slateAsked !== undefined) await this.carryOut(leaveSlate(this.run, heard));
    });
  }

  private talk(event: SoundEvent): void {
    if (this.closed) return;
    this.sounding = stepSound(this.sounding, event);
    this.notice = { ...this.notice, sound: soundShown(this.sounding) };
    this.world.show(this.run, this.notice);
    this.tune();
  }

  /** The ear is shut while the mouth speaks, and told what counts now. */
  private tune(): void {
    const { ear } = this;
    if (!ear) return;
    const shut = this.sounding.value.mouth !== 'silent';
    if (shut && this.opening !== this.line) void ear.shut(this.meanwhile);
    else if (!shut && this.earIsShut) void ear.reopen();
    this.earIsShut = shut;
    ear.listenFor(listenFor(this.run));
  }
}
