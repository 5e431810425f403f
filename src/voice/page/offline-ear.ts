/** The ear of this page's own: microphone → samples → worker. No sound leaves the page. */
import type { Clock, Deafness, Ear, EarReport, ListenFor } from '../../bench/ports.ts';
import { englishLanguage, hearingTexts, type Language, sayIn } from '../../texts/index.ts';
import type { LevelAdvice } from '../shared/level-advice.ts';
import type { FromEar, ToEar } from '../shared/messages.ts';
import { captureSamples } from './capture-samples.ts';
import { deafness, NotStarted, notStarted } from './deafness.ts';
import { type EarStore, earStore, type Shelf } from './ear-store.ts';
import { isSame, NOTHING } from './meanwhile.ts';
import { type Microphone, openMicrophone } from './microphone.ts';
import type { MicrophoneLock } from './microphone-lock.ts';
import { RoomEcho } from './room-echo.ts';

export interface OfflineEarWorld {
  readonly clock: Clock;
  /** Of the sentences about trouble; English without it. */
  readonly language?: Language;
  readonly lock: MicrophoneLock;
  readonly devices: Pick<MediaDevices, 'getUserMedia'> | undefined;
  /** Starts the worker; called at each opening, so that a failed load is tried anew. */
  startWorker(): Promise<{ readonly worker: Worker; start(kept: Kept): ToEar }>;
  /** Where the few numbers about microphone, room and voice are kept. Never sound. */
  readonly shelf?: Shelf;
  /** Whose voice it is that is learnt. */
  readonly person?: () => string;
}

/** What is handed to the engine from earlier visits. */
export type Kept = Pick<EarStore, 'channel' | 'room' | 'voice'>;

/** How one saying of a phrase was taken as a pattern. */
export type Enrolled =
  | { readonly kind: 'kept'; readonly times: number }
  | {
      readonly kind: 'again';
      readonly reason: 'too-quiet' | 'too-short' | 'too-long' | 'unlike' | 'nothing';
    };

export interface RoomMeasured {
  /** Of full scale. */
  readonly decibels: number;
  readonly isSafe: boolean;
  readonly advice?: string;
}

/** The ear, with what only it can do: learn one person's voice and one room. */
export interface OfflineEar extends Ear {
  /** The next clear utterance becomes a pattern for the phrase. Ends by itself when nothing is said. */
  enrol(phrase: string): Promise<Enrolled>;
  stopEnrolling(): void;
  /** Of this person at this microphone. */
  forgetVoice(): void;
  readonly voiceKey: string | undefined;
  /** How often each phrase is known in this person's voice at this microphone. */
  readonly known: Readonly<Record<string, number>>;
  /** Ten seconds of the room without speech. Null when it was broken off or did not end. */
  measureRoom(): Promise<RoomMeasured | null>;
}

/** After the mouth's last sound a room still rings, and the loudspeaker's buffer runs empty. */
const LEAST_TAIL_MS = 100;
/** A room that does not fall silent is noisy, and noise is no reason not to listen. */
const MOST_TAIL_MS = 1_500;
const READY_LIMIT_MS = 30_000;
const ENROL_LIMIT_MS = 12_000;
const ROOM_SECONDS = 10;
const ROOM_LIMIT_MS = 15_000;
/** Sound comes ten times a second; without any for twice this, nothing can be heard. */
const SOUNDLESS_MS = 2_000;

const LISTENING: EarReport = { kind: 'listening' };

/** Makes the ear; nothing is loaded or opened before `open`. */
export function offlineEar(world: OfflineEarWorld): OfflineEar {
  return new OwnEar(world);
}

class OwnEar implements OfflineEar {
  readonly name: string;
  readonly soundLeavesDevice = 'no';
  private report: (report: EarReport) => void = () => {};
  private words: ListenFor = { phrases: [] };
  private worker: Worker | undefined;
  private microphone: Microphone | undefined;
  private store: EarStore | undefined;
  private stopCapture: () => void = () => {};
  /** Counts openings, so that what an earlier one started knows it is outdated. */
  private opening = 0;
  private isShut = false;
  private meanwhile = NOTHING;
  private echo = new RoomEcho();
  private cancelWatch = () => {};
  private isSoundless = false;
  /** What the room lets through, as it was told last. */
  private roomSays: EarReport = LISTENING;
  private tail: Tail | undefined;
  private enrolled: ((enrolled: Enrolled) => void) | undefined;
  private measured: ((room: RoomMeasured | null) => void) | undefined;

  constructor(private readonly world: OfflineEarWorld) {
    this.name = this.say('earOwn');
  }

  private get language(): Language {
    return this.world.language ?? englishLanguage;
  }

  private get say() {
    return sayIn(this.language, hearingTexts);
  }

  get known(): Readonly<Record<string, number>> {
    const patterns = Object.entries(this.store?.voice?.patterns ?? {});
    return Object.fromEntries(patterns.map(([phrase, takes]) => [phrase, takes.length]));
  }

  get voiceKey(): string | undefined {
    return this.store?.voiceKey;
  }

  async open(report: (report: EarReport) => void): Promise<void> {
    await this.close();
    const mine = ++this.opening;
    this.report = report;
    const microphone = await openMicrophone(this.world.devices, this.world.lock, this.language);
    if ('kind' in microphone) return this.goDeaf(mine, microphone);
    if (mine !== this.opening) return microphone.release();
    this.microphone = microphone;
    const { shelf, person } = this.world;
    this.store = shelf && earStore(shelf, microphone.id, person?.() ?? '');
    microphone.onGone(() => this.goDeaf(mine, deafness(this.language, 'unplugged')));
    try {
      await this.startHearing(mine, microphone);
    } catch (problem) {
      this.goDeaf(mine, notStarted(this.language, problem));
    }
  }

  listenFor(words: ListenFor): void {
    this.words = words;
    this.send({ kind: 'listen-for', words });
  }

  async shut(meanwhile = NOTHING): Promise<void> {
    this.tail?.end();
    if (this.isShut && isSame(meanwhile, this.meanwhile)) return;
    this.isShut = true;
    this.meanwhile = meanwhile;
    this.send(this.shutting());
  }

  /** Listens again once the room has fallen silent; a `shut` in between wins. */
  async reopen(): Promise<void> {
    this.tail?.end();
    if (!this.isShut) return;
    if (await this.roomIsQuiet()) {
      this.isShut = false;
      this.meanwhile = NOTHING;
      this.send({ kind: 'reopen' });
    }
  }

  async close(): Promise<void> {
    this.opening++;
    this.isShut = false;
    this.meanwhile = NOTHING;
    this.tail?.end();
    this.letGo();
  }

  enrol(phrase: string): Promise<Enrolled> {
    this.enrolled?.({ kind: 'again', reason: 'nothing' });
    this.send({ kind: 'enrol', phrase });
    return this.awaited<Enrolled>(
      ENROL_LIMIT_MS,
      { kind: 'again', reason: 'nothing' },
      (answer) => {
        this.enrolled = answer;
      },
    ).finally(() => {
      this.stopEnrolling();
    });
  }

  stopEnrolling(): void {
    this.enrolled = undefined;
    this.send({ kind: 'stop-enrolling' });
  }

  forgetVoice(): void {
    this.store?.forgetVoice();
    this.send({ kind: 'forget-voice' });
  }

  measureRoom(): Promise<RoomMeasured | null> {
    this.measured?.(null);
    this.send({ kind: 'measure-room', seconds: ROOM_SECONDS });
    return this.awaited<RoomMeasured | null>(ROOM_LIMIT_MS, null, (answer) => {
      this.measured = answer;
    });
  }

  /** An answer of the engine, or `late` when none comes. */
  private awaited<T>(ms: number, late: T, take: (answer: (value: T) => void) => void): Promise<T> {
    return new Promise((resolve) => {
      const cancel = this.world.clock.after(ms, () => resolve(late));
      take((value) => {
        cancel();
        resolve(value);
      });
    });
  }

  private shutting(): ToEar {
    const { meanwhile } = this;
    return meanwhile.still.length === 0 ? { kind: 'shut' } : { kind: 'shut', meanwhile };
  }

  /** False when something else has ended the wait. */
  private roomIsQuiet(): Promise<boolean> {
    return new Promise((resolve) => {
      const least = this.world.clock.now() + LEAST_TAIL_MS;
      const cancel = this.world.clock.after(MOST_TAIL_MS, () => finish(true));
      const finish = (quiet: boolean) => {
        cancel();
        this.tail = undefined;
        resolve(quiet);
      };
      this.tail = {
        end: () => finish(false),
        hear: (piece) => {
          if (this.world.clock.now() >= least && this.echo.isOver(piece)) finish(true);
        },
      };
    });
  }

  private async startHearing(mine: number, microphone: Microphone): Promise<void> {
    const { worker, start } = await this.world.startWorker();
    if (mine !== this.opening) return worker.terminate();
    this.worker = worker;
    await new Promise<void>((ready, failed) => {
      const cancel = this.world.clock.after(READY_LIMIT_MS, () =>
        failed(new NotStarted('tooSlow')),
      );
      worker.onmessage = ({ data }: MessageEvent<FromEar>) => {
        if (data.kind === 'ready') {
          cancel();
          ready();
        } else if (data.kind === 'failed') failed(new Error(data.reason));
        else if (mine === this.opening) this.take(data);
      };
      worker.onerror = () => failed(new NotStarted('noProgram'));
      const { channel, room, voice } = this.store ?? {};
      worker.postMessage(start({ channel, room, voice }));
      this.send({ kind: 'listen-for', words: this.words });
      if (this.isShut) this.send(this.shutting());
    });
    if (mine !== this.opening) return;
    worker.onerror = () => this.goDeaf(mine, deafness(this.language, 'broken'));
    this.stopCapture = await captureSamples(microphone.stream, (samples, rate) => {
      if (mine === this.opening) this.takeSound(samples, rate);
    });
    if (mine !== this.opening) return this.stopCapture();
    this.report(LISTENING);
    this.watchSound();
  }

  /**
   * A page that was asleep, or may make no sound before it is touched, gets none, without a word from the browser.
   * Asked twice, since a page that was busy finds what has come in the meantime only then.
   */
  private watchSound(isSecond = false): void {
    this.cancelWatch = this.world.clock.after(SOUNDLESS_MS, () => {
      if (!isSecond) return this.watchSound(true);
      this.isSoundless = true;
      this.report({ kind: 'deaf', deafness: deafness(this.language, 'noSound') });
    });
  }

  private soundCame(): void {
    this.cancelWatch();
    this.watchSound();
    if (this.isSoundless) this.report(this.roomSays);
    this.isSoundless = false;
  }

  private take(message: FromEar): void {
    switch (message.kind) {
      case 'heard':
        if (this.mayTell(message.text)) this.sayHeard(message.text, message.confidence);
        break;
      case 'unclear':
        if (!this.isShut) this.report({ kind: 'unclear', text: message.text });
        break;
      case 'level':
        this.report({ ...this.advised(message), kind: 'level' });
        break;
      case 'noisy':
        this.roomSays = message.noisy ? this.tooNoisy(message) : LISTENING;
        this.report(this.roomSays);
        break;
      case 'missing':
        this.report({ kind: 'unpronounced', words: message.words });
        break;
      case 'channel':
        this.store?.keepChannel(message.channel);
        break;
      default:
        this.takeLearnt(message);
    }
  }

  private takeLearnt(message: FromEar): void {
    switch (message.kind) {
      case 'enrolled':
        if (message.voice) this.store?.keepVoice(message.voice);
        this.enrolled?.({ kind: 'kept', times: message.times });
        break;
      case 'not-enrolled':
        this.enrolled?.({ kind: 'again', reason: message.reason });
        break;
      case 'room-measured':
        this.store?.keepRoom(message.room);
        this.measured?.(this.advised(message));
        this.measured = undefined;
        break;
    }
  }

  /** The same, with the advice as a sentence. */
  private advised<M extends { readonly decibels: number; readonly advice?: LevelAdvice }>({
    advice,
    ...rest
  }: M) {
    return { ...rest, ...(advice ? { advice: this.say(advice) } : {}) };
  }

  private tooNoisy({ advice }: { readonly advice?: LevelAdvice }): EarReport {
    const sentence = [this.say('tooNoisy'), ...(advice ? [this.say(advice)] : [])].join(' ');
    return { kind: 'deaf', deafness: { kind: 'noisy', sentence } };
  }

  private mayTell(text: string): boolean {
    return !this.isShut || this.meanwhile.still.includes(text);
  }

  private sayHeard(text: string, confidence: number): void {
    const at = this.world.clock.now();
    const heard = { text, alternatives: [], confidence, from: 'speech', at } as const;
    this.report({ kind: 'heard', heard });
  }

  private send(message: ToEar): void {
    this.worker?.postMessage(message);
  }

  private takeSound(samples: Float32Array, rate: number): void {
    this.soundCame();
    if (this.isShut) this.tail?.hear(samples);
    else this.echo.learn(samples);
    if (this.isShut && this.meanwhile.still.length === 0) return;
    this.worker?.postMessage({ kind: 'sound', samples, rate }, [samples.buffer]);
  }

  private goDeaf(mine: number, deafness: Deafness): void {
    if (mine !== this.opening) return;
    this.letGo();
    this.report({ kind: 'deaf', deafness });
  }

  private letGo(): void {
    this.cancelWatch();
    this.isSoundless = false;
    this.roomSays = LISTENING;
    this.stopCapture();
    this.stopCapture = () => {};
    this.worker?.terminate();
    this.worker = undefined;
    this.microphone?.release();
    this.microphone = undefined;
    this.measured?.(null);
    this.measured = undefined;
    this.echo = new RoomEcho();
  }
}

/** The wait between the mouth's last sound and the open ear. */
interface Tail {
  hear(piece: Float32Array): void;
  end(): void;
}
