/** Ties a screen to something outside that changes by itself. */

import { useLayoutEffect, useReducer, useState } from 'preact/hooks';
import { sentenceOf } from '../texts/index.ts';
import { useLanguage } from './use-say.ts';

/** Draws the screen anew after every change, until the screen is gone. */
export function useChanges(subscribe: ((changed: () => void) => () => void) | null): void {
  const [, redraw] = useReducer((count: number) => count + 1, 0);
  // Before the page is painted: a change that came until then would never be drawn.
  useLayoutEffect(() => {
    if (subscribe === null) return;
    return subscribe(() => redraw(undefined));
  }, [subscribe]);
}

export type Awaited<T> =
  | { readonly is: 'waiting' }
  | { readonly is: 'here'; readonly value: T }
  | { readonly is: 'failed'; readonly why: string };

/**
 * What a promise gives, asked again when one of `when` changes. A late answer to an old question is dropped.
 *
 * @param ask may show a first part of its answer by calling `early` with it
 */
export function useAwaited<T>(
  ask: (early: (part: T) => void) => Promise<T>,
  when: readonly unknown[],
): Awaited<T> {
  const language = useLanguage();
  const [answer, setAnswer] = useState<Awaited<T>>({ is: 'waiting' });
  // Asked before the page is painted: what is read is waited for beside that.
  useLayoutEffect(() => {
    let wanted = true;
    setAnswer({ is: 'waiting' });
    const here = (value: T) => wanted && setAnswer({ is: 'here', value });
    ask(here).then(
      here,
      (error: unknown) => wanted && setAnswer({ is: 'failed', why: sentenceOf(error, language) }),
    );
    return () => {
      wanted = false;
    };
  }, when);
  return answer;
}
