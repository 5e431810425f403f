import { describe, expect, it, vi } from 'vitest';
import { keepOffline, type OfflineNews } from '../../../src/offline/page/index.ts';
import type { OfflineWorld } from '../../../src/offline/page/keep-offline.ts';
import { FakeContainer, FakeWorker } from './fake-container.ts';

/** Lets promises that are already settled be told. */
const settle = () => new Promise((done) => setImmediate(done));

async function setUp(change: (container: FakeContainer) => void = () => undefined) {
  const container = new FakeContainer();
  change(container);
  const news: OfflineNews[] = [];
  const reload = vi.fn();
  let runOpen = false;
  const offline = keepOffline(
    (each) => news.push(each),
    async () => runOpen,
    { container: container as unknown as OfflineWorld['container'], reload },
  );
  await settle();
  const openRun = (open: boolean) => {
    runOpen = open;
  };
  return { container, news, reload, offline, openRun };
}

const kinds = (news: readonly OfflineNews[]) => news.map(({ kind }) => kind);

describe('the page', () => {
  it('is told when it can do without a network', async () => {
    const { news } = await setUp();
    expect(kinds(news)).toEqual(['ready']);
  });

  it('does not call the first version a newer one', async () => {
    const { container, news, offline } = await setUp();
    container.finds().becomes('installed');
    expect(kinds(news)).toEqual(['ready']);
    expect(await offline.takeNewer()).toBe('nothing newer');
  });

  it('is told of a newer version that installs or that waits already', async () => {
    const installs = await setUp((container) => {
      container.controller = new FakeWorker();
    });
    installs.container.finds().becomes('installed');
    expect(kinds(installs.news)).toEqual(['ready', 'newer']);
    const waits = await setUp((container) => {
      container.registration.waiting = new FakeWorker();
    });
    expect(kinds(waits.news)).toEqual(['newer', 'ready']);
  });

  it('takes a newer version only when asked and no run is open, and then reloads once', async () => {
    const waiting = new FakeWorker();
    const { container, offline, openRun, reload } = await setUp(({ registration }) => {
      registration.waiting = waiting;
    });
    openRun(true);
    expect(await offline.takeNewer()).toBe('run open');
    expect(waiting.asked).toEqual([]);
    openRun(false);
    expect(await offline.takeNewer()).toBe('reloading');
    expect(waiting.asked).toEqual([{ kind: 'take over' }]);
    expect(reload).not.toHaveBeenCalled();
    container.dispatchEvent(new Event('controllerchange'));
    container.dispatchEvent(new Event('controllerchange'));
    expect(reload).toHaveBeenCalledOnce();
  });

  it('is not reloaded by a change of version that it did not ask for', async () => {
    const { container, reload } = await setUp();
    container.dispatchEvent(new Event('controllerchange'));
    expect(reload).not.toHaveBeenCalled();
  });

  it('is told why it cannot do without a network', async () => {
    const refused = await setUp((container) => {
      container.register = () => Promise.reject(new Error('The operation is insecure.'));
    });
    expect(refused.news).toEqual([
      {
        kind: 'unavailable',
        sentence: 'This page will not open without a network: The operation is insecure.',
      },
    ]);
    const broken = await setUp((container) => {
      container.ready = new Promise(() => undefined);
    });
    broken.container.finds().becomes('redundant');
    await settle();
    expect(kinds(broken.news)).toEqual(['unavailable']);
  });

  it('is told when the browser has no service workers', () => {
    const news: OfflineNews[] = [];
    keepOffline(
      (each) => news.push(each),
      async () => false,
      null,
    );
    expect(kinds(news)).toEqual(['unavailable']);
  });
});
