/** Finds change gears for a ratio: simple trains, then compound ones, that will mesh. */

export interface Train {
  /** Gears on the spindle side of each pair. */
  readonly drivers: readonly number[];
  /** Gears on the lead-screw side of each pair. */
  readonly driven: readonly number[];
  readonly ratio: number;
}

/** Teeth a pair must have more than the next gear, so that it clears the stud. Common practice, no source. */
const CLEARANCE = 15;
/** Ratios closer than this count as equal, so that the simpler train wins. */
const SAME = 1e-9;

type Pair = readonly [first: number, second: number];

/** All pairs out of the set; a tooth count can be used as often as it is there. */
function pairsOf(gears: readonly number[]): readonly Pair[] {
  return gears.flatMap((one, index) => gears.slice(index + 1).map((other): Pair => [one, other]));
}

function simpleTrains(gears: readonly number[]): readonly Train[] {
  return pairsOf(gears).flatMap(([one, other]) => [
    { drivers: [one], driven: [other], ratio: one / other },
    { drivers: [other], driven: [one], ratio: other / one },
  ]);
}

/** Whether driver1 on driven1, with driver2 beside driven1 on driven2, clears both studs. */
function meshes([driver1, driver2]: Pair, [driven1, driven2]: Pair): boolean {
  return driver1 + driven1 >= driver2 + CLEARANCE && driver2 + driven2 >= driven1 + CLEARANCE;
}

const turned = ([first, second]: Pair): Pair => [second, first];

/** The first of the four orders that meshes. */
function ordered(drivers: Pair, driven: Pair): Train | undefined {
  const ratio = (drivers[0] * drivers[1]) / (driven[0] * driven[1]);
  for (const above of [drivers, turned(drivers)]) {
    for (const below of [driven, turned(driven)]) {
      if (meshes(above, below)) return { drivers: above, driven: below, ratio };
    }
  }
  return undefined;
}

/** Whether the set holds all four gears; two of the same count need two in the set. */
function allThere(gears: readonly number[], used: readonly number[]): boolean {
  const left = [...gears];
  return used.every((gear) => {
    const at = left.indexOf(gear);
    if (at >= 0) left.splice(at, 1);
    return at >= 0;
  });
}

interface Product {
  readonly pair: Pair;
  readonly teeth: number;
}

/** First place whose product is not below the wanted one; the list is in rising order. */
function placeOf(wanted: number, products: readonly Product[]): number {
  let [low, high] = [0, products.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((products[middle]?.teeth ?? 0) < wanted) low = middle + 1;
    else high = middle;
  }
  return low;
}

/** The train nearest to `within` for one pair of drivers, going out both ways from the exact place. */
function bestFor(
  drivers: Pair,
  wanted: number,
  products: readonly Product[],
  gears: readonly number[],
  within: number,
): { readonly train: Train; readonly error: number } | undefined {
  const start = placeOf(wanted, products);
  let best: { train: Train; error: number } | undefined;
  for (const step of [1, -1]) {
    for (let at = step > 0 ? start : start - 1; ; at += step) {
      const product = products[at];
      if (product === undefined) break;
      const error = Math.abs(wanted / product.teeth - 1);
      if (error >= (best?.error ?? within)) break;
      if (!allThere(gears, [...drivers, ...product.pair])) continue;
      const train = ordered(drivers, product.pair);
      if (train !== undefined) best = { train, error };
    }
  }
  return best;
}

/** The compound train nearest to the ratio, if any comes nearer than `within` (a share of the ratio). */
function bestCompound(ratio: number, gears: readonly number[], within: number): Train | undefined {
  const products = pairsOf(gears)
    .map((pair): Product => ({ pair, teeth: pair[0] * pair[1] }))
    .sort((a, b) => a.teeth - b.teeth);
  let best: Train | undefined;
  let limit = within - SAME;
  for (const { pair, teeth } of products) {
    const found = bestFor(pair, teeth / ratio, products, gears, limit);
    if (found !== undefined) [best, limit] = [found.train, found.error - SAME];
  }
  return best;
}

/**
 * The train whose ratio (spindle to lead screw) is nearest; a simple one unless a compound one is
 * truly nearer. `gears` are tooth counts, one entry a gear. Undefined for fewer than two gears.
 */
export function nearestTrain(ratio: number, gears: readonly number[]): Train | undefined {
  const off = (train: Train) => Math.abs(train.ratio / ratio - 1);
  const [simple] = [...simpleTrains(gears)].sort((a, b) => off(a) - off(b));
  return bestCompound(ratio, gears, simple === undefined ? 1 : off(simple)) ?? simple;
}
