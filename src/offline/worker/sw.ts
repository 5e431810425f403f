/** The service worker: answers for the files on its list, from the cache first. */

import type { KeptFiles } from '../shared/kept-files.ts';
import { fileAt } from '../shared/kept-files.ts';
import { clearStale, fromCache, keepAtOnce, olderAsset } from './store.ts';

/** `keptFiles` is written into this file when it is built. */
declare const self: ServiceWorkerGlobalScope & { readonly keptFiles: KeptFiles };

const kept = self.keptFiles;

self.addEventListener('install', (event) => event.waitUntil(keepAtOnce(kept)));

self.addEventListener('activate', (event) => event.waitUntil(beginWork()));

/** The page asks for this when the person wants the newer version and no run is open. */
self.addEventListener('message', ({ data }) => {
  if (data?.kind === 'take over') self.skipWaiting();
});

self.addEventListener('fetch', (event) => {
  const path = pathInScope(event.request);
  if (path === null) return;
  const file = fileAt(kept, path);
  if (file !== null) event.respondWith(fromCache(file, event.request));
  else if (path.startsWith('assets/')) event.respondWith(olderAsset(event.request));
});

async function beginWork(): Promise<void> {
  await self.clients.claim();
  const pages = await self.clients.matchAll({ type: 'window' });
  // Another tab may still run the version before, and load parts of it later.
  if (pages.length <= 1) await clearStale(kept);
}

/** The path from the page's folder, or null when the request is none of ours. */
function pathInScope(request: Request): string | null {
  const scope = self.registration.scope;
  const [address = ''] = request.url.split(/[?#]/, 1);
  const isPlain = request.method === 'GET' && !request.headers.has('range');
  return isPlain && address.startsWith(scope) ? decodeURI(address.slice(scope.length)) : null;
}
