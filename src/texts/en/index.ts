/** The areas, in English. */

export { frameTexts } from './frame.ts';
