/** Patterns of one person's voice, kept only as long as the ear is open and never as sound. */
import { cepstra, distance } from '../shared/spectrum.ts';
import { type Verdict, vote } from '../shared/vote.ts';
import type { Finding } from './recogniser.ts';

type Pattern = readonly Float64Array[];

const MOST_A_PHRASE = 4;

export class VoiceBook {
  private readonly patterns = new Map<string, readonly Pattern[]>();

  /** Adds the utterance as a pattern of the phrase; returns how many the phrase has now. */
  add(phrase: string, samples: Int16Array, loud: readonly boolean[]): number {
    const kept = [...(this.patterns.get(phrase) ?? []), trimmed(samples, loud)];
    this.patterns.set(phrase, kept.slice(-MOST_A_PHRASE));
    return Math.min(kept.length, MOST_A_PHRASE);
  }

  clear(): void {
    this.patterns.clear();
  }

  /** The finding as it stands, or as the person's own patterns change it. */
  vote(finding: Finding, phrases: readonly string[]): Verdict {
    const known = phrases.filter((phrase) => this.patterns.has(phrase));
    if (known.length === 0) return finding;
    const sound = trimmed(finding.samples, finding.loud);
    const ranked = known
      .map((phrase) => ({ phrase, distance: this.nearest(phrase, sound) }))
      .sort((a, b) => a.distance - b.distance);
    return vote(finding, ranked);
  }

  private nearest(phrase: string, sound: Pattern): number {
    const patterns = this.patterns.get(phrase) ?? [];
    return Math.min(...patterns.map((pattern) => distance(sound, pattern)));
  }
}

/** Only from the first loud frame to the last, with a little around. */
function trimmed(samples: Int16Array, loud: readonly boolean[]): Pattern {
  const first = Math.max(0, loud.indexOf(true) - 5);
  const last = Math.max(first + 10, loud.lastIndexOf(true) + 6);
  return cepstra(samples.subarray(first * 160, last * 160));
}
