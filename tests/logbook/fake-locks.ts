/** Web Locks for Node, as far as the logbook uses them (W3C Web Locks API: ifAvailable, steal, query). */

type Hold = (lock: Lock | null) => unknown;

export function fakeLocks(): Pick<LockManager, 'request' | 'query'> {
  const holders = new Map<string, (reason: unknown) => void>();
  const request = async (name: string, options: LockOptions, hold: Hold): Promise<unknown> => {
    if (options.steal) holders.get(name)?.(new DOMException('stolen', 'AbortError'));
    else if (holders.has(name)) return hold(null);
    return new Promise((done, fail) => {
      holders.set(name, fail);
      const free = () => {
        if (holders.get(name) === fail) holders.delete(name);
      };
      Promise.resolve(hold({ name, mode: 'exclusive' }))
        .then(done, fail)
        .finally(free);
    });
  };
  const query = async () => ({ held: [...holders.keys()].map((name) => ({ name })), pending: [] });
  return { request: request as LockManager['request'], query };
}
