/** What the walk by words covered, as a table: one row for each chart, and one for the flow. */

import { noReason, type WalkedStep } from './walk-step.ts';

interface Row {
  readonly steps: readonly string[];
  readonly states: Counted;
  readonly transitions: Counted;
  readonly pairs: Counted;
  readonly paths: Counted;
  readonly refused: ReadonlyMap<string, number>;
  readonly never: ReadonlyMap<string, number>;
  readonly apart: ReadonlyMap<string, number>;
}

type Counted = readonly [some: number, all: number];

/** Rows of steps with the same figures are one row; under the flow's own stand the reasons for what was not played. */
export function coverageTable(flow: string, steps: readonly WalkedStep[]): string {
  const rows = steps.map(rowOf);
  const alike = new Map<string, Row>();
  for (const row of rows) {
    const key = JSON.stringify({ ...row, steps: [] });
    const old = alike.get(key);
    alike.set(key, old ? { ...old, steps: [...old.steps, ...row.steps] } : row);
  }
  const total = rows.reduce(added);
  return [
    heading,
    ...[...alike.values()].map((row) => line(nameOf(row), row)),
    line(flow, total),
    `Of what can be brought about: ${share(total.transitions, total.never)} transitions, ${share(total.paths, total.refused)} paths.`,
    ...why('transitions that nothing brings about', total.never),
    ...why('pairs that did not follow one another', total.apart),
    ...why('paths that come to an arrow which nothing brings about there', total.refused),
  ].join('\n');
}

function rowOf(walked: WalkedStep): Row {
  const { chart, taken, never, pairs, apart, paths, whole, refused } = walked;
  const arrows = [...chart.arrows, ...chart.stays];
  const places = new Set(arrows.flatMap(({ name, from }) => (taken.has(name) ? [from] : [])));
  const ofPairs = chart.arrows.flatMap((one) => chart.arrows.filter(({ from }) => from === one.to));
  return {
    steps: [chart.step],
    states: [places.size, chart.states.length],
    transitions: [arrows.filter(({ name }) => taken.has(name)).length, arrows.length],
    pairs: [pairs, ofPairs.length],
    paths: [whole, paths],
    refused,
    never,
    apart,
  };
}

function added(one: Row, other: Row): Row {
  const sum = (of: (row: Row) => Counted): Counted => [
    of(one)[0] + of(other)[0],
    of(one)[1] + of(other)[1],
  ];
  return {
    steps: [...one.steps, ...other.steps],
    states: sum((row) => row.states),
    transitions: sum((row) => row.transitions),
    pairs: sum((row) => row.pairs),
    paths: sum((row) => row.paths),
    refused: together(one.refused, other.refused),
    never: together(one.never, other.never),
    apart: together(one.apart, other.apart),
  };
}

function together(one: Row['refused'], other: Row['refused']): Row['refused'] {
  const sum = new Map(one);
  for (const [reason, count] of other) sum.set(reason, (sum.get(reason) ?? 0) + count);
  return sum;
}

function nameOf({ steps }: Row): string {
  const [first = '', ...others] = steps;
  return others.length === 0 ? first : `${first} and ${others.length} like it`;
}

/** What has no reason stays among what can be. */
function share([some, all]: Counted, reasons: Row['refused']): string {
  const counts = [...reasons].map(([reason, count]) => (reason.startsWith(noReason) ? 0 : count));
  return `${some} of ${all - counts.reduce((sum, count) => sum + count, 0)}`;
}

function why(what: string, reasons: Row['refused']): readonly string[] {
  const all = [...reasons.values()].reduce((sum, count) => sum + count, 0);
  const each = [...reasons].map(([reason, count]) => `  ${String(count).padStart(5)}  ${reason}`);
  return all === 0 ? [] : [`${all} ${what}:`, ...each];
}

const widths = [34, 12, 16, 16, 18, 10] as const;
const heading = padded(['step', 'states', 'transitions', 'pairs', 'paths', 'percent']);

/** The percentage is of the transitions. */
function line(name: string, { states, transitions, pairs, paths }: Row): string {
  const of = ([some, all]: Counted) => `${some} of ${all}`;
  const percent = `${((100 * transitions[0]) / transitions[1]).toFixed(1)} %`;
  return padded([name, of(states), of(transitions), of(pairs), of(paths), percent]);
}

function padded(cells: readonly string[]): string {
  const [name = '', ...others] = cells;
  const [first = 0, ...rest] = widths;
  return [name.padEnd(first), ...others.map((cell, at) => cell.padStart(rest[at] ?? 0))].join('');
}
