/** How fast a step may turn at most: by the chuck, the machine and the work. */

import type { Card, Numbers, Step } from '../flow/index.ts';

/** In rev/min; without end where nothing limits it. Limits that wait for a reading are left to the walk. */
export function speedLimitOf(step: Step, numbers: Numbers, { values }: Card): number {
  const work =
    'workLimit' in step && step.workLimit ? numbers.number(step.workLimit, {}) : undefined;
  const limits = [values.chuckLimit, values.topSpeed, work];
  return Math.min(...limits.filter((one): one is number => typeof one === 'number'));
}

/** True where the speed of the step is the answer of a working. */
export function turnsAt(step: Step, working: string): boolean {
  return 'speed' in step && 'working' in step.speed && step.speed.working === working;
}
