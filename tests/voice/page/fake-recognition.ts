/** A browser recogniser that behaves as badly as real ones were reported to: see each test's title. */
import type { EarReport } from '../../../src/bench/ports.ts';
import { type BrowserEarMode, browserEar } from '../../../src/voice/page/browser-ear.ts';
import type {
  Recognition,
  RecognitionConstructor,
  RecognitionResults,
} from '../../../src/voice/page/recognition.ts';
import { fakeClock } from '../fake-clock.ts';

export class FakeRecognition implements Recognition {
  static made: FakeRecognition[] = [];
  static startsAt: number[] = [];
  static now: () => number = () => 0;
  static startThrows: string | undefined;
  /** What `abort` does: real ones answer with an error and an end, or not at all. */
  static abortAnswers = true;
  static availability: Promise<string> = Promise.resolve('available');
  static installation: Promise<boolean> = Promise.resolve(true);
  static available = () => FakeRecognition.availability;
  static install = () => FakeRecognition.installation;

  lang = '';
  continuous = true;
  interimResults = true;
  maxAlternatives = 1;
  processLocally = false;
  phrases: unknown = [];
  onstart: (() => void) | null = null;
  onaudiostart: (() => void) | null = null;
  onresult: ((event: RecognitionResults) => void) | null = null;
  onnomatch: (() => void) | null = null;
  onerror: ((event: { readonly error: string }) => void) | null = null;
  onend: (() => void) | null = null;
  aborted = 0;

  constructor() {
    FakeRecognition.made.push(this);
  }

  start(): void {
    FakeRecognition.startsAt.push(FakeRecognition.now());
    if (FakeRecognition.startThrows) {
      throw new DOMException('refused', FakeRecognition.startThrows);
    }
  }
  stop(): void {}
  abort(): void {
    this.aborted++;
    if (!FakeRecognition.abortAnswers) return;
    this.onerror?.({ error: 'aborted' });
    this.onend?.();
  }

  begins(): void {
    this.onstart?.();
    this.onaudiostart?.();
  }
  fails(error: string): void {
    this.onerror?.({ error });
    this.onend?.();
  }
  gives(...texts: readonly (readonly [text: string, confidence: number, isFinal?: boolean])[]) {
    const results = texts.map(([transcript, confidence, isFinal = true]) =>
      Object.assign([{ transcript, confidence }], { isFinal }),
    );
    this.onresult?.({ resultIndex: 0, results });
  }
}

/** An ear over a fresh fake browser, and the means to play with it. */
export function earOverFake(mode: BrowserEarMode = 'service', lockIsFree = true) {
  const clock = fakeClock();
  Object.assign(FakeRecognition, {
    made: [],
    startsAt: [],
    now: clock.now,
    startThrows: undefined,
    abortAnswers: true,
    availability: Promise.resolve('available'),
    installation: Promise.resolve(true),
  });
  let isVisible = true;
  let changed = () => {};
  const reports: EarReport[] = [];
  const ear = browserEar(
    {
      Recognition: FakeRecognition as RecognitionConstructor,
      Phrase: class {
        constructor(
          readonly phrase: string,
          readonly boost: number,
        ) {}
      },
      clock,
      lock: async () => (lockIsFree ? () => {} : null),
      page: {
        visible: () => isVisible,
        onChange: (call) => {
          changed = call;
          return () => {};
        },
      },
    },
    mode,
  );
  return {
    ear,
    clock,
    reports,
    listen: async () => {
      void ear.open((report) => reports.push(report));
      await clock.pass(10);
    },
    last: () => {
      const last = FakeRecognition.made.at(-1);
      if (!last) throw new Error('no session was started');
      return last;
    },
    sessions: () => FakeRecognition.startsAt.length,
    setVisible: (visible: boolean) => {
      isVisible = visible;
      changed();
    },
    deviceChanged: () => changed(),
    heard: () => reports.flatMap((r) => (r.kind === 'heard' ? [r.heard.text] : [])),
    deaf: () => reports.flatMap((r) => (r.kind === 'deaf' ? [r.deafness.kind] : [])),
  };
}
