/** The ear of this page's own: microphone → samples → worker. No sound leaves the page. */
import type { Clock, Deafness, Ear, EarReport, ListenFor } from '../../bench/ports.ts';
import type { FromEar, ToEar } from '../shared/messages.ts';
import { captureSamples } from './capture-samples.ts';
import { type Microphone, openMicrophone } from './microphone.ts';
import type { MicrophoneLock } from './microphone-lock.ts';

export interface OfflineEarWorld {
  readonly clock: Clock;
  readonly lock: MicrophoneLock;
  readonly devices: Pick<MediaDevices, 'getUserMedia'> | undefined;
  /** Starts the worker; called at each opening, so that a failed load is tried anew. */
  startWorker(): Promise<{ readonly worker: Worker; start(channel?: string): ToEar }>;
  /** Small things kept for the next time, such as the microphone's colour. Never sound. */
  readonly keep?: { get(key: string): string | null; set(key: string, value: string): void };
}

/** The ear, with what only it can do: learn one person's voice. */
export interface OfflineEar extends Ear {
  /** The next clear utterance becomes a pattern for the phrase; resolves with how many it has. */
  enrol(phrase: string): Promise<number>;
  forgetVoice(): void;
  /** Words of the last said list that have no pronunciation. */
  readonly missing: readonly string[];
}

const CHANNEL = 'followrest channel';
/** After the mouth's last sound a room still rings, and the loudspeaker's buffer runs empty. */
const TAIL_MS = 250;
const READY_LIMIT_MS = 30_000;

/** Makes the ear; nothing is loaded or opened before `open`. */
export function offlineEar(world: OfflineEarWorld): OfflineEar {
  return new OwnEar(world);
}

class OwnEar implements OfflineEar {
  readonly name = 'ear of this page, no network';
  readonly soundLeavesDevice = 'no';
  missing: readonly string[] = [];
  private report: (report: EarReport) => void = () => {};
  private words: ListenFor = { phrases: [] };
  private worker: Worker | undefined;
  private microphone: Microphone | undefined;
  private stopCapture: () => void = () => {};
  /** Counts openings, so that what an earlier one started knows it is outdated. */
  private opening = 0;
  private isShut = false;
  private cancelTail = () => {};
  private enrolled: ((times: number) => void) | undefined;

  constructor(private readonly world: OfflineEarWorld) {}

  async open(report: (report: EarReport) => void): Promise<void> {
    await this.close();
    const mine = ++this.opening;
    this.report = report;
    const microphone = await openMicrophone(this.world.devices, this.world.lock);
    if ('kind' in microphone) return this.goDeaf(mine, microphone);
    if (mine !== this.opening) return microphone.release();
    this.microphone = microphone;
    microphone.onGone(() => this.goDeaf(mine, UNPLUGGED));
    try {
      await this.startHearing(mine, microphone);
    } catch (problem) {
      this.goDeaf(mine, notLoaded(problem));
    }
  }

  listenFor(words: ListenFor): void {
    this.words = words;
    this.send({ kind: 'listen-for', words });
  }

  async shut(): Promise<void> {
    this.isShut = true;
    this.cancelTail();
    this.send({ kind: 'shut' });
    this.microphone?.listen(false);
  }

  /** Listens again after the tail; a `shut` in between wins. */
  async reopen(): Promise<void> {
    this.cancelTail();
    this.microphone?.listen(true);
    await new Promise<void>((resolve) => {
      const cancel = this.world.clock.after(TAIL_MS, () => {
        this.isShut = false;
        this.send({ kind: 'reopen' });
        resolve();
      });
      this.cancelTail = () => {
        cancel();
        resolve();
      };
    });
  }

  async close(): Promise<void> {
    this.opening++;
    this.isShut = false;
    this.cancelTail();
    this.letGo();
  }

  enrol(phrase: string): Promise<number> {
    this.send({ kind: 'enrol', phrase });
    return new Promise((resolve) => {
      this.enrolled = resolve;
    });
  }

  forgetVoice(): void {
    this.send({ kind: 'forget-voice' });
  }

  private async startHearing(mine: number, microphone: Microphone): Promise<void> {
    const { worker, start } = await this.world.startWorker();
    if (mine !== this.opening) return worker.terminate();
    this.worker = worker;
    await new Promise<void>((ready, failed) => {
      const cancel = this.world.clock.after(READY_LIMIT_MS, () =>
        failed(new Error('It took longer than thirty seconds.')),
      );
      worker.onmessage = ({ data }: MessageEvent<FromEar>) => {
        if (data.kind === 'ready') {
          cancel();
          ready();
        } else if (data.kind === 'failed') failed(new Error(data.reason));
        else if (mine === this.opening) this.take(data);
      };
      worker.onerror = () => failed(new Error('Its program did not start.'));
      worker.postMessage(start(this.world.keep?.get(CHANNEL) ?? undefined));
      this.send({ kind: 'listen-for', words: this.words });
      if (this.isShut) this.send({ kind: 'shut' });
    });
    if (mine !== this.opening) return;
    this.stopCapture = await captureSamples(microphone.stream, (samples, rate) => {
      if (!this.isShut && mine === this.opening) this.sendSound(samples, rate);
    });
    if (mine !== this.opening) return this.stopCapture();
    this.report({ kind: 'listening' });
  }

  private take(message: FromEar): void {
    switch (message.kind) {
      case 'heard':
        if (!this.isShut) this.sayHeard(message.text, message.confidence);
        break;
      case 'unclear':
        if (!this.isShut) this.report({ kind: 'unclear', text: message.text });
        break;
      case 'level':
        this.report(message);
        break;
      case 'noisy':
        this.report(message.noisy ? { kind: 'deaf', deafness: NOISY } : { kind: 'listening' });
        break;
      case 'missing':
        this.missing = message.words;
        break;
      case 'channel':
        this.world.keep?.set(CHANNEL, message.channel);
        break;
      case 'enrolled':
        this.enrolled?.(message.times);
        this.enrolled = undefined;
        break;
    }
  }

  private sayHeard(text: string, confidence: number): void {
    const at = this.world.clock.now();
    const heard = { text, alternatives: [], confidence, from: 'speech', at } as const;
    this.report({ kind: 'heard', heard });
  }

  private send(message: ToEar): void {
    this.worker?.postMessage(message);
  }

  private sendSound(samples: Float32Array, rate: number): void {
    this.worker?.postMessage({ kind: 'sound', samples, rate }, [samples.buffer]);
  }

  private goDeaf(mine: number, deafness: Deafness): void {
    if (mine !== this.opening) return;
    this.letGo();
    this.report({ kind: 'deaf', deafness });
  }

  private letGo(): void {
    this.stopCapture();
    this.stopCapture = () => {};
    this.worker?.terminate();
    this.worker = undefined;
    this.microphone?.release();
    this.microphone = undefined;
  }
}

const NOISY: Deafness = {
  kind: 'noisy',
  sentence:
    'It is too loud here to hear you safely. Use the keys or the foot switch until it is quieter, or move the microphone closer.',
};
const UNPLUGGED: Deafness = {
  kind: 'missing',
  sentence: 'The microphone was unplugged. Plug it in, then open the ear again.',
};

function notLoaded(problem: unknown): Deafness {
  const why = problem instanceof Error ? problem.message : String(problem);
  return {
    kind: 'failing',
    sentence: `The ear of this page did not start. ${why} Try again, or use keys.`,
  };
}
