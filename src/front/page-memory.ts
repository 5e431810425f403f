/**
 * One text that outlives the page, where the browser keeps any: private windows may refuse. The ear's store does the same
 * for many, but comes with the voice, which is fetched late.
 */

import type { PatienceMemory } from './patience.ts';

export function pageMemory(key: string): PatienceMemory {
  return {
    get() {
      try {
        return localStorage.getItem(key);
      } catch {
        return null;
      }
    },
    set(text) {
      try {
        localStorage.setItem(key, text);
      } catch {
        // Then it lives as long as the page.
      }
    },
  };
}
