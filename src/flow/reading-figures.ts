/** The numbers a reading is held against before it is taken: how small and large it may be, and what is expected. */

import { sayIn, whyTexts } from '../texts/index.ts';
import type { Job } from './compile.ts';
import { expectedAfterPass, type Figure, figureOf } from './figures.ts';
import { type FlowSnapshot, planAt } from './position.ts';

const sayWhy = ({ flow }: Pick<Job, 'flow'>) => sayIn(flow.language, whyTexts);

/** Empty at a step that takes no reading. */
export function readingFigures(job: Job, snapshot: FlowSnapshot): readonly Figure[] {
  const step = planAt(job, snapshot)?.step;
  if (!step || !('reading' in step)) return [];
  const { min, max, expected } = step.reading;
  const figures = [
    figureOf(job, snapshot, 'possible:least', sayWhy(job)('leastPossible'), min),
    figureOf(job, snapshot, 'possible:most', sayWhy(job)('mostPossible'), max),
    expected
      ? figureOf(job, snapshot, 'expected', sayWhy(job)('expected'), expected)
      : expectedAfterPass(job, snapshot),
  ];
  return figures.filter((figure) => figure !== undefined);
}
