/** A machine card as text. Every fault is shown at its line while one writes; only a whole card is kept. */

import { useRef, useState } from 'preact/hooks';
import { type Fault, readCard } from '../../flow/index.ts';
import { sentenceOf } from '../use-changes.ts';
import type { WorldProps } from '../world.ts';
import { placeInText } from './own-card.ts';

interface CardEditorProps extends WorldProps {
  readonly text: string;
  readonly onClose: () => void;
}

export function CardEditor({ world, text: first, onClose }: CardEditorProps) {
  const [text, setText] = useState(first);
  const [refused, setRefused] = useState<readonly string[]>([]);
  const field = useRef<HTMLTextAreaElement>(null);
  const read = readCard('card', text);
  const faults = read.ok ? [] : read.faults;

  async function keep(): Promise<void> {
    try {
      const found = await world.keepCard(text);
      setRefused(found);
      if (found.length === 0) onClose();
    } catch (error) {
      setRefused([`Not kept: ${sentenceOf(error)}`]);
    }
  }

  function goTo({ line, column }: Fault): void {
    const place = placeInText(text, line, column);
    field.current?.focus();
    field.current?.setSelectionRange(place, place + 1);
  }

  return (
    <section class="stack" aria-labelledby="editor-title">
      <h2 id="editor-title">Machine card</h2>
      <div class="field">
        <label for="card-text">The card as text</label>
        <textarea
          id="card-text"
          ref={field}
          class="card-text"
          rows={26}
          spellcheck={false}
          autocomplete="off"
          value={text}
          aria-invalid={faults.length > 0}
          aria-describedby="card-faults"
          onInput={(event) => setText(event.currentTarget.value)}
        />
      </div>
      <Faults faults={faults} refused={refused} onGoTo={goTo} />
      <p class="row">
        <button
          type="button"
          class="button main tall"
          disabled={faults.length > 0}
          onClick={() => void keep()}
        >
          Keep the card
        </button>
        <button type="button" class="button tall" onClick={onClose}>
          Leave it as it was
        </button>
      </p>
    </section>
  );
}

interface FaultsProps {
  readonly faults: readonly Fault[];
  /** What was said when the card was to be kept. */
  readonly refused: readonly string[];
  readonly onGoTo: (fault: Fault) => void;
}

function Faults({ faults, refused, onGoTo }: FaultsProps) {
  return (
    <div id="card-faults" aria-live="polite">
      {faults.length === 0 && refused.length === 0 && <p class="soft">The card is whole.</p>}
      <ul class="fault-list">
        {faults.map((fault) => (
          <li key={`${fault.line} ${fault.column} ${fault.message}`}>
            <button type="button" class="fault-line" onClick={() => onGoTo(fault)}>
              <span class="fault-place">
                Line {fault.line}, column {fault.column}
              </span>
              <span>{fault.message}</span>
            </button>
          </li>
        ))}
        {refused.map((fault) => (
          <li key={fault}>{fault}</li>
        ))}
      </ul>
    </div>
  );
}
