/** Texts by which questions at many spots are seen to be one: where the text is the same, so is the answer for the same facts. */

import type { FlowSnapshot } from '../flow/index.ts';

/** A question about events of some kinds; `about` holds all else that it depends on. */
export function alikeWhere(
  at: FlowSnapshot,
  about: string,
  types: readonly string[],
): { readonly alike?: string } {
  const taking = takingText(at, types);
  return taking === undefined ? {} : { alike: `${about} ${taking}` };
}

/**
 * Of some kinds of event, all that it can depend on whether they are taken here, besides the facts: the arrows, and where a hold goes on. None where an arrow
 * names a step: then it may depend on that step's sizes as well.
 */
function takingText(at: FlowSnapshot, types: readonly string[]): string | undefined {
  const nodes = [...at._nodes].sort((a, b) => b.order - a.order);
  const arrows = types.map((type) =>
    nodes.flatMap(({ config }) => {
      const heard: unknown = config.on?.[type as keyof typeof config.on];
      return heard === undefined ? [] : Array.isArray(heard) ? (heard as unknown[]) : [heard];
    }),
  );
  const told = arrows.map((list) => list.map(arrowText));
  if (told.flat().includes(undefined)) return undefined;
  return JSON.stringify([types, told, at.context.held?.to ?? null]);
}

/** Whether it is taken: by its guard, and XState asks whether there is anything that it does. */
function arrowText(arrow: unknown): unknown {
  if (typeof arrow !== 'object' || arrow === null) return undefined;
  const { guard, target, actions } = arrow as Readonly<Record<string, unknown>>;
  return isPlain(guard)
    ? [guard ?? null, target !== undefined || actions !== undefined]
    : undefined;
}

function isPlain(guard: unknown): boolean {
  if (guard === undefined || typeof guard === 'string') return true;
  if (typeof guard !== 'object' || guard === null || !('type' in guard)) return false;
  const { params } = guard as { readonly params?: unknown };
  if (params === undefined) return true;
  return typeof params === 'object' && params !== null && !('step' in params);
}
