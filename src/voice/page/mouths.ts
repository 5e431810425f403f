/** The mouths of this page: which there are, and the making of each. */
import type { Mouth } from '../../bench/ports.ts';
import { hearingTexts, sayIn } from '../../texts/index.ts';
import { browserMouth } from './browser-mouth.ts';
import { loaded } from './loaded.ts';
import { offlineMouth } from './offline-mouth.ts';
import { secondMouth } from './second-mouth.ts';
import { silentMouth } from './silent-mouth.ts';
import type { VoiceWorld } from './voice-world.ts';

/** `browser`, `own:VOICE` or `silent`. */
export type MouthId = 'browser' | `own:${string}` | 'silent';

export interface MouthOffer {
  readonly id: MouthId;
  readonly name: string;
}

export interface Mouths {
  /** All mouths that can be used here, best first. */
  readonly offers: readonly MouthOffer[];
  /** Makes the mouth; an id that is not offered gives the first that is. */
  make(id: MouthId): Mouth;
  /** Call in the first tap of the page: browsers keep silent before. Resolves true when sound is allowed. */
  prime(): Promise<boolean>;
}

/** Names of the voices for the person; the ids are the engine's. */
const OWN_VOICES = [
  ['slt', 'mouthWoman'],
  ['rms', 'mouthMan'],
  ['awb', 'mouthScottish'],
  ['kal16', 'mouthPlain'],
] as const;

/** Looks which mouths there are; takes at most five seconds, since a browser's voices may come late. */
export async function chooseMouth(world: VoiceWorld): Promise<Mouths> {
  const browser = world.browserMouth ? await browserMouth(world.browserMouth) : null;
  const isEnglish = world.lang.startsWith('en');
  const loadOwn = loaded(() => import('./mouth-worker-start.ts'));
  const startWorker = async () => (await loadOwn()).startMouthWorker();
  const say = sayIn(world.language, hearingTexts);
  const ownVoices = OWN_VOICES.map(
    ([voice, name]) => ({ id: `own:${voice}`, name: say(name) }) as const,
  );
  const offers: readonly MouthOffer[] = [
    ...(browser ? [{ id: 'browser', name: browser.name } as const] : []),
    // The voices of this page speak English only.
    ...(isEnglish ? ownVoices : []),
    { id: 'silent', name: say('mouthSilent') },
  ];
  return {
    offers,
    make(id) {
      if (id === 'silent') return silentMouth(world.clock);
      const own = (voice?: string) => offlineMouth({ ...world, startWorker }, voice);
      if (id === 'browser' && browser) {
        return secondMouth(browser, isEnglish ? own : () => silentMouth(world.clock));
      }
      return own(id.split(':')[1]);
    },
    async prime() {
      const isAllowed = await world.audio.prime();
      primeSynthesis(world);
      return isAllowed;
    },
  };
}

/** An empty line, spoken in the tap, lets later lines through. */
function primeSynthesis({ browserMouth: browser }: VoiceWorld): void {
  if (!browser || browser.synthesis.speaking) return;
  const nothing = new browser.Utterance(' ');
  nothing.volume = 0;
  browser.synthesis.speak(nothing);
}
