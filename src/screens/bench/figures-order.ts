/** Which figures matter most in which moment. The rest stays in sight, smaller. Pure. */

import type { Figure, Phase, View } from '../../flow/index.ts';

/** By id, the first first. What is not named keeps its own order behind these. */
const FIRST: Partial<Record<Phase, readonly string[]>> = {
  gate: ['speed', 'dial', 'feed'],
  dial: ['dial', 'cut', 'left'],
  start: ['speed', 'dial'],
  cutting: ['dial', 'feed', 'length', 'own:0', 'depth', 'speed'],
  stopping: ['speed'],
  measure: ['lower', 'upper', 'left'],
};
const LARGE: Partial<Record<Phase, number>> = { start: 2, stopping: 1 };
const MOST_LARGE = 3;

/** The figures of the step, and those that only the present line tells: each of them can be asked "why that?". */
export function allFigures({ figures, lead, ask }: View): readonly Figure[] {
  const told = [...(lead.figures ?? []), ...(ask.figures ?? [])];
  const all = [...figures, ...told];
  return all.filter((one, at) => all.findIndex((other) => isSame(one, other)) === at);
}

/** The step's own figure may be the very number that its line tells: it is shown once. */
function isSame(one: Figure, other: Figure): boolean {
  return one.id === other.id || (one.label === other.label && one.text === other.text);
}

export interface FiguresInOrder {
  readonly large: readonly Figure[];
  readonly small: readonly Figure[];
}

export function inOrder(figures: readonly Figure[], phase: Phase): FiguresInOrder {
  const first = FIRST[phase] ?? [];
  const rank = (figure: Figure) => {
    const place = first.indexOf(figure.id);
    return place < 0 ? first.length : place;
  };
  const sorted = [...figures].sort((a, b) => rank(a) - rank(b));
  const count = LARGE[phase] ?? MOST_LARGE;
  return { large: sorted.slice(0, count), small: sorted.slice(count) };
}

/** The number apart from its unit, so that the unit can be set smaller: "300" and "rpm". */
export function numberAndUnit(text: string): { readonly number: string; readonly unit: string } {
  const match = /^([−–+-]?[\d.,/ ]*\d)\s*(\D.*)?$/u.exec(text);
  if (!match) return { number: text, unit: '' };
  return { number: match[1] ?? text, unit: match[2] ?? '' };
}

/** The one line of a working that is shown at once: the sum, and what the machine makes of it. */
export function shortWorking(working: string): string {
  const parts = working.split('; ');
  const sum = parts.find((part) => part.includes('=')) ?? parts[0] ?? working;
  const last = parts.at(-1)?.split(', ')[0] ?? '';
  return /card|mark/.test(last) && !sum.startsWith(last) ? `${sum} → ${last}` : sum;
}
