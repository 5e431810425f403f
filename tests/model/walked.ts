/** What was taken of each step's chart, small step by small step, and counted against what the chart has. */

import type { FlowEvent, FlowSnapshot, Job } from '../../src/flow/index.ts';
import { positionOf } from '../../src/flow/index.ts';
import { arrowName, type StepChart, stepChartOf } from '../../src/proof/step-chart.ts';
import { type Stepper, stepperOf } from '../../src/proof/stepper.ts';

export class Walked {
  private readonly states = new Set<string>();
  private readonly taken = new Set<string>();
  private readonly step: Stepper;
  /** The chart of each step. */
  readonly charts: Readonly<Record<string, StepChart>>;

  constructor(job: Job) {
    this.step = stepperOf(job.machine);
    this.charts = Object.fromEntries(
      job.flow.file.steps.map(({ id }) => [id, stepChartOf(job, id)]),
    );
  }

  begin(entry: FlowSnapshot): void {
    this.states.add(placeOf(entry));
  }

  /** The snapshot after the event, with every arrow on the way counted. */
  move(before: FlowSnapshot, event: FlowEvent): FlowSnapshot {
    let from = before;
    let told: string = event.type;
    for (let to = this.step.first(from, event); to !== from; to = this.step.follow(from)) {
      this.count(from, told, to);
      from = to;
      told = '';
    }
    return from;
  }

  private count(from: FlowSnapshot, event: string, to: FlowSnapshot): void {
    const [{ step }, { step: next }] = [positionOf(from), positionOf(to)];
    const end = next === step ? innerOf(to) : `out:${next}`;
    this.taken.add(`${step} ${arrowName(innerOf(from), event, end)}`);
    if (next === step) this.states.add(placeOf(to));
  }

  isTaken(step: string, arrow: string): boolean {
    return this.taken.has(`${step} ${arrow}`);
  }

  /** Arrows that were not taken. */
  missed(): readonly { readonly step: string; readonly name: string }[] {
    return Object.entries(this.charts).flatMap(([step, { arrows }]) =>
      arrows.filter(({ name }) => !this.isTaken(step, name)).map(({ name }) => ({ step, name })),
    );
  }

  /** So many of so many, over all steps of the flow. Pairs and paths are counted where they are walked, by words. */
  row() {
    const charts = Object.values(this.charts);
    const sum = (of: (chart: StepChart) => number) =>
      charts.reduce((all, chart) => all + of(chart), 0);
    const all = sum(({ arrows }) => arrows.length);
    const taken = all - this.missed().length;
    return {
      states: `${this.states.size} of ${sum(({ states }) => states.length)}`,
      transitions: `${taken} of ${all}`,
      percent: Math.floor((1000 * taken) / all) / 10,
    };
  }
}

/** Step and state, as the chart names them. */
export function placeOf(snapshot: FlowSnapshot): string {
  return `${positionOf(snapshot).step} ${innerOf(snapshot)}`;
}

function innerOf(snapshot: FlowSnapshot): string {
  const { step } = positionOf(snapshot);
  const value = snapshot.value as Readonly<Record<string, unknown>>;
  return JSON.stringify(value[step]) ?? '';
}
