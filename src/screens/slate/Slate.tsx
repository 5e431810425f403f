/** One working outside a run: choose a rule, give its numbers, see the answer with everything behind it. */

import { useMemo, useState } from 'preact/hooks';
import type { SlateCard } from '../../bench/index.ts';
import { type Card, cardForRule, readCard } from '../../flow/index.ts';
import { frameTexts, slateTexts } from '../../texts/index.ts';
import {
  type Material,
  type Rule,
  type RuleValue,
  rulesIn,
  withShopMaterials,
} from '../../trade/index.ts';
import { addressOf } from '../route.ts';
import { useOwnMaterials } from '../use-own-materials.ts';
import { useLanguage, useSay } from '../use-say.ts';
import type { AppWorld, WorldProps } from '../world.ts';
import { AskInWords } from './AskInWords.tsx';
import { Question } from './Question.tsx';

interface SlateProps extends WorldProps {
  readonly rule?: string | undefined;
}

export function Slate({ world, rule: name }: SlateProps) {
  const own = useOwnMaterials(world);
  const language = useLanguage();
  const frame = useSay(frameTexts);
  const rules = useMemo(() => rulesIn(language), [language]);
  const known = useMemo(
    () => (own.length > 0 ? withShopMaterials(rules, own) : rules),
    [rules, own],
  );
  const rule = known.find((one) => one.name === name);
  return (
    <div class="slate" data-chosen={rule ? '' : undefined}>
      <h1>{frame('slate')}</h1>
      {rule ? (
        <Question
          key={`${rule.name} ${own.length}`}
          rule={rule}
          known={numbersOfCard(world, rule)}
        />
      ) : (
        <AskInWords world={world} card={withOwn(cardInUse(world), own)} />
      )}
      <RuleList rules={rules} chosen={rule?.name} />
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
function numbersOfCard(world: AppWorld, rule: Rule): Readonly<Record<string, RuleValue>> {
  const card = cardInUse(world);
  return card ? cardForRule(rule, card) : {};
}

interface RuleListProps {
  readonly rules: readonly Rule[];
  readonly chosen: string | undefined;
}

function RuleList({ rules, chosen }: RuleListProps) {
  const say = useSay(slateTexts);
  const [wanted, setWanted] = useState('');
  const found = rules.filter((rule) => matches(`${rule.title} ${rule.name} ${rule.topic}`, wanted));
  const topics = [...new Set(found.map((rule) => rule.topic))];
  const chosenTopic = rules.find((rule) => rule.name === chosen)?.topic;
  return (
    <div class="slate-rules">
      <div class="field">
        <label for="slate-wanted">{say('find')}</label>
        <input
          id="slate-wanted"
          type="search"
          autocomplete="off"
          placeholder={say('findHint')}
          value={wanted}
          onInput={(event) => setWanted(event.currentTarget.value)}
        />
      </div>
      <nav class="slate-topics" aria-label={say('workings')}>
        {topics.map((topic) => (
          <details key={topic} open={wanted !== '' || topic === chosenTopic}>
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
        {topics.length === 0 && <p class="soft">{say('noneFits')}</p>}
      </nav>
    </div>
  );
}

function matches(text: string, wanted: string): boolean {
  const here = text.toLowerCase();
  return wanted
    .toLowerCase()
    .split(/\s+/)
    .every((word) => here.includes(word));
}
