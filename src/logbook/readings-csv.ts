/** The readings of runs as a table that a spreadsheet opens (RFC 4180). */

import type { KeptReading, KeptRun } from '../bench/ports.ts';

const COLUMNS = [
  ...['run', 'flow', 'flow version', 'operator', 'started', 'status'],
  ...['step', 'reading', 'label', 'value', 'unit', 'lower', 'upper', 'verdict', 'measured'],
];

/** One line a reading, after a line of column names; times in UTC (ISO 8601). */
export function readingsCsv(runs: readonly KeptRun[]): string {
  const lines = runs.flatMap((run) => run.readings.map((reading) => cells(run, reading)));
  return [COLUMNS, ...lines].map((line) => `${line.map(cell).join(',')}\r\n`).join('');
}

function cells({ head }: KeptRun, reading: KeptReading): readonly (string | number | undefined)[] {
  const started = new Date(head.startedAt).toISOString();
  return [
    ...[head.id, head.flowTitle, head.flowVersion, head.operator, started, head.status],
    ...[reading.step, reading.reading, reading.label, reading.value, reading.unit],
    ...[reading.lower, reading.upper, reading.verdict, new Date(reading.at).toISOString()],
  ];
}

/** Words that a spreadsheet would take for a formula get an apostrophe in front; numbers do not. */
function cell(value: string | number | undefined): string {
  if (typeof value !== 'string') return String(value ?? '');
  const plain = /^[=+\-@\t\r]/.test(value) ? `'${value}` : value;
  return /[",\r\n]/.test(plain) ? `"${plain.replaceAll('"', '""')}"` : plain;
}
