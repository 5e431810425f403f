/**
 * Model-based tests of every shipped flow: each step's own chart is walked along all its simple paths by the model-based
 * tool, and each path is played through the real Bench by a scripted person. The product over all steps is
 * astronomically large; steps are joined by the walk from one to the next.
 */

import { beforeAll, describe, expect, test } from 'vitest';
import type { RunState } from '../../../src/bench/index.ts';
import { shippedFlows } from '../../../src/cli/flow-files.ts';
import { countPaths } from './count-paths.ts';
import { coverageTable } from './coverage.ts';
import { beginFlow, entriesOf } from './enter-steps.ts';
import { Judge } from './judge.ts';
import { noReason, StepWalk, type WalkedStep } from './walk-step.ts';

describe.each(shippedFlows())('%s, by the model', (path) => {
  let first: RunState;
  let entered: ReadonlyMap<string, RunState>;
  let steps: readonly WalkedStep[] = [];
  const judge = new Judge();

  beforeAll(() => {
    first = beginFlow(path);
    entered = entriesOf(first);
    steps = [...entered].map(([step, state]) => new StepWalk(state, step, judge).walk());
  }, 240_000);

  test('every step of the file is come to', () => {
    expect([...entered.keys()].sort()).toEqual([...first.job.flow.steps.keys()].sort());
  });

  test('no never-rule is broken; what is said and what may be said is what the flow says', () => {
    expect(judge.situations).toBeGreaterThan(steps.length);
    expect(judge.broken).toEqual([]);
  });

  test('every transition is taken, but those that nothing can bring about', () => {
    expect(steps.flatMap(({ chart, never }) => withoutReason(chart.step, never))).toEqual([]);
  });

  test('every simple path is played to its end, or to an arrow that nothing can bring about there', () => {
    expect(steps.flatMap(({ chart, refused }) => withoutReason(chart.step, refused))).toEqual([]);
    expect(steps.map(({ paths }) => paths)).toEqual(
      steps.map(({ chart }) => countPaths(chart.first, chart.arrows)),
    );
  });

  test('every two transitions in a row are taken, but those that a rule of the chart keeps apart', () => {
    expect(steps.flatMap(({ chart, apart }) => withoutReason(chart.step, apart))).toEqual([]);
  });

  test('prints what was covered', () => {
    const table = coverageTable(first.job.flow.file.id, steps);
    console.info(table);
    expect(table).toContain('paths');
  });
});

function withoutReason(step: string, counted: ReadonlyMap<string, number>): readonly string[] {
  return [...counted.keys()]
    .filter((one) => one.startsWith(noReason))
    .map((one) => `${step}: ${one}`);
}
