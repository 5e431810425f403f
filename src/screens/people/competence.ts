/** What somebody has done, counted from the heads of runs: no entry is read. Pure. */

import type { Pace, RunHead } from '../../bench/index.ts';

/** One flow at one pace. */
export interface Done {
  readonly flowId: string;
  readonly flowTitle: string;
  /** None for runs from before there were paces. */
  readonly pace: Pace | null;
  readonly counts: Counts;
}

export interface Counts {
  readonly runs: number;
  readonly finished: number;
  readonly givenUp: number;
  readonly open: number;
  /** When the latest began. */
  readonly last: number;
  readonly misheard: number;
  readonly refused: number;
  readonly within: number;
  readonly judged: number;
  /** Who released a step, each once. */
  readonly releases: readonly string[];
}

export interface Competence {
  readonly rows: readonly Done[];
  readonly all: Counts;
}

/** Rows by flow in the order of the latest run, and within a flow from the first pace to the last. */
export function competenceOf(heads: readonly RunHead[]): Competence {
  const groups = new Map<string, RunHead[]>();
  for (const head of heads) {
    const key = JSON.stringify([head.flowId, head.pace ?? null]);
    groups.set(key, [...(groups.get(key) ?? []), head]);
  }
  const rows = [...groups.values()].flatMap((group) => rowOf(group) ?? []);
  return { rows: rows.sort((one, other) => order(one, other, rows)), all: countsOf(heads) };
}

function rowOf(group: readonly RunHead[]): Done | undefined {
  const [first] = group;
  if (!first) return undefined;
  const { flowId, flowTitle, pace = null } = first;
  return { flowId, flowTitle, pace, counts: countsOf(group) };
}

const PACES: readonly (Pace | null)[] = ['first-time', 'familiar', 'own-pace', null];

function order(one: Done, other: Done, rows: readonly Done[]): number {
  if (one.flowId === other.flowId) return PACES.indexOf(one.pace) - PACES.indexOf(other.pace);
  const latest = ({ flowId }: Done) =>
    Math.max(...rows.flatMap((row) => (row.flowId === flowId ? [row.counts.last] : [])));
  return latest(other) - latest(one) || one.flowId.localeCompare(other.flowId);
}

function countsOf(heads: readonly RunHead[]): Counts {
  const status = (wanted: RunHead['status']) => heads.filter((one) => one.status === wanted).length;
  const tallies = heads.flatMap(({ tally }) => tally ?? []);
  const sum = (of: (tally: NonNullable<RunHead['tally']>) => number) =>
    tallies.reduce((total, tally) => total + of(tally), 0);
  return {
    runs: heads.length,
    finished: status('finished'),
    givenUp: status('given-up'),
    open: status('open'),
    last: heads.reduce((last, { startedAt }) => Math.max(last, startedAt), 0),
    misheard: sum(({ unclear }) => unclear),
    refused: sum(({ refused }) => refused),
    within: sum(({ within }) => within),
    judged: sum(({ within, rework, lost }) => within + rework + lost),
    releases: [...new Set(tallies.flatMap(({ releases }) => releases))].sort(),
  };
}

const COLUMNS = [
  ...['operator', 'flow', 'pace', 'runs', 'finished', 'given up', 'open', 'last run'],
  ...['misheard', 'refused', 'readings in tolerance', 'readings judged', 'released by'],
];

/** The sheet as a table that a spreadsheet opens (RFC 4180); times in UTC (ISO 8601). */
export function competenceCsv(operator: string, { rows }: Competence): string {
  const lines = rows.map(({ flowTitle, pace, counts: c }) => [
    ...[operator, flowTitle, pace ?? '', c.runs, c.finished, c.givenUp, c.open],
    ...[new Date(c.last).toISOString(), c.misheard, c.refused, c.within, c.judged],
    c.releases.join('; '),
  ]);
  return [COLUMNS, ...lines].map((line) => `${line.map(cell).join(',')}\r\n`).join('');
}

/** Words that a spreadsheet would take for a formula get an apostrophe in front. */
function cell(value: string | number): string {
  if (typeof value === 'number') return String(value);
  const plain = /^[=+\-@\t\r]/.test(value) ? `'${value}` : value;
  return /[",\r\n]/.test(plain) ? `"${plain.replaceAll('"', '""')}"` : plain;
}
