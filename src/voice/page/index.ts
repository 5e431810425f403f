/**
 * The page's ears and mouths: what there is here, and one of each to use.
 * It never decides what a word does, sees no flow, and keeps no sound.
 *
 * For main.tsx:
 *   const world = voiceWorld(clock);
 *   const [ears, mouths] = await Promise.all([chooseEar(world), chooseMouth(world)]);
 *   // offer ears.offers and mouths.offers with their names; start with ears.best and mouths.offers[0].
 *   let ear = ears.make(ears.best);
 *   const mouth = mouths.make(mouths.offers[0].id);
 *   // in the first tap:            await mouths.prime(); await ear.open(report);
 *   // at every new state:          ear.listenFor(words);
 *   // around every line spoken:    await ear.shut(); await mouth.say(line); await ear.reopen();
 *   // to switch ears:              await ear.close(); ear = ears.make(id); ear.listenFor(words); await ear.open(report);
 *   // keys, buttons and gauges do not need an ear: they are `Heard` of their own. The ear `keys` is for machines without a microphone.
 * An offer with state `ask` sends sound away: make it only after the person agreed. One with state
 * `install` needs `ears.install()` in a tap first. A `deaf` report ends listening (except `noisy`,
 * which ends by itself with a `listening` report): show its sentence; opening again tries anew.
 */
export { type BrowserEarMode, type BrowserEarWorld, browserEar } from './browser-ear.ts';
export { type BrowserMouthWorld, browserMouth } from './browser-mouth.ts';
export { audioCues } from './cues.ts';
export { browserShelf, type VoiceOnShelf, voicesOn } from './ear-store.ts';
export { chooseEar, type EarId, type EarOffer, type Ears } from './ears.ts';
export { microphoneLock } from './microphone-lock.ts';
export { chooseMouth, type MouthId, type MouthOffer, type Mouths } from './mouths.ts';
export type { Enrolled, OfflineEar, RoomMeasured } from './offline-ear.ts';
export { onDeviceState } from './on-device.ts';
export { findRecognition } from './recognition.ts';
export { type ScriptedEar, scriptedEar } from './scripted-ear.ts';
export { type SilentMouth, silentMouth } from './silent-mouth.ts';
export { type VoiceWorld, voiceWorld } from './voice-world.ts';
