/**
 * Lists what was built for the service worker, while Vite builds. It never runs in a browser.
 */

export { filesIn, listKeptFiles } from './list-kept-files.ts';
