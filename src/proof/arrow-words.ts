/** References to guards and actions as data, told without the names of steps. */

import type { Frame } from './frame.ts';
import { answering } from './watched.ts';

interface Ref {
  readonly type: string;
  readonly params?: Readonly<Record<string, unknown>>;
}

/** Something in an arrow that has no text: it is looked at in its own shape of step alone. */
export class Wordless extends Error {}

/** Guards and actions that look at where a hold goes on, or set it. */
const aboutHolds = new Set(['holdFor', 'release', 'mayCarryOn']);

/** References to guards and actions, told without the names of steps. */
export class Words {
  /** True where anything leads somewhere, or has to do with a hold. */
  moves = false;

  constructor(
    private readonly frame: Frame,
    readonly setsSpeed: boolean,
  ) {}

  refs(refs: unknown): readonly unknown[] {
    return listed(refs).map((one) => this.ref(one));
  }

  private ref(ref: unknown): unknown {
    if (typeof ref === 'string') {
      if (aboutHolds.has(ref)) this.moves = true;
      return ref;
    }
    if (!isRef(ref)) throw new Wordless();
    const { type, params } = ref;
    if (aboutHolds.has(type)) this.moves = true;
    if (answering.has(type)) return [type, { ...params, wanted: 'what is answered' }];
    // What was lost, and who holds, is told and never looked at: watched.ts leaves it out.
    if (type === 'holdFor') return [type, params?.to];
    const step = params?.step;
    if (typeof step !== 'string') return ref;
    if (type === 'setFact') return this.setsSpeed ? [type, this.frame.speedText(step)] : type;
    if (type === 'forgetOtherSpeed') return [type, this.frame.speedText(step)];
    const slot = this.frame.slots.indexOf(step);
    if (slot < 0) throw new Wordless();
    return [type, slot, this.frame.shape];
  }
}

export function listed(one: unknown): readonly unknown[] {
  if (one === undefined) return [];
  return Array.isArray(one) ? one : [one];
}

export function isRecord(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null;
}

export function isRef(value: unknown): value is Ref {
  if (!isRecord(value) || typeof value.type !== 'string') return false;
  return value.params === undefined || isRecord(value.params);
}
