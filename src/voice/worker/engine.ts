/** The recogniser engine as its binding shows it, and bringing it up with its model. */

/** A C++ vector behind the binding; must be deleted by hand. */
export interface EngineList<T> {
  push_back(item: T): void;
  set(index: number, item: T): void;
  get(index: number): T;
  size(): number;
  delete(): void;
}

export interface EngineSegment {
  readonly word: string;
  /** First and last frame, ten milliseconds each. */
  readonly start: number;
  readonly end: number;
  /** Acoustic and grammar scores, in logarithms to the base 1.0001. */
  readonly ascr: number;
  readonly lscr: number;
}

export interface EngineTransition {
  readonly from: number;
  readonly to: number;
  /** Logarithm to the base 1.0001. */
  readonly logp: number;
  readonly word: string;
}

interface EngineGrammar {
  readonly start: number;
  readonly end: number;
  readonly numStates: number;
  readonly transitions: EngineList<EngineTransition>;
}

export interface EngineRecogniser {
  addWords(words: EngineList<readonly [word: string, phones: string]>): unknown;
  addGrammar(id: EngineList<number>, grammar: EngineGrammar): unknown;
  switchSearch(id: number): unknown;
  start(): unknown;
  stop(): unknown;
  process(samples: EngineList<number>): unknown;
  getHyp(): string;
  getHypseg(segments: EngineList<EngineSegment>): unknown;
  delete(): void;
}

/** The engine's module object once it runs. */
export interface Engine {
  readonly ReturnType: { readonly SUCCESS: unknown };
  readonly Config: new () => EngineList<readonly [key: string, value: string]>;
  readonly VectorWords: new () => EngineList<readonly [string, string]>;
  readonly VectorTransitions: new () => EngineList<EngineTransition>;
  readonly Integers: new () => EngineList<number>;
  readonly AudioBuffer: new () => EngineList<number>;
  readonly Segmentation: new () => EngineList<EngineSegment>;
  readonly Recognizer: new (config: EngineList<readonly [string, string]>) => EngineRecogniser;
  FS_createPath(parent: string, name: string, canRead: boolean, canWrite: boolean): void;
  FS_createDataFile(
    parent: string,
    name: string,
    data: Uint8Array,
    canRead: boolean,
    canWrite: boolean,
  ): void;
  FS_unlink(path: string): void;
}

export type EngineStart = (module: object) => unknown;

/** The acoustic model's files, by name, as they lie in the package. */
export const MODEL_FILES = [
  'feat.params',
  'mdef',
  'means',
  'noisedict',
  'sendump',
  'transition_matrices',
  'variances',
] as const;

export type ModelFile = (typeof MODEL_FILES)[number];

/** What the engine is made of. The page or the command line fetches it; the worker only unpacks. */
export interface EngineParts {
  readonly start: EngineStart;
  readonly wasm: Uint8Array;
  readonly model: Readonly<Record<ModelFile, Uint8Array>>;
}

/** Brings the engine up; its model is laid by `placeModel`. Rejects with the engine's own complaint; `log` gets its messages. */
export function startEngine(parts: EngineParts, log: (line: string) => void): Promise<Engine> {
  return new Promise((resolve, reject) => {
    const module = {
      wasmBinary: parts.wasm,
      print: log,
      printErr: log,
      onAbort: (reason: unknown) => reject(new Error(`The recogniser stopped: ${reason}`)),
      onRuntimeInitialized: () => {
        const engine = module as unknown as Engine;
        engine.FS_createPath('/', MODEL_FOLDER.slice(1), true, true);
        resolve(engine);
      },
    };
    parts.start(module);
  });
}

export const MODEL_FOLDER = '/model';

/** Lays the model's files where the engine reads them, in place of those laid before. */
export function placeModel(engine: Engine, model: EngineParts['model']): void {
  for (const name of MODEL_FILES) {
    const path = `${MODEL_FOLDER}/${name}`;
    if (laid.get(engine)?.get(name) === model[name]) continue;
    if (laid.get(engine)?.has(name)) engine.FS_unlink(path);
    engine.FS_createDataFile(MODEL_FOLDER, name, model[name], true, true);
    const files = laid.get(engine) ?? new Map<ModelFile, Uint8Array>();
    laid.set(engine, files.set(name, model[name]));
  }
}

/** What lies there now, so that only what has changed is laid. */
const laid = new WeakMap<Engine, Map<ModelFile, Uint8Array>>();
