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

/** The compound train nearest to the ratio, if any comes nearer than `within` (a share of the ratio). */
function bestCompound(ratio: number, gears: readonly number[], within: number): Train | undefined {
  const pairs = pairsOf(gears);
  let best: Train | undefined;
  let bestError = within - SAME;
  for (const drivers of pairs) {
    const wanted = (drivers[0] * drivers[1]) / ratio;
    for (const driven of pairs) {
      const error = Math.abs(wanted / (driven[0] * driven[1]) - 1);
      if (error >= bestError || !allThere(gears, [...drivers, ...driven])) continue;
      const train = ordered(drivers, driven);
      if (train !== undefined) [best, bestError] = [train, error - SAME];
    }
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
