/** Which lengths are dimensioned: all from the right-hand face, as they are turned, the shortest first. */
import type { DimensionText } from './dimension-text.ts';
import { readingText, size, withLimits } from './dimension-text.ts';
import type { DrawingWords } from './drawing-words.ts';
import type { Feature, Piece, PieceState } from './piece.ts';
import { pieceLength } from './piece.ts';

/** A length from the right-hand face to `to`, in mm. */
export interface LengthWanted {
  readonly feature: string;
  readonly to: number;
  readonly text: DimensionText;
}

type Stretched = Extract<Feature, { readonly to: number }>;

/** One length for each shoulder, none twice. */
export function lengthsOf(
  piece: Piece,
  state: PieceState,
  words: DrawingWords,
): readonly LengthWanted[] {
  const stretched = piece.features.flatMap((feature) => (isShown(feature) ? [feature] : []));
  const found = new Map<string, LengthWanted>();
  const add = (wanted: LengthWanted, better: boolean) => {
    const key = wanted.to.toFixed(4);
    if (wanted.to > 1e-6 && (better || !found.has(key))) found.set(key, wanted);
  };
  for (const feature of stretched) {
    add(
      { feature: feature.id, to: feature.from, text: { size: size(feature.from, words) } },
      false,
    );
    add(lengthTo(feature, state, words), isPrecise(feature, state));
  }
  for (const feature of piece.features) {
    if (feature.kind === 'cross-hole')
      add(
        { feature: feature.id, to: feature.from, text: { size: size(feature.from, words) } },
        true,
      );
  }
  const whole = pieceLength(piece);
  add(
    { feature: stretched.at(-1)?.id ?? '', to: whole, text: { size: size(whole, words) } },
    false,
  );
  return [...found.values()].sort((a, b) => a.to - b.to);
}

function isShown(feature: Feature): feature is Stretched {
  return 'to' in feature && !(feature.kind === 'thread' && feature.internal === true);
}

/** Limits and readings beat a bare number at the same place. */
function isPrecise(feature: Stretched, state: PieceState): boolean {
  return feature.lengthLower !== undefined || state[feature.id]?.reading?.of === 'length';
}

function lengthTo(feature: Stretched, state: PieceState, words: DrawingWords): LengthWanted {
  const limits = { lower: feature.lengthLower, upper: feature.lengthUpper };
  const reading = state[feature.id]?.reading;
  return {
    feature: feature.id,
    to: feature.to,
    text: {
      size: withLimits(feature.to, limits, words),
      reading: reading?.of === 'length' ? readingText(reading, words) : undefined,
    },
  };
}
