/** Trade words in our own words: a list to search, one word open at a time. */

import { useState } from 'preact/hooks';
import { glossaryIn, type Term } from '../../bench/index.ts';
import { apprenticeTexts } from '../../texts/index.ts';
import { useLanguage, useSay } from '../use-say.ts';
import { findTerms } from './find-terms.ts';

interface WordListProps {
  /** Called when a word is opened, so that it can be said and its part shown. */
  readonly onTerm?: (term: Term) => void;
  /** Words to show while nothing is typed, instead of all. */
  readonly near?: readonly string[];
  /** No more than these are shown: where gloves and two metres allow no scrolling. */
  readonly most?: number;
}

export function WordList({ onTerm, near, most }: WordListProps) {
  const say = useSay(apprenticeTexts);
  const language = useLanguage();
  const [typed, setTyped] = useState('');
  const [open, setOpen] = useState<string | null>(null);
  const all = findTerms(glossaryIn(language), typed, language.locale);
  const wanted = near && typed.trim() === '' ? all.filter(({ id }) => near.includes(id)) : all;
  const found = wanted.slice(0, most);
  const toggle = (term: Term) => {
    setOpen(open === term.id ? null : term.id);
    if (open !== term.id) onTerm?.(term);
  };
  return (
    <div class="words">
      <label class="words-search">
        <span>{say('wordsSearch')}</span>
        <input
          type="search"
          value={typed}
          autocomplete="off"
          onInput={(event) => setTyped(event.currentTarget.value)}
        />
      </label>
      <p class="hint" role="status">
        {found.length === 0 ? say('wordsNone') : say('wordsCount', { n: wanted.length })}
      </p>
      <ul class="words-list">
        {found.map((term) => (
          <li key={term.id}>
            <Word term={term} open={term.id === open} onToggle={toggle} />
          </li>
        ))}
      </ul>
    </div>
  );
}

interface WordProps {
  readonly term: Term;
  readonly open: boolean;
  readonly onToggle: (term: Term) => void;
}

function Word({ term, open, onToggle }: WordProps) {
  return (
    <>
      <button
        type="button"
        class="button word"
        aria-expanded={open}
        onClick={(event) => {
          if (event.detail > 0) event.currentTarget.blur();
          onToggle(term);
        }}
      >
        <span>{term.term}</span>
        <span aria-hidden="true">{open ? '−' : '+'}</span>
      </button>
      {open && (
        <p class="word-about">
          {term.about}
          {term.also.length > 0 && <span class="hint"> ({term.also.join(', ')})</span>}
        </p>
      )}
    </>
  );
}
