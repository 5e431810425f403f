/** The flows one can run. What was left unfinished comes first. */

import { frameTexts } from '../../texts/index.ts';
import { Cautions } from '../frame/Cautions.tsx';
import { Icon } from '../frame/Icon.tsx';
import { addressOf } from '../route.ts';
import { useSay } from '../use-say.ts';
import type { ShelfEntry, WorldProps } from '../world.ts';
import { cautionsOf } from './cautions.ts';
import { Unfinished } from './Unfinished.tsx';

export function Shelf({ world }: WorldProps) {
  const say = useSay(frameTexts);
  return (
    <>
      <Unfinished world={world} />
      <section class="stack" aria-labelledby="shelf-title">
        <h1 id="shelf-title">{say('making')}</h1>
        <ul class="shelf">
          {world.shelf.map((entry) => (
            <FlowCard key={entry.id} entry={entry} />
          ))}
        </ul>
      </section>
      <Before entries={world.shelf} />
    </>
  );
}

function FlowCard({ entry }: { readonly entry: ShelfEntry }) {
  const say = useSay(frameTexts);
  return (
    <li class="card flow-card">
      <p class="kind-name">{entry.kindTitle}</p>
      <h2>{entry.title}</h2>
      <p>{entry.about}</p>
      <p class="hint">{say('steps', { steps: entry.steps, revision: entry.revision })}</p>
      <a
        class="button main tall"
        href={addressOf({ at: 'begin', flow: entry.id })}
        aria-label={say('beginFlow', { title: entry.title })}
      >
        {say('begin')}
        <Icon name="next" />
      </a>
    </li>
  );
}

/** The cautions of the machine kinds that stand on the Shelf: what all say once, then each machine's own under its name. */
function Before({ entries }: { readonly entries: readonly ShelfEntry[] }) {
  const say = useSay(frameTexts);
  const { shared, own } = cautionsOf(entries);
  if (shared.length + own.length === 0) return null;
  return (
    <section class="stack" aria-labelledby="before-title">
      <h2 id="before-title">{say('before')}</h2>
      <Cautions lines={shared} />
      <div class="before-kinds">
        {own.map(({ title, lines }) => (
          <section key={title} class="stack">
            <h3>{title}</h3>
            <ul>
              {lines.map((line) => (
                <li key={line}>{line}</li>
              ))}
            </ul>
          </section>
        ))}
      </div>
    </section>
  );
}
