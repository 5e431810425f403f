/**
 * Makes the speech engines ready, from npm packages, for the bundler and for Node.
 * It never runs in a browser and downloads nothing.
 */
export { engineAliases, voiceEngine } from './engine-plugin.ts';
export { speechNotices } from './notices.ts';
export { ENGINE_FOLDER, packageFolder, prepareEngine } from './prepare-engine.ts';
