/** Which value a said amount has in the unit that is wanted. */
import { compare, type Exact, exact, over, plus, times } from './exact.ts';
import type { SaidNumber, Term } from './number-terms.ts';
import { type Unit, unitOf } from './units-spoken.ts';

/** A value that belongs to a unit. */
export interface Sized {
  readonly value: Exact;
  /** Null for a plain number with no unit at all. */
  readonly unit: Unit | null;
}

const INCH_FAMILY = new Set(['in', 'thou', 'tenth', 'in/rev', 'thou/rev', 'in/tooth', 'in/min']);

/** The value in another unit, exactly, or null when the two do not measure the same. */
export function inUnit(value: Exact, said: Unit, wanted: Unit): Exact | null {
  if (said.measure === wanted.measure) return over(times(value, said.size), wanted.size);
  const top = wanted.shortOf?.may.includes(said.id) ? unitOf(wanted.shortOf.top) : null;
  return top === null ? null : over(times(value, said.size), top.size);
}

function sized(value: Exact, id: string): Sized {
  return { value, unit: unitOf(id) };
}

function inches(wanted: Unit | null): boolean {
  return wanted !== null && INCH_FAMILY.has(wanted.id);
}

function isLong(wanted: Unit | null): boolean {
  return wanted?.measure === 'length' || wanted?.shortOf?.may.includes('mm') === true;
}

/**
 * Tenths, hundredths and thousandths with no unit are parts of the millimetre or the inch that is wanted; but a
 * tenth beside inches is a tenth of a thou, as the trade says it. With neither wanted they are plain fractions.
 */
function tenParts({ count, part }: Term['amount'], wanted: Unit | null): Sized {
  const value = over(count, exact(part));
  if (!isLong(wanted)) return { value, unit: wanted };
  if (!inches(wanted)) return sized(value, 'mm');
  return part === 10 ? sized(count, 'tenth') : sized(value, 'in');
}

/** Eighths and finer with no unit are of an inch, whatever length is wanted: nobody divides a millimetre so. */
function ruleParts(term: Term, wanted: Unit | null): Sized | null {
  const { count, fine } = term.amount;
  if (fine && wanted?.measure === 'time') return null;
  if (fine && wanted?.measure === 'length') return sized(count, 'in');
  return { value: count, unit: wanted };
}

/** With a unit said. "Two tenths inch" has two meanings and none is taken; "two tenths of an inch" has one. */
function withUnit(term: Term, unit: Unit): Sized | null {
  const { count, form, part } = term.amount;
  if (form !== 'tens') return { value: count, unit };
  if (part === 10 && unit.id === 'in' && !term.ofOne) return null;
  return { value: over(count, exact(part)), unit };
}

function sizedTerm(term: Term, wanted: Unit | null): Sized | null {
  if (term.unit !== null) return withUnit(term, term.unit);
  if (term.amount.form === 'tens') return tenParts(term.amount, wanted);
  if (term.amount.form === 'rule') return ruleParts(term, wanted);
  return { value: term.amount.count, unit: wanted };
}

/** A smaller piece after a larger one: thou after inches, minutes after degrees, hundredths after millimetres. */
function added(first: Sized, second: Sized, said: SaidNumber): Sized | null {
  if (first.unit === null || second.unit === null || !goTogether(said)) return null;
  if (first.unit.measure !== second.unit.measure) return null;
  const more = inUnit(second.value, second.unit, first.unit);
  if (more === null || compare(more, exact(1)) >= 0) return null;
  return { value: plus(first.value, more), unit: first.unit };
}

/** The second piece must name what it is, and follow a unit; or it is in tenths, hundredths … and joined: "two and a half thou" is one piece. */
function goTogether({ first, second, joined }: SaidNumber): boolean {
  if (second === null) return false;
  const tens = second.amount.form === 'tens';
  const named = second.unit !== null || tens;
  return named && (first.unit !== null || (joined && tens));
}

/** The whole said number with its sign, in the unit it was said in; null when its pieces do not go together. */
export function sizeOf(said: SaidNumber, wanted: Unit | null): Sized | null {
  const first = sizedTerm(said.first, wanted);
  if (first === null) return null;
  const context = first.unit ?? wanted;
  const second = said.second === null ? null : sizedTerm(said.second, context);
  if (said.second !== null && second === null) return null;
  const sum = second === null ? first : added(first, second, said);
  if (sum === null) return null;
  return said.sign === 1 ? sum : { ...sum, value: exact(-sum.value.top, sum.value.bottom) };
}
