/** The small pieces every file of ours is made of: ids, sentences, facts wanted, values meant. */

import { z } from 'zod';

/** Where an editor finds the schema of the file, so that it can help while it is written. */
export const schemaShape = z.string().max(200).optional();

/** Names that every object of the language has by itself: a table asked for them would answer. */
const taken = new Set(Object.getOwnPropertyNames(Object.prototype));
const free = (name: string) => !taken.has(name);
const takenSentence = 'another name: this one has a meaning of its own in the program';

/** Kebab-case: lower-case letters, digits and single hyphens, beginning with a letter. */
export const idShape = z
  .string()
  .regex(/^[a-z][a-z0-9]*(-[a-z0-9]+)*$/, 'an id: lower-case letters, digits and single hyphens')
  .max(60)
  .refine(free, takenSentence);

/** A name inside workings and inputs: like an id, but in camelCase, as it stands in braces in a text. */
export const nameShape = z
  .string()
  .regex(/^[a-z][A-Za-z0-9]*$/, 'a name: letters and digits, beginning with a small letter')
  .max(60)
  .refine(free, takenSentence);

/** One sentence to be spoken or shown; {name} puts a worked-out value in. */
export const sentenceShape = z.string().min(1, 'a sentence').max(280);

/** A word or short phrase that is said: lower case, no digits, so that an ear can listen for it. */
export const phraseShape = z
  .string()
  .regex(
    /^[a-zß-öø-ÿ]+('[a-zß-öø-ÿ]+)?( [a-zß-öø-ÿ]+('[a-zß-öø-ÿ]+)?)*$/,
    'words to say: small letters and spaces only',
  )
  .max(60);

/** Facts and the state each must be in: { "guard": "closed" }. */
export const wantedFactsShape = z.record(idShape, idShape);
export type WantedFacts = Readonly<Record<string, string>>;

/** Where a value comes from. Nothing is a formula: formulas are trade rules. */
export const valueShape = z.union([
  z.strictObject({ input: nameShape }),
  z.strictObject({ working: nameShape, part: nameShape.optional() }),
  z.strictObject({ reading: nameShape }),
  z.strictObject({ card: nameShape }),
  z.strictObject({ is: z.number(), unit: z.string().max(12) }),
  z.strictObject({ word: z.string().max(60) }),
]);
export type ValueRef = z.infer<typeof valueShape>;
