/** One number or choice of a job, with its range, and how it is read when it is written in another unit. */

import type { Card, FlowInput } from '../../flow/index.ts';
import { beginTexts, type Language, sayIn, unitIn } from '../../texts/index.ts';
import { useLanguage, useSay } from '../use-say.ts';
import { type Draft, textIn } from './draft.ts';
import {
  choiceText,
  isTyped,
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
  const say = useSay(beginTexts);
  const language = useLanguage();
  const text = textIn(draft, input, units, language);
  const unit = unitIn(language, unitOfInput(input, units));
  const id = `input-${input.id}`;
  return (
    <div class="field">
      <label for={id}>{say('labelUnit', { label: input.label, unit })}</label>
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
        {fault ?? hintOf(input, text, units, language)}
      </p>
    </div>
  );
}

/** The range; and when it was typed in another unit, what was understood. */
function hintOf(input: TypedInput, text: string, units: Card['units'], language: Language): string {
  const say = sayIn(language, beginTexts);
  const range = rangeText(input, units, language);
  const read = readInput(input, text, units, language);
  if (!read.ok) return text.trim() === '' ? range : say('notUnderstood', { range });
  const isOwn = /[a-z"″'′]|\d\/\d/i.test(text);
  return isOwn ? say('readAs', { size: read.readAs, range }) : range;
}

function Picked({ input, units, draft, onText }: InputFieldProps) {
  const language = useLanguage();
  if (isTyped(input)) return null;
  const id = `input-${input.id}`;
  return (
    <div class="field">
      <label for={id}>{input.label}</label>
      <select
        id={id}
        value={textIn(draft, input, units, language)}
        onChange={(event) => onText(event.currentTarget.value)}
      >
        {input.options.map((option) => (
          <option key={option} value={option}>
            {choiceText(language, option)}
          </option>
        ))}
      </select>
    </div>
  );
}
