/** The questions that change nothing, and the ways back: always allowed, smaller than what leads on. */

import type { ComponentChildren } from 'preact';
import { useState } from 'preact/hooks';
import { commandSaid } from '../../flow/index.ts';
import { apprenticeTexts, dockTexts } from '../../texts/index.ts';
import { Icon } from '../frame/Icon.tsx';
import { later } from '../frame/later.tsx';
import { useLanguage, useSay } from '../use-say.ts';
import { type Say, SayButton } from './SayButton.tsx';
import { offers, type Scene, wordOf } from './scene.ts';

interface AsksProps {
  readonly scene: Scene;
  readonly say: Say;
  readonly onGiveUp: () => void;
}

const WordList = later(async () => (await import('../glossary/WordList.tsx')).WordList);

const MOST_WORDS = 6;

const PACES = ['first-time', 'familiar', 'own-pace'] as const;
const PACE_NAMES = {
  'first-time': 'firstTime',
  familiar: 'familiar',
  'own-pace': 'ownPace',
} as const;

/** Questions with their keys. Those about a figure stand here only while that figure does. */
const QUESTIONS = [
  { word: 'repeat', key: 'r', figures: null },
  { word: 'why', key: 'w', figures: null },
  { word: 'where am I', key: 'i', figures: null },
  { word: 'what can I say', key: '?', figures: null },
  { word: 'speed', key: 'p', figures: ['speed'] },
  { word: 'feed', key: 'f', figures: ['feed'] },
  { word: 'depth', key: 'd', figures: ['depth', 'cut'] },
  { word: 'how much is left', key: 'l', figures: ['left'] },
  { word: 'why that', key: '=', figures: null },
] as const;

export function Asks({ scene, say, onGiveUp }: AsksProps) {
  const text = useSay(dockTexts);
  const language = useLanguage();
  const here = new Set(scene.view.figures.map((figure) => figure.id));
  const shown = QUESTIONS.filter(({ figures }) => figures?.some((id) => here.has(id)) ?? true);
  return (
    <section class="asks" aria-label={text('youCanAsk')}>
      {shown.map(({ word, key }) => (
        <SayButton key={word} word={word} say={say} shortcut={key} look="small">
          <span class="say-word">{capital(commandSaid(language, word))}</span>
        </SayButton>
      ))}
      {offers(scene, 'back') && (
        <SayButton word="back" say={say} shortcut="b" look="small">
          <span class="say-word">{capital(commandSaid(language, 'back'))}</span>
        </SayButton>
      )}
      {scene.layout !== 'held' && offers(scene, 'carry-on') && (
        <SayButton word="carry on" say={say} look="small">
          <span class="say-word">{capital(commandSaid(language, 'carry on'))}</span>
        </SayButton>
      )}
      {!scene.waiting && offers(scene, 'answer:wrong') && (
        <SayButton word="wrong" say={say} shortcut="x" look="small">
          <span class="say-word">{text('takeBack')}</span>
        </SayButton>
      )}
      <Changed scene={scene} say={say} onGiveUp={onGiveUp} />
    </section>
  );
}

/** What may go wrong or be lost at any moment, behind one button: these words count whether it is open or not. */
function Changed({ scene, say, onGiveUp }: AsksProps) {
  const text = useSay(apprenticeTexts);
  const dock = useSay(dockTexts);
  const near = scene.list.items.flatMap(({ id }) => /^term:(.+)$/.exec(id)?.[1] ?? []);
  return (
    <>
      {scene.troubles.length > 0 && (
        <More name={text('trouble')}>
          {scene.troubles.map((item) => (
            <SayButton key={item.id} word={wordOf(item)} say={say} look="small" gate />
          ))}
        </More>
      )}
      {offers(scene, `pace:${scene.pace}`) && (
        <More name={`${text('pace')}: ${text(PACE_NAMES[scene.pace])}`}>
          {PACES.map((pace) => (
            <SayButton key={pace} word={wordFor(scene, `pace:${pace}`)} say={say} look="small">
              <span class="say-word">{text(PACE_NAMES[pace])}</span>
              {pace === scene.pace && <Icon name="tick" />}
            </SayButton>
          ))}
        </More>
      )}
      <More name={text('words')} wide>
        <WordList
          near={near}
          most={MOST_WORDS}
          onTerm={({ term }) => say(`${scene.heads.term} ${term}`, 'touch')}
        />
      </More>
      {scene.losses.length + scene.adjusts.length > 0 && (
        <More name={dock('changed')}>
          {[...scene.losses, ...scene.adjusts].map((item) => (
            <SayButton key={item.id} word={wordOf(item)} say={say} look="small" gate />
          ))}
        </More>
      )}
      <More name={dock('endRun')}>
        <p class="more-line">{dock('endsSo')}</p>
        <button type="button" class="button say small" data-gate="" onClick={onGiveUp}>
          {dock('giveUp')}
        </button>
      </More>
    </>
  );
}

interface MoreProps {
  readonly name: string;
  /** Over the whole width, for what is to be read. */
  readonly wide?: boolean;
  readonly children: ComponentChildren;
}

function More({ name, wide = false, children }: MoreProps) {
  const [open, setOpen] = useState(false);
  return (
    <>
      <button
        type="button"
        class="button say small"
        aria-expanded={open}
        onClick={(event) => {
          if (event.detail > 0) event.currentTarget.blur();
          setOpen(!open);
        }}
      >
        <span class="say-word">{name}</span>
        <span aria-hidden="true">{open ? '−' : '+'}</span>
      </button>
      {open && <div class={wide ? 'more wide' : 'more'}>{children}</div>}
    </>
  );
}

function wordFor(scene: Scene, id: string): string {
  const item = scene.list.items.find((one) => one.id === id);
  return item ? wordOf(item) : '';
}

/** No single letter is left alone on a line. */
function capital(text: string): string {
  return (text.charAt(0).toUpperCase() + text.slice(1)).replace(/ I\b/, '\u00a0I');
}
