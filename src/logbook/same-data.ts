/** Compares plain data: numbers, words, lists and records, as JSON has them. */

/** True when both hold the same, whatever the order of their keys. */
export function sameData(one: unknown, other: unknown): boolean {
  if (Object.is(one, other)) return true;
  if (typeof one !== 'object' || typeof other !== 'object') return false;
  if (one === null || other === null || Array.isArray(one) !== Array.isArray(other)) return false;
  const entries = Object.entries(one);
  return (
    entries.length === Object.keys(other).length &&
    entries.every(
      ([key, value]) => Object.hasOwn(other, key) && sameData(value, Reflect.get(other, key)),
    )
  );
}
