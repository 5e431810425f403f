/** What the model-based tests covered, as a table. */

import type { ChartArrow } from './step-chart.ts';

export interface StepCoverage {
  readonly step: string;
  readonly states: number;
  readonly arrows: readonly ChartArrow[];
  readonly taken: ReadonlySet<string>;
  readonly pairs: number;
  readonly paths: number;
  /** Paths that were played to their end. */
  readonly whole: number;
}

/** One row a step and one for the flow: states, transitions taken of all, transition pairs, paths played of all. */
export function coverageTable(flow: string, steps: readonly StepCoverage[]): string {
  const rows = steps.map((one) =>
    row(one.step, one.states, count(one), one.arrows.length, one.pairs, one.whole, one.paths),
  );
  const sum = (of: (one: StepCoverage) => number) => steps.reduce((all, one) => all + of(one), 0);
  const total = row(
    flow,
    sum((one) => one.states),
    sum(count),
    sum((one) => one.arrows.length),
    sum((one) => one.pairs),
    sum((one) => one.whole),
    sum((one) => one.paths),
  );
  return [
    row('step', 'states', 'taken', 'transitions', 'pairs', 'played', 'paths'),
    ...rows,
    total,
  ].join('\n');
}

function count({ arrows, taken }: StepCoverage): number {
  return arrows.filter((arrow) => taken.has(arrow.name)).length;
}

function row(name: string, ...cells: readonly (string | number)[]): string {
  const [, taken, all, , whole, paths] = cells;
  const percent =
    typeof taken === 'number' &&
    typeof all === 'number' &&
    typeof whole === 'number' &&
    typeof paths === 'number'
      ? `${((100 * taken) / all).toFixed(0)} % / ${((100 * whole) / paths).toFixed(0)} %`
      : 'taken / played';
  return [
    name.padEnd(18),
    ...cells.map((cell) => String(cell).padStart(11)),
    percent.padStart(16),
  ].join(' ');
}
