/**
 * Model-based tests of every shipped flow: each step's own chart is walked along its simple paths by the model-based
 * tool, and each path is played through the real Bench by a scripted person. The product over all steps is
 * astronomically large; steps are joined by the walk from one to the next.
 */

import { beforeAll, describe, expect, test } from 'vitest';
import type { RunState } from '../../../src/bench/index.ts';
import { shippedFlows } from '../../../src/cli/flow-files.ts';
import type { Job } from '../../../src/flow/index.ts';
import { coverageTable } from './coverage.ts';
import { beginFlow, entriesOf } from './enter-steps.ts';
import type { ChartArrow } from './step-chart.ts';
import { type WalkedShapes, type WalkedStep, walkStep } from './walk-step.ts';

/** Over all flows: a chart that was walked whole in one need not be again in another. */
const shapes: WalkedShapes = new Set();

describe.each(shippedFlows())('%s, by the model', (path) => {
  let first: RunState;
  let entered: ReadonlyMap<string, RunState>;
  let steps: readonly WalkedStep[] = [];

  beforeAll(() => {
    first = beginFlow(path);
    entered = entriesOf(first);
    steps = [...entered].map(([step, state]) => walkStep(state, step, shapes));
  }, 240_000);

  test('every step of the file is come to', () => {
    expect([...entered.keys()].sort()).toEqual([...first.job.flow.steps.keys()].sort());
  });

  test('no never-rule is broken on any path, and every state has its words', () => {
    expect(steps.flatMap(({ step, broken }) => broken.map((one) => `${step}: ${one}`))).toEqual([]);
  });

  test('every transition is taken, but those that nothing can bring about', () => {
    const missed = steps.flatMap(({ step, arrows, taken }) =>
      arrows
        .filter((arrow) => !taken.has(arrow.name) && !isHeldInstead(first.job, step, arrow))
        .map((arrow) => `${step}: ${arrow.name} (${arrow.guard})`),
    );
    expect(missed).toEqual([]);
  });

  test('prints what was covered', () => {
    const table = coverageTable(first.job.flow.file.id, steps);
    console.info(table);
    expect(table).toContain('paths played');
  });
});

/**
 * A step whose gate asks only that the power is off cannot fall back to that gate: power that comes
 * on is a hold before it is a gate.
 */
function isHeldInstead(job: Job, step: string, { from, guard, to }: ChartArrow): boolean {
  const gate = Object.keys(job.plans.get(step)?.gate ?? {});
  const { power } = job.flow.kind.roles;
  const onlyPower = gate.length === 1 && gate[0] === power.fact;
  return onlyPower && from === 'open' && guard === 'notMet' && to === 'gate';
}
