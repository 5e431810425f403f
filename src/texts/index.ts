/**
 * Every word the tool says or shows, by area and language, with plural and number forms.
 * It decides nothing, and knows no room that speaks.
 */

export type { Area, Translated } from './area.ts';
export * from './en/index.ts';
export { decimalIn, figureIn, figuresIn, typedIn, unitIn } from './figure.ts';
export { englishLanguage, type Language, type Tables } from './language.ts';
export { midSentence, optionPhrases, optionText } from './option.ts';
export { type Say, sayIn, tableIn } from './say.ts';
export type { Spoken } from './spoken.ts';
export { sentenceOf, ToldFault } from './told-fault.ts';
export {
  type Piece,
  type Sentence,
  sequence,
  templateOf,
  type Worded,
  worded,
  wordedIn,
} from './worded.ts';
