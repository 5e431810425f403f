/** The last line said, where it told more than the instruction does: a refusal, an answer, a verdict. */

import type { View } from '../../flow/index.ts';
import { Icon } from '../frame/Icon.tsx';

interface SaidProps {
  readonly said: string;
  readonly view: View;
}

export function Said({ said, view }: SaidProps) {
  const news = newsIn(said, view);
  return (
    <p class="said" role="status" data-empty={news === '' ? '' : undefined}>
      {news !== '' && (
        <>
          <Icon name="say" />
          <span>{news}</span>
        </>
      )}
    </p>
  );
}

/** What was said before the present line, which stands on the screen anyway. */
function newsIn(said: string, { lead, ask }: View): string {
  const present = [`${lead.spoken} ${ask.spoken}`.trim(), ask.spoken, lead.spoken];
  const end = present.find((line) => line !== '' && said.endsWith(line));
  return (end === undefined ? said : said.slice(0, -end.length)).trim();
}
