/** The questions a chart's arrows ask: may this event go this way? */

import { type ChartWorld, type Held, type OfStep, planOf, type Wanted } from './chart-world.ts';
import type { FlowContext, FlowEvent } from './events.ts';
import { isLoss, isMet } from './facts.ts';
import { released, releaseFact } from './release.ts';
import { plausible, type Verdict, verdictOf } from './verdict.ts';

interface Asked {
  readonly context: FlowContext;
  readonly event: FlowEvent;
}

export function factGuards({ kind }: ChartWorld) {
  const { power } = kind.roles;
  return {
    met: ({ context }: Asked, { wanted }: Wanted) => isMet(context.facts, wanted),
    notMet: ({ context }: Asked, { wanted }: Wanted) => !isMet(context.facts, wanted),
    powerOn: ({ context }: Asked) => context.facts[power.fact] === power.on,
    powerNotOn: ({ context }: Asked) => context.facts[power.fact] !== power.on,
    powerNotOff: ({ context }: Asked) => context.facts[power.fact] !== power.off,
    /** The event is the response to a fact that is asked for here and not yet so. */
    answers: ({ context, event }: Asked, { wanted }: Wanted) =>
      event.type === 'fact' &&
      event.fact !== releaseFact &&
      wanted[event.fact] === event.state &&
      context.facts[event.fact] !== event.state,
    /** While held, what turns is asked for first and alone. */
    answersHeld: ({ context, event }: Asked, { wanted }: Wanted) => {
      if (event.type !== 'fact' || context.facts[event.fact] === event.state) return false;
      if (event.fact === releaseFact) return false;
      if (context.facts[power.fact] !== power.off) {
        return event.fact === power.fact && event.state === power.off;
      }
      return wanted[event.fact] === event.state;
    },
    loses: ({ context, event }: Asked) =>
      event.type === 'fact' &&
      context.facts[event.fact] !== event.state &&
      isLoss(kind, event.fact, event.state),
    /** Once only; while held, what turns is asked for first. */
    releases: ({ context, event }: Asked, { held }: { readonly held: boolean }) =>
      event.type === 'release' &&
      !isMet(context.facts, released) &&
      (!held || context.facts[power.fact] === power.off),
    mayCarryOn: ({ context }: Asked, { wanted, to }: Wanted & { readonly to: Held['to'] }) =>
      context.held?.to === to &&
      context.facts[power.fact] === power.off &&
      isMet(context.facts, wanted),
  };
}

export function answerGuards(world: ChartWorld) {
  const taken = ({ context, event }: Asked, id: string): boolean =>
    event.type === 'reading' &&
    plausible(planOf(world, id).step, event.value, world.numbers, context.readings);
  const judged = (asked: Asked, id: string): Verdict | undefined =>
    asked.event.type === 'reading' && taken(asked, id)
      ? verdictOf(planOf(world, id).step, asked.event.value, world.numbers, asked.context.readings)
      : undefined;
  return {
    plausible: (asked: Asked, { step }: OfStep) => taken(asked, step),
    within: (asked: Asked, { step }: OfStep) => judged(asked, step) === 'within',
    rework: (asked: Asked, { step }: OfStep) => judged(asked, step) === 'rework',
    lost: (asked: Asked, { step }: OfStep) => judged(asked, step) === 'lost',
    chosen: ({ event }: Asked, { option }: { readonly option: string }) =>
      event.type === 'choose' && event.option === option,
    walks: ({ event }: Asked, { walk }: { readonly walk: string }) =>
      event.type === 'trouble' && event.walk === walk,
  };
}
