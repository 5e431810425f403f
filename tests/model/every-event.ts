/** Every event of one type that a situation could be told, whether anybody would say it or not. */

import { type FlowEvent, type FlowSnapshot, type Job, positionOf } from '../../src/flow/index.ts';
import { sizesAt } from './step-model.ts';

export function everyEvent(job: Job, snapshot: FlowSnapshot, type: string): readonly FlowEvent[] {
  const { kind, steps } = job.flow;
  const step = steps.get(positionOf(snapshot).step);
  switch (type) {
    case 'fact':
      return kind.facts.flatMap((fact) =>
        fact.states.map((state) => ({ type: 'fact' as const, fact: fact.id, state: state.id })),
      );
    case 'trouble':
      return kind.walks.map(({ id }) => ({ type: 'trouble', walk: id }));
    case 'choose':
      return step?.kind === 'choose'
        ? step.options.map(({ id }) => ({ type: 'choose', option: id }))
        : [];
    case 'reading':
      return sizesAt(job, snapshot).map((value) => ({ type: 'reading', value }));
    default:
      return [{ type } as FlowEvent];
  }
}
