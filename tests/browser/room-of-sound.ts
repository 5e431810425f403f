/**
 * A room for a page in Chromium: the browser's fake microphone stands in it, and so does the page's loudspeaker.
 * What a person says is read by the fake device from a WAV file, at the moment it is said; what the page plays is
 * recorded, and comes back into the microphone more softly, as in a room. Nothing between is scripted.
 */

import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { resampleSound, type Sound, writeWav } from '../../src/voice/shared/index.ts';

/** What the page's side of the room shows to the test. */
interface Room {
  /** Opens the fake device for so long: it plays its file from the start. Resolves to when it opened. */
  listenToDevice(ms: number): Promise<number>;
  /** Lines that were given to the mouth of the page. */
  readonly lines: string[];
  /** When each was given, by the page's own clock. */
  readonly times: number[];
  /** What the loudspeaker played since the last call, as 16-bit samples, and their rate. */
  takePlayed(): { readonly rate: number; readonly samples: string };
  /** How strongly the loudspeaker comes back into the microphone: 0.2 in a room, less with a headset. */
  setEcho(gain: number): void;
  /** What the page's ear made of what it heard: words, and null for sound that it did not understand. */
  readonly decisions: (string | null)[];
  /** Seconds of sound the ear has worked through while it was open: its own clock, however busy the machine is. */
  readonly earSeconds: number;
  /** What the page asked of the microphone. */
  readonly asked: MediaStreamConstraints[];
}

declare global {
  interface Window {
    room: Room;
  }
}

export const RATE = 16_000;
/** The device needs a moment to open, and to play the end. */
const BEFORE_S = 0.3;
const AFTER_S = 0.2;

export interface RoomOfSound {
  /** Switches for Chromium. */
  readonly switches: readonly string[];
  /** Call before the page is opened. */
  enter(page: Page): Promise<void>;
  /** Says the sound into the page's microphone; resolves when it is over, to the page's time of its last sample. */
  say(page: Page, sound: Sound): Promise<number>;
  played(page: Page): Promise<Sound>;
  remove(): void;
}

export function roomOfSound(): RoomOfSound {
  const folder = mkdtempSync(join(tmpdir(), 'followrest-room-'));
  const file = join(folder, 'said.wav');
  writeFileSync(file, writeWav({ rate: RATE, samples: new Int16Array(RATE) }));
  return {
    switches: [
      '--use-fake-ui-for-media-stream',
      '--use-fake-device-for-media-stream',
      `--use-file-for-fake-audio-capture=${file}%noloop`,
      '--autoplay-policy=no-user-gesture-required',
    ],
    async enter(page) {
      // A compiler that keeps the names of functions leaves calls of this behind.
      await page.addInitScript('globalThis.__name ??= (one) => one;');
      await page.addInitScript(furnish);
    },
    async say(page, sound) {
      const spoken = resampleSound(sound.samples, sound.rate, RATE);
      const samples = new Int16Array(spoken.length + (BEFORE_S + AFTER_S) * RATE);
      samples.set(spoken, BEFORE_S * RATE);
      writeFileSync(file, writeWav({ rate: RATE, samples }));
      const ms = (1000 * samples.length) / RATE;
      const opened = await page.evaluate((length) => window.room.listenToDevice(length), ms);
      return opened + ms - 1_000 * AFTER_S;
    },
    async played(page) {
      const { rate, samples } = await page.evaluate(() => window.room.takePlayed());
      const bytes = Buffer.from(samples, 'base64');
      const aligned = new Uint8Array(bytes).buffer;
      return { rate, samples: new Int16Array(aligned) };
    },
    remove: () => rmSync(folder, { recursive: true }),
  };
}

/** Runs in the page, before its own scripts. */
function furnish(): void {
  const devices = navigator.mediaDevices;
  if (!devices) return;
  const openDevice = devices.getUserMedia.bind(devices);
  const asked: MediaStreamConstraints[] = [];
  let air: { readonly context: AudioContext; readonly out: MediaStreamAudioDestinationNode };
  const makeAir = () => {
    const context = new AudioContext();
    const out = context.createMediaStreamDestination();
    hiss(context).connect(out);
    air = { context, out };
    for (const stream of loudspeakers) echo(stream);
    return out.stream;
  };
  devices.getUserMedia = async (wanted) => {
    asked.push(wanted ?? {});
    return makeAir();
  };

  /** No room is wholly silent, and no ear is made for digital zeros. */
  function hiss(context: AudioContext): AudioNode {
    const buffer = context.createBuffer(1, context.sampleRate, context.sampleRate);
    const samples = buffer.getChannelData(0);
    let seed = 1;
    for (let i = 0; i < samples.length; i++) {
      seed = (seed * 16_807) % 2_147_483_647;
      samples[i] = 0.002 * (seed / 1_073_741_823.5 - 1);
    }
    const source = new AudioBufferSourceNode(context, { buffer, loop: true });
    source.start();
    return source;
  }

  const loudspeakers: MediaStream[] = [];
  const echoes: GainNode[] = [];
  const pieces: Float32Array[] = [];
  let rate = 0;
  const recorders = new WeakMap<BaseAudioContext, AudioNode>();
  type Connect = (this: AudioNode, to: AudioNode) => AudioNode;
  const connect = AudioNode.prototype.connect as Connect;
  AudioNode.prototype.connect = function (this: AudioNode, to: AudioNode) {
    const { context } = this;
    if (to === context.destination && context instanceof AudioContext) {
      connect.call(this, recorderOf(context));
    }
    return connect.call(this, to);
  } as typeof AudioNode.prototype.connect;

  function recorderOf(context: AudioContext): AudioNode {
    const known = recorders.get(context);
    if (known) return known;
    const recorder = context.createScriptProcessor(16_384, 1, 1);
    rate = context.sampleRate;
    recorder.onaudioprocess = ({ inputBuffer }) =>
      pieces.push(inputBuffer.getChannelData(0).slice());
    connect.call(recorder, context.destination);
    const stream = context.createMediaStreamDestination();
    const both = new GainNode(context);
    connect.call(both, recorder);
    connect.call(both, stream);
    loudspeakers.push(stream.stream);
    echo(stream.stream);
    recorders.set(context, both);
    return both;
  }

  /** The loudspeaker reaches the microphone 14 dB softer and 60 ms late. */
  function echo(stream: MediaStream): void {
    if (!air) return;
    const { context, out } = air;
    const source = context.createMediaStreamSource(stream);
    const late = new DelayNode(context, { delayTime: 0.06 });
    connect.call(source, late);
    const soft = new GainNode(context, { gain: 0.2 });
    echoes.push(soft);
    connect.call(late, soft);
    connect.call(soft, out);
  }

  const decisions: (string | null)[] = [];
  let earSeconds = 0;
  const RealWorker = window.Worker;
  window.Worker = class extends RealWorker {
    constructor(address: string | URL, options?: WorkerOptions) {
      super(address, options);
      this.addEventListener('message', ({ data }: MessageEvent) => {
        const told = data as { readonly kind?: unknown; readonly text?: unknown };
        if (told.kind === 'level') earSeconds++;
        if (told.kind === 'heard') decisions.push(String(told.text));
        if (told.kind === 'unclear') decisions.push(null);
      });
    }
  };

  const lines: string[] = [];
  const times: number[] = [];
  type Post = (this: Worker, message: unknown, move: Transferable[]) => void;
  const post = Worker.prototype.postMessage as Post;
  Worker.prototype.postMessage = function (
    this: Worker,
    message: unknown,
    more: Transferable[] = [],
  ) {
    const said = message as { readonly kind?: unknown; readonly text?: unknown } | null;
    if (said?.kind === 'say' && typeof said.text === 'string') {
      lines.push(said.text);
      times.push(performance.now());
    }
    post.call(this, message, more);
  } as typeof Worker.prototype.postMessage;

  window.room = {
    lines,
    times,
    decisions,
    get earSeconds() {
      return earSeconds;
    },
    setEcho(gain) {
      for (const echo of echoes) echo.gain.value = gain;
    },
    asked,
    async listenToDevice(ms) {
      const raw = { echoCancellation: false, noiseSuppression: false, autoGainControl: false };
      const stream = await openDevice({ audio: raw });
      const opened = performance.now();
      const source = air.context.createMediaStreamSource(stream);
      connect.call(source, air.out);
      // By the clock of the sound itself: a busy machine plays late.
      const until = air.context.currentTime + ms / 1000;
      await new Promise((over) => setTimeout(over, ms));
      while (air.context.currentTime < until) await new Promise((more) => setTimeout(more, 20));
      source.disconnect();
      for (const track of stream.getTracks()) track.stop();
      return opened;
    },
    takePlayed() {
      const length = pieces.reduce((sum, piece) => sum + piece.length, 0);
      const samples = new Int16Array(length);
      let at = 0;
      for (const piece of pieces.splice(0)) {
        for (const value of piece) {
          samples[at++] = Math.round(32_767 * Math.max(-1, Math.min(1, value)));
        }
      }
      const bytes = new Uint8Array(samples.buffer);
      let text = '';
      for (let i = 0; i < bytes.length; i += 32_768) {
        text += String.fromCharCode(...bytes.subarray(i, i + 32_768));
      }
      return { rate, samples: btoa(text) };
    },
  };
}
