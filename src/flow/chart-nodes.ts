/** The states inside one step: the gate, what is done, and the hold. */

import {
  type Arrow,
  type ChartNode,
  type HoldTo,
  hasAny,
  met,
  notMet,
  type Ref,
} from './chart-arrows.ts';
import { StepArrows } from './chart-step.ts';
import { TurningChart } from './chart-turning.ts';
import type { ChartWorld } from './chart-world.ts';
import { withoutKeys } from './facts.ts';
import { releaseFact } from './release.ts';
import type { StepPlan } from './step-plan.ts';
import type { WantedFacts } from './words-shape.ts';

/** The compound state of one step. */
export function stepNode(plan: StepPlan, world: ChartWorld): ChartNode {
  const chart = new StepChart(plan, world);
  const body = chart.body();
  const gated = hasAny(plan.gate);
  return {
    initial: gated ? 'gate' : chart.first,
    entry: entryOf(plan),
    on: chart.always(),
    states: { ...(gated ? { gate: chart.gate() } : {}), ...body, hold: chart.hold() },
  };
}

/** Begun anew, passes start from their first size, and a release must be given anew. */
function entryOf({ step }: StepPlan): readonly Ref[] {
  return [
    ...(step.kind === 'passes' ? [{ type: 'beginPasses', params: { step: step.id } }] : []),
    ...(step.release ? [{ type: 'forget', params: { facts: [releaseFact] } }] : []),
  ];
}

class StepChart {
  readonly first: string;
  private readonly arrows: StepArrows;
  private readonly turning: TurningChart;

  constructor(plan: StepPlan, world: ChartWorld) {
    this.arrows = new StepArrows(plan, world);
    this.turning = new TurningChart(this.arrows);
    this.first = plan.step.kind === 'passes' ? 'dial' : plan.step.kind === 'cut' ? 'start' : 'open';
  }

  /** Heard in every state of the step: the drill, the hold, the break, and losses. */
  always(): NonNullable<ChartNode['on']> {
    return {
      stop: { target: '.hold', actions: ['doubtStop', this.arrows.holdFor('stop')] },
      hold: { target: '.hold', actions: ['doubtPower', this.arrows.holdFor('person')] },
      interrupted: { target: '.hold', actions: ['doubtAll', this.arrows.holdFor('interruption')] },
      fact: { guard: 'loses', actions: [this.arrows.setFact()] },
      ...(this.arrows.plan.powered ? { adjusted: { actions: [this.forgetOtherSpeed()] } } : {}),
    };
  }

  private forgetOtherSpeed(): Ref {
    return { type: 'forgetOtherSpeed', params: { step: this.arrows.id } };
  }

  gate(): ChartNode {
    const { plan } = this.arrows;
    return {
      ...(plan.powered ? { entry: [this.forgetOtherSpeed()] } : {}),
      always: [this.arrows.powerSurprise(), { guard: met(plan.gate), target: this.first }],
      on: {
        fact: this.arrows.answers(plan.gate),
        ...this.arrows.release(false),
        ...this.turning.trouble(),
        ...this.arrows.back(),
      },
    };
  }

  hold(): ChartNode {
    const ways: readonly HoldTo[] =
      this.arrows.plan.step.kind === 'passes'
        ? ['measure', this.arrows.entrance()]
        : [this.arrows.entrance()];
    const carryOn = ways.map((to) => ({
      guard: { type: 'mayCarryOn', params: { wanted: this.arrows.heldWanted(to), to } },
      target: to === 'open' ? this.first : to,
      actions: ['release'],
    }));
    return {
      tags: ['held'],
      on: {
        fact: {
          guard: {
            type: 'answersHeld',
            params: { wanted: this.arrows.heldWanted(this.arrows.entrance()) },
          },
          actions: [this.arrows.setFact()],
        },
        ...this.arrows.release(true),
        'carry-on': carryOn,
      },
    };
  }

  body(): Record<string, ChartNode> {
    const { step } = this.arrows.plan;
    switch (step.kind) {
      case 'cut':
        return { ...this.turning.turning(this.arrows.exit()), ...this.turning.walks() };
      case 'passes':
        return {
          dial: this.dial(),
          ...this.turning.turning('measure'),
          measure: this.measure(),
          ...this.turning.walks(),
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
        return { open: this.open({ next: { target: this.arrows.exit() } }) };
    }
  }

  private moments(extra: readonly string[] = []): readonly string[] {
    const { step, hands } = this.arrows.plan;
    return [...(hands ? ['hands'] : []), ...(step.moment ? [step.moment] : []), ...extra];
  }

  private open(on: NonNullable<ChartNode['on']>, tags: readonly string[] = []): ChartNode {
    return {
      tags: this.moments(tags),
      ...(this.arrows.plan.hands
        ? { entry: [{ type: 'forget', params: { facts: this.arrows.handsForget } }] }
        : {}),
      always: [this.arrows.powerSurprise(), ...this.arrows.lossOf(this.arrows.plan.gate)],
      on: { ...on, ...this.arrows.back() },
    };
  }

  /** Asks for facts anew; leaves when all are answered, or on "next" when none is asked for. */
  private asking(wanted: WantedFacts, anew: readonly string[], begins: WantedFacts): ChartNode {
    const kept = withoutKeys(this.arrows.plan.gate, [...anew, ...Object.keys(begins)]);
    const forget = this.arrows.plan.hands ? [...this.arrows.handsForget, ...anew] : anew;
    const asks = hasAny(wanted);
    return {
      tags: this.moments(),
      entry: [
        { type: 'forget', params: { facts: forget } },
        { type: 'change', params: { wanted: begins } },
      ],
      always: [
        this.arrows.powerSurprise(),
        ...this.arrows.lossOf(kept),
        ...(asks ? [{ guard: met(wanted), target: this.arrows.exit() }] : []),
      ],
      on: {
        ...(asks
          ? { fact: this.arrows.answers(wanted) }
          : { next: { target: this.arrows.exit() } }),
        ...this.arrows.back(),
      },
    };
  }

  private choices(): NonNullable<ChartNode['on']> {
    const { step } = this.arrows.plan;
    if (step.kind !== 'choose') return {};
    return {
      choose: step.options.map((option, index) => ({
        guard: { type: 'chosen', params: { option: option.id } },
        target: this.arrows.exit(index),
      })),
    };
  }

  private readingArrows(): readonly Arrow[] {
    const { step } = this.arrows.plan;
    const params = { step: this.arrows.id };
    const take: Ref = { type: 'takeReading', params };
    const to = (type: string, target: string): Arrow => ({
      guard: { type, params },
      target,
      actions: [take],
    });
    if (step.kind === 'inspect') {
      return [
        to('within', this.arrows.exit(0)),
        to('rework', this.arrows.exit(1)),
        to('lost', this.arrows.exit(2)),
      ];
    }
    if (step.kind === 'passes') {
      return [
        to('within', this.arrows.exit(0)),
        to('lost', this.arrows.exit(1)),
        to('rework', this.arrows.entrance()),
      ];
    }
    return [to('plausible', this.arrows.exit(0))];
  }

  private dial(): ChartNode {
    return {
      always: [
        this.arrows.powerSurprise(),
        { guard: notMet(this.arrows.plan.gate), target: 'gate' },
      ],
      on: { next: { target: 'start' }, ...this.turning.trouble(), ...this.arrows.back() },
    };
  }

  private measure(): ChartNode {
    const stopped = {
      guard: notMet(this.arrows.powerOff),
      target: 'hold',
      actions: [this.arrows.holdFor('loss', 'measure', this.arrows.powerOff)],
    };
    return {
      tags: ['hands', 'measuring'],
      entry: [{ type: 'forget', params: { facts: this.arrows.handsForget } }],
      always: [stopped],
      on: {
        reading: this.readingArrows(),
        hold: { target: 'hold', actions: ['doubtPower', this.arrows.holdFor('person', 'measure')] },
        stop: { target: 'hold', actions: ['doubtStop', this.arrows.holdFor('stop', 'measure')] },
        interrupted: {
          target: 'hold',
          actions: ['doubtAll', this.arrows.holdFor('interruption', 'measure')],
        },
        ...this.arrows.back(),
      },
    };
  }
}
