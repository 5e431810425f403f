/** Starts the offline ear's worker. Loaded only when that ear is used. */
import type { ToEar } from '../shared/messages.ts';
import { earAddresses } from './ear-addresses.ts';

export function startEarWorker() {
  const worker = new Worker(new URL('../worker/ear-worker.ts', import.meta.url), {
    type: 'module',
    name: 'ear',
  });
  const start = (channel?: string): ToEar => ({
    kind: 'start',
    addresses: earAddresses(),
    ...(channel ? { channel } : {}),
  });
  return { worker, start };
}
