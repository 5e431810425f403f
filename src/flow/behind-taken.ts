/** What stands behind a number that is taken and not worked out: given, measured, of the card, or of the flow. */

import { englishLanguage, sayIn, whyTexts } from '../texts/index.ts';
import type { Quantity } from '../trade/index.ts';
import { showNumber } from '../words/index.ts';
import { constantInBase } from './constant.ts';
import { formatOf, shownAs } from './display.ts';
import type { Behind, FigureWorld, ReadingsHeld } from './figure-behind.ts';
import { plausibleRange } from './verdict.ts';
import type { ValueRef } from './words-shape.ts';

type Taken = Omit<Behind, 'given'>;
type Where = Exclude<ValueRef, { working: string }>;

const say = sayIn(englishLanguage, whyTexts);

export function behindTaken(job: FigureWorld, held: ReadingsHeld, ref: Where): Taken {
  if ('input' in ref) return behindInput(job, ref.input);
  if ('reading' in ref) return behindReading(job, held, ref.reading);
  if ('card' in ref) {
    return { working: say('card'), formula: say('cardFormula'), source: job.card.title };
  }
  const source = say('flowSource', { title: job.flow.file.title });
  return { working: say('flow'), formula: say('flowFormula'), source };
}

function behindInput({ flow, card }: FigureWorld, name: string): Taken {
  const input = flow.scope.inputs.get(name);
  const source = say('givenSource', { label: input?.label ?? name });
  const taken = { working: say('given'), formula: say('givenFormula'), source };
  if (!input) return taken;
  if ('options' in input) {
    return { ...taken, allowed: input.options.map((one) => one.replaceAll('-', ' ')).join(', ') };
  }
  const quantity = input.quantity as Quantity;
  const [low, high] = [input.min, input.max].map((end) =>
    shownWith(constantInBase(end, input.unit, quantity), quantity, card.units, input),
  );
  return { ...taken, allowed: say('range', { low: low ?? '', high: high ?? '' }) };
}

function behindReading(
  { flow, card, numbers }: FigureWorld,
  held: ReadingsHeld,
  id: string,
): Taken {
  const found = flow.scope.readings.get(id);
  const taken = {
    working: say('measured'),
    formula: say('measuredFormula'),
    source: say('measuredSource'),
  };
  const range = found && plausibleRange(found.step, numbers, held.context.readings);
  if (!range) return taken;
  const quantity = found.reading.quantity as Quantity;
  const [low, high] = [range.lower, range.upper].map((end) =>
    shownWith(end, quantity, card.units, found.reading),
  );
  return { ...taken, allowed: say('range', { low: low ?? '', high: high ?? '' }) };
}

function shownWith(
  value: number,
  quantity: Quantity,
  units: FigureWorld['card']['units'],
  asked: Parameters<typeof formatOf>[2],
): string {
  const shown = shownAs(value, quantity, formatOf(quantity, units, asked));
  return showNumber(shown.value, shown.unit, shown.decimals);
}
