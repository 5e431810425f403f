/** The machine cards: those that came with the page, and those of this shop. */

import { useRef, useState } from 'preact/hooks';
import { type Card, readCard } from '../../flow/index.ts';
import { shopTexts } from '../../texts/index.ts';
import { FocusHeading, focusHeading } from '../frame/FocusHeading.tsx';
import { useLanguage, useSay } from '../use-say.ts';
import type { CardEntry, WorldProps } from '../world.ts';
import { CardEditor } from './CardEditor.tsx';
import { ownCopy } from './own-card.ts';
import { plateOf } from './plate.ts';

export function Cards({ world }: WorldProps) {
  const say = useSay(shopTexts);
  const [editing, setEditing] = useState<string | null>(null);
  const returned = useRef(false);
  const cards = world.cards();
  if (editing !== null) {
    const close = () => {
      returned.current = true;
      setEditing(null);
    };
    return <CardEditor world={world} text={editing} onClose={close} />;
  }
  return (
    <section class="stack" aria-labelledby="cards-title">
      <FocusHeading id="cards-title" takes={returned.current}>
        {say('cards')}
      </FocusHeading>
      <p class="soft">{say('cardsAbout')}</p>
      <ul class="machine-cards">
        {cards.map((card) => (
          <OneCard
            key={card.id}
            card={card}
            onCopy={() =>
              setEditing(
                ownCopy(
                  card,
                  cards.map(({ id }) => id),
                ),
              )
            }
            onEdit={() => setEditing(card.card)}
            onRemove={() => void world.removeCard(card.id).then(() => focusHeading('cards-title'))}
          />
        ))}
      </ul>
    </section>
  );
}

interface OneCardProps {
  readonly card: CardEntry;
  readonly onCopy: () => void;
  readonly onEdit: () => void;
  readonly onRemove: () => void;
}

function OneCard({ card, onCopy, onEdit, onRemove }: OneCardProps) {
  const say = useSay(shopTexts);
  const { title: name } = card;
  const [sure, setSure] = useState(false);
  const read = readCard(card.title, card.card);
  return (
    <li class="card stack">
      <h3>{card.title}</h3>
      {read.ok && <Plate card={read.value} />}
      <p class="row">
        <button
          type="button"
          class="button"
          onClick={onCopy}
          aria-label={say('copyCardNamed', { name })}
        >
          {say('copyCard')}
        </button>
        {card.own && (
          <>
            <button
              type="button"
              class="button"
              onClick={onEdit}
              aria-label={say('editNamed', { name })}
            >
              {say('edit')}
            </button>
            <button
              type="button"
              class="button"
              aria-label={say(sure ? 'reallyTakeAwayNamed' : 'takeAwayNamed', { name })}
              onClick={() => (sure ? onRemove() : setSure(true))}
            >
              {say(sure ? 'reallyTakeAway' : 'takeAway')}
            </button>
          </>
        )}
      </p>
    </li>
  );
}

/** The few figures by which one knows a machine again. */
function Plate({ card }: { readonly card: Card }) {
  const say = useSay(shopTexts);
  const language = useLanguage();
  return (
    <dl class="facts">
      {plateOf(card, language).map(({ name, value }) => (
        <div key={name}>
          <dt>{say(name)}</dt>
          <dd class="figures-text">{value}</dd>
        </div>
      ))}
    </dl>
  );
}
