/** Why something that was asked for did not happen yet, each reason a line. */

import { frameTexts } from '../../texts/index.ts';
import { useSay } from '../use-say.ts';

interface NotYetProps {
  readonly reasons: readonly string[];
  /** The heading's level in its screen. */
  readonly heading: 'h2' | 'h3';
}

export function NotYet({ reasons, heading: Heading }: NotYetProps) {
  const say = useSay(frameTexts);
  if (reasons.length === 0) return null;
  return (
    <div class="faults" role="alert">
      <Heading>{say('notYet')}</Heading>
      <ul class="stack">
        {reasons.map((reason) => (
          <li key={reason}>{reason}</li>
        ))}
      </ul>
    </div>
  );
}
