/** The last line said, where it told more than the instruction does: a refusal, an answer, a verdict. */

import type { View } from '../../flow/index.ts';
import { Icon } from '../frame/Icon.tsx';

interface SaidProps {
  readonly said: string;
  readonly view: View;
}

export function Said({ said, view }: SaidProps) {
  const shown = tellsMore(said, view);
  return (
    <p class="said" role="status" data-empty={shown ? undefined : ''}>
      {shown && (
        <>
          <Icon name="say" />
          <span>{said}</span>
        </>
      )}
    </p>
  );
}

function tellsMore(said: string, { lead, ask }: View): boolean {
  const present = [lead.spoken, ask.spoken, `${lead.spoken} ${ask.spoken}`.trim()];
  return said !== '' && !present.includes(said);
}
