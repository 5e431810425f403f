/** The reason of the step, in sight without being asked for. */

import type { View } from '../../flow/index.ts';
import { dockTexts } from '../../texts/index.ts';
import { useSay } from '../use-say.ts';

export function Why({ view }: { readonly view: View }) {
  const say = useSay(dockTexts);
  if (view.why === undefined) return null;
  return (
    <p class="why">
      <span class="unseen">{say('why')}</span>
      {view.why}
    </p>
  );
}
