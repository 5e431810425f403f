/** Which dimensions a block needs, and in which view each is taken (ISO 129-1, from memory: where the shape is seen). */

import type { DimensionText } from '../dimension-text.ts';
import { readingText, withLimits } from '../dimension-text.ts';
import type { DrawingWords } from '../drawing-words.ts';
import type { Limits, PieceReading, PieceState } from '../piece.ts';
import { stateOf } from '../piece.ts';
import type { Block, BlockFeature, Face, Shoulder, Slot } from './block.ts';
import {
  type Axis,
  acrossOf,
  type Bored,
  boresOf,
  SIDES,
  type Solid,
  type Stretch,
} from './solid.ts';
import { holeText } from './texts.ts';

/** A distance along one axis, in mm from the lower front left corner of the stock. */
export interface Wanted {
  readonly feature: string;
  readonly span: Stretch;
  readonly text: DimensionText;
}

export interface Heights {
  /** Taken at the left of the front view, where slots along the width are seen. */
  readonly left: readonly Wanted[];
  /** Taken at the right of the view from the left, or of the front view where there is no other. */
  readonly right: readonly Wanted[];
}

export interface WantedDimensions {
  /** Under the view from above, shortest first. */
  readonly lengths: readonly Wanted[];
  /** Over the view from the left, shortest first; that view is not needed where there are none. */
  readonly widths: readonly Wanted[];
  readonly wholeWidth: Wanted;
  /** Shortest first. */
  readonly heights: Heights;
  readonly notes: readonly { readonly bore: Bored; readonly text: DimensionText }[];
}

export function wantedOf(
  block: Block,
  solid: Solid,
  state: PieceState,
  words: DrawingWords,
): WantedDimensions {
  const teller = new Teller(block, solid, state, words);
  const places = block.features.flatMap((feature) => teller.places(feature));
  const on = (axis: Axis) => shortestFirst(places.filter((one) => one.axis === axis));
  const lengths = shortestFirst([...on('length'), teller.whole('length')]);
  const depths = block.features.filter(isCut).map((feature) => ({
    along: acrossOf(feature) === 'width' ? ('right' as const) : ('left' as const),
    wanted: teller.depth(feature),
  }));
  const beside = (side: 'left' | 'right') =>
    depths.filter(({ along }) => along === side).map(({ wanted }) => wanted);
  return {
    lengths,
    widths: on('width'),
    wholeWidth: teller.whole('width'),
    heights: {
      left: shortestFirst(beside('left')),
      right: shortestFirst([...beside('right'), teller.whole('height')]),
    },
    notes: boresOf(block, solid).map((bore) => ({
      bore,
      text: teller.text(bore.hole.id, holeText(bore.hole, words), state[bore.hole.id]?.reading),
    })),
  };
}

type Placed = Wanted & { readonly axis: Axis };

class Teller {
  constructor(
    private readonly block: Block,
    private readonly solid: Solid,
    private readonly state: PieceState,
    private readonly words: DrawingWords,
  ) {}

  /** The whole block along an axis, with the limits of the face that made it so. */
  whole(axis: Axis): Wanted {
    const span = this.solid.finished[axis];
    const face = this.block.features.findLast(
      (one): one is Face => one.kind === 'face' && SIDES[one.side][0] === axis,
    );
    if (!face) return { feature: '', span, text: { size: this.sized(span, {}) } };
    const text = this.text(face.id, this.sized(span, face), this.state[face.id]?.reading);
    return { feature: face.id, span, text };
  }

  depth(feature: Slot | Shoulder): Wanted {
    const [, top] = this.solid.finished.height;
    const span: Stretch = [this.boxOf(feature.id).height[0], top];
    const reading = this.state[feature.id]?.reading;
    return {
      feature: feature.id,
      span,
      text: this.text(feature.id, this.sized(span, feature), reading),
    };
  }

  /** Where a feature lies, and how wide it is. */
  places(feature: BlockFeature): readonly Placed[] {
    if (feature.kind === 'face') return [];
    const { length, width } = this.solid.finished;
    const { id } = feature;
    if (feature.kind === 'hole')
      return [
        this.distance(id, 'length', [length[0], length[0] + feature.fromLeft]),
        this.distance(id, 'width', [width[0], width[0] + feature.fromFront]),
      ];
    const axis = acrossOf(feature);
    const span = this.boxOf(id)[axis];
    const reading = this.state[id]?.widthReading;
    const text: DimensionText = {
      size: this.sized(span, feature.widthLimits ?? {}),
      reading: reading && readingText(reading, this.words),
    };
    const wide = { feature: id, axis, span, text };
    const near = this.solid.finished[axis][0];
    const isOff = feature.kind === 'slot' && feature.from !== undefined && span[0] > near;
    return isOff ? [this.distance(id, axis, [near, span[0]]), wide] : [wide];
  }

  /** What is cut now says so. */
  text(id: string, written: string, reading: PieceReading | undefined): DimensionText {
    const size = stateOf(this.state, id) === 'now' ? `${this.words.now}: ${written}` : written;
    return { size, reading: reading && readingText(reading, this.words) };
  }

  private distance(feature: string, axis: Axis, span: Stretch): Placed {
    return { feature, axis, span, text: { size: this.sized(span, {}) } };
  }

  private sized([low, high]: Stretch, limits: Limits): string {
    return withLimits(high - low, limits, this.words);
  }

  private boxOf(id: string) {
    return this.solid.cuts.find(({ feature }) => feature === id)?.box ?? this.solid.finished;
  }
}

function isCut(feature: BlockFeature): feature is Slot | Shoulder {
  return feature.kind === 'slot' || feature.kind === 'shoulder';
}

/** Each distance once; limits or a reading beat a bare number at the same place. */
function shortestFirst<T extends Wanted>(all: readonly T[]): readonly T[] {
  const found = new Map<string, T>();
  for (const one of all) {
    const key = one.span.map((end) => end.toFixed(4)).join(' ');
    const there = found.get(key);
    if (one.span[1] - one.span[0] < 1e-6) continue;
    if (!there || weight(one) > weight(there)) found.set(key, one);
  }
  const size = ({ span }: Wanted) => span[1] - span[0];
  return [...found.values()].sort((a, b) => size(a) - size(b));
}

/** Limits make the text longer. */
function weight({ text }: Wanted): number {
  return (text.reading === undefined ? 0 : 1000) + text.size.length;
}
