/** How the speed of a machine is told: turns of its spindle, or metres of its band, as its kind has it. */

import { baseUnitOf, toBase } from '../trade/index.ts';
import { sayNumber } from '../words/index.ts';
import type { Job } from './compile.ts';
import { formatOf, type Shown, shownAs } from './display.ts';

type Told = Pick<Job, 'flow' | 'card'>;

/** The unit in which speeds of this machine are told and heard: "rev/min", "m/min", on an inch card "ft/min". */
export function speedUnit({ flow, card }: Told): string {
  return formatOf(flow.kind.speedQuantity, card.units).unit;
}

/** A speed in its base unit, ready to be shown or spoken. */
export function speedShown({ flow, card }: Told, speed: number): Shown {
  const quantity = flow.kind.speedQuantity;
  return shownAs(speed, quantity, formatOf(quantity, card.units));
}

/** "Four hundred and fifty", "forty metres a minute". `bare` leaves the unit out. */
export function speedSpoken(job: Told, speed: number, bare = false): string {
  const { value, unit, decimals } = speedShown(job, speed);
  const { language } = job.flow;
  return sayNumber(value, unit, decimals, bare ? { language, unit: false } : { language });
}

/** A speed that was heard in the unit of this machine, in its base unit. */
export function speedHeard(job: Told, value: number): number {
  return toBase(value, speedUnit(job), job.flow.kind.speedQuantity);
}

/** The base unit that workings write a speed in. */
export function speedBaseUnit({ flow }: Pick<Job, 'flow'>): string {
  return baseUnitOf(flow.kind.speedQuantity);
}
