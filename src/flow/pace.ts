/** How much is told at each pace. It changes sentences only: the chart, its gates and its words are the same at every pace. */

import { type Language, midSentence } from '../texts/index.ts';
import type { FactAnswer } from './asked.ts';
import type { Step } from './flow-shape.ts';
import type { MachineKind } from './kind-shape.ts';

/** Everything in full; short lines; figures and gates only. */
export const paces = ['first-time', 'familiar', 'own-pace'] as const;
export type Pace = (typeof paces)[number];

/** The instruction of a step; without a text of its own for a pace, the plain one. */
export function sayAt(step: Step, pace: Pace): string {
  if (pace === 'first-time') return step.long ?? step.say;
  return pace === 'own-pace' ? (step.short ?? step.say) : step.say;
}

export type Prompt = Exclude<keyof MachineKind['prompts'], 'short' | 'drill'>;

/** What the bench says around a powered cut. */
export function promptAt({ prompts }: MachineKind, name: Prompt, pace: Pace): string {
  return pace === 'own-pace' ? (prompts.short[name] ?? prompts[name]) : prompts[name];
}

/** "Guard, key, tool?": all that is asked for in one breath; each is still answered by its own word. */
export function askedTogether(asked: readonly FactAnswer[], language: Language): string {
  const names = asked.map(({ fact }) => fact.short ?? midSentence(language, fact.label));
  const [first = '', ...rest] = names;
  return names.length === 0 ? '' : `${[sentenceCase(first), ...rest].join(', ')}?`;
}

function sentenceCase(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
