/** What stands behind a number that is taken and not worked out: given, measured, of the card, or of the flow. */

import { optionText, sayIn, whyTexts } from '../texts/index.ts';
import type { Quantity } from '../trade/index.ts';
import { showNumber } from '../words/index.ts';
import { constantInBase } from './constant.ts';
import { formatOf, shownAs } from './display.ts';
import type { Behind, FigureWorld, ReadingsHeld } from './figure-behind.ts';
import { plausibleRange } from './verdict.ts';
import type { ValueRef } from './words-shape.ts';

type Taken = Omit<Behind, 'given'>;
type Where = Exclude<ValueRef, { working: string }>;

const sayWhy = ({ flow }: Pick<FigureWorld, 'flow'>) => sayIn(flow.language, whyTexts);

export function behindTaken(job: FigureWorld, held: ReadingsHeld, ref: Where): Taken {
  if ('input' in ref) return behindInput(job, ref.input);
  if ('reading' in ref) return behindReading(job, held, ref.reading);
  if ('card' in ref) {
    return {
      working: sayWhy(job)('card'),
      formula: sayWhy(job)('cardFormula'),
      source: job.card.title,
    };
  }
  const source = sayWhy(job)('flowSource', { title: job.flow.file.title });
  return { working: sayWhy(job)('flow'), formula: sayWhy(job)('flowFormula'), source };
}

function behindInput(job: FigureWorld, name: string): Taken {
  const { flow } = job;
  const input = flow.scope.inputs.get(name);
  const source = sayWhy(job)('givenSource', { label: input?.label ?? name });
  const taken = { working: sayWhy(job)('given'), formula: sayWhy(job)('givenFormula'), source };
  if (!input) return taken;
  if ('options' in input) {
    return {
      ...taken,
      allowed: input.options.map((one) => optionText(flow.language, one)).join(', '),
    };
  }
  const quantity = input.quantity as Quantity;
  const [low, high] = [input.min, input.max].map((end) =>
    shownWith(job, constantInBase(end, input.unit, quantity), quantity, input),
  );
  return { ...taken, allowed: sayWhy(job)('range', { low: low ?? '', high: high ?? '' }) };
}

function behindReading(job: FigureWorld, held: ReadingsHeld, id: string): Taken {
  const { flow, numbers } = job;
  const found = flow.scope.readings.get(id);
  const taken = {
    working: sayWhy(job)('measured'),
    formula: sayWhy(job)('measuredFormula'),
    source: sayWhy(job)('measuredSource'),
  };
  const range = found && plausibleRange(found.step, numbers, held.context.readings);
  if (!range) return taken;
  const quantity = found.reading.quantity as Quantity;
  const [low, high] = [range.lower, range.upper].map((end) =>
    shownWith(job, end, quantity, found.reading),
  );
  return { ...taken, allowed: sayWhy(job)('range', { low: low ?? '', high: high ?? '' }) };
}

function shownWith(
  { card, flow }: FigureWorld,
  value: number,
  quantity: Quantity,
  asked: Parameters<typeof formatOf>[2],
): string {
  const shown = shownAs(value, quantity, formatOf(quantity, card.units, asked));
  return showNumber(shown.value, shown.unit, shown.decimals, flow.language);
}
