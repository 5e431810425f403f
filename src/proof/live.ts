/** Which readings can still be looked at from a step on: the others need not be told apart there. */

import { type Job, readingsBehind } from '../flow/index.ts';
import { type Variable, type Variables, valueRefsOf } from './variables.ts';

export class Live {
  /** By step, the variables that some way from it looks at before they are taken anew. */
  private readonly at = new Map<string, Set<Variable>>();
  private readonly kept: readonly Variable[];
  private readonly known = new Map<string, readonly Variable[]>();

  constructor(
    private readonly job: Job,
    variables: Variables,
  ) {
    this.kept = variables.all.filter(({ kind }) => kind === 'reading' || kind === 'pass');
    for (const id of job.flow.steps.keys()) this.at.set(id, new Set());
    const readers = this.readers();
    for (const variable of this.kept) {
      if (variable.kind === 'pass') this.at.get(variable.key)?.add(variable);
      else this.spread(variable, readers.get(variable.key) ?? []);
    }
  }

  /** What counts in the one step, or was just taken there, and no longer in the other. */
  deadBetween(from: string, to: string): readonly Variable[] {
    const key = `${from} ${to}`;
    const old = this.known.get(key);
    if (old) return old;
    const live = this.at.get(to);
    const own = this.job.flow.steps.get(from);
    const taken = own && 'reading' in own ? own.reading.id : '';
    const before = [
      ...(this.at.get(from) ?? []),
      ...this.kept.filter((one) => one.kind === 'reading' && one.key === taken),
    ];
    const dead = [...new Set(before)].filter((one) => !live?.has(one));
    this.known.set(key, dead);
    return dead;
  }

  private readers(): ReadonlyMap<string, readonly string[]> {
    const readers = new Map<string, string[]>();
    for (const step of this.job.flow.file.steps) {
      const refs = valueRefsOf(step, this.job);
      const ids = new Set(refs.flatMap((ref) => readingsBehind(ref, this.job.flow.scope)));
      for (const id of ids) readers.set(id, [...(readers.get(id) ?? []), step.id]);
    }
    return readers;
  }

  /** From the steps that look at it, against the arrows, up to the step that takes it. */
  private spread(variable: Variable, readers: readonly string[]): void {
    const { graph, scope } = this.job.flow;
    const taker = scope.readings.get(variable.key)?.step.id;
    const seen = new Set(readers);
    for (const id of seen) {
      this.at.get(id)?.add(variable);
      if (id === taker) continue;
      for (const before of graph.sources.get(id) ?? []) seen.add(before);
      for (const [before, plan] of this.backTo(id)) {
        if (!plan.includes(variable.key)) seen.add(before);
      }
    }
  }

  private backs: Map<string, [string, readonly string[]][]> | undefined;

  /** Steps from which "back" leads to this one, with the readings that it undoes. */
  private backTo(id: string): readonly (readonly [string, readonly string[]])[] {
    if (!this.backs) {
      this.backs = new Map();
      for (const [from, { back }] of this.job.plans) {
        if (!back) continue;
        const list = this.backs.get(back.to) ?? [];
        list.push([from, back.readings]);
        this.backs.set(back.to, list);
      }
    }
    return this.backs.get(id) ?? [];
  }
}
