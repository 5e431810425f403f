/** The reason of the step, in sight without being asked for. */

import type { View } from '../../flow/index.ts';

export function Why({ view }: { readonly view: View }) {
  if (view.why === undefined) return null;
  return (
    <p class="why">
      <span class="unseen">Why: </span>
      {view.why}
    </p>
  );
}
