/** Reads recognition results that may be repeated, provisional, or marked final too early. Pure. */
import type { RecognisedAlternative, RecognisedResult, RecognitionResults } from './recognition.ts';

export interface Spoken {
  readonly text: string;
  readonly alternatives: readonly string[];
  readonly confidence: number;
}

export interface Reading {
  /** Words that are certain to be final now, each once. */
  readonly spoken: readonly Spoken[];
  /** Words that may still change; they count when nothing follows within `settleMs`. */
  readonly pending?: { readonly spoken: Spoken; readonly settleMs: number };
}

/** Some Android browsers mark interim results final, with confidence 0, and repeat them. */
const ZERO_CONFIDENCE_SETTLE_MS = 250;
/** Some browsers never mark a result final. */
const INTERIM_SETTLE_MS = 1_200;

/**
 * Makes a reader for one session. It counts what it has taken itself, because `resultIndex`
 * comes back as 0 with old finals, and starts over when the list shrinks.
 */
export function resultReader(): (event: RecognitionResults) => Reading {
  let taken = 0;
  let lastText = '';
  let said: string[] = [];
  return (event) => {
    if (event.results.length < taken) {
      taken = 0;
      said = [];
    }
    const spoken: Spoken[] = [];
    let pending: Reading['pending'];
    for (let i = taken; i < event.results.length; i++) {
      const result = event.results[i];
      const words = result && read(result);
      if (!result || !words) continue;
      if (!result.isFinal) pending = { spoken: words, settleMs: INTERIM_SETTLE_MS };
      else if (words.confidence === 0)
        pending = { spoken: words, settleMs: ZERO_CONFIDENCE_SETTLE_MS };
      else {
        taken = i + 1;
        // One browser gives all parts once more, as one, before it ends.
        const isWhole = said.length > 1 && words.text === said.join(' ');
        if (words.text !== lastText && !isWhole) spoken.push(words);
        lastText = words.text;
        said.push(words.text);
        pending = undefined;
      }
    }
    return pending ? { spoken, pending } : { spoken };
  };
}

function read(result: RecognisedResult): Spoken | undefined {
  const readings = Array.from({ length: result.length }, (_, i) => result[i]).filter(isSaid);
  const [first, ...rest] = readings;
  if (!first) return undefined;
  const text = plainWords(first.transcript);
  const alternatives = rest.map((r) => plainWords(r.transcript)).filter((t) => t && t !== text);
  return { text, alternatives: [...new Set(alternatives)], confidence: first.confidence };
}

function isSaid(reading: RecognisedAlternative | undefined): reading is RecognisedAlternative {
  return reading !== undefined && plainWords(reading.transcript) !== '';
}

/** Lower case, one space between words, no sentence marks; decimals and fractions stay whole. */
export function plainWords(text: string): string {
  return text
    .toLowerCase()
    .replace(/[!?;:"“”]/g, ' ')
    .replace(/[.,](?!\d)/g, ' ')
    .replace(/’/g, "'")
    .replace(/\s+/g, ' ')
    .trim();
}
