/**
 * The ears and mouths a page can have. An ear only reports what it heard; it never decides what a
 * word does, and never keeps or sends sound by itself.
 */

export { type BrowserEarMode, type BrowserEarWorld, browserEar } from './browser-ear.ts';
export { type BrowserMouthWorld, browserMouth } from './browser-mouth.ts';
export { audioCues, type Cues } from './cues.ts';
export { microphoneLock } from './microphone-lock.ts';
export { installOnDevice, type OnDevice, onDeviceState } from './on-device.ts';
export { findRecognition } from './recognition.ts';
export { silentMouth } from './silent-mouth.ts';
