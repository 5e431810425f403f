/** The sizes that the drawing of a piece shows, each with what stands behind it. Pure. */

import { type Figure, figureOf, type Job, type ReadingsHeld } from '../../flow/index.ts';

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
  const named = [
    ['stock diameter', piece.stockDiameter] as const,
    ['stock length', piece.stockLength] as const,
    ...piece.features.flatMap((feature) =>
      [...SIZES, ...MORE].flatMap((key) => {
        const ref = feature[key];
        return ref ? [[`${feature.id} ${wordsOf(key)}`, ref] as const] : [];
      }),
    ),
  ];
  const once = new Map(named.map(([label, ref]) => [JSON.stringify(ref), [label, ref] as const]));
  return [...once].flatMap(
    ([id, [label, ref]]) => figureOf(job, held, id, label.replaceAll('-', ' '), ref) ?? [],
  );
}

function wordsOf(key: string): string {
  return key.replace(/([a-z])([A-Z])/g, '$1 $2').toLowerCase();
}
