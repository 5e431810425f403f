/** A button that says a word for the person. It acts on release, once, and gives the focus back. */

import type { ComponentChildren } from 'preact';
import { shownKey } from './fact-keys.ts';

/** Says a word through the run's one door. */
export type Say = (word: string, from: 'touch' | 'key') => void;

interface SayButtonProps {
  readonly word: string;
  readonly say: Say;
  readonly children?: ComponentChildren;
  readonly hint?: string | undefined;
  readonly shortcut?: string | undefined;
  readonly look?: string;
  readonly name?: string | undefined;
  /** An answer to a gate: the space bar never presses it. */
  readonly gate?: boolean;
}

export function SayButton(props: SayButtonProps) {
  const { word, say, children, hint, shortcut, look = '', name, gate = false } = props;
  return (
    <button
      type="button"
      class={`button say ${look}`}
      aria-label={name}
      aria-keyshortcuts={shortcut}
      data-word={word}
      data-gate={gate ? '' : undefined}
      onClick={(event) => {
        // The second tap of a double tap was meant for what stood here before.
        if (event.detail > 1) return;
        // After a touch the focus goes, so that a foot switch cannot press this button again.
        if (event.detail > 0) event.currentTarget.blur();
        say(word, event.detail > 0 ? 'touch' : 'key');
      }}
    >
      {children ?? <span class="say-word">{word}</span>}
      {hint !== undefined && <span class="say-hint">{hint}</span>}
      {shortcut !== undefined && (
        <span class="key" aria-hidden="true">
          {shownKey(shortcut)}
        </span>
      )}
    </button>
  );
}
