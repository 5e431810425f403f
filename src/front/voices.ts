/** The ears and mouths of this page, as a person chooses them. */

import type { Clock, Ear, Mouth } from '../bench/ports.ts';
import type { EarChoice, MouthChoice, Settings } from '../screens/world.ts';
import {
  chooseEar,
  chooseMouth,
  type EarId,
  type EarOffer,
  type Ears,
  type MouthId,
  type Mouths,
  voiceWorld,
} from '../voice/page/index.ts';

export interface Voices {
  ears(): readonly EarChoice[];
  mouths(): readonly MouthChoice[];
  /** Null is keys and buttons only. */
  ear(settings: Settings): Ear | null;
  mouth(settings: Settings): Mouth;
  /** Fetches the browser's speech pack where the chosen ear needs it; call it in a tap. */
  prepare(ear: string): Promise<void>;
}

export interface LateVoices {
  /** What is known by now: before the browser has answered, keys and the best there will be. */
  ears(): readonly EarChoice[];
  mouths(): readonly MouthChoice[];
  readonly found: Promise<Voices>;
}

/** Browsers may take seconds to tell their voices: the screens do not wait for them. */
export function voicesInTime(clock: Clock, changed: () => void): LateVoices {
  let known: Voices | null = null;
  const found = findVoices(clock).then((voices) => {
    known = voices;
    changed();
    return voices;
  });
  return { found, ears: () => known?.ears() ?? [], mouths: () => known?.mouths() ?? [] };
}

/** Looks once what there is; nothing is started and no permission is asked. */
async function findVoices(clock: Clock): Promise<Voices> {
  const world = voiceWorld(clock);
  const [ears, mouths] = await Promise.all([chooseEar(world), chooseMouth(world)]);
  allowSoundOnFirstTouch(mouths);
  return {
    ears: () => [bestEar(ears), ...ears.offers.filter(usable).map(earChoice)],
    mouths: () => [{ id: 'auto', name: 'The best there is' }, ...mouths.offers],
    ear: ({ ear }) => {
      const id = offered(ears, ear);
      return id === 'keys' ? null : ears.make(id);
    },
    mouth: ({ mouth }) => {
      const wanted = mouths.offers.find((offer) => offer.id === mouth) ?? mouths.offers[0];
      return mouths.make(wanted?.id ?? ('silent' satisfies MouthId));
    },
    async prepare(ear) {
      if (ears.offers.find((offer) => offer.id === ear)?.state === 'install') await ears.install();
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

function bestEar(ears: Ears): EarChoice {
  const best = ears.offers.find((offer) => offer.id === ears.best);
  return {
    id: 'auto',
    name: 'The best that keeps sound here',
    about: `Now: ${best?.name ?? 'keys only'}.`,
    soundLeavesDevice: 'no',
  };
}

const about: Readonly<Record<EarOffer['state'], string>> = {
  ready: '',
  install: 'The browser fetches a language pack once.',
  ask: 'Choosing it agrees that the browser may send sound to its maker.',
  none: '',
};

function earChoice({ id, name, soundLeavesDevice, state }: EarOffer): EarChoice {
  return { id, name, about: about[state], soundLeavesDevice };
}

/** Browsers keep silent until the page was touched once. */
function allowSoundOnFirstTouch(mouths: Mouths): void {
  const prime = () => void mouths.prime();
  for (const kind of ['pointerdown', 'keydown']) {
    window.addEventListener(kind, prime, { once: true, capture: true });
  }
}
