/**
 * Screens show what is and pass on what is touched, typed and chosen.
 * They never call a voice or the logbook, and never decide what a word does.
 */

export { App } from './App.tsx';
export { mountScreens } from './mount.tsx';
export type * from './world.ts';
