/** A held run is seen across the shop: bars over the whole width, and the word. */

import type { View } from '../../flow/index.ts';
import { dockTexts } from '../../texts/index.ts';
import { useSay } from '../use-say.ts';

const WHY = {
  stop: 'stopDrill',
  interruption: 'afterBreak',
  person: 'askedFor',
  loss: 'wasLost',
} as const;

export function HeldBand({ view }: { readonly view: View }) {
  const say = useSay(dockTexts);
  const held = view.held?.by;
  const by = held === 'stop' || held === 'interruption' || held === 'loss' ? held : 'person';
  const lost = view.held?.lost ?? [];
  return (
    <section class="held-band" aria-label={say('held')}>
      <p class="held-word">{say('held')}</p>
      {by === 'stop' ? (
        <p class="held-danger" role="alert">
          {say(WHY.stop)}
        </p>
      ) : (
        <p class="held-why">
          {lost.length > 0 ? say('lost', { facts: lost.join(', ') }) : say(WHY[by])}
        </p>
      )}
    </section>
  );
}
