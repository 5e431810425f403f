/** Whether an instructor is to look before the first cut; asked only where there is an instructor. */

import { peopleTexts } from '../../texts/index.ts';
import { useSay } from '../use-say.ts';
import type { Operator } from '../world.ts';

interface ReleaseFirstFieldProps {
  readonly operators: readonly Operator[];
  readonly wanted: boolean;
  readonly onWant: (wanted: boolean) => void;
}

export function ReleaseFirstField({ operators, wanted, onWant }: ReleaseFirstFieldProps) {
  const say = useSay(peopleTexts);
  if (!operators.some(({ instructor }) => instructor)) return null;
  return (
    <label class="check-one">
      <input
        type="checkbox"
        checked={wanted}
        onChange={(event) => onWant(event.currentTarget.checked)}
      />
      <span>{say('releaseFirst')}</span>
    </label>
  );
}
