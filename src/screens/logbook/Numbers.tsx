/** The numbers a job was begun with. */

import { type FlowInput, formatOf, type Job } from '../../flow/index.ts';
import { fromBase, type Quantity } from '../../trade/index.ts';
import { isTyped, optionText } from '../begin/input-text.ts';
import { sizeText } from './verdict-words.ts';

export function Numbers({ job }: { readonly job: Job }) {
  const { inputs } = job.flow.file;
  if (inputs.length === 0) return null;
  return (
    <section class="stack" aria-labelledby="kept-numbers">
      <h2 id="kept-numbers">Numbers given</h2>
      <dl class="facts">
        {inputs.map((input) => (
          <div key={input.id}>
            <dt>{input.label}</dt>
            <dd class="figures-text">{shown(job, input)}</dd>
          </div>
        ))}
      </dl>
    </section>
  );
}

function shown(job: Job, input: FlowInput): string {
  const value = job.numbers.inputs[input.id];
  if (value === undefined) return '';
  if (typeof value === 'string' || !isTyped(input)) return optionText(String(value));
  const quantity = input.quantity as Quantity;
  const { unit } = formatOf(quantity, job.card.units, input);
  return sizeText(fromBase(value, unit, quantity), unit);
}
