/** The mouth of this page's own: text → worker → sound, played so that its end is known exactly. */
import type { Clock, Mouth, SayEnd } from '../../bench/ports.ts';
import { clauses } from '../shared/clauses.ts';
import type { FromMouth, ToMouth } from '../shared/messages.ts';
import type { AudioOut } from './audio-out.ts';
import type { Cues } from './cues.ts';

export interface OfflineMouthWorld {
  readonly clock: Clock;
  readonly audio: AudioOut;
  readonly cues: Cues;
  /** Starts the worker; called when first needed, and again after a failed load. */
  startWorker(): Promise<{ readonly worker: Worker; readonly start: ToMouth }>;
}

interface Manner {
  readonly rate?: number;
  readonly volume?: number;
}

type Sound = Extract<FromMouth, { kind: 'sound' }>;

const LOAD_LIMIT_MS = 60_000;
const SOUND_LIMIT_MS = 10_000;
/** Playing may end so much later than the sound is long before it counts as stalled. */
const PLAY_SLACK_MS = 1_500;

/** Makes the mouth with one of the engine's voices; loads nothing before the first line. */
export function offlineMouth(world: OfflineMouthWorld, voice = 'slt'): Mouth {
  return new OwnMouth(world, voice);
}

class OwnMouth implements Mouth {
  readonly name: string;
  private worker: Promise<Worker> | undefined;
  private readonly waiting = new Map<number, (sound: Sound | null) => void>();
  private nextId = 0;
  private line = 0;
  private stopSound = () => {};

  constructor(
    private readonly world: OfflineMouthWorld,
    private readonly voice: string,
  ) {
    this.name = `voice of this page, ${voice}`;
  }

  async say(line: string, manner: Manner = {}): Promise<SayEnd> {
    this.hush();
    const mine = this.line;
    try {
      return await this.sayPieces(clauses(line), manner, mine);
    } catch {
      return mine === this.line ? 'failed' : 'cut';
    }
  }

  async cue(cue: 'heard' | 'unclear' | 'stop'): Promise<void> {
    await this.world.cues.play(cue);
  }

  hush(): void {
    this.line++;
    this.stopSound();
    this.stopSound = () => {};
  }

  /** Each piece is made while the one before it sounds. */
  private async sayPieces(
    pieces: readonly string[],
    manner: Manner,
    mine: number,
  ): Promise<SayEnd> {
    let next = this.make(pieces[0] ?? '', manner);
    for (const [i] of pieces.entries()) {
      const sound = await next;
      if (mine !== this.line) return 'cut';
      if (!sound) return 'failed';
      const following = pieces[i + 1];
      if (following !== undefined) next = this.make(following, manner);
      const end = await this.play(sound, manner.volume ?? 1);
      if (mine !== this.line) return 'cut';
      if (end === 'failed') return 'failed';
    }
    return 'said';
  }

  private async make(text: string, { rate = 1 }: Manner): Promise<Sound | null> {
    const worker = await this.started();
    const id = this.nextId++;
    return new Promise((resolve) => {
      const cancel = this.world.clock.after(SOUND_LIMIT_MS, () => this.lose(worker));
      const answer = (sound: Sound | null) => {
        cancel();
        this.waiting.delete(id);
        resolve(sound);
      };
      this.waiting.set(id, answer);
      const message: ToMouth = { kind: 'say', id, text, voice: this.voice, rate };
      worker.postMessage(message);
    });
  }

  private started(): Promise<Worker> {
    this.worker ??= this.start().catch((problem: unknown) => {
      // Not remembered: the next line tries the load again.
      this.worker = undefined;
      throw problem;
    });
    return this.worker;
  }

  /** A worker that has broken down answers nothing more: the next line starts another. */
  private lose(worker: Worker): void {
    worker.terminate();
    this.worker = undefined;
    for (const answer of [...this.waiting.values()]) answer(null);
  }

  private async start(): Promise<Worker> {
    const { worker, start } = await this.world.startWorker();
    return new Promise((resolve, reject) => {
      const fail = (reason: string) => {
        worker.terminate();
        reject(new Error(reason));
      };
      const cancel = this.world.clock.after(LOAD_LIMIT_MS, () => fail('It did not load in time.'));
      worker.onerror = () => fail('Its program did not start.');
      worker.onmessage = ({ data }: MessageEvent<FromMouth>) => {
        if (data.kind === 'ready' || data.kind === 'failed') cancel();
        if (data.kind === 'ready') {
          worker.onerror = () => this.lose(worker);
          resolve(worker);
        } else if (data.kind === 'failed') fail(data.reason);
        else this.waiting.get(data.id)?.(data.kind === 'sound' ? data : null);
      };
      worker.postMessage(start);
    });
  }

  private play(sound: Sound, volume: number): Promise<'ended' | 'failed'> {
    const context = this.world.audio.context();
    if (!context) return Promise.resolve('failed');
    const buffer = context.createBuffer(1, sound.samples.length, sound.rate);
    buffer.copyToChannel(sound.samples, 0);
    const source = new AudioBufferSourceNode(context, { buffer });
    source.connect(new GainNode(context, { gain: volume })).connect(context.destination);
    return new Promise((resolve) => {
      const limit = 1000 * buffer.duration + PLAY_SLACK_MS;
      const cancel = this.world.clock.after(limit, () => finish('failed'));
      const finish = (end: 'ended' | 'failed') => {
        cancel();
        source.onended = null;
        source.disconnect();
        resolve(end);
      };
      source.onended = () => finish('ended');
      this.stopSound = () => {
        source.stop();
        finish('ended');
      };
      source.start();
    });
  }
}
