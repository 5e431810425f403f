/** One number or choice of a job, with its range, and how it is read when it is written in another unit. */

import type { Card, FlowInput } from '../../flow/index.ts';
import { type Draft, textIn } from './draft.ts';
import {
  isTyped,
  optionText,
  rangeText,
  readInput,
  type TypedInput,
  unitOfInput,
} from './input-text.ts';

interface InputFieldProps {
  readonly input: FlowInput;
  readonly units: Card['units'];
  readonly draft: Draft;
  readonly fault: string | undefined;
  readonly onText: (text: string) => void;
}

export function InputField(props: InputFieldProps) {
  const { input } = props;
  return isTyped(input) ? <Typed {...props} input={input} /> : <Picked {...props} />;
}

function Typed(props: InputFieldProps & { readonly input: TypedInput }) {
  const { input, units, draft, fault, onText } = props;
  const text = textIn(draft, input, units);
  const id = `input-${input.id}`;
  return (
    <div class="field">
      <label for={id}>
        {input.label}, {unitOfInput(input, units)}
      </label>
      <input
        id={id}
        value={text}
        inputMode="decimal"
        autocomplete="off"
        aria-invalid={fault !== undefined}
        aria-describedby={`${id}-hint`}
        onInput={(event) => onText(event.currentTarget.value)}
      />
      <p class={fault === undefined ? 'hint read-as' : 'fault'} id={`${id}-hint`}>
        {fault ?? hintOf(input, text, units)}
      </p>
    </div>
  );
}

/** The range; and when it was typed in another unit, what was understood. */
function hintOf(input: TypedInput, text: string, units: Card['units']): string {
  const range = rangeText(input, units);
  const read = readInput(input, text, units);
  if (!read.ok) return text.trim() === '' ? range : `Not understood yet. ${range}`;
  return /[a-z"″'′]|\d\/\d/i.test(text) ? `Read as ${read.readAs}. ${range}` : range;
}

function Picked({ input, units, draft, onText }: InputFieldProps) {
  if (isTyped(input)) return null;
  const id = `input-${input.id}`;
  return (
    <div class="field">
      <label for={id}>{input.label}</label>
      <select
        id={id}
        value={textIn(draft, input, units)}
        onChange={(event) => onText(event.currentTarget.value)}
      >
        {input.options.map((option) => (
          <option key={option} value={option}>
            {optionText(option)}
          </option>
        ))}
      </select>
    </div>
  );
}
