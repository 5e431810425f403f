/** The keys of the Bench, for the keyboard beside the machine or a foot switch that types. */

import { ANSWER_KEYS, ASK_KEYS, COMMAND_KEYS, shownKey } from '../bench/fact-keys.ts';

const OTHERS: readonly (readonly [string, string])[] = [
  ['Space, Enter', 'next; carry on while held'],
  ['0–9 . -', 'a size, taken with Enter'],
  ['Backspace, Esc', 'rub out a figure; all of them'],
  ['1–9', 'the choices that are shown, in their order'],
  ['a letter on a fact', 'says its word: the same letter through the whole run'],
];

export function KeyList() {
  const named = [COMMAND_KEYS, ANSWER_KEYS, ASK_KEYS].flatMap((keys) => Object.entries(keys));
  return (
    <section class="stack" aria-labelledby="keys-title">
      <h2 id="keys-title">Keys of the Bench</h2>
      <p class="soft">
        A foot switch that types the space bar says next. It answers no gate and takes no size.
      </p>
      <dl class="key-list">
        {[...OTHERS, ...named.map(([key, word]) => [shownKey(key), word] as const)].map(
          ([key, word]) => (
            <div key={key}>
              <dt>{key}</dt>
              <dd>{word}</dd>
            </div>
          ),
        )}
      </dl>
    </section>
  );
}
