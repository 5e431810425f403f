/** Sets the service worker to work, and tells when a newer version waits. */

export type OfflineNews =
  /** The page will open without a network. */
  | { readonly kind: 'ready' }
  /** A newer version is here and waits until somebody wants it. */
  | { readonly kind: 'newer' }
  | { readonly kind: 'unavailable'; readonly sentence: string };

export interface Offline {
  /** Changes to the newer version, which reloads the page; refused while any tab has a run open. */
  takeNewer(): Promise<'reloading' | 'run open' | 'nothing newer'>;
}

/** What of the browser is needed. */
export interface OfflineWorld {
  readonly container: Pick<
    ServiceWorkerContainer,
    'register' | 'ready' | 'controller' | 'addEventListener'
  >;
  readonly reload: () => void;
}

/**
 * Registers the service worker. Never rejects and never reloads by itself: trouble and newer
 * versions are reported.
 *
 * @param anyRunOpen asked before a newer version is taken
 */
export function keepOffline(
  report: (news: OfflineNews) => void,
  anyRunOpen: () => Promise<boolean>,
  world: OfflineWorld | null = worldOfBrowser(),
): Offline {
  let waiting: ServiceWorker | null = null;
  const foundNewer = (worker: ServiceWorker) => {
    waiting = worker;
    report({ kind: 'newer' });
  };
  const unavailable = (reason: string) =>
    report({
      kind: 'unavailable',
      sentence: `This page will not open without a network: ${reason}.`,
    });
  if (world === null) unavailable('this browser has no service workers, or forbids them here');
  else {
    register(world.container, report, foundNewer).catch((error: unknown) =>
      unavailable(error instanceof Error ? error.message.replace(/\.$/, '') : String(error)),
    );
  }
  return {
    async takeNewer() {
      if (waiting === null || world === null) return 'nothing newer';
      if (await anyRunOpen()) return 'run open';
      world.container.addEventListener('controllerchange', world.reload, { once: true });
      waiting.postMessage({ kind: 'take over' });
      return 'reloading';
    },
  };
}

async function register(
  container: OfflineWorld['container'],
  report: (news: OfflineNews) => void,
  foundNewer: (worker: ServiceWorker) => void,
): Promise<void> {
  const registration = await container.register('./sw.js', { updateViaCache: 'none' });
  if (registration.waiting !== null) foundNewer(registration.waiting);
  const watch = (worker: ServiceWorker | null) =>
    worker?.addEventListener('statechange', () => {
      // Without a controller it is the first version, not a newer one.
      if (worker.state === 'installed' && container.controller !== null) foundNewer(worker);
      if (worker.state === 'redundant' && registration.active === null) failed();
    });
  let failed = () => {};
  const failing = new Promise<never>((_, reject) => {
    failed = () => reject(new Error('not all of its files could be kept'));
  });
  watch(registration.installing);
  registration.addEventListener('updatefound', () => watch(registration.installing));
  await Promise.race([container.ready, failing]);
  report({ kind: 'ready' });
}

function worldOfBrowser(): OfflineWorld | null {
  // Typed as always there, but absent in private windows of some browsers and without https.
  const container: ServiceWorkerContainer | undefined = navigator.serviceWorker;
  return container === undefined ? null : { container, reload: () => location.reload() };
}
