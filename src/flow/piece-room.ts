/** Tells of a feature that its stock has no room for. */

import { type Language, optionText, sayIn, whyTexts } from '../texts/index.ts';
import type { Card } from './card.ts';
import { shownText } from './display.ts';

/** A thousandth of a micrometre: sizes that are equal may differ in the last digit. */
export const nothing = 1e-6;

/** Sizes in mm. */
export type TellRoom = (feature: string, wanted: number, there: number) => string;

export function roomTeller(
  language: Language,
  card: Card,
  fault: 'beyondBar' | 'beyondBlock',
): TellRoom {
  const text = (value: number) => shownText(value, 'length', card.units, language);
  const say = sayIn(language, whyTexts);
  return (feature, wanted, there) =>
    say(fault, {
      feature: optionText(language, feature),
      wanted: text(wanted),
      there: text(there),
    });
}
