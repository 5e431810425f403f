/**
 * The hall between the rooms: makes the real clock, logbook, ears and mouths, and gives the screens one door to them.
 * It decides nothing about a job and draws nothing.
 */

export { type Front, openFront } from './app-world.ts';
export { cannotOpen } from './cannot-open.ts';
