/** Files in the browser's cache, each checked against the hash on the list before it is kept. */

import {
  HASH_DIGITS,
  type KeptFile,
  type KeptFiles,
  keyOf,
  staleKeys,
} from '../shared/kept-files.ts';

const openCache = () => caches.open('followrest-files');

/** Keeps all files that belong to the first work. Files that are here already are not fetched again. */
export async function keepAtOnce({ atOnce }: KeptFiles): Promise<void> {
  const cache = await openCache();
  await Promise.all(
    atOnce.map(async (file) => {
      if ((await cache.match(keyOf(file))) !== undefined) return;
      const whole = await fetchWhole(new Request(file.path, { cache: 'no-cache' }));
      if (whole.hash !== file.hash) throw new Error(`${file.path} is not the file on the list.`);
      await cache.put(keyOf(file), whole.response);
    }),
  );
}

/** The kept file, or the network's, which is kept for next time when it is the one on the list. */
export async function fromCache(file: KeptFile, request: Request): Promise<Response> {
  const cache = await openCache();
  const there = await cache.match(keyOf(file));
  if (there !== undefined) return there;
  const { response, hash } = await fetchWhole(request);
  // A full disk must not take the file away from whoever asked for it now.
  if (hash === file.hash) await cache.put(keyOf(file), response.clone()).catch(() => undefined);
  return response;
}

/** A file of the version before, for a tab that still runs it; else whatever the network has. */
export async function olderAsset(request: Request): Promise<Response> {
  const cache = await openCache();
  return (await cache.match(request, { ignoreSearch: true })) ?? fetch(request);
}

export async function clearStale(kept: KeptFiles): Promise<void> {
  const cache = await openCache();
  const folder = new URL('.', self.location.href).href;
  const keys = (await cache.keys()).map(({ url }) => decodeURI(url.slice(folder.length)));
  await Promise.all(staleKeys(kept, keys).map((key) => cache.delete(key)));
}

async function fetchWhole(request: Request): Promise<{ response: Response; hash: string | null }> {
  const answer = await fetch(request);
  if (!answer.ok) return { response: answer, hash: null };
  const content = await answer.arrayBuffer();
  const headers = new Headers(answer.headers);
  // These tell of the bytes on the wire; the content is unpacked by now.
  for (const name of ['content-encoding', 'content-length']) headers.delete(name);
  return { response: new Response(content, { headers }), hash: await hashOf(content) };
}

async function hashOf(content: ArrayBuffer): Promise<string> {
  const digest = new Uint8Array(await crypto.subtle.digest('SHA-256', content));
  const hex = [...digest].map((byte) => byte.toString(16).padStart(2, '0')).join('');
  return hex.slice(0, HASH_DIGITS);
}
