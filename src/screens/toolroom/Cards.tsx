/** The machine cards: those that came with the page, and those of this shop. */

import { useState } from 'preact/hooks';
import { type Card, readCard } from '../../flow/index.ts';
import type { CardEntry, WorldProps } from '../world.ts';
import { CardEditor } from './CardEditor.tsx';
import { ownCopy } from './own-card.ts';

export function Cards({ world }: WorldProps) {
  const [editing, setEditing] = useState<string | null>(null);
  const cards = world.cards();
  if (editing !== null) {
    return <CardEditor world={world} text={editing} onClose={() => setEditing(null)} />;
  }
  return (
    <section class="stack" aria-labelledby="cards-title">
      <h2 id="cards-title">Machine cards</h2>
      <p class="soft">
        A card says what one real machine can do. Every speed on the Bench comes from it, so write
        one from the plate of your machine and the mark on your chuck.
      </p>
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
            onRemove={() => void world.removeCard(card.id)}
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
          aria-label={`Copy to make your own: ${card.title}`}
        >
          Copy to make your own
        </button>
        {card.own && (
          <>
            <button type="button" class="button" onClick={onEdit} aria-label={`Edit ${card.title}`}>
              Edit
            </button>
            <button
              type="button"
              class="button"
              aria-label={`${sure ? 'Really take away' : 'Take away'} ${card.title}`}
              onClick={() => (sure ? onRemove() : setSure(true))}
            >
              {sure ? 'Really take away' : 'Take away'}
            </button>
          </>
        )}
      </p>
    </li>
  );
}

/** The few figures by which one knows a machine again. */
function Plate({ card }: { readonly card: Card }) {
  const { speeds, topSpeed, lowestSpeed, chuckLimit, crossReads } = card.values;
  const count = Array.isArray(speeds) ? speeds.length : 0;
  const facts = [
    ['Speeds', `${count}, ${lowestSpeed} to ${topSpeed} rev/min`],
    ['Chuck’s mark', chuckLimit === undefined ? 'not given' : `${chuckLimit} rev/min`],
    ['Dials', card.units],
    ['Cross dial reads', crossReads === undefined ? 'not given' : String(crossReads)],
  ];
  return (
    <dl class="facts">
      {facts.map(([name, value]) => (
        <div key={name}>
          <dt>{name}</dt>
          <dd class="figures-text">{value}</dd>
        </div>
      ))}
    </dl>
  );
}
