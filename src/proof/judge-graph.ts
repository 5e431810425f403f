/** What the claims say of the whole: steps that are never come to, and loops that only a loss can leave. */

import { endStep, type Job } from '../flow/index.ts';
import type { Broken } from './judge-state.ts';
import { tell } from './tell.ts';

/** One way from step to step that was walked: by an answer, a choice or a size, or because the piece is lost. */
export interface Way {
  readonly from: string;
  readonly to: string;
  readonly lost: boolean;
}

export interface BrokenStep extends Broken {
  readonly step: string;
}

export function judgeReach(job: Job, reached: ReadonlySet<string>): readonly BrokenStep[] {
  return job.flow.file.steps
    .filter((step) => !reached.has(step.id))
    .map((step) => ({
      claim: 'FORMAT-REACH',
      step: step.id,
      message: tell(job)`No way leads to step "${step.id}".`,
    }));
}

/** Loops are strongly connected sets of steps; each needs a way out that is no loss. */
export function judgeLoops(job: Job, ways: readonly Way[]): readonly BrokenStep[] {
  const next = new Map<string, Set<string>>();
  for (const { from, to } of ways) next.set(from, (next.get(from) ?? new Set()).add(to));
  return loopsOf(next).flatMap((loop) => {
    const out = ways.some((way) => loop.has(way.from) && !loop.has(way.to) && !way.lost);
    const [step] = loop;
    if (out || step === undefined || loop.has(endStep)) return [];
    const message = tell(
      job,
    )`The steps ${[...loop].join(', ')} go round, and only a lost piece leads out.`;
    return [{ claim: 'FORMAT-WAY-OUT', step, message }];
  });
}

/** Tarjan's strongly connected components (1972), with its own stack; only those that go round. */
function loopsOf(next: ReadonlyMap<string, ReadonlySet<string>>): readonly ReadonlySet<string>[] {
  const order = new Map<string, number>();
  const low = new Map<string, number>();
  const open: string[] = [];
  const isOpen = new Set<string>();
  const loops: Set<string>[] = [];
  const enter = (id: string) => {
    order.set(id, order.size);
    low.set(id, order.size - 1);
    open.push(id);
    isOpen.add(id);
    return { id, ends: [...(next.get(id) ?? [])], at: 0 };
  };
  const lower = (id: string, value: number) => low.set(id, Math.min(low.get(id) ?? value, value));
  const close = (id: string) => {
    if (low.get(id) !== order.get(id)) return;
    const loop = new Set(open.splice(open.indexOf(id)));
    for (const one of loop) isOpen.delete(one);
    if (loop.size > 1 || next.get(id)?.has(id)) loops.push(loop);
  };
  for (const first of next.keys()) {
    if (order.has(first)) continue;
    const stack = [enter(first)];
    for (let top = stack.at(-1); top; top = stack.at(-1)) {
      const end = top.ends[top.at++];
      if (end === undefined) {
        close(top.id);
        stack.pop();
        const above = stack.at(-1);
        if (above) lower(above.id, low.get(top.id) ?? 0);
      } else if (!order.has(end)) stack.push(enter(end));
      else if (isOpen.has(end)) lower(top.id, order.get(end) ?? 0);
    }
  }
  return loops;
}
