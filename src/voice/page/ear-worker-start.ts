/** Starts the offline ear's worker. Loaded only when that ear is used. */
import type { ToEar } from '../shared/messages.ts';
import { earAddresses } from './ear-addresses.ts';
import type { Kept } from './offline-ear.ts';

export function startEarWorker() {
  const worker = new Worker(new URL('../worker/ear-worker.ts', import.meta.url), {
    type: 'module',
    name: 'ear',
  });
  const start = ({ channel, room, voice }: Kept): ToEar => ({
    kind: 'start',
    addresses: earAddresses(),
    ...(channel ? { channel } : {}),
    ...(room ? { room } : {}),
    ...(voice ? { voice } : {}),
  });
  return { worker, start };
}
