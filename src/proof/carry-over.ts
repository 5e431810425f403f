/** Puts what one walk stands at into another, as a change of numbers in the middle of a run does. */

import type { FlowEvent } from '../flow/index.ts';
import type { Spot } from './spot.ts';
import type { Said, StepWalk } from './step-walk.ts';
import { noRows, type ValueSet } from './value-sets.ts';
import type { Walk } from './walk.ts';

const event: FlowEvent = { type: 'adjusted' };
const adjusted: Said = { key: 'adjusted', event };

/** True where anything new came. `speed`: what the machine is set to from then on, wherever a speed was said to be set. */
export function carryOver(from: Walk, to: Walk, speed: number | undefined): boolean {
  let moved = false;
  for (const [step, { walk }] of to.stands) {
    for (const [spot, rows] of from.rowsIn(step)) {
      if (!spot.rests) continue;
      const here = walk.home.spots.at(spot);
      const believed = speed === undefined ? rows : withSpeed(to, rows, speed);
      if (enterAdjusted(to, step, walk, here, believed)) moved = true;
    }
  }
  return moved;
}

/** Where the speed was said to be set, it is this one. */
function withSpeed({ job, room, sets }: Walk, rows: ValueSet, speed: number): ValueSet {
  const { fact, set } = job.flow.kind.roles.speed;
  const known = room.variables.named(`fact:${fact}`);
  if (!known) return rows;
  const said = sets.where(rows, known.level, known.values.numberOf(set));
  const { level, values } = room.variables.speed;
  return sets.union(sets.minus(rows, said), sets.with(said, level, values.numberOf(speed)));
}

/** The event of the change is played where a step hears it; elsewhere all stays. */
function enterAdjusted(
  to: Walk,
  step: string,
  walk: StepWalk,
  spot: Spot,
  rows: ValueSet,
): boolean {
  let rest = rows;
  let moved = false;
  for (const arrow of to.arrows({ walk, step, spot, rows }, adjusted, rows)) {
    rest = to.sets.minus(rest, arrow.rows);
    const after = to.sets.withAll(arrow.rows, arrow.puts);
    if (enterNew(to, arrow.to.step, arrow.to.spot, after)) moved = true;
  }
  return enterNew(to, step, spot, rest) || moved;
}

function enterNew(to: Walk, step: string, spot: Spot, rows: ValueSet): boolean {
  const standing = to.rowsIn(step).get(spot) ?? noRows;
  return to.sets.minus(rows, standing) !== noRows && to.enter(step, spot, rows);
}
