/**
 * What the ears and mouths have in common: messages, sound files, grammars, pronunciations, end of speech.
 * It never touches a device and never decides what a word does.
 */
export { clauses } from './clauses.ts';
export { type Alike, alikePairs, apartOnly } from './confusable.ts';
export { type BuiltGrammar, buildGrammar, type Grammar } from './grammar.ts';
export type { FromEar, KeptRoom, KeptVoice, ToEar } from './messages.ts';
export {
  missingPronunciations,
  type Pronunciations,
  phraseWords,
  pronunciationsOf,
  readDictionary,
} from './pronunciation.ts';
export { resampleSound } from './resample.ts';
export { readWav, type Sound, WavFault, writeWav } from './wav.ts';
