/** A machine card as a form, and as text for who prefers it. Faults are shown while one writes; only a whole card is kept. */

import { useRef, useState } from 'preact/hooks';
import { type Fault, faultMessage, readCard } from '../../flow/index.ts';
import { shopTexts } from '../../texts/index.ts';
import { FocusHeading } from '../frame/FocusHeading.tsx';
import { NotYet } from '../frame/NotYet.tsx';
import { useLanguage, useSay } from '../use-say.ts';
import type { WorldProps } from '../world.ts';
import { CardForm } from './CardForm.tsx';
import { type CardTexts, cardTexts, cardWith } from './card-draft.ts';
import { placeInText } from './own-card.ts';
import { useKeeping } from './use-keeping.ts';

interface CardEditorProps extends WorldProps {
  readonly text: string;
  readonly onClose: () => void;
}

export function CardEditor(props: CardEditorProps) {
  const { world, onClose } = props;
  const say = useSay(shopTexts);
  const draft = useCardDraft(props);
  const { text, texts, faults, refused } = draft;
  const [asText, setAsText] = useState(false);
  const turn = (toText: boolean) => {
    setAsText(toText);
    draft.readForm();
  };
  return (
    <section class="stack" aria-labelledby="editor-title">
      <FocusHeading id="editor-title" takes>
        {say('cardForm')}
      </FocusHeading>
      <p class="row">
        {[false, true].map((one) => (
          <button
            key={String(one)}
            type="button"
            class="button tall"
            aria-pressed={asText === one}
            onClick={() => turn(one)}
          >
            {say(one ? 'asText' : 'asForm')}
          </button>
        ))}
      </p>
      {!asText && texts && (
        <CardForm text={text} texts={texts} kinds={kindsIn(world, text)} onTexts={draft.fill} />
      )}
      {!asText && !texts && <p class="fault">{say('textFaulty')}</p>}
      {asText ? <CardText draft={draft} /> : <NotYet reasons={refused} heading="h3" />}
      <p class="row">
        <button
          type="button"
          class="button main tall"
          disabled={faults.length > 0}
          onClick={() => void draft.keep()}
        >
          {say('keepCard')}
        </button>
        <button type="button" class="button tall" onClick={onClose}>
          {say('leave')}
        </button>
      </p>
    </section>
  );
}

/** The card's text, what the form makes of it, what is wrong with it, and the way to keep it. */
function useCardDraft({ world, text: first, onClose }: CardEditorProps) {
  const language = useLanguage();
  const [text, setText] = useState(first);
  const [texts, setTexts] = useState<CardTexts | null>(() => cardTexts(first));
  const { refused, keepBy } = useKeeping(onClose);
  const read = readCard('card', text, language);

  return {
    text,
    texts,
    refused,
    faults: read.ok ? [] : read.faults,
    keep: () => keepBy(() => world.keepCard(text)),
    write: setText,
    fill: (changed: CardTexts) => {
      setTexts(changed);
      setText(cardWith(text, changed, language));
    },
    readForm: () => setTexts(cardTexts(text)),
  };
}

function CardText({ draft }: { readonly draft: ReturnType<typeof useCardDraft> }) {
  const say = useSay(shopTexts);
  const field = useRef<HTMLTextAreaElement>(null);
  const { text, faults, refused } = draft;
  function goTo({ line, column }: Fault): void {
    const place = placeInText(text, line, column);
    field.current?.focus();
    field.current?.setSelectionRange(place, place + 1);
  }
  return (
    <>
      <div class="field">
        <label for="card-text">{say('cardText')}</label>
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
          onInput={(event) => draft.write(event.currentTarget.value)}
        />
      </div>
      <Faults faults={faults} refused={refused} onGoTo={goTo} />
    </>
  );
}

/** The kinds that flows and cards of this page are for, and the card's own. */
function kindsIn(world: WorldProps['world'], text: string): readonly (readonly [string, string])[] {
  const own = cardTexts(text)?.machineKind ?? '';
  const kinds = world.shelf.map(({ machineKind, kindTitle }) => [machineKind, kindTitle] as const);
  const others = [own, ...world.cards().map(({ machineKind }) => machineKind)];
  return [...new Map([...others.map((id) => [id, id] as const), ...kinds])];
}

interface FaultsProps {
  readonly faults: readonly Fault[];
  /** What was said when the card was to be kept. */
  readonly refused: readonly string[];
  readonly onGoTo: (fault: Fault) => void;
}

function Faults({ faults, refused, onGoTo }: FaultsProps) {
  const language = useLanguage();
  const say = useSay(shopTexts);
  return (
    <div id="card-faults" aria-live="polite">
      {faults.length === 0 && refused.length === 0 && <p class="soft">{say('whole')}</p>}
      <ul class="fault-list">
        {faults.map((fault) => (
          <li key={`${fault.line} ${fault.column} ${fault.message}`}>
            <button type="button" class="fault-line" onClick={() => onGoTo(fault)}>
              <span class="fault-place">
                {say('faultPlace', { line: fault.line, column: fault.column })}
              </span>
              <span>{faultMessage(fault, language)}</span>
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
