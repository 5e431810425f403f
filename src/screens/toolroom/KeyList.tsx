/** The keys of the Bench, for the keyboard beside the machine or a foot switch that types. */

import { commandSaid } from '../../flow/index.ts';
import { settingsTexts } from '../../texts/index.ts';
import { ANSWER_KEYS, ASK_KEYS, COMMAND_KEYS, shownKey } from '../bench/fact-keys.ts';
import { useLanguage, useSay } from '../use-say.ts';

const OTHERS = [
  ['keysNext', 'keysNextDoes'],
  ['keysSize', 'keysSizeDoes'],
  ['keysRub', 'keysRubDoes'],
  ['keysChoice', 'keysChoiceDoes'],
  ['keysFact', 'keysFactDoes'],
] as const;

export function KeyList() {
  const say = useSay(settingsTexts);
  const language = useLanguage();
  const named = [COMMAND_KEYS, ANSWER_KEYS, ASK_KEYS].flatMap((keys) => Object.entries(keys));
  const rows = [
    ...OTHERS.map(([keys, does]) => [say(keys), say(does)] as const),
    ...named.map(([key, word]) => [shownKey(key), commandSaid(language, word)] as const),
  ];
  return (
    <section class="stack" aria-labelledby="keys-title">
      <h2 id="keys-title">{say('keys')}</h2>
      <p class="soft">{say('keysAbout')}</p>
      <dl class="key-list">
        {rows.map(([key, word]) => (
          <div key={key}>
            <dt>{key}</dt>
            <dd>{word}</dd>
          </div>
        ))}
      </dl>
    </section>
  );
}
