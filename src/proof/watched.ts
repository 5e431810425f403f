/**
 * The same chart with a lens in front of its guards and actions: it sees which facts and readings they look at.
 *
 * Facts and readings whose value is left open stand in the context as tokens. Guards and assigns are the flow's own
 * functions, called with a context that hands a token's value out when it is looked at, and the token itself when the
 * whole record is copied into the next context. So a run of XState's transition tells what it depended on.
 */

import { type ActionArgs, assign, type EventObject } from 'xstate';
import { type FlowContext, type FlowMachine, unknownState } from '../flow/index.ts';
import { type Worded, worded } from '../texts/index.ts';
import type { Held, Variable, VariableKind, Variables } from './variables.ts';
import { Unseeable } from './walk-limits.ts';

/** Gives the value of a variable that is looked at, as one number of its values. */
export type Look = (variable: Variable) => number;

export class Lens {
  private look: Look | undefined;
  private failure: Unseeable | undefined;
  private near: ReadonlySet<string> = new Set();
  /** Of one run: a record that is asked for twice is one object, so that what is worked out of it is so once. */
  private records = new Map<object, unknown>();

  constructor(private readonly variables: Variables) {}

  /** Runs `work` with `look` answering for the variables named `near`; returns what work returns. */
  through<T>(look: Look, near: ReadonlySet<string>, work: () => T): T {
    this.look = look;
    this.near = near;
    this.failure = undefined;
    this.records = new Map();
    try {
      const done = work();
      // XState wraps what a guard throws, and a claim may catch it: what the lens refused stays refused.
      if (this.failure) throw this.failure;
      return done;
    } catch (error) {
      throw this.failure ?? error;
    } finally {
      this.look = undefined;
    }
  }

  refuse(said: Worded): Unseeable {
    this.failure = new Unseeable(said);
    return this.failure;
  }

  /** The context as guards and claims see it. The speed is for `forgetOtherSpeed` alone. */
  context(context: FlowContext, speedToo = false): FlowContext {
    return context instanceof SeenContext ? context : new SeenContext(context, this, speedToo);
  }

  /** What stands in a context: handed out when it is open and looked at. */
  value(token: unknown): unknown {
    const variable = this.variables.behind(token);
    if (!variable) return token;
    if (!this.look)
      throw this.refuse(worded`The chart looks at ${variable.name} outside of a run.`);
    const held: Held = variable.values.at(this.look(variable));
    return this.variables.asHeld(variable, held);
  }

  isNear(name: string): boolean {
    return this.near.has(name);
  }

  record(record: object, kind: VariableKind): unknown {
    const old = this.records.get(record);
    if (old) return old;
    const made: unknown = new Proxy(record, new SeenRecord(this, kind));
    this.records.set(record, made);
    return made;
  }
}

class SeenContext implements FlowContext {
  constructor(
    private readonly own: FlowContext,
    private readonly lens: Lens,
    private readonly speedToo: boolean,
  ) {}

  get facts() {
    return this.lens.record(this.own.facts, 'fact') as FlowContext['facts'];
  }

  get readings() {
    return this.lens.record(this.own.readings, 'reading') as FlowContext['readings'];
  }

  get passes() {
    return this.lens.record(this.own.passes, 'pass') as FlowContext['passes'];
  }

  get speedSet() {
    if (!this.speedToo) throw this.lens.refuse(worded`The chart looks at the speed itself.`);
    return this.lens.value(this.own.speedSet) as number | null;
  }

  get held() {
    return this.own.held;
  }
}

/**
 * Copying a record asks for its keys first, then for each key's descriptor and value: those values stay tokens.
 * A value that is asked for by itself is looked at.
 */
class SeenRecord implements ProxyHandler<object> {
  private readonly copied = new Set<PropertyKey>();
  private copying = false;

  constructor(
    private readonly lens: Lens,
    private readonly kind: VariableKind,
  ) {}

  ownKeys(target: object) {
    this.copying = true;
    return Reflect.ownKeys(target);
  }

  getOwnPropertyDescriptor(target: object, key: PropertyKey) {
    if (!this.copying)
      throw this.lens.refuse(worded`The chart asks whether "${String(key)}" is there.`);
    this.copied.add(key);
    return Reflect.getOwnPropertyDescriptor(target, key);
  }

  has(_: object, key: PropertyKey): boolean {
    throw this.lens.refuse(worded`The chart asks whether "${String(key)}" is there.`);
  }

  get(target: object, key: PropertyKey): unknown {
    const held: unknown = Reflect.get(target, key);
    if (this.copied.delete(key)) return held;
    this.copying = false;
    if (held === undefined && !this.lens.isNear(`${this.kind}:${String(key)}`)) {
      throw this.lens.refuse(
        worded`The chart looks at ${`${this.kind}:${String(key)}`} from afar.`,
      );
    }
    return this.lens.value(held);
  }
}

/** The list of lost facts is told to the person and looked at by no guard, so it is not looked into here. */
const toldOnly = 'holdFor';

/** The one action that looks at the speed that is set. */
const ofSpeed = 'forgetOtherSpeed';

type Args = ActionArgs<FlowContext, EventObject, EventObject>;
type Guard = (args: Args, params: unknown) => boolean;
type Assignment = (args: Args, params: unknown) => Partial<FlowContext>;

/** The machine's own guards and actions with the lens in front. `speedFact`: the fact that a speed is set. */
export function watched(machine: FlowMachine, lens: Lens, speedFact: string): unknown {
  const guards = Object.entries(machine.implementations.guards).map(([name, guard]) => {
    const own = guard as unknown as Guard;
    const seen: Guard = (args, params) =>
      own({ ...args, context: lens.context(args.context) }, params);
    if (answering.has(name)) return [name, answersAlone(seen, lens)];
    return [name, seen];
  });
  const actions = Object.entries(machine.implementations.actions).map(([name, action]) => {
    const own = assignmentOf(name, action);
    const seen = (speedToo: boolean): Assignment => {
      return (args, params) =>
        own({ ...args, context: lens.context(args.context, speedToo) }, params);
    };
    const made: Readonly<Record<string, Assignment>> = {
      [toldOnly]: (args, params) => untold(own(args, params)),
      [ofSpeed]: forgetsAlone(seen(true), speedFact, lens),
    };
    return [name, assign((made[name] ?? seen(false)) as Parameters<typeof assign>[0])];
  });
  return {
    ...machine.implementations,
    guards: Object.fromEntries(guards),
    actions: Object.fromEntries(actions),
  };
}

/**
 * Guards that hold an answer against what is wanted. Of that they may look at the fact that was answered, and at no other;
 * and where another answer is wanted they say no. So steps that want the same of one fact do the same with its answers.
 */
export const answering: ReadonlySet<string> = new Set(['answers', 'answersHeld']);

interface Answer extends EventObject {
  readonly fact?: string;
  readonly state?: string;
}

function answersAlone(guard: Guard, lens: Lens): Guard {
  return (args, params) => {
    const { fact = '', state } = args.event as Answer;
    const { wanted } = params as { readonly wanted: Readonly<Record<string, string>> };
    const get = (_: object, key: PropertyKey): unknown => {
      if (key === fact) return wanted[fact];
      throw lens.refuse(worded`An answer is held against what is wanted of "${String(key)}".`);
    };
    const taken = guard(args, { ...(params as object), wanted: new Proxy(wanted, { get }) });
    if (taken && wanted[fact] !== state)
      throw lens.refuse(worded`An answer is taken that is not wanted.`);
    return taken;
  };
}

/** It changes nothing, or forgets the speed and that it was set: so where that is not known, no speed counts. */
function forgetsAlone(action: Assignment, speedFact: string, lens: Lens): Assignment {
  return (args, params) => {
    const change = action(args, params);
    const forgets = change.speedSet === null && change.facts?.[speedFact] === unknownState;
    if (Object.keys(change).length > 0 && !forgets) {
      throw lens.refuse(worded`A speed is held against another, and is not forgotten.`);
    }
    return change;
  };
}

function untold(change: Partial<FlowContext>): Partial<FlowContext> {
  const { held } = change;
  return held ? { ...change, held: { ...held, by: 'person', lost: [] } } : change;
}

function assignmentOf(name: string, action: unknown): Assignment {
  if (typeof action === 'function' && 'assignment' in action) {
    const { assignment } = action;
    if (typeof assignment === 'function') return assignment as Assignment;
  }
  throw new Unseeable(worded`The action "${name}" does more than set facts and readings.`);
}
