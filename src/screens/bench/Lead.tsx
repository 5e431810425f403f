/** The one thing to do now, to be read at two metres, with what is asked under it. */

import type { View } from '../../flow/index.ts';
import { dockTexts } from '../../texts/index.ts';
import { useSay } from '../use-say.ts';

/** Short lines are set larger than long ones, so that both fill the eye and none fills the screen. */
function lengthOf(text: string): 'short' | 'middle' | 'long' {
  if (text.length <= 26) return 'short';
  return text.length <= 52 ? 'middle' : 'long';
}

export function Lead({ view }: { readonly view: View }) {
  const say = useSay(dockTexts);
  const { lead, ask } = linesOf(view);
  const word = wordFor(view);
  return (
    <section class="lead" aria-label={say('instruction')} aria-live="polite" aria-atomic="true">
      <h1 class="lead-line" data-length={lengthOf(lead.shown)}>
        {lead.shown}
      </h1>
      {ask.shown !== '' && <p class="lead-ask">{ask.shown}</p>}
      {word !== undefined && <p class="lead-word">{say('quoted', { word })}</p>}
    </section>
  );
}

/** The word that answers the question, for who stands too far off to read the gate. Other lines tell their word. */
function wordFor({ ask, gate }: View): string | undefined {
  return gate.find((line) => !line.met && line.ask?.question === ask.shown)?.ask?.word;
}

/** While held, the band above says so; what is asked takes the large letters. */
function linesOf(view: View): Pick<View, 'lead' | 'ask'> {
  if (view.mood !== 'held' || view.ask.shown === '') return view;
  return { lead: view.ask, ask: { shown: '', spoken: '' } };
}
