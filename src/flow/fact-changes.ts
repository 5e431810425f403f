/** How facts change: each is a function from what was believed to what is believed now. */

import { type ChartWorld, type OfStep, planOf, speedOf, type Wanted } from './chart-world.ts';
import { type FlowContext, type FlowEvent, unknownState } from './events.ts';
import { withFacts, withUnknown } from './facts.ts';

type Change = Partial<FlowContext>;

export function factChanges(world: ChartWorld) {
  const { kind, numbers } = world;
  const { speed } = kind.roles;
  return {
    setFact(context: FlowContext, event: FlowEvent, { step }: OfStep): Change {
      if (event.type !== 'fact') return {};
      const facts = withFacts(context.facts, { [event.fact]: event.state });
      if (event.fact !== speed.fact || event.state !== speed.set) return { facts };
      return { facts, speedSet: speedOf(planOf(world, step), numbers, context) };
    },
    change(context: FlowContext, _event: FlowEvent, { wanted }: Wanted): Change {
      return { facts: withFacts(context.facts, wanted) };
    },
    forget(
      context: FlowContext,
      _event: FlowEvent,
      params: { readonly facts: readonly string[] },
    ): Change {
      return { facts: withUnknown(context.facts, params.facts) };
    },
    /** A speed that was set for another step is not set for this one. */
    forgetOtherSpeed(context: FlowContext, _event: FlowEvent, { step }: OfStep): Change {
      if (speedOf(planOf(world, step), numbers, context) === context.speedSet) return {};
      return { facts: withUnknown(context.facts, [speed.fact]), speedSet: null };
    },
  };
}

/** What nobody can vouch for any more, from the least to everything. */
export function doubts({ kind }: ChartWorld) {
  const { power, tool, stop } = kind.roles;
  const doubt = (context: FlowContext, ...facts: readonly string[]): Change => ({
    facts: withUnknown(context.facts, facts),
  });
  return {
    doubtPower: (context: FlowContext): Change =>
      context.facts[power.fact] === power.off ? {} : doubt(context, power.fact),
    doubtMotion: (context: FlowContext): Change => doubt(context, power.fact, tool.fact),
    doubtStop: (context: FlowContext): Change => doubt(context, power.fact, tool.fact, stop.fact),
    /** After a break every fact is asked for anew before anything turns. */
    doubtAll: (): Change => ({
      facts: Object.fromEntries(kind.facts.map((fact) => [fact.id, unknownState])),
      speedSet: null,
    }),
  };
}
