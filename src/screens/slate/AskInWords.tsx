/** A question in words, typed or spoken, and its answer: large, the working under it, the source under that. */

import { useEffect, useRef, useState } from 'preact/hooks';
import { type SlateCard, type SlateReply, slateAnswer } from '../../bench/index.ts';
import { slateTexts, voiceTexts, whyTexts } from '../../texts/index.ts';
import { addressOf } from '../route.ts';
import { LEAVES } from '../sound-leaves.ts';
import { useLanguage, useSay } from '../use-say.ts';
import type { AppWorld, WorldProps } from '../world.ts';

interface AskInWordsProps {
  readonly world: AppWorld;
  readonly card: SlateCard | undefined;
}

/** What was asked, its answer or what was wrong with it, and the answers before. */
function useQuestion({ world, card }: AskInWordsProps) {
  const language = useLanguage();
  const [text, setText] = useState('');
  const [fault, setFault] = useState('');
  const [last, setLast] = useState<readonly SlateReply[]>([]);
  const [shown, setShown] = useState<SlateReply | null>(null);
  useEffect(() => {
    void world.slate.last().then(setLast);
  }, [world]);
  const ask = (question: string, aloud: boolean) => {
    setText(question);
    const answer = slateAnswer(question, card, language);
    setShown(answer.ok ? answer.reply : null);
    setFault(answer.ok ? '' : answer.fault);
    if (aloud) void world.slate.say(answer.ok ? answer.reply.spoken : answer.fault);
    if (answer.ok) void world.slate.keep(answer.reply).then(setLast);
  };
  return { text, setText, fault, setFault, last, shown, ask };
}

export function AskInWords(props: AskInWordsProps) {
  const { text, setText, fault, setFault, last, shown, ask } = useQuestion(props);
  const say = useSay(slateTexts);
  const voice = useSay(voiceTexts);
  const hearing = useHearing(props.world, (heard) => ask(heard, true), setFault);
  return (
    <section class="slate-ask" aria-label={say('ask')}>
      <form
        class="field"
        onSubmit={(event) => {
          event.preventDefault();
          ask(text, false);
        }}
      >
        <label for="slate-words">{say('ask')}</label>
        <input
          id="slate-words"
          value={text}
          autocomplete="off"
          placeholder={say('askHint')}
          aria-describedby="slate-words-fault"
          onInput={(event) => setText(event.currentTarget.value)}
        />
        <p class="slate-ask-ways">
          <button type="submit" class="button">
            {say('workOut')}
          </button>
          <button
            type="button"
            class="button"
            aria-pressed={hearing.state !== 'sayIt'}
            onClick={hearing.toggle}
          >
            {voice(hearing.state)}
          </button>
        </p>
        <SoundGoes world={props.world} />
      </form>
      <div aria-live="polite">
        <p class="fault" id="slate-words-fault">
          {fault}
        </p>
        {shown && <WordAnswer reply={shown} />}
      </div>
      <LastAnswers last={last} onAsk={(question) => ask(question, false)} />
    </section>
  );
}

/** Told before the microphone is opened. An ear that is gone is replaced by the best, which stands first. */
export function SoundGoes({ world }: WorldProps) {
  const say = useSay(voiceTexts);
  const { ear } = world.settings();
  const ears = world.ears();
  const chosen = ears.find((one) => one.id === ear) ?? ears[0];
  return chosen ? <p class="hint">{say(LEAVES[chosen.soundLeavesDevice])}</p> : null;
}

/** The microphone is open for one question, and shut when the screen is left. */
function useHearing(world: AppWorld, heard: (text: string) => void, deaf: (why: string) => void) {
  const [state, setState] = useState<'sayIt' | 'opening' | 'sayItNow'>('sayIt');
  const close = useRef<(() => Promise<void>) | null>(null);
  const gone = useRef(false);
  useEffect(
    () => () => {
      gone.current = true;
      void close.current?.();
    },
    [],
  );
  const toggle = async () => {
    if (state !== 'sayIt') {
      setState('sayIt');
      await close.current?.();
      return;
    }
    setState('opening');
    close.current = await world.slate.listen((report) => {
      if (gone.current) return;
      setState(report.kind === 'listening' ? 'sayItNow' : 'sayIt');
      if (report.kind === 'listening') return;
      if (report.kind === 'heard') heard(report.text);
      else deaf(report.sentence);
    });
    if (gone.current) await close.current();
  };
  return { state, toggle: () => void toggle() };
}

export function WordAnswer({ reply }: { readonly reply: SlateReply }) {
  const say = useSay(slateTexts);
  const why = useSay(whyTexts);
  const { title, shown, given, ruledBy, working, formula, source, rule } = reply;
  return (
    <div class="answer-card">
      <p class="answer-meaning">{title}</p>
      <p class="answer-value">
        <strong>{shown}</strong>
      </p>
      {ruledBy !== undefined && (
        <p class="answer-ruled">
          {say('rules', { limit: ruledBy.charAt(0).toUpperCase() + ruledBy.slice(1) })}
        </p>
      )}
      <div class="answer-behind">
        {given.length > 0 && <p class="hint">{why('from', { numbers: given.join('; ') })}</p>}
        <p class="answer-working">{working}</p>
        <p class="hint">{why('formula', { formula })}</p>
        <p class="hint">{why('source', { source })}</p>
      </div>
      <a class="hint" href={addressOf({ at: 'slate', rule })}>
        {say('change')}
      </a>
    </div>
  );
}

interface LastAnswersProps {
  readonly last: readonly SlateReply[];
  readonly onAsk: (question: string) => void;
}

export function LastAnswers({ last, onAsk }: LastAnswersProps) {
  const say = useSay(slateTexts);
  if (last.length === 0) return null;
  return (
    <details class="slate-last">
      <summary>{say('last')}</summary>
      <ol>
        {last.map(({ question, shown }) => (
          <li key={question}>
            <button type="button" class="button small" onClick={() => onAsk(question)}>
              {question}: <strong>{shown}</strong>
            </button>
          </li>
        ))}
      </ol>
    </details>
  );
}
