/** The part of the browser's speech recognition that we use, member by member, each possibly missing. */

export interface RecognisedAlternative {
  readonly transcript: string;
  readonly confidence: number;
}

export interface RecognisedResult extends ArrayLike<RecognisedAlternative> {
  readonly isFinal: boolean;
}

export interface RecognitionResults {
  readonly resultIndex: number;
  readonly results: ArrayLike<RecognisedResult>;
}

/** One recogniser object. Members after `abort` exist only in some browsers. */
export interface Recognition {
  lang: string;
  continuous: boolean;
  interimResults: boolean;
  maxAlternatives: number;
  onstart: (() => void) | null;
  onaudiostart: (() => void) | null;
  onresult: ((event: RecognitionResults) => void) | null;
  onnomatch: (() => void) | null;
  onerror: ((event: { readonly error: string }) => void) | null;
  onend: (() => void) | null;
  start(): void;
  stop(): void;
  abort(): void;
  processLocally?: boolean;
  phrases?: unknown;
}

interface PackRequest {
  readonly langs: readonly string[];
  readonly processLocally: true;
  readonly quality?: 'command';
}

export interface RecognitionConstructor {
  new (): Recognition;
  available?(request: PackRequest): Promise<string>;
  install?(request: PackRequest): Promise<boolean>;
}

export type PhraseConstructor = new (phrase: string, boost: number) => unknown;

/** The window's members we look for; none is promised by any standard in force. */
export interface RecognitionScope {
  readonly SpeechRecognition?: RecognitionConstructor;
  readonly webkitSpeechRecognition?: RecognitionConstructor;
  readonly SpeechRecognitionPhrase?: PhraseConstructor;
}

/** The constructor this browser has, or undefined. */
export function findRecognition(scope: RecognitionScope): RecognitionConstructor | undefined {
  return scope.SpeechRecognition ?? scope.webkitSpeechRecognition;
}
