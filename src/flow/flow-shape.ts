/** The flow file, version 1: its keys and what each may hold. Meaning is checked in resolve. */

import { z } from 'zod';
import { pieceShape } from './piece-shape.ts';
import {
  idShape,
  nameShape,
  phraseShape,
  schemaShape,
  sentenceShape,
  valueShape,
  wantedFactsShape,
} from './words-shape.ts';

const unitShape = z.string().min(1).max(12);

const numberInputShape = z.strictObject({
  id: nameShape,
  label: z.string().min(1).max(40),
  ask: sentenceShape.optional(),
  quantity: z.string().max(30),
  unit: unitShape,
  min: z.number(),
  max: z.number(),
  default: z.number(),
  decimals: z.int().min(0).max(4).default(2),
});

const choiceInputShape = z.strictObject({
  id: nameShape,
  label: z.string().min(1).max(40),
  ask: sentenceShape.optional(),
  options: z.array(z.string().min(1).max(60)).min(1).max(30),
  default: z.string(),
});

const workingShape = z.strictObject({
  id: nameShape,
  label: z.string().min(1).max(60),
  rule: z.string().max(60),
  given: z.record(z.string().max(60), valueShape).default({}),
  /** How it is shown and spoken; without it, in the base unit of its quantity. */
  unit: unitShape.optional(),
  decimals: z.int().min(0).max(4).optional(),
});

/** A number the person reads off a gauge. */
const readingShape = z.strictObject({
  id: nameShape,
  label: z.string().min(1).max(60),
  quantity: z.string().max(30).default('length'),
  unit: unitShape,
  decimals: z.int().min(0).max(4),
  /** Outside these it is not taken at all. */
  min: valueShape,
  max: valueShape,
  /** A reading far from this is questioned before it is taken. */
  expected: valueShape.optional(),
});

/** Asked at the first-time pace only, beside the chart: a wrong answer is explained and holds nothing up. */
const questionShape = z.strictObject({
  ask: sentenceShape,
  options: z
    .array(z.strictObject({ word: phraseShape, right: z.boolean(), because: sentenceShape }))
    .min(2)
    .max(4),
});

/** What every step has. */
const stepBase = {
  id: idShape,
  title: z.string().min(1).max(60),
  /** The instruction, as it is spoken and shown. */
  say: sentenceShape,
  /** Instead of it, for somebody who does this for the first time. */
  long: sentenceShape.optional(),
  /** Instead of it, for somebody who needs only the figures. */
  short: sentenceShape.optional(),
  why: sentenceShape.optional(),
  cautions: z.array(sentenceShape).max(6).default([]),
  part: idShape.optional(),
  direction: z
    .enum(['towards-chuck', 'away-from-chuck', 'in', 'out', 'round', 'down', 'up'])
    .optional(),
  /** Named gates of the flow that must be met before the step opens. */
  gates: z.array(idShape).max(8).default([]),
  /** Further facts of this step alone. */
  needs: wantedFactsShape.default({}),
  /** What to do about a missing fact, instead of the machine kind's own remedy. */
  remedies: z.record(idShape, sentenceShape).default({}),
  /** Hands are near the work, the tool or the chuck in this step. */
  hands: z.boolean().default(false),
  /** An instructor must release the step before it opens: nothing that is said does. */
  release: z.literal(true).optional(),
  /** A moment of the machine kind, such as taking the work out. */
  moment: idShape.optional(),
  /** Figures shown large: a short label and where the value comes from. */
  figures: z
    .array(z.strictObject({ label: z.string().min(1).max(24), value: valueShape }))
    .max(6)
    .default([]),
  /** Features of the drawing that this step makes. */
  makes: z.array(idShape).max(8).default([]),
  question: questionShape.optional(),
};

const onward = { next: idShape.optional() };
const powered = {
  speed: valueShape,
  /** The most that the work itself allows here: for its overhang, its balance, or what holds it. */
  workLimit: valueShape.optional(),
  /** Fault walks of the machine kind that belong to this step, beside those that are everywhere. */
  troubles: z.array(idShape).max(12).default([]),
  feed: valueShape.optional(),
  depth: valueShape.optional(),
  length: valueShape.optional(),
  coolant: z.string().max(60).optional(),
};

const tellShape = z.strictObject({ kind: z.literal('tell'), ...stepBase, ...onward });
const checkShape = z.strictObject({
  kind: z.literal('check'),
  ...stepBase,
  ...onward,
  /** Asked anew when the step opens, whatever was believed before. */
  facts: wantedFactsShape,
});
const doShape = z.strictObject({
  kind: z.literal('do'),
  ...stepBase,
  ...onward,
  /** True from the moment the person begins: the key goes in, the work comes loose. */
  begins: wantedFactsShape.default({}),
  /** Answered by their own words when it is done. */
  ends: wantedFactsShape.default({}),
});
const measureShape = z.strictObject({
  kind: z.literal('measure'),
  ...stepBase,
  ...onward,
  reading: readingShape,
});
const chooseShape = z.strictObject({
  kind: z.literal('choose'),
  ...stepBase,
  options: z
    .array(
      z.strictObject({
        id: idShape,
        word: phraseShape,
        also: z.array(phraseShape).default([]),
        next: idShape,
      }),
    )
    .min(2)
    .max(6),
});
const cutShape = z.strictObject({
  kind: z.literal('cut'),
  ...stepBase,
  ...onward,
  ...powered,
});
const inspectShape = z.strictObject({
  kind: z.literal('inspect'),
  ...stepBase,
  reading: readingShape,
  lower: valueShape,
  upper: valueShape,
  /** Outside sizes can be reworked while too large, inside sizes while too small. */
  side: z.enum(['outside', 'inside']),
  within: idShape.optional(),
  rework: idShape,
  lost: idShape,
});
const passesShape = z.strictObject({
  kind: z.literal('passes'),
  ...stepBase,
  ...onward,
  ...powered,
  reading: readingShape,
  side: z.enum(['outside', 'inside']),
  /** Size before the first pass. */
  from: valueShape,
  finish: valueShape,
  lower: valueShape,
  upper: valueShape,
  /** Deepest cut, a side. */
  deepest: valueShape,
  /** Left on the diameter for the last pass. */
  finishAllowance: valueShape,
  lost: idShape,
});

export const stepShape = z.discriminatedUnion('kind', [
  tellShape,
  checkShape,
  doShape,
  measureShape,
  chooseShape,
  cutShape,
  inspectShape,
  passesShape,
]);

export const flowShape = z.strictObject({
  $schema: schemaShape,
  followrest: z.literal('flow'),
  version: z.literal(1),
  id: idShape,
  /** Raised by the author at every change: kept with each run. */
  revision: z.int().min(1).max(100_000),
  title: z.string().min(1).max(60),
  about: z.string().max(600),
  machineKind: idShape,
  inputs: z
    .array(z.union([numberInputShape, choiceInputShape]))
    .max(40)
    .default([]),
  workings: z.array(workingShape).max(80).default([]),
  /** Facts wanted together, under one name. */
  gates: z.record(idShape, wantedFactsShape).default({}),
  piece: pieceShape.optional(),
  /** Words of this flow that the offline ear's dictionary lacks, with their phones. */
  pronunciations: z
    .record(z.string().max(40), z.array(z.string().max(80)).min(1).max(4))
    .default({}),
  steps: z.array(stepShape).min(1).max(2000),
});

export type FlowFile = z.infer<typeof flowShape>;
export type Step = z.infer<typeof stepShape>;
export type FlowInput = FlowFile['inputs'][number];
export type FlowWorking = FlowFile['workings'][number];
export type Reading = z.infer<typeof readingShape>;
export type CheckQuestion = z.infer<typeof questionShape>;
export type StepOf<K extends Step['kind']> = Extract<Step, { kind: K }>;
