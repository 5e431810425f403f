/** One working outside a run: choose a rule, give its numbers, see the answer with everything behind it. */

import { useMemo, useState } from 'preact/hooks';
import type { SlateCard } from '../../bench/index.ts';
import { type Card, readCard } from '../../flow/index.ts';
import { type Material, type RuleValue, rules, withShopMaterials } from '../../trade/index.ts';
import { addressOf } from '../route.ts';
import { useOwnMaterials } from '../use-own-materials.ts';
import type { AppWorld, WorldProps } from '../world.ts';
import { AskInWords } from './AskInWords.tsx';
import { Question } from './Question.tsx';

interface SlateProps extends WorldProps {
  readonly rule?: string | undefined;
}

export function Slate({ world, rule: name }: SlateProps) {
  const own = useOwnMaterials(world);
  const known = useMemo(() => (own.length > 0 ? withShopMaterials(rules, own) : rules), [own]);
  const rule = known.find((one) => one.name === name);
  return (
    <div class="slate" data-chosen={rule ? '' : undefined}>
      <RuleList chosen={rule?.name} />
      {rule ? (
        <Question key={`${rule.name} ${own.length}`} rule={rule} known={numbersOfCard(world)} />
      ) : (
        <AskInWords world={world} card={withOwn(cardInUse(world), own)} />
      )}
    </div>
  );
}

/** Without a card a question can still be asked: in millimetres, with no limits. */
function withOwn(card: Card | undefined, materials: readonly Material[]): SlateCard | undefined {
  if (materials.length === 0) return card;
  return { units: 'metric', values: {}, ...card, materials };
}

/** The card of the machine that was last used. */
function cardInUse(world: AppWorld): Card | undefined {
  const cards = world.cards();
  const entry = cards.find((card) => card.id === world.settings().cardId) ?? cards[0];
  const card = entry && readCard(entry.title, entry.card);
  return card?.ok ? card.value : undefined;
}

/** Its numbers, under the names by which rules ask for them. */
function numbersOfCard(world: AppWorld): Readonly<Record<string, RuleValue>> {
  const { topSpeed, ...values } = cardInUse(world)?.values ?? {};
  return topSpeed === undefined ? values : { ...values, cardLimit: topSpeed };
}

function RuleList({ chosen }: { readonly chosen: string | undefined }) {
  const [wanted, setWanted] = useState('');
  const found = rules.filter((rule) => matches(`${rule.title} ${rule.name} ${rule.topic}`, wanted));
  const topics = [...new Set(found.map((rule) => rule.topic))];
  return (
    <section class="slate-rules" aria-labelledby="slate-title">
      <h1 id="slate-title">Slate</h1>
      <div class="field">
        <label for="slate-wanted">Find a working</label>
        <input
          id="slate-wanted"
          type="search"
          autocomplete="off"
          placeholder="speed, thread, taper"
          value={wanted}
          onInput={(event) => setWanted(event.currentTarget.value)}
        />
      </div>
      <nav class="slate-topics" aria-label="Workings">
        {topics.map((topic) => (
          <details key={topic} open={wanted !== '' || holds(topic, chosen)}>
            <summary>{topic.charAt(0).toUpperCase() + topic.slice(1)}</summary>
            <ul>
              {found
                .filter((rule) => rule.topic === topic)
                .map((rule) => (
                  <li key={rule.name}>
                    <a
                      href={addressOf({ at: 'slate', rule: rule.name })}
                      aria-current={rule.name === chosen ? 'page' : undefined}
                    >
                      {rule.title}
                    </a>
                  </li>
                ))}
            </ul>
          </details>
        ))}
        {topics.length === 0 && <p class="soft">No working has these words.</p>}
      </nav>
    </section>
  );
}

function holds(topic: string, chosen: string | undefined): boolean {
  return rules.some((rule) => rule.topic === topic && rule.name === chosen);
}

function matches(text: string, wanted: string): boolean {
  const here = text.toLowerCase();
  return wanted
    .toLowerCase()
    .split(/\s+/)
    .every((word) => here.includes(word));
}
