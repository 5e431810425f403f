/** The width an element has on the page, followed as it changes. */

import type { RefObject } from 'preact';
import { useLayoutEffect, useState } from 'preact/hooks';

/** In CSS pixels, rounded down; 0 before it is known. */
export function useWidth(element: RefObject<HTMLElement | null>): number {
  const [width, setWidth] = useState(0);
  useLayoutEffect(() => {
    const seen = element.current;
    if (!seen) return;
    const watch = new ResizeObserver(([entry]) => {
      setWidth(Math.floor(entry?.contentRect.width ?? 0));
    });
    watch.observe(seen);
    return () => watch.disconnect();
  }, [element]);
  return width;
}
