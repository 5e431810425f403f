/** Puts the screens on the page. */

import { render } from 'preact';
import { App } from './App.tsx';
import type { AppWorld } from './world.ts';

/** Draws into `element` and follows the address from then on. */
export function mountScreens(world: AppWorld, element: Element): void {
  render(<App world={world} />, element);
}
