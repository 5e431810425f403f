/** Who makes it: picked from the list of this device, or written and so put into it. The field shows who is chosen. */

import { peopleTexts } from '../../texts/index.ts';
import { useSay } from '../use-say.ts';
import type { Operator } from '../world.ts';

interface OperatorFieldProps {
  readonly operators: readonly Operator[];
  /** The name, from the list or not. */
  readonly chosen: string;
  readonly fault: string | undefined;
  readonly onChoose: (name: string) => void;
}

export function OperatorField({ operators, chosen, fault, onChoose }: OperatorFieldProps) {
  const say = useSay(peopleTexts);
  return (
    <div class="stack operator-field">
      {operators.length > 0 && (
        <fieldset class="pick">
          <legend>{say('title')}</legend>
          {operators.map(({ id, name }) => (
            <label key={id} class="pick-one">
              <input
                type="radio"
                name="operator-listed"
                checked={name === chosen}
                onChange={() => onChoose(name)}
              />
              <span>{name}</span>
            </label>
          ))}
        </fieldset>
      )}
      <div class="field">
        <label for="operator">{say('who')}</label>
        <input
          id="operator"
          value={chosen}
          maxLength={60}
          autocomplete="off"
          aria-invalid={fault !== undefined}
          aria-describedby={fault === undefined ? undefined : 'operator-fault'}
          onInput={(event) => onChoose(event.currentTarget.value)}
        />
        {fault !== undefined && (
          <p class="fault" id="operator-fault">
            {fault}
          </p>
        )}
      </div>
    </div>
  );
}
