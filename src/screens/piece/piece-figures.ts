/** The sizes that the drawing of a piece shows, each with what stands behind it. Pure. */

import { type Figure, figureOf, type Job, type ReadingsHeld } from '../../flow/index.ts';
import { optionText, pieceTexts, sayIn } from '../../texts/index.ts';

const SIZES = [
  'diameter',
  'largeDiameter',
  'smallDiameter',
  'from',
  'to',
  'depth',
  'size',
] as const;
const MORE = ['angle', 'pointAngle', 'lower', 'upper'] as const;

/** Each value once, however many features share it; what cannot be worked out yet is left out. */
export function pieceFigures(job: Job, held: ReadingsHeld): readonly Figure[] {
  const { piece } = job.flow.file;
  if (!piece) return [];
  const { language } = job.flow;
  const say = sayIn(language, pieceTexts);
  const named = [
    [say('stockDiameter'), piece.stockDiameter] as const,
    [say('stockLength'), piece.stockLength] as const,
    ...piece.features.flatMap((feature) =>
      [...SIZES, ...MORE].flatMap((key) => {
        const ref = feature[key];
        return ref
          ? [
              [
                say('sizeOf', { feature: optionText(language, feature.id), size: say(key) }),
                ref,
              ] as const,
            ]
          : [];
      }),
    ),
  ];
  const once = new Map(named.map(([label, ref]) => [JSON.stringify(ref), [label, ref] as const]));
  return [...once].flatMap(([id, [label, ref]]) => figureOf(job, held, id, label, ref) ?? []);
}
