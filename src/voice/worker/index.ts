/**
 * The engines of the ear and the mouth, as they run in a worker or in Node: sound in, words out; text in, sound out.
 * It never touches a microphone or a loudspeaker, and never decides what a word does.
 */
export { EarBrain } from './ear-brain.ts';
export {
  type Engine,
  type EngineParts,
  MODEL_FILES,
  type ModelFile,
  startEngine,
} from './engine.ts';
export {
  FLITE_VOICES,
  type FliteManner,
  type FliteProgram,
  type FliteVoice,
  fliteSound,
} from './flite.ts';
