/** Chooses among a browser's voices. Pure. */

export interface VoiceOffered {
  readonly name: string;
  readonly lang: string;
  readonly voiceURI: string;
  readonly localService: boolean;
}

/**
 * Voices worth using, best first: on this device only (the others need a network, stall, and drop
 * lines), of the language alone, and the wanted one in front. "Default" marks are not trusted: one browser
 * sets all of them, another none.
 */
export function usableVoices<V extends VoiceOffered>(
  voices: readonly V[],
  wantedUri?: string,
  language = 'en',
): readonly V[] {
  const rank = (voice: V) =>
    voice.voiceURI === wantedUri ? 0 : isBritishOrAmerican(voice) ? 1 : 2;
  return voices
    .filter((voice) => voice.localService && voice.lang.toLowerCase().split(/[-_]/)[0] === language)
    .sort((a, b) => rank(a) - rank(b));
}

function isBritishOrAmerican(voice: VoiceOffered): boolean {
  return /^en[-_](gb|us)$/i.test(voice.lang);
}
