/** Limits that the cross dial of a machine cannot set: its passes would end in a cut of nothing, over and over. */

import { type Language, sayIn, whyTexts } from '../texts/index.ts';
import { showNumber } from '../words/index.ts';
import type { Card } from './card.ts';
import { dialOf, leastChange } from './dial-of.ts';
import { formatOf, shownAs } from './display.ts';
import type { StepOf } from './flow-shape.ts';
import type { Numbers } from './numbers.ts';
import type { Flow } from './resolve.ts';
import { limitsOf } from './verdict.ts';

/** A micrometre's hundredth: 0.02 is not less than 0.02 for a rounding in the last digit. */
const nothing = 1e-5;

/** One sentence for each passes step whose limits lie closer than half a division; others wait for a reading. */
export function dialFaults(flow: Flow, card: Card, numbers: Numbers): readonly string[] {
  const least = leastChange(dialOf(card));
  return flow.file.steps.flatMap((step) => {
    if (step.kind !== 'passes') return [];
    const limits = limitsOf(step, numbers, {});
    const width = limits && limits.upper - limits.lower;
    if (width === undefined || width >= least - nothing) return [];
    return [faultOf(flow.language, card, step, width, least)];
  });
}

function faultOf(
  language: Language,
  card: Card,
  step: StepOf<'passes'>,
  width: number,
  least: number,
): string {
  const { unit, decimals } = formatOf('length', card.units);
  const text = (value: number) => {
    const shown = shownAs(value, 'length', { unit, decimals: decimals + 1 });
    return showNumber(shown.value, shown.unit, shown.decimals, language);
  };
  const say = sayIn(language, whyTexts);
  return say('finerThanDial', { step: step.title, width: text(width), least: text(least) });
}
