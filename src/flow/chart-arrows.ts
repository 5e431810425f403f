/** The plain data a statechart is made of here: states, arrows, and references to guards and actions. */

import type { WantedFacts } from './words-shape.ts';

export type Ref = { readonly type: string; readonly params?: Readonly<Record<string, unknown>> };
export interface Arrow {
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

export type HoldTo = 'gate' | 'open' | 'measure';
export const toStep = (target: string) => `#flow.${target}`;
export const met = (wanted: WantedFacts): Ref => ({ type: 'met', params: { wanted } });
export const notMet = (wanted: WantedFacts): Ref => ({ type: 'notMet', params: { wanted } });
export const hasAny = (wanted: WantedFacts) => Object.keys(wanted).length > 0;

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
/** Where a walk begins: nothing is looked at before everything stands still. */
export const settleItem = 'settle';
