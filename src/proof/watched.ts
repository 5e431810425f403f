/**
 * The same chart with a lens in front of its guards and actions: it sees which facts and readings they look at.
 *
 * Facts and readings whose value is left open stand in the context as tokens. Guards and assigns are the flow's own
 * functions, called with a context that hands a token's value out when it is looked at, and the token itself when the
 * whole record is copied into the next context. So a run of XState's transition tells what it depended on.
 */

import { type ActionArgs, assign, type EventObject } from 'xstate';
import type { FlowContext, FlowMachine } from '../flow/index.ts';
import {
  asHeld,
  type Held,
  type Variable,
  type VariableKind,
  type Variables,
} from './variables.ts';

/** Something was looked at that no variable stands for: nothing may be concluded. */
export class Unseeable extends Error {}

/** Gives the value of a variable that is looked at, as one number of its values. */
export type Look = (variable: Variable) => number;

export class Lens {
  private look: Look | undefined;
  private failure: Unseeable | undefined;
  private readonly lensed = new WeakSet<FlowContext>();
  private near: ReadonlySet<string> = new Set();

  constructor(private readonly variables: Variables) {}

  /** Runs `work` with `look` answering for the variables named `near`; returns what work returns. */
  through<T>(look: Look, near: ReadonlySet<string>, work: () => T): T {
    this.look = look;
    this.near = near;
    this.failure = undefined;
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

  private refuse(message: string): Unseeable {
    this.failure = new Unseeable(message);
    return this.failure;
  }

  /** The context as guards and claims see it. */
  context(context: FlowContext): FlowContext {
    if (this.lensed.has(context)) return context;
    const seen = (record: Readonly<Record<string, unknown>>, kind: VariableKind) =>
      this.record(record, kind);
    const value = (token: unknown) => this.value(token);
    const made: FlowContext = {
      get facts() {
        return seen(context.facts, 'fact') as FlowContext['facts'];
      },
      get readings() {
        return seen(context.readings, 'reading') as FlowContext['readings'];
      },
      get passes() {
        return seen(context.passes, 'pass') as FlowContext['passes'];
      },
      get speedSet() {
        return value(context.speedSet) as number | null;
      },
      held: context.held,
    };
    this.lensed.add(made);
    return made;
  }

  private value(token: unknown): unknown {
    const variable = this.variables.behind(token);
    if (!variable) return token;
    if (!this.look) throw this.refuse(`${variable.name} outside of a run.`);
    const held: Held = variable.values.at(this.look(variable));
    return asHeld(variable, held);
  }

  /**
   * Copying a record asks for its keys first, then for each key's descriptor and value: those values stay tokens.
   * A value that is asked for by itself is looked at.
   */
  private record(record: Readonly<Record<string, unknown>>, kind: VariableKind): unknown {
    const copied = new Set<PropertyKey>();
    let copying = false;
    return new Proxy(record, {
      ownKeys: (target) => {
        copying = true;
        return Reflect.ownKeys(target);
      },
      getOwnPropertyDescriptor: (target, key) => {
        if (!copying) throw this.refuse(`It is asked whether ${String(key)} is there.`);
        copied.add(key);
        return Reflect.getOwnPropertyDescriptor(target, key);
      },
      has: (_, key) => {
        throw this.refuse(`It is asked whether ${String(key)} is there.`);
      },
      get: (target, key) => {
        const held: unknown = Reflect.get(target, key);
        if (copied.delete(key)) return held;
        copying = false;
        if (held === undefined && !this.near.has(`${kind}:${String(key)}`)) {
          throw this.refuse(`The chart looks at the ${kind} "${String(key)}" from afar.`);
        }
        return this.value(held);
      },
    });
  }
}

/** The list of lost facts is told to the person and looked at by no guard, so it is not looked into here. */
const toldOnly = 'holdFor';

type Args = ActionArgs<FlowContext, EventObject, EventObject>;
type Guard = (args: Args, params: unknown) => boolean;
type Assignment = (args: Args, params: unknown) => Partial<FlowContext>;

/** The machine with the lens in front; its states, guards and actions are the job's own. */
export function watchedMachine(machine: FlowMachine, lens: Lens): FlowMachine {
  const guards = Object.entries(machine.implementations.guards).map(([name, guard]) => {
    const own = guard as unknown as Guard;
    const seen: Guard = (args, params) =>
      own({ ...args, context: lens.context(args.context) }, params);
    return [name, seen];
  });
  const actions = Object.entries(machine.implementations.actions).map(([name, action]) => {
    const own = assignmentOf(name, action);
    const seen: Assignment =
      name === toldOnly
        ? (args, params) => untold(own(args, params))
        : (args, params) => own({ ...args, context: lens.context(args.context) }, params);
    return [name, assign(seen as Parameters<typeof assign>[0])];
  });
  const implementations: unknown = {
    guards: Object.fromEntries(guards),
    actions: Object.fromEntries(actions),
  };
  return machine.provide(implementations as Parameters<FlowMachine['provide']>[0]);
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
  throw new Unseeable(`The action "${name}" is no assign.`);
}
