/** The few figures of a card by which one knows a machine again. Pure. */

import { type Card, shownText } from '../../flow/index.ts';
import { type Language, sayIn, shopTexts } from '../../texts/index.ts';

const CROSS = ['diameter', 'radius'] as const;

/** What the lowest mark of a card's speeds stands on, by the machine's kind. */
const MARKS: Readonly<Record<string, 'plateCutterChuck' | 'plateWheel'>> = {
  mill: 'plateCutterChuck',
  grinder: 'plateWheel',
};

interface PlateLine {
  readonly name:
    | 'plateSpeeds'
    | 'plateChuck'
    | 'plateCutterChuck'
    | 'plateWheel'
    | 'plateDials'
    | 'plateCross';
  readonly value: string;
}

/** Only what the machine has; of a lathe also what its card does not give, since its rules ask for it. */
export function plateOf(card: Card, language: Language): readonly PlateLine[] {
  const say = sayIn(language, shopTexts);
  const { speeds, topSpeed, lowestSpeed, chuckLimit, crossReads } = card.values;
  const count = Array.isArray(speeds) ? speeds.length : 0;
  const speed = (value: unknown, quantity: Card['speedQuantity']) =>
    shownText(Number(value), quantity, card.units, language);
  const [low, high] = [lowestSpeed, topSpeed].map((value) => speed(value, card.speedQuantity));
  const range = say('plateRange', { count, low: low ?? '', high: high ?? '' });
  const isLathe = card.machineKind === 'lathe';
  const mark = MARKS[card.machineKind] ?? 'plateChuck';
  const cross = CROSS.find((one) => one === crossReads);
  const lines: readonly (PlateLine | false)[] = [
    { name: 'plateSpeeds', value: range },
    (isLathe || chuckLimit !== undefined) && {
      name: mark,
      value: chuckLimit === undefined ? say('notGiven') : speed(chuckLimit, 'spindleSpeed'),
    },
    { name: 'plateDials', value: say(card.units) },
    (isLathe || cross !== undefined) && { name: 'plateCross', value: say(cross ?? 'notGiven') },
  ];
  return lines.filter((line) => line !== false);
}
