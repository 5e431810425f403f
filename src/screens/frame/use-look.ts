/** Puts the chosen look on the page: light or dark, and the size of letters. */

import { useEffect } from 'preact/hooks';
import type { Settings } from '../world.ts';

export function useLook({ theme, textSize }: Settings): void {
  useEffect(() => {
    const page = document.documentElement;
    if (theme === 'auto') delete page.dataset.theme;
    else page.dataset.theme = theme;
    page.style.setProperty('--text', String(textSize));
  }, [theme, textSize]);
}
