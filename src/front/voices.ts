/** The ears and mouths of this page, as a person chooses them. */

import type { Clock, Ear, Mouth } from '../bench/ports.ts';
import type { EarChoice, MouthChoice, Settings } from '../screens/world.ts';
import { hearingTexts, type Language, type Say, sayIn } from '../texts/index.ts';
import {
  chooseEar,
  chooseMouth,
  type EarId,
  type EarOffer,
  type Ears,
  type MouthId,
  type Mouths,
  type OfflineEar,
  voiceWorld,
} from '../voice/page/index.ts';

export interface Voices {
  ears(): readonly EarChoice[];
  mouths(): readonly MouthChoice[];
  /** Null is keys and buttons only. */
  ear(settings: Settings): Ear | null;
  mouth(settings: Settings): Mouth;
  /** The ear of this page, whatever was chosen; null where there is none. */
  ownEar(): OfflineEar | null;
  /** Fetches the browser's speech pack; call it in a tap. False when it was refused or took more than two minutes. */
  fetchPack(): Promise<boolean>;
}

export interface LateVoices {
  /** Empty before the browser has answered: nobody knows then where sound would go. */
  ears(): readonly EarChoice[];
  mouths(): readonly MouthChoice[];
  readonly found: Promise<Voices>;
  /** Those for a run, which may be in another language than the page. */
  inLanguage(language: Language): Promise<Voices>;
}

/** Browsers may take seconds to tell their voices: the screens do not wait for them. */
export function voicesInTime(
  clock: Clock,
  person: () => string,
  changed: () => void,
  language: Language,
): LateVoices {
  let known: Voices | null = null;
  const found = findVoices(clock, person, language).then((voices) => {
    known = voices;
    changed();
    return voices;
  });
  return {
    found,
    ears: () => known?.ears() ?? [],
    mouths: () => known?.mouths() ?? [],
    inLanguage: (wanted) =>
      wanted.code === language.code ? found : findVoices(clock, person, wanted),
  };
}

/** Looks once what there is; nothing is started and no permission is asked. */
async function findVoices(clock: Clock, person: () => string, language: Language): Promise<Voices> {
  const world = voiceWorld(clock, language);
  const say = sayIn(language, hearingTexts);
  let [ears, mouths] = await Promise.all([chooseEar(world, person), chooseMouth(world)]);
  allowSoundOnFirstTouch(mouths);
  return {
    ears: () => [
      bestEar(ears, say),
      ...ears.offers.filter(usable).map((offer) => earChoice(offer, say)),
    ],
    mouths: () => [{ id: 'auto', name: say('mouthBest') }, ...mouths.offers],
    ear: ({ ear }) => {
      const id = offered(ears, ear);
      return id === 'keys' ? null : ears.make(id);
    },
    mouth: ({ mouth }) => {
      const wanted = mouths.offers.find((offer) => offer.id === mouth) ?? mouths.offers[0];
      return mouths.make(wanted?.id ?? ('silent' satisfies MouthId));
    },
    ownEar: () => (offered(ears, 'own') === 'own' ? ears.make('own') : null),
    async fetchPack() {
      const fetched = await ears.install();
      if (fetched) ears = await chooseEar(world, person);
      return fetched;
    },
  };
}

function usable(offer: EarOffer): boolean {
  return offer.state !== 'none';
}

/** What was chosen may be gone after a browser update: then the best that needs no question. */
function offered(ears: Ears, wanted: string): EarId {
  const found = ears.offers.find((offer) => offer.id === wanted && usable(offer));
  return found?.id ?? ears.best;
}

type SayHearing = Say<typeof hearingTexts>;

function bestEar(ears: Ears, say: SayHearing): EarChoice {
  const best = ears.offers.find((offer) => offer.id === ears.best);
  return {
    id: 'auto',
    name: say('earBest'),
    about: say('earBestNow', { name: best?.name ?? say('earKeys') }),
    soundLeavesDevice: 'no',
    needsFetching: false,
  };
}

function earChoice({ id, name, soundLeavesDevice, state }: EarOffer, say: SayHearing): EarChoice {
  const about = { ready: '', install: say('earFetches'), ask: say('earAgrees'), none: '' }[state];
  return { id, name, about, soundLeavesDevice, needsFetching: state === 'install' };
}

/** Browsers keep silent until the page was touched once. */
function allowSoundOnFirstTouch(mouths: Mouths): void {
  const prime = () => void mouths.prime();
  for (const kind of ['pointerdown', 'keydown']) {
    window.addEventListener(kind, prime, { once: true, capture: true });
  }
}
