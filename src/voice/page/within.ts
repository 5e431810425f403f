import type { Clock } from '../../bench/ports.ts';

/**
 * The promise's value, or `late` when it takes longer than `ms` or fails.
 * Browsers have promises that never settle; every wait of this room goes through a limit.
 */
export function within<T, L>(
  clock: Clock,
  ms: number,
  promise: Promise<T>,
  late: L,
): Promise<T | L> {
  return new Promise((resolve) => {
    const cancel = clock.after(ms, () => resolve(late));
    const settle = (value: T | L) => {
      cancel();
      resolve(value);
    };
    promise.then(settle, () => settle(late));
  });
}

/** Resolves after `ms` of the clock. */
export function pause(clock: Clock, ms: number): Promise<void> {
  return new Promise((resolve) => {
    clock.after(ms, resolve);
  });
}
