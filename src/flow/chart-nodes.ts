/** The states inside one step: the gate, what is done, the hold, and the walk when it will not start. */

import type { ChartWorld } from './chart-actions.ts';
import { withoutKeys } from './facts.ts';
import type { FaultWalk } from './kind-shape.ts';
import type { StepPlan } from './step-plan.ts';
import type { WantedFacts } from './words-shape.ts';

type Ref = { readonly type: string; readonly params?: Readonly<Record<string, unknown>> };
interface Arrow {
  readonly guard?: Ref | string;
  readonly target?: string;
  readonly actions?: readonly (Ref | string)[];
}
/** One state of the chart, as plain data that XState reads. */
export interface ChartNode {
  readonly initial?: string;
  readonly tags?: readonly string[];
  readonly entry?: readonly (Ref | string)[];
  readonly exit?: readonly (Ref | string)[];
  readonly always?: readonly Arrow[];
  readonly on?: Readonly<Record<string, Arrow | readonly Arrow[]>>;
  readonly states?: Readonly<Record<string, ChartNode>>;
}

/** States of a step that walks of a machine kind must not be called. */
export const phaseNames = [
  'gate',
  'open',
  'dial',
  'start',
  'cutting',
  'stopping',
  'measure',
  'hold',
] as const;
export const settleItem = 'settle';

type HoldTo = 'gate' | 'open' | 'measure';
const toEnd = (target: string) => `#flow.${target}`;
const met = (wanted: WantedFacts): Ref => ({ type: 'met', params: { wanted } });
const notMet = (wanted: WantedFacts): Ref => ({ type: 'notMet', params: { wanted } });
const hasAny = (wanted: WantedFacts) => Object.keys(wanted).length > 0;

/** The compound state of one step. */
export function stepNode(plan: StepPlan, world: ChartWorld): ChartNode {
  const chart = new StepChart(plan, world);
  const body = chart.body();
  const gated = hasAny(plan.gate);
  return {
    initial: gated ? 'gate' : chart.first,
    ...(plan.step.kind === 'passes'
      ? {
          entry: [
            { type: 'forgetPasses', params: { step: plan.step.id } },
            { type: 'beginPasses', params: { step: plan.step.id } },
          ],
        }
      : {}),
    on: chart.always(),
    states: { ...(gated ? { gate: chart.gate() } : {}), ...body, hold: chart.hold() },
  };
}

class StepChart {
  readonly first: string;
  private readonly id: string;
  private readonly powerOff: WantedFacts;
  private readonly handsForget: readonly string[];

  constructor(
    private readonly plan: StepPlan,
    private readonly world: ChartWorld,
  ) {
    const { roles, facts } = world.kind;
    this.id = plan.step.id;
    this.powerOff = { [roles.power.fact]: roles.power.off };
    this.handsForget = facts.filter((fact) => fact.handsForget).map((fact) => fact.id);
    this.first = plan.step.kind === 'passes' ? 'dial' : plan.step.kind === 'cut' ? 'start' : 'open';
  }

  /** Heard in every state of the step: the drill, the hold, the break, and losses. */
  always(): NonNullable<ChartNode['on']> {
    return {
      stop: { target: '.hold', actions: ['doubtStop', this.holdFor('stop')] },
      hold: { target: '.hold', actions: ['doubtPower', this.holdFor('person')] },
      interrupted: { target: '.hold', actions: ['doubtAll', this.holdFor('interruption')] },
      fact: { guard: 'loses', actions: [this.setFact()] },
    };
  }

  gate(): ChartNode {
    const { plan } = this;
    return {
      ...(plan.powered ? { entry: [{ type: 'forgetOtherSpeed', params: { step: this.id } }] } : {}),
      always: [this.powerSurprise(), { guard: met(plan.gate), target: this.first }],
      on: { fact: this.answers(plan.gate), ...this.back() },
    };
  }

  hold(): ChartNode {
    const ways: readonly HoldTo[] =
      this.plan.step.kind === 'passes' ? ['measure', this.entrance()] : [this.entrance()];
    const carryOn = ways.map((to) => ({
      guard: { type: 'mayCarryOn', params: { wanted: this.heldWanted(to), to } },
      target: to === 'open' ? this.first : to,
      actions: ['release'],
    }));
    return {
      tags: ['held'],
      on: {
        fact: {
          guard: { type: 'answersHeld', params: { wanted: this.heldWanted(this.entrance()) } },
          actions: [this.setFact()],
        },
        'carry-on': carryOn,
        next: carryOn,
      },
    };
  }

  body(): Record<string, ChartNode> {
    const { step } = this.plan;
    switch (step.kind) {
      case 'cut':
        return { ...this.turning(this.exit()), ...this.walks() };
      case 'passes':
        return {
          dial: this.dial(),
          ...this.turning('measure'),
          measure: this.measure(),
          ...this.walks(),
        };
      case 'choose':
        return { open: this.open(this.choices()) };
      case 'measure':
      case 'inspect':
        return { open: this.open({ reading: this.readingArrows() }, ['measuring']) };
      case 'check':
        return { open: this.asking(step.facts, Object.keys(step.facts), {}) };
      case 'do':
        return { open: this.asking(step.ends, Object.keys(step.ends), step.begins) };
      default:
        return { open: this.open({ next: { target: this.exit() } }) };
    }
  }

  private exit(index = 0): string {
    return toEnd(this.plan.targets[index] ?? 'end');
  }

  private entrance(): HoldTo {
    return hasAny(this.plan.gate) ? 'gate' : 'open';
  }

  /** What a hold asks for, once what turns stands still: all that the step needs, unless a gauge is due. */
  private heldWanted(to: HoldTo): WantedFacts {
    return to === 'measure' ? this.powerOff : { ...this.askableGate(), ...this.powerOff };
  }

  /** The speed is left to the gate: it belongs to the machine, not to safety. */
  private askableGate(): WantedFacts {
    return withoutKeys(this.plan.gate, [this.world.kind.roles.speed.fact]);
  }

  private setFact(): Ref {
    return { type: 'setFact', params: { step: this.id } };
  }

  private holdFor(
    by: string,
    to: HoldTo = this.entrance(),
    wanted: WantedFacts = this.plan.gate,
  ): Ref {
    return { type: 'holdFor', params: { by, to, wanted } };
  }

  private answers(wanted: WantedFacts): Arrow {
    return { guard: { type: 'answers', params: { wanted } }, actions: [this.setFact()] };
  }

  private back(): { back?: Arrow } {
    const { back } = this.plan;
    if (!back) return {};
    return {
      back: {
        guard: 'powerNotOn',
        target: toEnd(back.to),
        actions: [{ type: 'undo', params: { step: this.id } }],
      },
    };
  }

  /** Something turns where nothing should: hold. */
  private powerSurprise(to: HoldTo = this.entrance()): Arrow {
    return { guard: 'powerOn', target: 'hold', actions: [this.holdFor('loss', to, this.powerOff)] };
  }

  /** What happens when the gate is lost while the step is open: hold where hands are near, else ask again. */
  private lossOf(wanted: WantedFacts): readonly Arrow[] {
    if (!hasAny(wanted)) return [];
    return this.plan.hands
      ? [{ guard: notMet(wanted), target: 'hold', actions: ['doubtPower', this.holdFor('loss')] }]
      : [{ guard: notMet(wanted), target: 'gate' }];
  }

  private moments(extra: readonly string[] = []): readonly string[] {
    const { step, hands } = this.plan;
    return [...(hands ? ['hands'] : []), ...(step.moment ? [step.moment] : []), ...extra];
  }

  private open(on: NonNullable<ChartNode['on']>, tags: readonly string[] = []): ChartNode {
    return {
      tags: this.moments(tags),
      ...(this.plan.hands
        ? { entry: [{ type: 'forget', params: { facts: this.handsForget } }] }
        : {}),
      always: [this.powerSurprise(), ...this.lossOf(this.plan.gate)],
      on: { ...on, ...this.back() },
    };
  }

  /** Asks for facts anew; leaves when all are answered, or on "next" when none is asked for. */
  private asking(wanted: WantedFacts, anew: readonly string[], begins: WantedFacts): ChartNode {
    const kept = withoutKeys(this.plan.gate, [...anew, ...Object.keys(begins)]);
    const forget = this.plan.hands ? [...this.handsForget, ...anew] : anew;
    const asks = hasAny(wanted);
    return {
      tags: this.moments(),
      entry: [
        { type: 'forget', params: { facts: forget } },
        { type: 'change', params: { wanted: begins } },
      ],
      always: [
        this.powerSurprise(),
        ...this.lossOf(kept),
        ...(asks ? [{ guard: met(wanted), target: this.exit() }] : []),
      ],
      on: {
        ...(asks ? { fact: this.answers(wanted) } : { next: { target: this.exit() } }),
        ...this.back(),
      },
    };
  }

  private choices(): NonNullable<ChartNode['on']> {
    const { step } = this.plan;
    if (step.kind !== 'choose') return {};
    return {
      choose: step.options.map((option, index) => ({
        guard: { type: 'chosen', params: { option: option.id } },
        target: this.exit(index),
      })),
    };
  }

  private readingArrows(): readonly Arrow[] {
    const { step } = this.plan;
    const params = { step: this.id };
    const take: Ref = { type: 'takeReading', params };
    const to = (type: string, target: string): Arrow => ({
      guard: { type, params },
      target,
      actions: [take],
    });
    if (step.kind === 'inspect') {
      return [to('within', this.exit(0)), to('rework', this.exit(1)), to('lost', this.exit(2))];
    }
    if (step.kind === 'passes') {
      return [to('within', this.exit(0)), to('lost', this.exit(1)), to('rework', this.entrance())];
    }
    return [to('plausible', this.exit(0))];
  }

  private dial(): ChartNode {
    return {
      always: [this.powerSurprise(), { guard: notMet(this.plan.gate), target: 'gate' }],
      on: { next: { target: 'start' }, ...this.back() },
    };
  }

  private measure(): ChartNode {
    const stopped = {
      guard: notMet(this.powerOff),
      target: 'hold',
      actions: [this.holdFor('loss', 'measure', this.powerOff)],
    };
    return {
      tags: ['hands', 'measuring'],
      entry: [{ type: 'forget', params: { facts: this.handsForget } }],
      always: [stopped],
      on: {
        reading: this.readingArrows(),
        hold: { target: 'hold', actions: ['doubtPower', this.holdFor('person', 'measure')] },
        stop: { target: 'hold', actions: ['doubtStop', this.holdFor('stop', 'measure')] },
        interrupted: {
          target: 'hold',
          actions: ['doubtAll', this.holdFor('interruption', 'measure')],
        },
        ...this.back(),
      },
    };
  }

  /** A powered cut: started, watched, and over only when the tool is clear and the power off. */
  private turning(after: string): Record<string, ChartNode> {
    const { gate, cutting } = this.plan;
    const { power, tool } = this.world.kind.roles;
    const person = { hold: { target: 'hold', actions: ['doubtMotion', this.holdFor('person')] } };
    const stopping = { ...cutting, [tool.fact]: tool.clear };
    const lost = (wanted: WantedFacts): Arrow => ({
      guard: notMet(wanted),
      target: 'hold',
      actions: [this.holdFor('loss', this.entrance(), wanted), 'doubtMotion'],
    });
    return {
      start: {
        tags: ['start', 'turning'],
        always: [lost(gate)],
        on: {
          fact: {
            guard: { type: 'answers', params: { wanted: { [power.fact]: power.on } } },
            target: 'cutting',
            actions: [this.setFact()],
          },
          ...person,
          ...this.trouble(),
          ...this.back(),
        },
      },
      cutting: {
        tags: ['cutting', 'turning'],
        entry: [{ type: 'change', params: { wanted: { [tool.fact]: tool.touching } } }],
        always: [lost(cutting)],
        on: {
          fact: {
            guard: { type: 'answers', params: { wanted: { [tool.fact]: tool.clear } } },
            target: 'stopping',
            actions: [this.setFact()],
          },
          ...person,
        },
      },
      stopping: {
        tags: ['turning'],
        always: [lost(stopping)],
        on: {
          fact: {
            guard: { type: 'answers', params: { wanted: { [power.fact]: power.off } } },
            target: after,
            actions: [this.setFact()],
          },
          ...person,
        },
      },
    };
  }

  private trouble(): NonNullable<ChartNode['on']> {
    const { walks } = this.world.kind;
    if (walks.length === 0) return {};
    return {
      trouble: walks.map((walk) => ({
        guard: { type: 'walks', params: { walk: walk.id } },
        target: walk.id,
        actions: ['doubtMotion'],
      })),
    };
  }

  private walks(): Record<string, ChartNode> {
    return Object.fromEntries(this.world.kind.walks.map((walk) => [walk.id, this.walk(walk)]));
  }

  /** First it must stand still; then one thing at a time; then the gate asks for everything again. */
  private walk(walk: FaultWalk): ChartNode {
    const items = walk.items.map((item, index) => {
      const after = walk.items[index + 1]?.id;
      return [item.id, this.walkItem(item.needs, after)] as const;
    });
    const settle: ChartNode = {
      always: [{ guard: met(this.powerOff), target: walk.items[0]?.id ?? '' }],
      on: { fact: this.answers(this.powerOff) },
    };
    return {
      initial: settleItem,
      tags: ['walk'],
      on: { 'carry-on': { target: this.entrance() } },
      states: { [settleItem]: settle, ...Object.fromEntries(items) },
    };
  }

  private walkItem(needs: WantedFacts, after: string | undefined): ChartNode {
    const onward = after ?? `#flow.${this.id}.${this.entrance()}`;
    return {
      tags: ['hands'],
      entry: [{ type: 'forget', params: { facts: Object.keys(needs) } }],
      always: [
        {
          guard: 'powerNotOff',
          target: `#flow.${this.id}.hold`,
          actions: [this.holdFor('loss', this.entrance(), this.powerOff)],
        },
      ],
      on: {
        fact: this.answers(needs),
        next: { guard: met(needs), target: onward },
      },
    };
  }
}
