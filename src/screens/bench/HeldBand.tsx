/** A held run is seen across the shop: bars over the whole width, and the word. */

import type { View } from '../../flow/index.ts';

const WHY: Readonly<Record<string, string>> = {
  stop: 'Press the emergency stop. Hands clear.',
  interruption: 'Back after a break.',
  person: 'You asked for it.',
  loss: 'Something was lost.',
};

export function HeldBand({ view }: { readonly view: View }) {
  const by = view.held?.by ?? 'person';
  const lost = view.held?.lost ?? [];
  return (
    <section class="held-band" aria-label="Held">
      <p class="held-word">Held</p>
      {by === 'stop' ? (
        <p class="held-danger" role="alert">
          {WHY.stop}
        </p>
      ) : (
        <p class="held-why">{lost.length > 0 ? `Lost: ${lost.join(', ')}.` : WHY[by]}</p>
      )}
    </section>
  );
}
