/** What the ears and mouths need of the real page, gathered once. */
import type { Clock } from '../../bench/ports.ts';
import { englishLanguage, type Language } from '../../texts/index.ts';
import { type AudioOut, audioOut } from './audio-out.ts';
import type { BrowserEarWorld } from './browser-ear.ts';
import type { BrowserMouthWorld } from './browser-mouth.ts';
import { audioCues, type Cues } from './cues.ts';
import { type MicrophoneLock, microphoneLock } from './microphone-lock.ts';
import {
  findRecognition,
  type RecognitionConstructor,
  type RecognitionScope,
} from './recognition.ts';
import type { Synthesis, UtteranceConstructor } from './speech-synthesis.ts';

export interface VoiceWorld {
  /** Of every name and sentence about ears and mouths. */
  readonly language: Language;
  /** What is spoken here: "en-US", "de-DE". */
  readonly lang: string;
  readonly clock: Clock;
  readonly lock: MicrophoneLock;
  readonly audio: AudioOut;
  readonly cues: Cues;
  readonly devices: MediaDevices | undefined;
  readonly Recognition: RecognitionConstructor | undefined;
  readonly browserEar: BrowserEarWorld | undefined;
  readonly browserMouth: BrowserMouthWorld | undefined;
}

/** Reads the page once; starts nothing and asks for nothing. */
export function voiceWorld(clock: Clock, language = englishLanguage): VoiceWorld {
  // The recognisers and voices of browsers know American English best.
  const lang = language.spoken ? language.locale : 'en-US';
  const lock = microphoneLock(navigator.locks);
  const audio = audioOut(document);
  const cues = audioCues(() => audio.context(), clock);
  const scope = globalThis as unknown as RecognitionScope;
  const Recognition = findRecognition(scope);
  const devices: MediaDevices | undefined = navigator.mediaDevices;
  const { SpeechRecognitionPhrase: Phrase } = scope;
  const page = { visible: () => document.visibilityState === 'visible', onChange: watch(devices) };
  return {
    ...{ language, lang, clock, lock, audio, cues, devices, Recognition },
    browserEar: Recognition && {
      Recognition,
      ...(Phrase ? { Phrase } : {}),
      clock,
      lock,
      page,
      lang,
      language,
    },
    browserMouth: synthesisWorld({ clock, cues, lang, language }),
  };
}

function watch(devices: MediaDevices | undefined): BrowserEarWorld['page']['onChange'] {
  return (call) => {
    document.addEventListener('visibilitychange', call);
    devices?.addEventListener('devicechange', call);
    return () => {
      document.removeEventListener('visibilitychange', call);
      devices?.removeEventListener('devicechange', call);
    };
  };
}

function synthesisWorld(
  own: Pick<VoiceWorld, 'clock' | 'cues' | 'lang' | 'language'>,
): BrowserMouthWorld | undefined {
  const scope = globalThis as {
    readonly speechSynthesis?: unknown;
    readonly SpeechSynthesisUtterance?: unknown;
  };
  if (!scope.speechSynthesis || !scope.SpeechSynthesisUtterance) return undefined;
  return {
    synthesis: scope.speechSynthesis as Synthesis,
    Utterance: scope.SpeechSynthesisUtterance as UtteranceConstructor,
    ...own,
    onLeave: (call) => window.addEventListener('pagehide', call),
  };
}
