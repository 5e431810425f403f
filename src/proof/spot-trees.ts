/** The trees of one spot in a shape: of each event, of the sizes that can be tried, and of each question of the proof. */

import type { SharedTree } from './grown.ts';
import type { Move } from './move.ts';
import type { Tree } from './tree.ts';

export interface SpotTrees {
  readonly moves: Map<string, SharedTree<Move>>;
  readonly sizes: Tree<readonly number[]>;
  /** In the order in which they are put. */
  asked?: readonly { readonly claim: string; readonly tree: Tree<boolean> }[];
}
