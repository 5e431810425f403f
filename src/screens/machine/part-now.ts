/** The part of the machine that is lit, and the way it is to be moved. Pure. */

import type { Job, View } from '../../flow/index.ts';
import { DIRECTIONS, type Direction } from './picture.ts';

export interface PartNow {
  readonly part?: string | undefined;
  readonly direction?: Direction | undefined;
}

/** Where the step's own part is moved, or is about to be: an arrow while a run is held or measured would be wrong. */
const moved: ReadonlySet<View['phase']> = new Set(['gate', 'open', 'cutting']);

/** While it cuts that is what the hands move, and not what the next answer is about. */
export function partNow({ flow }: Job, view: View): PartNow {
  const { phase } = view;
  const step = flow.steps.get(view.step.id);
  if (phase === 'measure') return { part: 'work' };
  const part = phase === 'cutting' ? (step?.part ?? view.part) : view.part;
  if (part === undefined || part !== step?.part || !moved.has(phase)) return { part };
  return { part, direction: DIRECTIONS.find((one) => one === step.direction) };
}
