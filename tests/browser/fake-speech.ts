/**
 * A browser's speech, faked at the browser's own door: what is "said" comes out of a recogniser
 * object, and what is spoken goes into the voice queue, exactly as with real speech.
 */

import type { Page } from 'playwright-core';

/** What the page's fake shows to the test. */
export interface FakeSpeech {
  /** Lines the mouth was given, in order. */
  readonly lines: string[];
  /** Says something to the recogniser that listens now; false when none does. */
  say(text: string, confidence?: number): boolean;
  readonly listening: boolean;
  /** Makes every later recogniser fail with this error. */
  failWith: string | null;
}

declare global {
  interface Window {
    fakeSpeech: FakeSpeech;
  }
}

/** Call before the page is opened. */
export async function fakeSpeech(page: Page): Promise<void> {
  await page.addInitScript(install);
}

function install(): void {
  type Call = ((event?: unknown) => void) | null;
  let open: FakeRecognition | null = null;
  class FakeRecognition {
    lang = '';
    continuous = false;
    interimResults = false;
    maxAlternatives = 1;
    onstart: Call = null;
    onaudiostart: Call = null;
    onresult: Call = null;
    onnomatch: Call = null;
    onerror: Call = null;
    onend: Call = null;
    start(): void {
      const fails = window.fakeSpeech.failWith;
      setTimeout(() => {
        if (fails !== null) {
          this.onerror?.({ error: fails });
          this.onend?.();
          return;
        }
        open = this;
        this.onstart?.();
        this.onaudiostart?.();
      }, 0);
    }
    stop(): void {
      this.end();
    }
    abort(): void {
      this.end();
    }
    end(): void {
      if (open === this) open = null;
      setTimeout(() => this.onend?.(), 0);
    }
  }
  class FakeUtterance {
    lang = '';
    rate = 1;
    pitch = 1;
    volume = 1;
    voice = null;
    onstart: Call = null;
    onend: Call = null;
    onerror: Call = null;
    constructor(readonly text: string) {}
  }
  const queue: FakeUtterance[] = [];
  const lines: string[] = [];
  const voice = { name: 'Fake', lang: 'en-GB', voiceURI: 'fake', localService: true };
  const synthesis = {
    get speaking() {
      return queue.length > 0;
    },
    pending: false,
    paused: false,
    getVoices: () => [voice],
    speak(utterance: FakeUtterance) {
      queue.push(utterance);
      if (utterance.text.trim() !== '') lines.push(utterance.text);
      setTimeout(() => utterance.onstart?.(), 0);
      setTimeout(() => {
        if (!queue.includes(utterance)) return;
        queue.splice(queue.indexOf(utterance), 1);
        utterance.onend?.();
      }, 5);
    },
    cancel() {
      for (const utterance of queue.splice(0)) utterance.onerror?.({ error: 'canceled' });
    },
    resume() {},
    pause() {},
    addEventListener() {},
    removeEventListener() {},
  };
  const put = (name: string, value: unknown) =>
    Object.defineProperty(window, name, { value, configurable: true, writable: true });
  put('webkitSpeechRecognition', FakeRecognition);
  put('SpeechRecognition', FakeRecognition);
  put('SpeechSynthesisUtterance', FakeUtterance);
  put('speechSynthesis', synthesis);
  window.fakeSpeech = {
    lines,
    failWith: null,
    get listening() {
      return open !== null;
    },
    say(text, confidence = 0.9) {
      const listener = open;
      if (!listener) return false;
      const result = Object.assign([{ transcript: text, confidence }], { isFinal: true });
      listener.onresult?.({ resultIndex: 0, results: [result] });
      listener.end();
      return true;
    },
  };
}
