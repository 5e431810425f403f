/** The arrows that many states of one step share: answers, losses, holds, the way back and the ways out. */

import { type Arrow, type HoldTo, hasAny, notMet, type Ref, toStep } from './chart-arrows.ts';
import type { ChartWorld } from './chart-world.ts';
import { withoutKeys } from './facts.ts';
import { released } from './release.ts';
import type { StepPlan } from './step-plan.ts';
import type { WantedFacts } from './words-shape.ts';

export class StepArrows {
  readonly id: string;
  readonly powerOff: WantedFacts;
  readonly handsForget: readonly string[];

  constructor(
    readonly plan: StepPlan,
    readonly world: ChartWorld,
  ) {
    const { roles, facts } = world.kind;
    this.id = plan.step.id;
    this.powerOff = { [roles.power.fact]: roles.power.off };
    this.handsForget = facts.filter((fact) => fact.handsForget).map((fact) => fact.id);
  }

  exit(index = 0): string {
    return toStep(this.plan.targets[index] ?? 'end');
  }

  entrance(): HoldTo {
    return hasAny(this.plan.gate) ? 'gate' : 'open';
  }

  /** What a hold asks for, once what turns stands still: all that the step needs, unless a gauge is due. */
  heldWanted(to: HoldTo): WantedFacts {
    return to === 'measure' ? this.powerOff : { ...this.askableGate(), ...this.powerOff };
  }

  /** The speed is left to the gate: it belongs to the machine, not to safety. */
  askableGate(): WantedFacts {
    return withoutKeys(this.plan.gate, [this.world.kind.roles.speed.fact]);
  }

  setFact(): Ref {
    return { type: 'setFact', params: { step: this.id } };
  }

  holdFor(by: string, to: HoldTo = this.entrance(), wanted: WantedFacts = this.plan.gate): Ref {
    return { type: 'holdFor', params: { by, to, wanted } };
  }

  answers(wanted: WantedFacts): Arrow {
    return { guard: { type: 'answers', params: { wanted } }, actions: [this.setFact()] };
  }

  /** Heard only where the step waits for an instructor. */
  release(held: boolean): { release?: Arrow } {
    if (!this.plan.step.release) return {};
    const guard = { type: 'releases', params: { held } };
    return { release: { guard, actions: [{ type: 'change', params: { wanted: released } }] } };
  }

  back(): { back?: Arrow } {
    const { back } = this.plan;
    if (!back) return {};
    return {
      back: {
        guard: 'powerNotOn',
        target: toStep(back.to),
        actions: [{ type: 'undo', params: { step: this.id } }],
      },
    };
  }

  /** Something turns where nothing should: hold. */
  powerSurprise(to: HoldTo = this.entrance()): Arrow {
    return { guard: 'powerOn', target: 'hold', actions: [this.holdFor('loss', to, this.powerOff)] };
  }

  /** What happens when the gate is lost while the step is open: hold where hands are near, else ask again. */
  lossOf(wanted: WantedFacts): readonly Arrow[] {
    if (!hasAny(wanted)) return [];
    return this.plan.hands
      ? [{ guard: notMet(wanted), target: 'hold', actions: [this.holdFor('loss'), 'doubtPower'] }]
      : [{ guard: notMet(wanted), target: 'gate' }];
  }
}
