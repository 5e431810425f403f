/** The states of a powered cut, and the walk through the causes when it will not start. */

import {
  type Arrow,
  type ChartNode,
  hasAny,
  met,
  notMet,
  type Ref,
  settleItem,
} from './chart-arrows.ts';
import type { StepArrows } from './chart-step.ts';
import type { FaultWalk } from './kind-shape.ts';
import type { WantedFacts } from './words-shape.ts';

export class TurningChart {
  constructor(private readonly arrows: StepArrows) {}

  /** A powered cut: started, watched, and over only when the tool is clear and the power off. */
  turning(after: string): Record<string, ChartNode> {
    const { gate, cutting } = this.arrows.plan;
    const { power, tool } = this.arrows.world.kind.roles;
    const person = {
      hold: { target: 'hold', actions: ['doubtMotion', this.arrows.holdFor('person')] },
    };
    const stopping = { ...cutting, [tool.fact]: tool.clear };
    const lost = (wanted: WantedFacts): Arrow => ({
      guard: notMet(wanted),
      target: 'hold',
      actions: [this.arrows.holdFor('loss', this.arrows.entrance(), wanted), 'doubtMotion'],
    });
    return {
      start: {
        tags: ['start', 'turning'],
        always: [lost(gate)],
        on: {
          fact: {
            guard: { type: 'answers', params: { wanted: { [power.fact]: power.on } } },
            target: 'cutting',
            actions: [this.arrows.setFact()],
          },
          ...person,
          ...this.trouble(),
          ...this.arrows.back(),
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
            actions: [this.arrows.setFact()],
          },
          ...person,
          ...this.trouble(),
        },
      },
      stopping: {
        tags: ['turning'],
        always: [lost(stopping)],
        on: {
          fact: {
            guard: { type: 'answers', params: { wanted: { [power.fact]: power.off } } },
            target: after,
            actions: [this.arrows.setFact()],
          },
          ...person,
        },
      },
    };
  }

  /** Heard once the gate is open: at the dial, at the start and while it cuts. First of all it must then stand still. */
  trouble(): NonNullable<ChartNode['on']> {
    const walks = this.walksHere();
    if (walks.length === 0) return {};
    return {
      trouble: walks.map((walk) => ({
        guard: { type: 'walks', params: { walk: walk.id } },
        target: walk.id,
        actions: ['doubtMotion', ...begun(walk)],
      })),
    };
  }

  walks(): Record<string, ChartNode> {
    return Object.fromEntries(this.walksHere().map((walk) => [walk.id, this.walk(walk)]));
  }

  private walksHere(): readonly FaultWalk[] {
    const { plan, world } = this.arrows;
    return world.kind.walks.filter((walk) => plan.walks.includes(walk.id));
  }

  /** First it must stand still; then one thing at a time; then the gate asks for everything again. */
  private walk(walk: FaultWalk): ChartNode {
    const items = walk.items.map((item, index) => {
      const after = walk.items[index + 1]?.id;
      return [item.id, this.walkItem(item.needs, after)] as const;
    });
    const settle: ChartNode = {
      tags: [walk.id],
      always: [{ guard: met(this.arrows.powerOff), target: walk.items[0]?.id ?? '' }],
      on: { fact: this.arrows.answers(this.arrows.powerOff) },
    };
    return {
      initial: settleItem,
      tags: ['walk'],
      // Hands were near: what they may have changed is asked for again at the gate.
      exit: [{ type: 'forget', params: { facts: this.arrows.handsForget } }],
      on: { 'carry-on': { target: this.arrows.entrance() } },
      states: { [settleItem]: settle, ...Object.fromEntries(items) },
    };
  }

  private walkItem(needs: WantedFacts, after: string | undefined): ChartNode {
    const onward = after ?? `#flow.${this.arrows.id}.${this.arrows.entrance()}`;
    return {
      tags: ['hands'],
      entry: [{ type: 'forget', params: { facts: Object.keys(needs) } }],
      always: [
        {
          guard: 'powerNotOff',
          target: `#flow.${this.arrows.id}.hold`,
          actions: [this.arrows.holdFor('loss', this.arrows.entrance(), this.arrows.powerOff)],
        },
      ],
      on: {
        fact: this.arrows.answers(needs),
        next: { guard: met(needs), target: onward },
      },
    };
  }
}

/** What the trouble casts doubt on stays so until it is answered for, also where the walk is left early. */
function begun({ begins }: FaultWalk): readonly Ref[] {
  return hasAny(begins) ? [{ type: 'change', params: { wanted: begins } }] : [];
}
