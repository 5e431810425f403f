/** Weighs what a row of words may mean against the number that is wanted. */
import { compare, decimalsOf, type Exact, exact, fromNumber, over } from './exact.ts';
import type { SaidNumber } from './number-terms.ts';
import { inUnit, sizeOf } from './number-units.ts';
import type { Span } from './number-wholes.ts';
import { type Unit, unitOf } from './units-spoken.ts';

/** The number a step waits for. The range and the decimals put the readings in order; they refuse nothing plain. */
export interface WantedNumber {
  readonly unit: string;
  readonly min?: number;
  readonly max?: number;
  readonly decimals?: number;
}

/** One reading before it is ranked. */
export interface Reading {
  readonly value: Exact;
  readonly said: Unit | null;
  readonly unit: Unit | null;
  readonly cost: number;
  /** Only a range can justify it, and this range does. */
  readonly assumed: boolean;
  readonly mil: boolean;
}

const THOU_IMPLIED_COST = 0.8;
const TOO_FINE_COST = 0.15;
const OUT_OF_RANGE_COST = 10;

export function inRange(value: Exact, wanted: WantedNumber | undefined): boolean {
  const low = wanted?.min === undefined ? null : fromNumber(wanted.min);
  const high = wanted?.max === undefined ? null : fromNumber(wanted.max);
  return (low === null || compare(value, low) >= 0) && (high === null || compare(value, high) <= 0);
}

function hasRange(wanted: WantedNumber | undefined): boolean {
  return wanted?.min !== undefined && wanted.max !== undefined;
}

export function fineEnough(value: Exact, wanted: WantedNumber | undefined): boolean {
  const decimals = decimalsOf(value);
  return wanted?.decimals === undefined || (decimals !== null && decimals <= wanted.decimals);
}

/** A point left out is put back only where a whole range and a count of decimals are known. */
export function impliesPoints(wanted: WantedNumber | undefined): boolean {
  return wanted?.decimals !== undefined && wanted.decimals > 0 && hasRange(wanted);
}

function mayImply(value: Exact, wanted: WantedNumber | undefined): boolean {
  return impliesPoints(wanted) && inRange(value, wanted) && fineEnough(value, wanted);
}

/** What one reading of the words is worth in the wanted unit: nothing, one value, or two. */
export function readingsOf(
  span: Span<SaidNumber>,
  unit: Unit | null,
  wanted: WantedNumber | undefined,
): Reading[] {
  const sized = sizeOf(span.is, unit);
  // A unit that nobody here knows can be wanted, but no other can be turned into it.
  const foreign = wanted !== undefined && unit === null && sized?.unit !== null;
  if (sized === null || foreign) return [];
  const value =
    unit === null || sized.unit === null ? sized.value : inUnit(sized.value, sized.unit, unit);
  if (value === null) return [];
  const { first, second } = span.is;
  const assumed = first.amount.impliedPoint || second?.amount.impliedPoint === true;
  if (assumed && !mayImply(value, wanted)) return [];
  const named = first.unit !== null || sized.unit !== unit;
  const reading: Reading = {
    value,
    said: named ? sized.unit : null,
    unit: unit ?? sized.unit,
    cost: span.cost,
    assumed,
    mil: first.mil || second?.mil === true,
  };
  return [reading, ...impliedThou(reading, span.is, wanted)];
}

/** "nine eighty" for 0.980 in: whole numbers meant as thou, when only so they fall in the wanted range. */
function impliedThou(
  reading: Reading,
  said: SaidNumber,
  wanted: WantedNumber | undefined,
): Reading[] {
  const { form, fine } = said.first.amount;
  const bare = said.first.unit === null && said.second === null && !reading.assumed;
  if (!bare || form === 'decimal' || form === 'tens' || fine || !reading.unit?.id.startsWith('in'))
    return [];
  const value = over(reading.value, exact(1000));
  if (!hasRange(wanted) || inRange(reading.value, wanted) || !inRange(value, wanted)) return [];
  return [
    {
      ...reading,
      value,
      said: unitOf('thou'),
      cost: reading.cost + THOU_IMPLIED_COST,
      assumed: true,
    },
  ];
}

/** "Mil" stands only where a range leaves one of its two meanings. */
export function withoutDoubtfulMils(
  readings: readonly Reading[],
  wanted: WantedNumber | undefined,
): Reading[] {
  const mils = readings.filter(
    (reading) => reading.mil && hasRange(wanted) && inRange(reading.value, wanted),
  );
  const meanings = new Set(mils.map((reading) => reading.said?.id));
  return readings.filter(
    (reading) => !reading.mil || (meanings.size === 1 && mils.includes(reading)),
  );
}

/** Best first, each value once. */
export function ranked(readings: readonly Reading[], wanted: WantedNumber | undefined): Reading[] {
  const rank = ({ value, cost }: Reading) =>
    cost +
    (inRange(value, wanted) ? 0 : OUT_OF_RANGE_COST) +
    (fineEnough(value, wanted) ? 0 : TOO_FINE_COST);
  const seen = new Set<string>();
  return [...readings]
    .sort((a, b) => rank(a) - rank(b))
    .filter(({ value, unit }) => {
      const key = `${value.top}/${value.bottom} ${unit?.id}`;
      return !seen.has(key) && seen.add(key);
    });
}
