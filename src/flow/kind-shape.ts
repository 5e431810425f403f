/** A machine kind: its facts, the part each fact plays, its hazards, and what to do when it will not start. */

import { z } from 'zod';
import { conditionShape } from './condition-shape.ts';
import {
  idShape,
  nameShape,
  phraseShape,
  schemaShape,
  sentenceShape,
  wantedFactsShape,
} from './words-shape.ts';

const factStateShape = z.strictObject({
  id: idShape,
  /** The response that names this state and is always understood: "guard closed". */
  word: phraseShape,
  /** Shorter or other responses, used only while no other fact that is asked for shares them. */
  also: z.array(phraseShape).default([]),
  /** May be reported at any moment, asked or not: the guard opened, the stop was pressed. */
  loss: z.boolean().default(false),
});

const factShape = z.strictObject({
  id: idShape,
  label: z.string().min(1).max(40),
  /** The question as it is spoken: "Is the guard closed?" */
  ask: sentenceShape,
  /** A word or two for gates that are named together: "key". */
  short: z.string().min(1).max(24).optional(),
  states: z.array(factStateShape).min(2).max(6),
  /** What to do when the gate is not met. */
  remedy: sentenceShape,
  why: sentenceShape.optional(),
  part: idShape.optional(),
  /** No longer known once hands have been near: a guard is opened to measure, and must be asked for anew. */
  handsForget: z.boolean().default(false),
});

const rolesShape = z.strictObject({
  /** What turns or moves under power. */
  power: z.strictObject({ fact: idShape, on: idShape, off: idShape }),
  /** Where the tool stands against the work. */
  tool: z.strictObject({ fact: idShape, clear: idShape, touching: idShape }),
  /** Whether the machine is set to the speed of this step. */
  speed: z.strictObject({ fact: idShape, set: idShape }),
  stop: z.strictObject({ fact: idShape, released: idShape, pressed: idShape }),
});

/** The same for somebody who needs only the figures. */
const shortPromptsShape = z.strictObject({
  setSpeed: sentenceShape.exactOptional(),
  start: sentenceShape.exactOptional(),
  watch: sentenceShape.exactOptional(),
  stop: sentenceShape.exactOptional(),
  setDial: sentenceShape.exactOptional(),
  measure: sentenceShape.exactOptional(),
});

/** What the bench says around a powered cut; {speed} is the speed of the step. */
const promptsShape = z.strictObject({
  short: shortPromptsShape.prefault({}),
  setSpeed: sentenceShape,
  start: sentenceShape,
  watch: sentenceShape,
  stop: sentenceShape,
  setDial: sentenceShape,
  measure: sentenceShape,
  /** Said at once on "stop": what the person must do. It never claims to stop anything. */
  drill: sentenceShape,
});

const hazardShape = z.strictObject({
  id: z.string().regex(/^[A-Z]+(-[A-Z0-9]+)+$/, 'a claim id such as "LATHE-GUARD"'),
  sentence: sentenceShape,
  never: conditionShape,
});

/** A number said in a walk, and what a trade rule makes of it. It is advice: the chart does not know it. */
const adviceShape = z.strictObject({
  ask: sentenceShape,
  rule: z.string().max(60),
  /** The rule's input that is said. */
  input: z.string().max(60),
  unit: z.string().min(1).max(12),
  decimals: z.int().min(0).max(4),
  /** In that unit. */
  min: z.number(),
  max: z.number(),
  /** The rule's other inputs: constants, the card, or the step's own "length", "depth" and "speed". */
  given: z
    .record(
      z.string().max(60),
      z.union([
        z.strictObject({ is: z.number(), unit: z.string().max(12) }),
        z.strictObject({ card: nameShape }),
        z.strictObject({ step: z.enum(['length', 'depth', 'speed']) }),
      ]),
    )
    .default({}),
  /** {answer} puts the answer in. */
  say: sentenceShape,
});

const walkItemShape = z.strictObject({
  id: idShape,
  title: z.string().min(1).max(60),
  say: sentenceShape,
  why: sentenceShape.optional(),
  part: idShape.optional(),
  /** Facts asked anew at this point of the walk. */
  needs: wantedFactsShape.default({}),
  /** The next speed or feed of the card below or above the one of the step, to be taken by one word. */
  offer: z.enum(['lower-speed', 'higher-speed', 'finer-feed', 'coarser-feed']).optional(),
  advice: adviceShape.optional(),
  /** Where the cause is written of. */
  source: z.string().max(160).optional(),
});

const walkShape = z.strictObject({
  id: idShape,
  title: z.string().min(1).max(60),
  word: phraseShape,
  also: z.array(phraseShape).default([]),
  /** At every start; otherwise only at the steps that name it among their troubles. */
  everywhere: z.boolean().default(true),
  /** True from the moment the trouble is named: the wheel that shakes is in doubt, whatever was believed of it. */
  begins: wantedFactsShape.default({}),
  /** Said first, while it is not yet known that all stands still. */
  settle: sentenceShape.default('First make it stand still.'),
  /** Causes, the likeliest first. */
  items: z.array(walkItemShape).min(1).max(20),
});

export const kindShape = z.strictObject({
  $schema: schemaShape,
  followrest: z.literal('machine-kind'),
  version: z.literal(1),
  id: idShape,
  title: z.string().min(1).max(60),
  facts: z.array(factShape).min(1).max(24),
  roles: rolesShape,
  /** What its speeds are told in: turns of a spindle, or metres a minute of a saw band. */
  speedQuantity: z.enum(['spindleSpeed', 'surfaceSpeed']).default('spindleSpeed'),
  prompts: promptsShape,
  /** Moments of its own that a step can be marked with, such as taking the work out. */
  moments: z.array(idShape).default([]),
  /** The part of the machine that a state of a cut is about, where it is not the step's own. */
  phaseParts: z
    .strictObject({
      dial: idShape.optional(),
      start: idShape.optional(),
      stopping: idShape.optional(),
    })
    .prefault({}),
  /** Shown before the first step; the user's shop rules come first. */
  cautions: z.array(sentenceShape).min(1),
  hazards: z.array(hazardShape).min(1),
  walks: z.array(walkShape).default([]),
  parts: z.array(
    z.strictObject({ id: idShape, name: z.string().min(1).max(40), about: sentenceShape }),
  ),
});

export type MachineKind = z.infer<typeof kindShape>;
export type SpeedQuantity = MachineKind['speedQuantity'];
export type Fact = MachineKind['facts'][number];
export type FactState = Fact['states'][number];
export type Hazard = MachineKind['hazards'][number];
export type WalkItem = MachineKind['walks'][number]['items'][number];
export type FaultWalk = MachineKind['walks'][number];
