/** Which values a template asks for, read from its own text by the compiler. */

type UpTo<Text extends string, Sign extends string> = Text extends `${infer Head}${Sign}${string}`
  ? Head
  : Text;

/** A branch of a plural begins with a brace too; it is told from a name by its blank or number sign. */
type Name<Text extends string> = Text extends '' | `${string}${' ' | '#' | '{'}${string}`
  ? never
  : Text;

/** "Step {index} of {of}" → "index" | "of". */
export type NamesIn<Text> = Text extends `${string}{${infer After}`
  ? Name<UpTo<UpTo<After, '}'>, ','>> | NamesIn<After>
  : never;

/** A number is formatted by the language where the template says "number" or "plural". */
export type Value = string | number;
