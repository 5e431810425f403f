/** How the course of the job changes: readings, passes, holds and the way back. */

import { type ChartWorld, type Held, type OfStep, planOf, type Wanted } from './chart-world.ts';
import type { FlowContext, FlowEvent } from './events.ts';
import { missingFacts, withUnknown } from './facts.ts';
import { nextPass } from './pass.ts';

type Change = Partial<FlowContext>;

export function readingChanges(world: ChartWorld) {
  return {
    beginPasses(context: FlowContext, _event: FlowEvent, { step }: OfStep): Change {
      const { step: passes } = planOf(world, step);
      const size =
        passes.kind === 'passes' ? world.numbers.number(passes.from, context.readings) : undefined;
      const others = leavingOut(context.passes, [step]);
      return { passes: size === undefined ? others : { ...others, [step]: { size, dial: 0 } } };
    },
    takeReading(context: FlowContext, event: FlowEvent, { step }: OfStep): Change {
      const { step: taking } = planOf(world, step);
      if (event.type !== 'reading' || !('reading' in taking)) return {};
      const readings = { ...context.readings, [taking.reading.id]: event.value };
      const before = context.passes[step];
      if (taking.kind !== 'passes' || !before) return { readings };
      const { dial } = nextPass(taking, before, context.readings, world);
      return { readings, passes: { ...context.passes, [step]: { size: event.value, dial } } };
    },
  };
}

interface HoldParams extends Wanted {
  readonly by: Held['by'];
  readonly to: Held['to'];
}

export function courseChanges(world: ChartWorld) {
  return {
    /** A second reason to hold does not change where the first one happened. */
    holdFor(context: FlowContext, _event: FlowEvent, { by, to, wanted }: HoldParams): Change {
      const lost = by === 'loss' ? missingFacts(context.facts, wanted, world.kind) : [];
      return { held: { by, to: context.held?.to ?? to, lost } };
    },
    release: (): Change => ({ held: null }),
    undo(context: FlowContext, _event: FlowEvent, { step }: OfStep): Change {
      const { back } = planOf(world, step);
      if (!back) return {};
      return {
        facts: withUnknown(context.facts, back.facts),
        readings: leavingOut(context.readings, back.readings),
        passes: leavingOut(context.passes, back.passes),
      };
    },
  };
}

function leavingOut<T>(record: Readonly<Record<string, T>>, keys: readonly string[]) {
  return Object.fromEntries(Object.entries(record).filter(([key]) => !keys.includes(key)));
}
