/** The guards and actions of every flow's statechart. They only read and replace context; nothing reaches the world. */

import { assign, setup } from 'xstate';
import { type FlowContext, type FlowEvent, unknownState } from './events.ts';
import { isLoss, isMet, missingFacts, withFacts, withUnknown } from './facts.ts';
import type { MachineKind } from './kind-shape.ts';
import type { Numbers } from './numbers.ts';
import { nextPass } from './pass.ts';
import type { StepPlan } from './step-plan.ts';
import { plausible, verdictOf } from './verdict.ts';
import type { WantedFacts } from './words-shape.ts';

export interface ChartWorld {
  readonly kind: MachineKind;
  readonly plans: ReadonlyMap<string, StepPlan>;
  readonly numbers: Numbers;
  readonly card: { readonly crossReads: 'diameter' | 'radius'; readonly crossDivision: number };
}

type Wanted = { readonly wanted: WantedFacts };
type OfStep = { readonly step: string };
type Held = NonNullable<FlowContext['held']>;

/** XState's setup for flows; `world` is closed over, so that parameters stay plain data. */
export function chartSetup(world: ChartWorld) {
  const { kind, plans, numbers } = world;
  const { power, tool, stop, speed } = kind.roles;
  const planOf = (id: string): StepPlan => {
    const plan = plans.get(id);
    if (!plan) throw new Error(`The chart names a step "${id}" that was never planned.`);
    return plan;
  };
  const reading = (id: string) => {
    const { step } = planOf(id);
    return 'reading' in step ? step.reading : undefined;
  };
  const verdict = (context: FlowContext, event: FlowEvent, step: string) =>
    event.type === 'reading' && plausible(planOf(step).step, event.value, numbers, context.readings)
      ? verdictOf(planOf(step).step, event.value, numbers, context.readings)
      : undefined;

  return setup({
    types: { context: {} as FlowContext, events: {} as FlowEvent },
    guards: {
      met: ({ context }, { wanted }: Wanted) => isMet(context.facts, wanted),
      notMet: ({ context }, { wanted }: Wanted) => !isMet(context.facts, wanted),
      powerOn: ({ context }) => context.facts[power.fact] === power.on,
      powerNotOn: ({ context }) => context.facts[power.fact] !== power.on,
      powerNotOff: ({ context }) => context.facts[power.fact] !== power.off,
      /** The event is the response to a fact that is asked for here and not yet so. */
      answers: ({ context, event }, { wanted }: Wanted) =>
        event.type === 'fact' &&
        wanted[event.fact] === event.state &&
        context.facts[event.fact] !== event.state,
      /** While held, what turns is asked for first and alone. */
      answersHeld: ({ context, event }, { wanted }: Wanted) => {
        if (event.type !== 'fact' || context.facts[event.fact] === event.state) return false;
        if (context.facts[power.fact] !== power.off) {
          return event.fact === power.fact && event.state === power.off;
        }
        return wanted[event.fact] === event.state;
      },
      loses: ({ context, event }) =>
        event.type === 'fact' &&
        context.facts[event.fact] !== event.state &&
        isLoss(kind, event.fact, event.state),
      mayCarryOn: ({ context }, { wanted, to }: Wanted & { readonly to: Held['to'] }) =>
        context.held?.to === to &&
        context.facts[power.fact] === power.off &&
        isMet(context.facts, wanted),
      plausible: ({ context, event }, { step }: OfStep) =>
        event.type === 'reading' &&
        plausible(planOf(step).step, event.value, numbers, context.readings),
      within: ({ context, event }, { step }: OfStep) => verdict(context, event, step) === 'within',
      rework: ({ context, event }, { step }: OfStep) => verdict(context, event, step) === 'rework',
      lost: ({ context, event }, { step }: OfStep) => verdict(context, event, step) === 'lost',
      chosen: ({ event }, { option }: { readonly option: string }) =>
        event.type === 'choose' && event.option === option,
      walks: ({ event }, { walk }: { readonly walk: string }) =>
        event.type === 'trouble' && event.walk === walk,
    },
    actions: {
      setFact: assign(({ context, event }, { step }: OfStep) => {
        if (event.type !== 'fact') return {};
        const facts = withFacts(context.facts, { [event.fact]: event.state });
        if (event.fact !== speed.fact || event.state !== speed.set) return { facts };
        return { facts, speedSet: speedOf(planOf(step), numbers, context) };
      }),
      change: assign(({ context }, { wanted }: Wanted) => ({
        facts: withFacts(context.facts, wanted),
      })),
      forget: assign(({ context }, { facts }: { readonly facts: readonly string[] }) => ({
        facts: withUnknown(context.facts, facts),
      })),
      /** A speed that was set for another step is not set for this one. */
      forgetOtherSpeed: assign(({ context }, { step }: OfStep) => {
        const wanted = speedOf(planOf(step), numbers, context);
        if (wanted === context.speedSet) return {};
        return { facts: withUnknown(context.facts, [speed.fact]), speedSet: null };
      }),
      beginPasses: assign(({ context }, { step }: OfStep) => {
        const { step: passes } = planOf(step);
        if (passes.kind !== 'passes' || context.passes[step]) return {};
        const size = numbers.number(passes.from, context.readings);
        if (size === undefined) return {};
        return { passes: { ...context.passes, [step]: { size, dial: 0 } } };
      }),
      takeReading: assign(({ context, event }, { step }: OfStep) => {
        const name = reading(step)?.id;
        if (event.type !== 'reading' || name === undefined) return {};
        const readings = { ...context.readings, [name]: event.value };
        const { step: passes } = planOf(step);
        const before = context.passes[step];
        if (passes.kind !== 'passes' || !before) return { readings };
        const { dial } = nextPass(passes, before, context.readings, world);
        return { readings, passes: { ...context.passes, [step]: { size: event.value, dial } } };
      }),
      holdFor: assign(
        (
          { context },
          {
            by,
            to,
            wanted,
          }: { readonly by: Held['by']; readonly to: Held['to']; readonly wanted: WantedFacts },
        ) => ({
          held: {
            by,
            to: context.held?.to ?? to,
            lost: by === 'loss' ? missingFacts(context.facts, wanted, kind) : [],
          },
        }),
      ),
      /** Under power, nobody knows what stands still until it is said. */
      doubtPower: assign(({ context }) =>
        context.facts[power.fact] === power.off
          ? {}
          : { facts: withUnknown(context.facts, [power.fact]) },
      ),
      doubtMotion: assign(({ context }) => ({
        facts: withUnknown(context.facts, [power.fact, tool.fact]),
      })),
      doubtStop: assign(({ context }) => ({
        facts: withUnknown(context.facts, [power.fact, tool.fact, stop.fact]),
      })),
      /** After a break every fact is asked for anew before anything turns. */
      doubtAll: assign(() => ({
        facts: Object.fromEntries(kind.facts.map((fact) => [fact.id, unknownState])),
        speedSet: null,
      })),
      release: assign(() => ({ held: null })),
      undo: assign(({ context }, { step }: OfStep) => {
        const back = planOf(step).back;
        if (!back) return {};
        return {
          facts: withUnknown(context.facts, back.facts),
          readings: leavingOut(context.readings, back.readings),
          passes: leavingOut(context.passes, back.passes),
        };
      }),
      /** Passes begin anew whenever the step is come to again. */
      forgetPasses: assign(({ context }, { step }: OfStep) => ({
        passes: leavingOut(context.passes, [step]),
      })),
    },
  });
}

function leavingOut<T>(record: Readonly<Record<string, T>>, keys: readonly string[]) {
  return Object.fromEntries(Object.entries(record).filter(([key]) => !keys.includes(key)));
}

/** The speed a powered step runs at, in rev/min. */
export function speedOf(plan: StepPlan, numbers: Numbers, context: FlowContext): number | null {
  const { step } = plan;
  if (step.kind !== 'cut' && step.kind !== 'passes') return null;
  return numbers.number(step.speed, context.readings) ?? null;
}
