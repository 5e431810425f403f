/**
 * Lets the page open with no network and offers newer versions. It never reloads a page unasked,
 * nor while a run is open.
 */

export { keepOffline, type Offline, type OfflineNews } from './keep-offline.ts';
