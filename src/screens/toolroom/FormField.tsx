/** One field of a form: its name, what may stand in it, and what is wrong, beside it. */

import type { JSX } from 'preact';
import { useId } from 'preact/hooks';

export interface FieldProps {
  readonly label: string;
  readonly hint?: string | undefined;
  readonly fault?: string | undefined;
  readonly value: string;
  readonly onValue: (value: string) => void;
}

interface TextProps extends FieldProps {
  /** Shown behind the field: "mm". */
  readonly unit?: string | undefined;
  readonly numeric?: boolean;
  readonly lines?: number;
}

export function TextField(props: TextProps) {
  const { unit = '', numeric = false, lines = 1, value, fault, onValue } = props;
  const id = useId();
  const shared = {
    id,
    value,
    autocomplete: 'off',
    'aria-invalid': fault !== undefined,
    'aria-describedby': `${id}-hint`,
  } as const;
  return (
    <Field {...props} id={id}>
      {lines > 1 ? (
        <textarea
          {...shared}
          rows={lines}
          onInput={(event) => onValue(event.currentTarget.value)}
        />
      ) : (
        <span class="with-unit">
          <input
            {...shared}
            inputMode={numeric ? 'decimal' : 'text'}
            onInput={(event) => onValue(event.currentTarget.value)}
          />
          {unit !== '' && <span class="unit">{unit}</span>}
        </span>
      )}
    </Field>
  );
}

interface PickProps extends FieldProps {
  readonly options: readonly (readonly [id: string, text: string])[];
}

export function PickField(props: PickProps) {
  const { options, value, onValue } = props;
  const id = useId();
  return (
    <Field {...props} id={id}>
      <select
        id={id}
        value={value}
        aria-describedby={`${id}-hint`}
        onChange={(event) => onValue(event.currentTarget.value)}
      >
        {options.map(([option, text]) => (
          <option key={option} value={option}>
            {text}
          </option>
        ))}
      </select>
    </Field>
  );
}

interface FrameProps extends FieldProps {
  readonly id: string;
  readonly children: JSX.Element;
}

function Field({ id, label, hint, fault, children }: FrameProps) {
  return (
    <div class="field form-field">
      <label for={id}>{label}</label>
      {children}
      <p class={fault === undefined ? 'hint' : 'fault'} id={`${id}-hint`}>
        {fault ?? hint ?? ''}
      </p>
    </div>
  );
}
