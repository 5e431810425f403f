/** Starts the offline mouth's worker. Loaded only when that mouth is used. */
/// <reference path="./engine-files.d.ts" />
import program from 'followrest-flite/flite.wasm?url';
import type { ToMouth } from '../shared/messages.ts';

export function startMouthWorker() {
  const worker = new Worker(new URL('../worker/mouth-worker.ts', import.meta.url), {
    type: 'module',
    name: 'mouth',
  });
  const start: ToMouth = { kind: 'start', program: new URL(program, document.baseURI).href };
  return { worker, start };
}
