/** A block with its views and all that is to be written beside them, each label with its size. */

import type { DimensionText } from '../dimension-text.ts';
import { ENGLISH_DRAWING } from '../drawing-words.ts';
import { labelOf } from '../labels.ts';
import type { LayoutOptions } from '../layout.ts';
import type { Label } from '../marks.ts';
import type { PieceState } from '../piece.ts';
import type { Block } from './block.ts';
import { type EdgeEnd, edgeEnds } from './edge-ends.ts';
import type { ViewName } from './project.ts';
import { type Bored, type Solid, solidOf } from './solid.ts';
import { type BlockView, viewOf } from './views.ts';
import { type Wanted, wantedOf } from './wanted.ts';

/** A distance with its label, and how far the edges at both its ends reach towards it. */
export type Labelled = Wanted & {
  readonly label: Label;
  readonly ends: readonly [number, number];
};

export interface Note {
  readonly bore: Bored;
  readonly text: DimensionText;
  readonly label: Label;
}

export interface Plan {
  readonly solid: Solid;
  readonly width: number;
  readonly textSize: number;
  readonly views: Readonly<Record<ViewName, BlockView>>;
  /** Whether the view from the left is drawn: where something lies or runs along the length. */
  readonly hasEnd: boolean;
  readonly lengths: readonly Labelled[];
  readonly widths: readonly Labelled[];
  readonly wholeWidth: readonly Labelled[];
  readonly left: readonly Labelled[];
  readonly right: readonly Labelled[];
  readonly notes: readonly Note[];
}

export const WIDTH = 720;

export function planOf(
  block: Block,
  state: PieceState,
  { width = WIDTH, textSize = 16, words = ENGLISH_DRAWING }: LayoutOptions,
  stacked: boolean,
): Plan {
  const solid = solidOf(block);
  const view = (name: ViewName) => viewOf(block, solid, state, name);
  const views = { front: view('front'), top: view('top'), end: view('end') };
  const wanted = wantedOf(block, solid, state, words);
  const label = (text: DimensionText) => labelOf(text, { textSize, stacked });
  const seen = (all: readonly Wanted[], name: ViewName, runs: 'across' | 'up', end: EdgeEnd) =>
    all.flatMap((one): readonly Labelled[] => {
      const ends = edgeEnds(views[name].traces, runs, one, end);
      return ends ? [{ ...one, ends, label: label(one.text) }] : [];
    });
  const widths = seen(wanted.widths, 'end', 'up', 'high');
  const hasEnd = widths.length > 0;
  const { heights } = wanted;
  return {
    ...{ solid, width, textSize, views, hasEnd, widths },
    lengths: seen(wanted.lengths, 'top', 'up', 'low'),
    wholeWidth: hasEnd
      ? seen([wanted.wholeWidth], 'end', 'up', 'low')
      : seen([wanted.wholeWidth], 'top', 'across', 'high'),
    left: seen(heights.left, 'front', 'across', 'low'),
    // Seen from the left, the front of the block is at the right.
    right: hasEnd
      ? seen(heights.right, 'end', 'across', 'low')
      : seen(heights.right, 'front', 'across', 'high'),
    notes: wanted.notes.map((note) => ({ ...note, label: label(note.text) })),
  };
}
