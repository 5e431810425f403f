/** What was taken of each step's chart, small step by small step, and counted against what the chart has. */

import type { FlowEvent, FlowSnapshot, Job } from '../../src/flow/index.ts';
import { positionOf } from '../../src/flow/index.ts';
import { arrowName, countPaths, stepChartOf } from '../../src/proof/step-chart.ts';
import { type Stepper, stepperOf } from '../../src/proof/stepper.ts';

/** A path that is being played: its last arrow, and its way from the first state as long as no state came twice. */
export interface Trail {
  last: string;
  way: string[] | undefined;
  seen: Set<string>;
}

const mostPaths = 20_000;

export class Walked {
  private readonly states = new Set<string>();
  private readonly taken = new Set<string>();
  private readonly pairs = new Set<string>();
  private readonly paths = new Set<string>();
  private readonly step: Stepper;

  constructor(private readonly job: Job) {
    this.step = stepperOf(job.machine);
  }

  begin(entry: FlowSnapshot): Trail {
    const { step } = positionOf(entry);
    const inner = innerOf(entry);
    this.states.add(`${step} ${inner}`);
    const first = stepChartOf(this.job, step).first === inner;
    return { last: '', way: first ? [] : undefined, seen: new Set([inner]) };
  }

  /** The snapshot after the event, with every arrow on the way counted. */
  move(before: FlowSnapshot, event: FlowEvent, trail: Trail): FlowSnapshot {
    let from = before;
    let told: string = event.type;
    for (let to = this.step.first(from, event); to !== from; to = this.step.follow(from)) {
      this.count(from, told, to, trail);
      from = to;
      told = '';
    }
    return from;
  }

  private count(from: FlowSnapshot, event: string, to: FlowSnapshot, trail: Trail): void {
    const [{ step }, { step: next }] = [positionOf(from), positionOf(to)];
    const end = next === step ? innerOf(to) : `out:${next}`;
    const name = `${step} ${arrowName(innerOf(from), event, end)}`;
    this.taken.add(name);
    if (trail.last !== '') this.pairs.add(`${trail.last} | ${name}`);
    if (next === step) this.states.add(`${step} ${end}`);
    trail.last = next === step ? name : '';
    if (!trail.way || end === innerOf(from)) return;
    if (trail.seen.has(end)) trail.way = undefined;
    else {
      trail.way = [...trail.way, name];
      trail.seen.add(end);
      this.paths.add(trail.way.join(' | '));
    }
  }

  /** One row: so many of so many, over all steps of the flow. */
  row() {
    const charts = this.job.flow.file.steps.map(
      ({ id }) => [id, stepChartOf(this.job, id)] as const,
    );
    const sum = (of: (at: number) => number) => charts.reduce((all, _, at) => all + of(at), 0);
    const chart = (at: number) => charts[at]?.[1] ?? { first: '', states: [], arrows: [] };
    const states = sum((at) => chart(at).states.length);
    const names = charts.flatMap(([id, { arrows }]) => arrows.map(({ name }) => `${id} ${name}`));
    const transitions = names.filter((name) => this.taken.has(name)).length;
    const pairs = sum((at) => {
      const { arrows } = chart(at);
      return arrows.flatMap((one) => arrows.filter(({ from }) => from === one.to)).length;
    });
    const paths = sum((at) => countPaths(chart(at), mostPaths));
    return {
      states: `${this.states.size} of ${states}`,
      transitions: `${transitions} of ${names.length}`,
      pairs: `${this.pairs.size} of ${pairs}`,
      paths: `${this.paths.size} of ${paths}`,
      percent: Math.floor((1000 * transitions) / names.length) / 10,
    };
  }
}

function innerOf(snapshot: FlowSnapshot): string {
  const { step } = positionOf(snapshot);
  const value = snapshot.value as Readonly<Record<string, unknown>>;
  return JSON.stringify(value[step]) ?? '';
}
