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
    ...report.problems.slice(0, toldInFull).map(tellProblem),
    ...(more > 0 ? [`  … and ${more} more.`] : []),
  ].join('\n');
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
