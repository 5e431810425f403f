/** How long the trade takes to answer. */

import { answerRule, findRule, type RuleValues, rules } from '../../src/trade/index.ts';
import type { Figure } from './figure.ts';

/** Questions as a person asks them in the middle of a cut. */
const QUESTIONS: readonly (readonly [name: string, values: RuleValues])[] = [
  ['speed-for-material', { material: 'free-cutting-brass', diameter: 30, speeds: [70, 200, 450] }],
  ['card-speed', { diameter: 25, surfaceSpeed: 28, speeds: [70, 200, 350, 450], chuckLimit: 2000 }],
  ['next-pass', { measured: 46.1, finishDiameter: 42, deepestCut: 2, dialReads: 'radius' }],
  ['pass-plan', { stockDiameter: 60, finishDiameter: 42, deepestCut: 2 }],
  ['peck-plan', { diameter: 6, depth: 60, material: 'stainless-304' }],
  ['cutting-power', { material: 'low-carbon-steel', feedPerRev: 0.2, depth: 2, surfaceSpeed: 28 }],
  ['tap-drill', { thread: 'M10' }],
];

const ROUNDS = 2000;

/** Mean microseconds of one answer, checked inputs included, after a warm-up. */
function microsecondsEach(name: string, values: RuleValues): number {
  const rule = findRule(name);
  if (rule === undefined) throw new Error(`no rule ${name}`);
  const ask = () => {
    if (!answerRule(rule, values).ok) throw new Error(`${name} refuses the question`);
  };
  for (let round = 0; round < ROUNDS / 10; round += 1) ask();
  const start = performance.now();
  for (let round = 0; round < ROUNDS; round += 1) ask();
  return ((performance.now() - start) * 1000) / ROUNDS;
}

/** The promise is a Slate answer under 1 ms of computing. */
export function tradeFigures(): Figure[] {
  const each = QUESTIONS.map(([name, values]) => ({ name, time: microsecondsEach(name, values) }));
  const slowest = each.reduce((worst, one) => (one.time > worst.time ? one : worst));
  const mean = each.reduce((sum, one) => sum + one.time, 0) / each.length;
  return [
    { name: 'trade rules in the table', value: rules.length, unit: 'rules' },
    { name: 'one trade answer, mean', value: mean, unit: 'µs', target: 1000 },
    {
      name: `one trade answer, slowest (${slowest.name})`,
      value: slowest.time,
      unit: 'µs',
      target: 1000,
    },
  ];
}
