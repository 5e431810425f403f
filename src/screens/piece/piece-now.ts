/** The piece of a job as far as it has come: which features are cut, which one is being cut, what they measured. Pure. */

import {
  type FileTurned,
  isBlock,
  type Job,
  judge,
  limitsOf,
  type PieceFeature,
  type Readings,
  type Step,
  sizesOf,
  type TurnedFeature,
  type ValueRef,
} from '../../flow/index.ts';
import type { AnyPiece } from '../drawing/any-piece.ts';
import type { FeatureState, Piece, PieceReading, PieceState } from '../drawing/piece.ts';
import { type LooseFeature, readPiece } from '../drawing/read-piece.ts';
import { blockOf } from './block-of.ts';
import { mainLine } from './main-line.ts';

export interface PieceNow {
  readonly piece: AnyPiece;
  readonly state: PieceState;
}

/**
 * `step` is where the run stands, "end" when it is over. Null for a flow that makes no piece, or when its
 * stock is not known. Readings in base units.
 */
export function pieceNow(job: Job, step: string, readings: Readings): PieceNow | null {
  const { piece: file } = job.flow.file;
  if (!file) return null;
  const piece = isBlock(file) ? blockOf(job, file, readings) : turnedOf(job, file, readings);
  if (!piece) return null;
  const cut = cutSoFar(job, step, readings);
  const states = file.features.map((feature: PieceFeature) => [
    feature.id,
    stateOf(job, feature, readings, cut),
  ]);
  return { piece, state: Object.fromEntries(states) };
}

function turnedOf(job: Job, file: FileTurned, readings: Readings): Piece | undefined {
  const diameter = job.numbers.number(file.stockDiameter, readings);
  const length = job.numbers.number(file.stockLength, readings);
  if (diameter === undefined || length === undefined) return undefined;
  const loose = file.features.map((feature) => looseOf(job, feature, readings));
  return readPiece({ diameter, length, facing: facingOf(loose, length) }, loose).piece;
}

function looseOf(job: Job, feature: TurnedFeature, readings: Readings): LooseFeature {
  const numbers = sizesOf(feature).map(([name, ref]) => [name, job.numbers.number(ref, readings)]);
  const { kind, id, internal, end, designation } = feature;
  return { kind, id, internal, end, designation, ...Object.fromEntries(numbers) };
}

/** A little of what is over stands in front of the finished face; it is drawn, not measured. */
function facingOf(loose: readonly LooseFeature[], length: number): number {
  const reach = Math.max(0, ...loose.map(({ to }) => to ?? 0));
  return Math.min(Math.max((length - reach) / 2, 0), 2);
}

interface Cut {
  readonly now: ReadonlySet<string>;
  readonly done: ReadonlySet<string>;
}

/** Off the main line, such as on the way to scrap, only what was measured before counts as cut. */
function cutSoFar(job: Job, step: string, readings: Readings): Cut {
  const line = mainLine(job.flow.file);
  const steps = line.flatMap((id) => job.flow.steps.get(id) ?? []);
  const at = line.indexOf(step);
  const lastRead = steps.findLastIndex(
    (one) => 'reading' in one && readings[one.reading.id] !== undefined,
  );
  const past = at >= 0 ? steps.slice(0, at) : steps.slice(0, lastRead + 1);
  return {
    now: new Set(job.flow.steps.get(step)?.makes ?? []),
    done: new Set(past.flatMap((one) => one.makes)),
  };
}

function stateOf(job: Job, feature: PieceFeature, readings: Readings, cut: Cut): FeatureState {
  const made = feature.given === true || cut.done.has(feature.id);
  const state = cut.now.has(feature.id) ? 'now' : made ? 'done' : 'stock';
  const reading = readingOf(job, feature, feature.reading, readings);
  const width = 'widthReading' in feature ? feature.widthReading : undefined;
  const widthReading = readingOf(job, feature, width, readings);
  return { state, ...(reading && { reading }), ...(widthReading && { widthReading }) };
}

function readingOf(
  job: Job,
  feature: PieceFeature,
  name: string | undefined,
  readings: Readings,
): PieceReading | undefined {
  const value = name === undefined ? undefined : readings[name];
  const step = [...job.flow.steps.values()].find(
    (one) => 'reading' in one && one.reading.id === name,
  );
  if (value === undefined || !step) return undefined;
  const of = isLength(step, feature) ? 'length' : 'diameter';
  if (step.kind !== 'inspect' && step.kind !== 'passes') return { value, of };
  const limits = limitsOf(step, job.numbers, readings);
  return { value, of, ...(limits ? { verdict: judge(value, limits, step.side) } : {}) };
}

/** A reading is of the length when it expects what the feature calls its depth or its end. */
function isLength(step: Step, feature: PieceFeature): boolean {
  const expected = 'reading' in step ? step.reading.expected : undefined;
  return sizesOf(feature).some(
    ([key, ref]) => (key === 'depth' || key === 'to') && same(expected, ref),
  );
}

function same(one: ValueRef | undefined, other: ValueRef | undefined): boolean {
  return one !== undefined && JSON.stringify(one) === JSON.stringify(other);
}
