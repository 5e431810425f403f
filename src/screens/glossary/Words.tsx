/** The trade words in the Toolroom, folded until they are wanted. */

import { useState } from 'preact/hooks';
import { apprenticeTexts } from '../../texts/index.ts';
import { useSay } from '../use-say.ts';
import { WordList } from './WordList.tsx';

export function Words() {
  const say = useSay(apprenticeTexts);
  const [open, setOpen] = useState(false);
  return (
    <section class="card stack">
      <h2>
        <button
          type="button"
          class="button words-open"
          aria-expanded={open}
          onClick={() => setOpen(!open)}
        >
          <span>{say('wordsTitle')}</span>
          <span aria-hidden="true">{open ? '−' : '+'}</span>
        </button>
      </h2>
      {open && <WordList />}
    </section>
  );
}
