/** A machine kind: its facts, the part each fact plays, its hazards, and what to do when it will not start. */

import { z } from 'zod';
import { conditionShape } from './condition-shape.ts';
import {
  idShape,
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

/** What the bench says around a powered cut; {speed} is the speed of the step. */
const promptsShape = z.strictObject({
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

const walkItemShape = z.strictObject({
  id: idShape,
  title: z.string().min(1).max(60),
  say: sentenceShape,
  why: sentenceShape.optional(),
  part: idShape.optional(),
  /** Facts asked anew at this point of the walk. */
  needs: wantedFactsShape.default({}),
});

const walkShape = z.strictObject({
  id: idShape,
  title: z.string().min(1).max(60),
  word: phraseShape,
  also: z.array(phraseShape).default([]),
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
export type Fact = MachineKind['facts'][number];
export type FactState = Fact['states'][number];
export type Hazard = MachineKind['hazards'][number];
export type FaultWalk = MachineKind['walks'][number];
