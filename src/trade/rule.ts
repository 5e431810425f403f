/** The shape of one trade rule: what it takes, what it gives, and where it comes from. */

import type { Language, Worded } from '../texts/index.ts';

/** Physical quantities. Each has one base unit, used for every number inside the program. */
export type Quantity =
  | 'length' // mm
  | 'spindleSpeed' // rev/min
  | 'surfaceSpeed' // m/min
  | 'wheelSpeed' // m/s
  | 'feedPerRev' // mm/rev
  | 'feedPerTooth' // mm
  | 'feedRate' // mm/min
  | 'time' // min
  | 'angle' // degrees
  | 'roughness' // µm
  | 'force' // N
  | 'torque' // N·m
  | 'power' // kW
  | 'stress' // N/mm² (specific cutting force, modulus in N/mm²)
  | 'volumeRate' // mm³/min
  | 'areaRate' // cm²/min
  | 'area' // mm²
  | 'temperature' // °C
  | 'expansion' // 1e-6 per kelvin
  | 'mass' // kg
  | 'density' // kg/m³
  | 'ratio' // a plain number
  | 'percent'
  | 'pitchCount' // threads per inch, teeth per inch
  | 'count';

/** A number the rule takes, in the base unit of its quantity. */
export interface NumberInput {
  readonly kind: 'number';
  readonly name: string;
  /** What a person knows it by, where the language of the rule has a name for it. */
  readonly label?: string;
  readonly quantity: Quantity;
  readonly min: number;
  readonly max: number;
  /** When true, `min` itself is not allowed. */
  readonly aboveMin?: boolean;
  readonly whole?: boolean;
  readonly meaning: string;
  /** Used when the value is not given; an input with no default and not optional must be given. */
  readonly default?: number;
  readonly optional?: boolean;
}

/** One word out of a short list. */
export interface ChoiceInput {
  readonly kind: 'choice';
  readonly name: string;
  /** What a person knows it by, where the language of the rule has a name for it. */
  readonly label?: string;
  readonly options: readonly string[];
  /** What people call an option, where they do not use its name: "brass" for "free-cutting-brass". */
  readonly said?: Readonly<Record<string, readonly string[]>>;
  readonly meaning: string;
  readonly default?: string;
  readonly optional?: boolean;
}

/** A list of numbers, such as the spindle speeds on a machine card. */
export interface ListInput {
  readonly kind: 'list';
  readonly name: string;
  /** What a person knows it by, where the language of the rule has a name for it. */
  readonly label?: string;
  readonly quantity: Quantity;
  readonly min: number;
  readonly max: number;
  readonly meaning: string;
  readonly optional?: boolean;
}

/** A word written freely, such as a thread designation "M10x1.5". */
export interface TextInput {
  readonly kind: 'text';
  readonly name: string;
  /** What a person knows it by, where the language of the rule has a name for it. */
  readonly label?: string;
  readonly meaning: string;
  readonly example: string;
  readonly optional?: boolean;
  readonly default?: string;
}

export type RuleInput = NumberInput | ChoiceInput | ListInput | TextInput;
export type RuleValue = number | string | readonly number[];
export type RuleValues = Readonly<Record<string, RuleValue | undefined>>;

/** A further number that comes out of the same working, such as the depth of each pass. */
export interface WorkingPart {
  readonly value: number | readonly number[];
  readonly quantity: Quantity;
  readonly meaning: string;
  /** What a person knows it by, where the language of the rule has a name for it. */
  readonly label?: string;
}

/** What a rule answers: the number with its working, or why there is none. In the rule's language. */
export type RuleAnswer =
  | {
      readonly ok: true;
      /** In the base unit of the rule's output quantity; not rounded for display. */
      readonly value: number;
      /** One line with the numbers put in: "1000 × 28 ÷ (π × 25) = 357; next lower on the card: 350". */
      readonly working: string;
      /** Which limit ruled, when one did: "the chuck's mark", "the card's top speed". */
      readonly ruledBy?: string;
      /** For answers that are a word rather than a number: "within", "3/8". The same in every language. */
      readonly word?: string;
      /** The word as it is shown. */
      readonly wordShown?: string;
      /** Where these very numbers stand, when that is narrower than the rule's own source. */
      readonly source?: string;
      readonly parts?: Readonly<Record<string, WorkingPart>>;
    }
  | {
      readonly ok: false;
      /** What is impossible, why, and what to change. */
      readonly fault: string;
    };

/** A part, its sentence not yet in a language. */
export type WorkedPart = Omit<WorkingPart, 'meaning' | 'label'> & { readonly meaning: Worded };

/** What a rule works out: an answer whose sentences are not yet in a language. */
export type Worked =
  | {
      readonly ok: true;
      readonly value: number;
      readonly working: Worded;
      readonly ruledBy?: Worded;
      readonly word?: Worded;
      readonly source?: string;
      readonly parts?: Readonly<Record<string, WorkedPart>>;
    }
  | { readonly ok: false; readonly fault: Worded };

export interface Rule {
  /** Kebab-case, as a flow and the command line call it: "spindle-speed". */
  readonly name: string;
  readonly title: string;
  readonly topic: string;
  readonly inputs: readonly RuleInput[];
  readonly output: {
    readonly quantity: Quantity;
    readonly meaning: string;
    /** Names and quantities of `parts` that are always present, so a flow can be checked unread. */
    readonly parts?: Readonly<Record<string, Quantity>>;
  };
  readonly formula: string;
  readonly source: string;
  readonly cautions: readonly string[];
  /** Inputs are already checked against `inputs` and filled with defaults. */
  readonly work: (values: RuleValues) => Worked;
  /** What its texts are in and it answers in; English when it says nothing. */
  readonly language?: Language;
}
