/** Chance that can be had again, so that a failure can be run once more. */

/** Gives numbers from 0 up to, not with, `most`. */
export function chooser(seed: number): (most: number) => number {
  let state = seed;
  return (most) => {
    state = (state * 1_103_515_245 + 12_345) % 2_147_483_648;
    return state % most;
  };
}

/** So many of a list by chance, in their order. */
export function pick<T>(all: readonly T[], count: number, seed: number): readonly T[] {
  const choose = chooser(seed);
  const picked = [...all];
  while (picked.length > count) picked.splice(choose(picked.length), 1);
  return picked;
}
