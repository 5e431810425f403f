/** The machine cards: those that came with the page, and those of this shop. */

import { useRef, useState } from 'preact/hooks';
import { type Card, readCard } from '../../flow/index.ts';
import { shopTexts } from '../../texts/index.ts';
import { FocusHeading, focusHeading } from '../frame/FocusHeading.tsx';
import { useSay } from '../use-say.ts';
import type { CardEntry, WorldProps } from '../world.ts';
import { CardEditor } from './CardEditor.tsx';
import { ownCopy } from './own-card.ts';

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

const CROSS = ['diameter', 'radius'] as const;

/** The few figures by which one knows a machine again. */
function Plate({ card }: { readonly card: Card }) {
  const say = useSay(shopTexts);
  const { speeds, topSpeed, lowestSpeed, chuckLimit, crossReads } = card.values;
  const [low, high] = [lowestSpeed, topSpeed].map(String);
  const count = Array.isArray(speeds) ? speeds.length : 0;
  const unit = say(card.speedQuantity);
  const facts = [
    [say('plateSpeeds'), say('plateRange', { count, low: low ?? '', high: high ?? '', unit })],
    [
      say('plateChuck'),
      chuckLimit === undefined ? say('notGiven') : say('plateSpeed', { speed: String(chuckLimit) }),
    ],
    [say('plateDials'), say(card.units)],
    [say('plateCross'), say(CROSS.find((one) => one === crossReads) ?? 'notGiven')],
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
