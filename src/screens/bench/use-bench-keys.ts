/** Listens to the keyboard, a foot switch and a gauge that types, for as long as the Bench is on the page. */

import { useLayoutEffect, useRef } from 'preact/hooks';
import { type KeyMeaning, type KeySituation, meaningOfKey } from './keys.ts';

/** `act` is called with what a key means now. Fields keep their keys, and a key held down counts once. */
export function useBenchKeys(now: KeySituation, act: (meaning: NonNullable<KeyMeaning>) => void) {
  const latest = useRef({ now, act });
  latest.current = { now, act };
  // Before the first picture: a key that is pressed on what is seen must count.
  useLayoutEffect(() => {
    const down = (event: KeyboardEvent) => {
      if (isForBrowser(event) || isForElement(event)) return;
      const meaning = meaningOfKey(event.key, latest.current.now);
      if (meaning === null && event.key !== ' ') return;
      event.preventDefault();
      if (meaning !== null && !event.repeat) latest.current.act(meaning);
    };
    // A button under the focus would still be pressed when the space bar comes up.
    const up = (event: KeyboardEvent) => {
      if (event.key === ' ' && !isForElement(event)) event.preventDefault();
    };
    window.addEventListener('keydown', down, { capture: true });
    window.addEventListener('keyup', up, { capture: true });
    return () => {
      window.removeEventListener('keydown', down, { capture: true });
      window.removeEventListener('keyup', up, { capture: true });
    };
  }, []);
}

function isForBrowser(event: KeyboardEvent): boolean {
  return event.ctrlKey || event.metaKey || event.altKey || event.isComposing;
}

/**
 * True for keys that belong to what has the focus: typing in a field; Enter or Space on something that was
 * reached with the Tab key. The space bar never presses an answer to a gate: it may be a foot switch.
 */
function isForElement({ key, target }: KeyboardEvent): boolean {
  if (!(target instanceof Element)) return false;
  if (target.closest('input, textarea, select, [contenteditable]')) return true;
  if (key !== 'Enter' && key !== ' ') return false;
  const pressed = target.closest('button, a, [role="button"]');
  if (!pressed?.matches(':focus-visible')) return false;
  return key === 'Enter' || !pressed.hasAttribute('data-gate');
}
