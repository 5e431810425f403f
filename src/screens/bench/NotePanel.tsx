/** A typed note for the record: what the ear cannot take in free words. */

import { useState } from 'preact/hooks';
import { recordTexts } from '../../texts/index.ts';
import { useSay } from '../use-say.ts';

interface NotePanelProps {
  readonly onNote: (text: string) => void;
}

export function NotePanel({ onNote }: NotePanelProps) {
  const say = useSay(recordTexts);
  const [text, setText] = useState('');
  function keep(event: Event): void {
    event.preventDefault();
    if (text.trim() === '') return;
    onNote(text);
    setText('');
  }
  return (
    <form class="note-panel" onSubmit={keep}>
      <div class="field">
        <label for="note-text">{say('noteLabel')}</label>
        <textarea
          id="note-text"
          rows={2}
          maxLength={500}
          value={text}
          onInput={(event) => setText(event.currentTarget.value)}
        />
      </div>
      <button type="submit" class="button say small">
        <span class="say-word">{say('noteKeep')}</span>
      </button>
    </form>
  );
}
