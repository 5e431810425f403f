/** How the page looks, speaks and hears. Every change counts at once and is kept on this device. */

import type { ComponentChildren } from 'preact';
import { earTexts, frameTexts, hearingTexts, settingsTexts } from '../../texts/index.ts';
import { addressOf } from '../route.ts';
import { LEAVES } from '../sound-leaves.ts';
import { useSay } from '../use-say.ts';
import type { AppWorld, Settings, WorldProps } from '../world.ts';
import { EarPack } from './EarPack.tsx';

export function SettingsForm({ world }: WorldProps) {
  const say = useSay(settingsTexts);
  return (
    <section class="stack" aria-labelledby="settings-title">
      <h2 id="settings-title">{say('title')}</h2>
      <div class="settings">
        <Look world={world} />
        <Speech world={world} />
        <Hearing world={world} />
      </div>
    </section>
  );
}

const THEMES = [
  ['auto', 'themeAuto'],
  ['light', 'themeLight'],
  ['dark', 'themeDark'],
] as const satisfies readonly (readonly [Settings['theme'], string])[];

function Look({ world }: WorldProps) {
  const say = useSay(settingsTexts);
  const frame = useSay(frameTexts);
  const settings = world.settings();
  return (
    <Group title={say('look')}>
      <Choices
        name="language"
        label={frame('language')}
        options={world.languages}
        chosen={settings.language}
        onChoose={(language) => void world.change({ language })}
      />
      <Choices
        name="theme"
        label={say('theme')}
        options={THEMES.map(([id, name]) => [id, say(name)] as const)}
        chosen={settings.theme}
        onChoose={(theme) => void world.change({ theme })}
      />
      <Slider world={world} name="textSize" label={say('textSize')} min={0.8} max={2} step={0.1} />
    </Group>
  );
}

/** Browsers may take seconds to tell their voices; silence and keys need not wait for that. */
function Speech({ world }: WorldProps) {
  const say = useSay(settingsTexts);
  const hearing = useSay(hearingTexts);
  const { mouth } = world.settings();
  const mouths = world.mouths().map(({ id, name }) => [id, name] as const);
  return (
    <Group title={say('mouth')}>
      <Choices
        name="mouth"
        label={say('voice')}
        options={mouths.length > 0 ? mouths : [['silent', hearing('mouthSilent')]]}
        chosen={mouth}
        onChoose={(chosen) => void world.change({ mouth: chosen })}
      />
      {mouths.length === 0 && <p class="hint">{say('notToldYet')}</p>}
      <Slider world={world} name="rate" label={say('rate')} min={0.6} max={1.8} step={0.1} />
      <Slider world={world} name="volume" label={say('volume')} min={0.2} max={1} step={0.1} />
      <Slider world={world} name="pitch" label={say('pitch')} min={0.5} max={1.5} step={0.1} />
    </Group>
  );
}

function Hearing({ world }: WorldProps) {
  const { ear } = world.settings();
  const say = useSay(settingsTexts);
  const earSay = useSay(earTexts);
  const frame = useSay(frameTexts);
  const hearing = useSay(hearingTexts);
  const ears = world.ears();
  const names = ears.map(({ id, name }) => [id, name] as const);
  const chosen = ears.find((one) => one.id === ear);
  return (
    <Group title={say('ear')}>
      <Choices
        name="ear"
        label={say('whatListens')}
        options={names.length > 0 ? names : [['keys', hearing('earKeys')]]}
        chosen={ear}
        onChoose={(id) => void world.change({ ear: id })}
      />
      <p class="hint" role="status">
        {names.length === 0 && `${say('notToldYet')} `}
        {chosen && `${chosen.about} ${say(LEAVES[chosen.soundLeavesDevice])} `}
        {say('neverStored')}
      </p>
      {world.language.spoken && <p class="hint">{frame('earEnglish')}</p>}
      <EarPack world={world} />
      <a class="button tall" href={addressOf({ at: 'ear' })}>
        {earSay('link')}
      </a>
    </Group>
  );
}

function Group(props: { readonly title: string; readonly children: ComponentChildren }) {
  return (
    <div class="card stack">
      <h3>{props.title}</h3>
      {props.children}
    </div>
  );
}

interface ChoicesProps<Id extends string> {
  readonly name: string;
  readonly label: string;
  readonly options: readonly (readonly [Id, string])[];
  readonly chosen: string;
  readonly onChoose: (id: Id) => void;
}

function Choices<Id extends string>({ name, label, options, chosen, onChoose }: ChoicesProps<Id>) {
  return (
    <fieldset class="pick">
      <legend>{label}</legend>
      {options.map(([id, text]) => (
        <label key={id} class="pick-one">
          <input
            type="radio"
            name={name}
            value={id}
            checked={id === chosen}
            onChange={() => onChoose(id)}
          />
          <span>{text}</span>
        </label>
      ))}
    </fieldset>
  );
}

interface SliderProps {
  readonly world: AppWorld;
  readonly name: 'textSize' | 'rate' | 'volume' | 'pitch';
  readonly label: string;
  readonly min: number;
  readonly max: number;
  readonly step: number;
}

function Slider({ world, name, label, min, max, step }: SliderProps) {
  const say = useSay(settingsTexts);
  const value = world.settings()[name];
  const id = `setting-${name}`;
  return (
    <div class="field">
      <label for={id} class="slider-label">
        <span>{label}</span>
        <output for={id}>{say('percent', { n: Math.round(value * 100) })}</output>
      </label>
      <input
        id={id}
        type="range"
        min={min}
        max={max}
        step={step}
        value={value}
        onChange={(event) => void world.change({ [name]: Number(event.currentTarget.value) })}
      />
    </div>
  );
}
