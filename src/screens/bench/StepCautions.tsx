/** Cautions of the step, and its reason, in sight without being asked for. */

import type { View } from '../../flow/index.ts';
import { Cautions } from '../frame/Cautions.tsx';

export function StepCautions({ view }: { readonly view: View }) {
  if (view.cautions.length === 0 && view.why === undefined) return null;
  return (
    <section class="step-why" aria-label="Why, and what to mind">
      <Cautions lines={view.cautions} />
      {view.why !== undefined && <p class="why">{view.why}</p>}
    </section>
  );
}
