/** The ears of this page: which there are, whether they can be used, and the making of each. */
import type { Ear } from '../../bench/ports.ts';
import { hearingTexts, sayIn } from '../../texts/index.ts';
import { browserEar } from './browser-ear.ts';
import { browserShelf } from './ear-store.ts';
import { loaded } from './loaded.ts';
import { type OfflineEar, offlineEar } from './offline-ear.ts';
import { installOnDevice, onDeviceState } from './on-device.ts';
import { type ScriptedEar, scriptedEar } from './scripted-ear.ts';
import { secondEar } from './second-ear.ts';
import type { VoiceWorld } from './voice-world.ts';

export type EarId = 'browser-on-device' | 'browser-service' | 'own' | 'keys';

export interface EarOffer {
  readonly id: EarId;
  /** Shown to the person. */
  readonly name: string;
  readonly soundLeavesDevice: Ear['soundLeavesDevice'];
  /** `install`: call `install` in a tap first. `ask`: use it only after the person agreed, since sound leaves. */
  readonly state: 'ready' | 'install' | 'ask' | 'none';
}

export interface Ears {
  /** All ears, best first; those with state `none` cannot be used here. */
  readonly offers: readonly EarOffer[];
  /** The best that needs no question: the browser's own on this device, else ours, else keys. */
  readonly best: EarId;
  /** Makes the ear, not opened. `own` gives an OfflineEar, `keys` a ScriptedEar. */
  make(id: 'own'): OfflineEar;
  make(id: 'keys'): ScriptedEar;
  make(id: EarId): Ear;
  /** Fetches the browser's speech pack; call it in a tap. True when `browser-on-device` is ready. */
  install(): Promise<boolean>;
}

/** Looks which ears there are. Asks for no permission and opens nothing; takes at most three seconds. */
export async function chooseEar(
  world: VoiceWorld,
  /** Whose voice the ear of this page learns; asked at each opening. */
  person: () => string = () => '',
): Promise<Ears> {
  const onDevice = await onDeviceState(world.Recognition, world.lang, world.clock);
  const offers = offersFor(onDevice, world);
  const best = offers.find((offer) => offer.state === 'ready')?.id ?? 'keys';
  const loadOwn = loaded(() => import('./ear-worker-start.ts'));
  const own = () => {
    const startWorker = async () => (await loadOwn()).startEarWorker();
    return offlineEar({ ...world, shelf: browserShelf(), person, startWorker });
  };
  const make = (id: EarId): Ear => {
    if (id === 'keys') return scriptedEar(world.clock);
    if (id === 'own' || !world.browserEar) return own();
    const mode = id === 'browser-on-device' ? 'on-device' : 'service';
    const ofBrowser = browserEar(world.browserEar, mode);
    const hasOwn = offers.some((offer) => offer.id === 'own' && offer.state === 'ready');
    return hasOwn ? secondEar(ofBrowser, own) : ofBrowser;
  };
  return {
    offers,
    best,
    make: make as Ears['make'],
    install: () => installOnDevice(world.Recognition, world.lang, world.clock),
  };
}

function offersFor(
  onDevice: 'ready' | 'needs-install' | 'none',
  { browserEar: hasBrowserEar, devices, lang, language }: VoiceWorld,
): readonly EarOffer[] {
  const isEnglish = lang.startsWith('en');
  const say = sayIn(language, hearingTexts);
  const local = { ready: 'ready', 'needs-install': 'install', none: 'none' } as const;
  return [
    {
      id: 'browser-on-device',
      name: say('earOnDevice'),
      soundLeavesDevice: 'no',
      state: local[onDevice],
    },
    {
      id: 'browser-service',
      name: say('earService'),
      soundLeavesDevice: 'yes',
      state: hasBrowserEar ? 'ask' : 'none',
    },
    {
      id: 'own',
      // Its dictionary is English. In another language it is shown, says so, and is not taken by itself.
      name: say(isEnglish ? 'earOwn' : 'earOwnEnglish'),
      soundLeavesDevice: 'no',
      state: isEnglish && devices && typeof AudioWorkletNode !== 'undefined' ? 'ready' : 'none',
    },
    { id: 'keys', name: say('earKeys'), soundLeavesDevice: 'no', state: 'ready' },
  ];
}
