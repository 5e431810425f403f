/** A field for a passphrase: not shown, not remembered by the browser, forgotten by the page as soon as it was used. */

interface SecretFieldProps {
  readonly id: string;
  readonly label: string;
  readonly value: string;
  /** A passphrase that is being made, not one that is known. */
  readonly fresh?: boolean;
  readonly onInput: (text: string) => void;
}

export function SecretField({ id, label, value, fresh = false, onInput }: SecretFieldProps) {
  return (
    <div class="field">
      <label for={id}>{label}</label>
      <input
        id={id}
        type="password"
        value={value}
        autocomplete={fresh ? 'new-password' : 'off'}
        autocapitalize="off"
        spellcheck={false}
        onInput={(event) => onInput(event.currentTarget.value)}
      />
    </div>
  );
}
