/** One input of a rule: a number with its unit, a list, a choice or a word. */

import { midSentence, optionText, slateTexts, unitIn } from '../../texts/index.ts';
import { type RuleInput, unitsOf } from '../../trade/index.ts';
import { useLanguage, useSay } from '../use-say.ts';
import { type FieldText, rangeOfInput, wordsOf } from './question.ts';

interface RuleFieldProps {
  readonly input: RuleInput;
  readonly field: FieldText;
  readonly fault: string | undefined;
  readonly onField: (field: FieldText) => void;
}

export function RuleField(props: RuleFieldProps) {
  const say = useSay(slateTexts);
  const language = useLanguage();
  const { input, field, fault } = props;
  const id = `slate-${input.name}`;
  const hint = [input.meaning, rangeOfInput(input, field.unit, language)]
    .filter(Boolean)
    .join('; ');
  return (
    <div class="field">
      <label for={id}>
        {wordsOf(input.name, input.label)}
        {isFree(input) && <span class="hint"> {say('ifKnown')}</span>}
      </label>
      {input.kind === 'choice' ? <Choice {...props} id={id} /> : <Text {...props} id={id} />}
      <p class={fault === undefined ? 'hint' : 'fault'} id={`${id}-hint`}>
        {fault ?? hint}
      </p>
    </div>
  );
}

function isFree(input: RuleInput): boolean {
  return input.optional === true && !('default' in input && input.default !== undefined);
}

type WithId = RuleFieldProps & { readonly id: string };

function Choice({ input, field, onField, id }: WithId) {
  const say = useSay(slateTexts);
  const language = useLanguage();
  if (input.kind !== 'choice') return null;
  return (
    <select
      id={id}
      value={field.text}
      aria-describedby={`${id}-hint`}
      onChange={(event) => onField({ ...field, text: event.currentTarget.value })}
    >
      {isFree(input) && <option value="">{say('notKnown')}</option>}
      {input.options.map((option) => (
        <option key={option} value={option}>
          {optionText(language, option)}
        </option>
      ))}
    </select>
  );
}

function Text({ input, field, fault, onField, id }: WithId) {
  const say = useSay(slateTexts);
  const language = useLanguage();
  const name = midSentence(language, wordsOf(input.name, input.label));
  const units = 'quantity' in input ? unitsOf(input.quantity).filter((unit) => unit !== '') : [];
  return (
    <div class="with-unit">
      <input
        id={id}
        value={field.text}
        autocomplete="off"
        inputMode={input.kind === 'number' ? 'decimal' : 'text'}
        placeholder={input.kind === 'text' ? input.example : undefined}
        aria-invalid={fault !== undefined}
        aria-describedby={`${id}-hint`}
        onInput={(event) => onField({ ...field, text: event.currentTarget.value })}
      />
      {units.length > 0 && (
        <select
          aria-label={say('unitOf', { name })}
          value={field.unit}
          onChange={(event) => onField({ ...field, unit: event.currentTarget.value })}
        >
          {units.map((unit) => (
            <option key={unit} value={unit}>
              {unitIn(language, unit)}
            </option>
          ))}
        </select>
      )}
    </div>
  );
}
