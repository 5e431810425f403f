/** The questions that change nothing, and the ways back: always allowed, smaller than what leads on. */

import { type ComponentChildren, Fragment } from 'preact';
import { useState } from 'preact/hooks';
import { type BenchItem, type Notice, type RunState, wordsBefore } from '../../bench/index.ts';
import { commandSaid } from '../../flow/index.ts';
import { apprenticeTexts, dockTexts, type Language } from '../../texts/index.ts';
import { Icon } from '../frame/Icon.tsx';
import { later } from '../frame/later.tsx';
import { useLanguage, useSay } from '../use-say.ts';
import { type Say, SayButton } from './SayButton.tsx';
import { offers, type Scene, wordOf } from './scene.ts';

interface AsksProps {
  readonly scene: Scene;
  readonly state: RunState;
  readonly notice: Notice;
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

export function Asks(props: AsksProps) {
  const { scene, say } = props;
  const text = useSay(dockTexts);
  const language = useLanguage();
  const first = firstWords(props);
  const here = new Set(scene.view.figures.map((figure) => figure.id));
  const shown = QUESTIONS.filter(({ figures }) => figures?.some((id) => here.has(id)) ?? true);
  const led = shown.filter(({ word }) => first(spokenAs(language, word)).length > 0);
  const questions = (some: typeof shown) =>
    some.map(({ word, key }) => (
      <SayButton key={word} word={word} say={say} shortcut={key} look="small">
        <span class="say-word">{capital(commandSaid(language, word))}</span>
      </SayButton>
    ));
  return (
    <section class="asks" aria-label={text('youCanAsk')}>
      {questions(shown.filter((one) => !led.includes(one)))}
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
      <Changed {...props} />
      {led.length > 0 && <First words={first(spokenAs(language, led[0]?.word ?? ''))} />}
      {questions(led)}
    </section>
  );
}

/** What may go wrong or be lost at any moment, behind one button: these words count whether it is open or not. */
function Changed(props: AsksProps) {
  const { scene, say, onGiveUp } = props;
  const text = useSay(apprenticeTexts);
  const dock = useSay(dockTexts);
  const first = firstWords(props);
  const near = scene.list.items.flatMap(({ id }) => /^term:(.+)$/.exec(id)?.[1] ?? []);
  const button = (item: BenchItem) => (
    <SayButton key={item.id} word={wordOf(item)} say={say} look="small" gate />
  );
  return (
    <>
      {scene.troubles.length > 0 && (
        <More name={text('trouble')}>
          <Groups items={scene.troubles} first={first}>
            {button}
          </Groups>
        </More>
      )}
      {offers(scene, `pace:${scene.pace}`) && (
        <More name={`${text('pace')}: ${text(PACE_NAMES[scene.pace])}`}>
          <First words={first(wordFor(scene, `pace:${scene.pace}`))} />
          {PACES.map((pace) => (
            <SayButton key={pace} word={wordFor(scene, `pace:${pace}`)} say={say} look="small">
              <span class="say-word">{text(PACE_NAMES[pace])}</span>
              {pace === scene.pace && <Icon name="tick" />}
            </SayButton>
          ))}
        </More>
      )}
      <More name={text('words')} wide>
        {near[0] !== undefined && <First words={first(wordFor(scene, `term:${near[0]}`))} />}
        <WordList
          near={near}
          most={MOST_WORDS}
          onTerm={({ term }) => say(`${scene.heads.term} ${term}`, 'touch')}
        />
      </More>
      {scene.losses.length + scene.adjusts.length > 0 && (
        <More name={dock('changed')}>
          <Groups items={[...scene.losses, ...scene.adjusts]} first={first}>
            {button}
          </Groups>
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

interface GroupsProps {
  readonly items: readonly BenchItem[];
  readonly first: (word: string) => readonly string[];
  readonly children: (item: BenchItem) => ComponentChildren;
}

/** Those that count at once; then the others, each group under what is said before it. */
function Groups({ items, first, children }: GroupsProps) {
  const groups = new Map<string, BenchItem[]>();
  for (const item of items) {
    const key = first(wordOf(item)).join();
    groups.set(key, [...(groups.get(key) ?? []), item]);
  }
  const ordered = [...groups].sort(([a], [b]) => a.length - b.length);
  return (
    <>
      {ordered.map(([key, group]) => (
        <Fragment key={key}>
          {group[0] && <First words={first(wordOf(group[0]))} />}
          {group.map(children)}
        </Fragment>
      ))}
    </>
  );
}

function First({ words }: { readonly words: readonly string[] }) {
  const text = useSay(dockTexts);
  if (words.length === 0) return null;
  const quoted = words.map((word) => text('quoted', { word })).join(', ');
  return <p class="more-line">{text('firstSay', { words: quoted })}</p>;
}

/** What is said before a word to the ear in use: an ear of listed words knows the rare ones behind others. */
function firstWords({ scene, state, notice }: AsksProps): (word: string) => readonly string[] {
  if (notice.soundLeaves === undefined) return () => [];
  return (word) => {
    const item = scene.list.items.find(({ phrases }) => phrases.includes(word));
    return item ? wordsBefore(state, item) : [];
  };
}

/** As it stands in the said list. */
function spokenAs(language: Language, word: string): string {
  return commandSaid(language, word).toLowerCase();
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
