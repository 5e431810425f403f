/** The sizes that the drawing of a piece shows, each with what stands behind it. Pure. */

import {
  type Figure,
  figureOf,
  type Job,
  type PieceFeature,
  type ReadingsHeld,
  sizesOf,
  stockSizesOf,
} from '../../flow/index.ts';
import { optionText, pieceTexts, sayIn } from '../../texts/index.ts';

/** Each value once, however many features share it; what cannot be worked out yet is left out. */
export function pieceFigures(job: Job, held: ReadingsHeld): readonly Figure[] {
  const { piece } = job.flow.file;
  if (!piece) return [];
  const { language } = job.flow;
  const say = sayIn(language, pieceTexts);
  const named = [
    ...stockSizesOf(piece).map(([key, ref]) => [say(key), ref] as const),
    ...piece.features.flatMap((one: PieceFeature) =>
      sizesOf(one).map(([key, ref]) => {
        const feature = optionText(language, one.id);
        return [say('sizeOf', { feature, size: say(key) }), ref] as const;
      }),
    ),
  ];
  const once = new Map(named.map(([label, ref]) => [JSON.stringify(ref), [label, ref] as const]));
  return [...once].flatMap(([id, [label, ref]]) => figureOf(job, held, id, label, ref) ?? []);
}
