/** A shipped card copied, so that a shop can make it its own. Pure. */

import type { CardEntry } from '../world.ts';

/** The copy's text: the same card under a name and an id that no other card has. */
export function ownCopy(card: CardEntry, taken: readonly string[]): string {
  const id = freeId(`${card.id}-own`, taken);
  const value: unknown = JSON.parse(card.card);
  const copy = { ...(value as Record<string, unknown>), id, title: `${card.title}, ours` };
  return `${JSON.stringify(copy, null, 2)}\n`;
}

function freeId(wish: string, taken: readonly string[]): string {
  let id = wish;
  for (let count = 2; taken.includes(id); count++) id = `${wish}-${count}`;
  return id;
}

/** Where a line and column (both from 1) stand in a text, counted in characters. */
export function placeInText(text: string, line: number, column: number): number {
  const before = text
    .split('\n')
    .slice(0, Math.max(line - 1, 0))
    .reduce((sum, one) => sum + one.length + 1, 0);
  return Math.min(before + Math.max(column - 1, 0), text.length);
}
