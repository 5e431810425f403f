/** What stands behind one figure: the numbers put in, the working, the formula, the limit and the source. */

import type { Figure } from '../../flow/index.ts';
import { whyTexts } from '../../texts/index.ts';
import { useSay } from '../use-say.ts';

export type FigureBehind = Pick<
  Figure,
  'label' | 'working' | 'given' | 'formula' | 'ruledBy' | 'allowed' | 'source'
>;

interface BehindProps {
  readonly figure: FigureBehind;
  readonly id?: string;
}

export function Behind({ figure, id }: BehindProps) {
  const say = useSay(whyTexts);
  const { label, working = '', given = [], formula, ruledBy, allowed, source } = figure;
  const numbers = given.map((one) => `${one.label} ${one.text}`).join('; ');
  return (
    <div class="behind" id={id}>
      <h2>{say('title', { label })}</h2>
      {numbers !== '' && <p>{say('from', { numbers })}</p>}
      <ol>
        {working.split('; ').map((part) => (
          <li key={part}>{part}</li>
        ))}
      </ol>
      <p>
        <strong>{limitLine(say, ruledBy, allowed)}</strong>
      </p>
      {formula !== undefined && <p class="hint">{say('formula', { formula })}</p>}
      {source !== undefined && <p class="hint">{say('source', { source })}</p>}
    </div>
  );
}

type Say = ReturnType<typeof useSay<typeof whyTexts>>;

function limitLine(say: Say, ruledBy: string | undefined, allowed: string | undefined): string {
  if (ruledBy !== undefined) {
    return say('rules', { limit: ruledBy.charAt(0).toUpperCase() + ruledBy.slice(1) });
  }
  return allowed === undefined ? say('noLimit') : say('allowed', { range: allowed });
}
