/** Patterns of one person's voice at one microphone. Never sound: nothing that could be played. */
import type { KeptVoice } from '../shared/messages.ts';
import { type Pattern, patternDistance, patternOf } from '../shared/pattern.ts';
import { type Ranked, type Verdict, vote } from '../shared/vote.ts';
import { patternFrom, patternText } from './pattern-text.ts';
import type { Finding } from './recogniser.ts';

const MOST_A_PHRASE = 4;
/** Frames: a knock is shorter. A blow on an anvil rings for longer, and in its ringing short words were found. */
const LONGER_THAN_A_KNOCK = 14;
const LONGER_THAN_A_BLOW = 30;
/** With fewer pairs than this the person's own spread is not known, and patterns say nothing. */
const FEWEST_PAIRS = 3;
/** So many tell enough; each costs a millisecond. */
const MOST_PAIRS = 12;
/** A take this much less like the takes before than they are among each other was something else. */
const UNLIKE = 2.2;

export class VoiceBook {
  private readonly patterns = new Map<string, readonly Pattern[]>();

  /** `kept` as `kept()` gave it, perhaps long ago: what cannot be read is left out. */
  constructor(kept?: KeptVoice) {
    if (kept?.version !== 1) return;
    for (const [phrase, texts] of Object.entries(kept.patterns)) {
      const read = texts.map(patternFrom).filter((pattern) => pattern !== null);
      if (read.length > 0) this.patterns.set(phrase, read.slice(-MOST_A_PHRASE));
    }
  }

  kept(): KeptVoice {
    const texts = [...this.patterns].map(([phrase, all]) => [phrase, all.map(patternText)]);
    return { version: 1, patterns: Object.fromEntries(texts) };
  }

  /** Adds the utterance as a pattern of the phrase; how many it has now, or null when it is unlike them. */
  add(phrase: string, { samples, loud }: Finding, noise: Float64Array | null): number | null {
    const fresh = patternOf(samples, loud, noise);
    const before = this.patterns.get(phrase) ?? [];
    const spread = this.spreadIn(noise);
    const nearest = Math.min(...before.map((pattern) => patternDistance(fresh, pattern)));
    if (spread !== null && before.length > 0 && nearest > UNLIKE * spread) return null;
    const all = [...before, fresh].slice(-MOST_A_PHRASE);
    this.patterns.set(phrase, all);
    return all.length;
  }

  clear(): void {
    this.patterns.clear();
  }

  /** The finding as it stands, or as the person's own patterns change it. */
  vote(
    finding: Finding,
    phrases: readonly string[],
    noise: Float64Array | null,
    mayBeBlow = false,
  ): Verdict {
    const known = phrases.filter((phrase) => this.patterns.has(phrase));
    const spread = known.length === 0 ? null : this.spreadIn(noise);
    if (spread === null) return finding;
    const sound = patternOf(finding.samples, finding.loud, noise);
    const ranked = known
      .map((phrase): Ranked => ({ phrase, distance: this.nearest(phrase, sound) / spread }))
      .sort((a, b) => a.distance - b.distance);
    const longer = mayBeBlow ? LONGER_THAN_A_BLOW : LONGER_THAN_A_KNOCK;
    return vote(finding, ranked, finding.loud.filter(Boolean).length >= longer);
  }

  private nearest(phrase: string, sound: Pattern): number {
    const patterns = this.patterns.get(phrase) ?? [];
    return Math.min(...patterns.map((pattern) => patternDistance(sound, pattern)));
  }

  /** How unlike two sayings of one phrase by this person look in this noise: the median of some phrases. */
  private spreadIn(noise: Float64Array | null): number | null {
    const pairs = [...this.patterns.values()].flatMap(([first, second]) =>
      first && second ? [[first, second] as const] : [],
    );
    if (pairs.length < FEWEST_PAIRS) return null;
    const step = Math.ceil(pairs.length / MOST_PAIRS);
    const distances = pairs
      .filter((_, i) => i % step === 0)
      .map(([first, second]) => patternDistance(under(first, noise), under(second, noise)));
    return distances.sort((a, b) => a - b)[Math.floor(distances.length / 2)] ?? null;
  }
}

/** A pattern taken in a quieter room as it would look in this noise. */
function under(pattern: Pattern, noise: Float64Array | null): Pattern {
  if (!noise) return pattern;
  return { ...pattern, noise: pattern.noise.map((value, j) => Math.max(value, noise[j] ?? 0)) };
}
