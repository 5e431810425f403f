/** Tells an outcome to a person at a terminal. */

import type { ProveReport, ReportedProblem } from './prove-report.ts';

/** Problems told in full; of more, only the number. */
const toldInFull = 5;

export function tellReport(report: ProveReport): string {
  const { coverage, hazards, claims } = report;
  const head = `${report.flow}: ${report.verdict}${report.reason ? ` (${report.reason})` : ''}`;
  const numbers = [
    `${coverage.steps} of ${coverage.ofSteps} steps`,
    `${coverage.places} places`,
    `${report.states} situations`,
    `${report.transitions} moves`,
    `${hazards.length} hazards, ${claims.length} claims`,
    `cards: ${report.cards.join(', ')}`,
    `${report.ms} ms`,
  ];
  const more = report.problems.length - toldInFull;
  return [
    head,
    `  ${numbers.join(' · ')}`,
    ...tellCoverage(coverage.cards),
    ...report.covers.map((line) => `  ${line}`),
    ...report.problems.slice(0, toldInFull).map(tellProblem),
    ...(more > 0 ? [`  … and ${more} more.`] : []),
  ].join('\n');
}

const widths = [22, 14, 16, 18, 16, 10] as const;

/** A table with a row for each card. */
function tellCoverage(cards: ProveReport['coverage']['cards']): readonly string[] {
  if (cards.length === 0) return [];
  const of = ([walked, all]: readonly [number, number]) => `${walked} of ${all}`;
  const row = (cells: readonly string[]) =>
    `  ${cells.map((cell, at) => (at === 0 ? cell.padEnd(widths[0]) : cell.padStart(widths[at] ?? 0))).join('')}`;
  return [
    row(['walked with card', 'states', 'transitions', 'pairs', 'paths', 'percent']),
    ...cards.map(({ card, states, transitions, pairs, paths, percent }) =>
      row([card, of(states), of(transitions), of(pairs), of(paths), `${percent} %`]),
    ),
    '  What is not walked is what nothing that is said or happens can bring about.',
  ];
}

function tellProblem(problem: ReportedProblem): string {
  const believed = Object.entries(problem.facts ?? {})
    .filter(([, state]) => state !== 'unknown')
    .map(([fact, state]) => `${fact} ${state}`);
  return [
    '',
    `  ${problem.claim}  ${problem.sentence}`,
    `  Step "${problem.step}" (${problem.card}): ${problem.message}`,
    ...problem.path.map((turn) => `    ${turn}`),
    ...(believed.length > 0 ? [`    believed: ${believed.join(', ')}`] : []),
    ...(problem.replay ? [`  ${problem.replay}`] : []),
  ].join('\n');
}
