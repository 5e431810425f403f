/** Plays one small step of the job's own chart, with variables left open, and tells it without the names of steps. */

import type { FlowContext, FlowEvent, FlowMachine, FlowSnapshot, Job } from '../flow/index.ts';
import { beginJob, endStep, positionOf } from '../flow/index.ts';
import { worded } from '../texts/index.ts';
import { sizesOf } from './alphabet.ts';
import type { Frame } from './frame.ts';
import { judgeMove } from './judge-move.ts';
import { type Move, refused, type SpotName } from './move.ts';
import { nearbyChart } from './nearby-chart.ts';
import type { Room } from './room.ts';
import { type Stepper, stepperOf } from './stepper.ts';
import { type Row, type ValueSet, zeroRow } from './value-sets.ts';
import { type Held, heldIn, type Variable, type Variables } from './variables.ts';
import { Unseeable } from './walk-limits.ts';
import { Lens, type Look, watched } from './watched.ts';

export class Player {
  /** Runs of the chart that were needed; what was remembered from other proofs is not among them. */
  runs = 0;
  private readonly lens: Lens;
  private readonly implementations: unknown;
  private readonly charts = new Map<string, Chart>();
  private readonly snapshots = new Map<string, FlowSnapshot>();

  constructor(
    readonly job: Job,
    private readonly room: Room,
    private readonly variables: Variables,
  ) {
    this.lens = new Lens(variables);
    this.implementations = watched(job.machine, this.lens, job.flow.kind.roles.speed.fact);
  }

  private chartOf(step: string, slots: readonly string[]): Chart {
    const old = this.charts.get(step);
    if (old) return old;
    const machine = nearbyChart(this.job.machine, step, slots, this.implementations);
    const made = { machine, step: stepperOf(machine) };
    this.charts.set(step, made);
    return made;
  }

  /** Where a job begins, and its one row: it is read off. */
  begin(): { step: string; name: SpotName; rows: ValueSet } {
    const snapshot = beginJob(this.job);
    const row: Row = this.variables.all
      .map((one) => {
        const held = this.variables.fromHeld(one, heldIn(snapshot.context, one));
        return [one.level, one.values.numberOf(held)] as const;
      })
      .filter(([, value]) => value !== 0)
      .sort(([a], [b]) => a - b);
    return {
      step: positionOf(snapshot).step,
      name: nameOf(snapshot, true),
      rows: this.room.sets.withAll(zeroRow, row),
    };
  }

  /** One run: what the event does here, or, with none, what follows by itself. */
  play(frame: Frame, spot: SpotName, event: FlowEvent | null, look: Look): Move {
    this.runs += 1;
    const before = this.at(frame, spot);
    const { step } = this.chartOf(frame.step.id, frame.slots);
    const move = this.lens.through(look, frame.nearby, (): Move => {
      const after = event ? step.first(before, event) : step.follow(before);
      if (after === before && event) return refused;
      const broken = event && judgeMove(this.job, before, event, this.seen(after));
      return {
        to: targetOf(frame, spot, after, after === before),
        writes: this.writesOf(frame, after.context),
        broken: broken?.claim ?? null,
      };
    });
    return this.room.oneMove(move);
  }

  /** Asks one question of a spot. */
  ask(
    frame: Frame | undefined,
    spot: SpotName,
    bad: (snapshot: FlowSnapshot) => boolean,
    look: Look,
  ): boolean {
    this.runs += 1;
    const near = frame?.nearby ?? new Set<string>();
    const snapshot = this.at(frame, spot);
    return this.lens.through(look, near, () => bad(this.seen(snapshot)));
  }

  /** Sizes on both sides of every limit. */
  sizes(frame: Frame, spot: SpotName, look: Look): readonly number[] {
    const before = this.at(frame, spot);
    return this.lens.through(look, frame.nearby, () =>
      this.room.oneList(sizesOf(this.job, frame.step, this.seen(before).context.readings)),
    );
  }

  /** A snapshot of a spot with everything left open. */
  at(frame: Frame | undefined, spot: SpotName): FlowSnapshot {
    const step = frame?.step.id ?? endStep;
    const { inner, held } = spot;
    const key = `${step} ${inner} ${held}`;
    const old = this.snapshots.get(key);
    if (old) return old;
    const open = frame?.open() ?? this.variables.all.filter(({ kind }) => kind === 'fact');
    const value: unknown = inner === '' ? step : { [step]: JSON.parse(inner) as unknown };
    const made = this.chartOf(step, frame?.slots ?? []).machine.resolveState({
      value: value as FlowSnapshot['value'],
      context: openContext(open, held),
      status: frame ? 'active' : 'done',
    });
    this.snapshots.set(key, made);
    return made;
  }

  /**
   * What a context holds that is not the token of its variable: it was set. Where the fact of the speed is not known, the
   * speed itself is nothing (walk.ts says why that misses nothing).
   */
  private writesOf(frame: Frame, context: FlowContext): Move['writes'] {
    const { facts, speed } = this.room.variables;
    const role = this.job.flow.kind.roles.speed;
    const writes = new Map<Variable, Held>();
    for (const variable of frame.open()) {
      const held = heldIn(context, variable);
      if (held !== variable.token) writes.set(variable, this.variables.fromHeld(variable, held));
    }
    const said = facts.find(({ key }) => key === role.fact);
    const now = said && writes.get(said);
    if (now !== undefined && said?.values.numberOf(now) === 0) writes.set(speed, null);
    return [...writes].map(([variable, held]) => [frame.nameOf(variable), held] as const);
  }

  /** A snapshot as claims may see it: facts through the lens, readings as they stand. */
  private seen(snapshot: FlowSnapshot): FlowSnapshot {
    return { ...snapshot, context: this.lens.context(snapshot.context) } as FlowSnapshot;
  }
}

interface Chart {
  readonly machine: FlowMachine;
  readonly step: Stepper;
}

function nameOf(snapshot: FlowSnapshot, settled: boolean): SpotName {
  const { step } = positionOf(snapshot);
  const value = snapshot.value as string | Readonly<Record<string, unknown>>;
  const inner = typeof value === 'string' ? '' : JSON.stringify(value[step]);
  return { inner, held: snapshot.context.held?.to ?? null, rests: settled || inner === '' };
}

function targetOf(
  frame: Frame,
  from: SpotName,
  after: FlowSnapshot,
  settled: boolean,
): NonNullable<Move['to']> {
  const { step } = positionOf(after);
  const slot = frame.slots.indexOf(step);
  const name = nameOf(after, settled);
  if (slot === 0 && name.inner === from.inner && name.held === from.held) {
    return name.rests ? 'rests' : 'here';
  }
  if (slot >= 0) return { slot, ...name };
  throw new Unseeable(worded`Step "${frame.step.id}" leads on to "${step}".`);
}

/** Tokens stand where facts and numbers would; nothing but the lens ever looks at them. */
function openContext(open: readonly Variable[], held: string | null): FlowContext {
  const tokens = (kind: Variable['kind']): Record<string, unknown> =>
    Object.fromEntries(open.filter((one) => one.kind === kind).map((one) => [one.key, one.token]));
  const context: unknown = {
    facts: tokens('fact'),
    readings: tokens('reading'),
    passes: tokens('pass'),
    speedSet: open.find((one) => one.kind === 'speed')?.token ?? null,
    held: held === null ? null : { to: held, by: 'person', lost: [] },
  };
  return context as FlowContext;
}
