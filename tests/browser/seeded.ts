/** Chance that can be had again, so that a failure can be run once more. */

/** Gives numbers from 0 up to, not with, `most`. */
export function chooser(seed: number): (most: number) => number {
  let state = seed;
  return (most) => {
    state = (state * 1_103_515_245 + 12_345) % 2_147_483_648;
    return state % most;
  };
}

/** So many of a list, the first always among them and the others by chance; in their order. */
export function pick<T>(all: readonly T[], count: number, seed: number): readonly T[] {
  const choose = chooser(seed);
  const [first, ...others] = all;
  while (others.length > 0 && others.length + 1 > count) others.splice(choose(others.length), 1);
  return first === undefined ? [] : [first, ...others];
}
