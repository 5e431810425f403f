/** What the model-based tests covered, as a table. */

import type { ChartArrow } from './step-chart.ts';

export interface StepCoverage {
  readonly step: string;
  readonly states: number;
  readonly arrows: readonly ChartArrow[];
  readonly taken: ReadonlySet<string>;
  readonly pairs: number;
  /** Arrows that can follow one another, by the chart. */
  readonly ofPairs: number;
  /** True when a step of the same chart was walked along all its paths before: here only shortest ones are. */
  readonly like: boolean;
  /** Simple paths that the chart has from its first state. */
  readonly paths: number;
  /** Of these, the ones that were played to their end by words. */
  readonly whole: number;
}

/** One row a step and one for the flow: each figure of what the chart has. */
export function coverageTable(flow: string, steps: readonly StepCoverage[]): string {
  const sum = (of: (one: StepCoverage) => number) => steps.reduce((all, one) => all + of(one), 0);
  const total: Row = {
    name: flow,
    states: sum((one) => one.states),
    taken: sum(takenOf),
    ofTaken: sum((one) => one.arrows.length),
    pairs: sum((one) => one.pairs),
    ofPairs: sum((one) => one.ofPairs),
    played: sum((one) => one.whole),
    paths: sum((one) => one.paths),
  };
  return [heading, ...steps.map((one) => line(rowOf(one))), line(total)].join('\n');
}

interface Row {
  readonly name: string;
  readonly states: number;
  readonly taken: number;
  readonly ofTaken: number;
  readonly pairs: number;
  readonly ofPairs: number;
  readonly played: number;
  readonly paths: number;
}

function rowOf(one: StepCoverage): Row {
  const { step, like, states, arrows, pairs, ofPairs, whole, paths } = one;
  const name = like ? `${step} (like one above)` : step;
  const ofTaken = arrows.length;
  return { name, states, taken: takenOf(one), ofTaken, pairs, ofPairs, played: whole, paths };
}

function takenOf({ arrows, taken }: StepCoverage): number {
  return arrows.filter((arrow) => taken.has(arrow.name)).length;
}

const widths = [34, 8, 16, 16, 18, 10] as const;
const heading = padded(['step', 'states', 'transitions', 'pairs', 'paths played', 'percent']);

function line(row: Row): string {
  const of = (some: number, all: number) => `${some} of ${all}`;
  const percent = `${((100 * row.taken) / row.ofTaken).toFixed(1)} %`;
  return padded([
    row.name,
    String(row.states),
    of(row.taken, row.ofTaken),
    of(row.pairs, row.ofPairs),
    of(row.played, row.paths),
    percent,
  ]);
}

function padded(cells: readonly string[]): string {
  const [name = '', ...others] = cells;
  const [first = 0, ...rest] = widths;
  return [name.padEnd(first), ...others.map((cell, at) => cell.padStart(rest[at] ?? 0))].join('');
}
