/** Chooses the picture for a machine kind, so that a screen need not know how many there are. */

import { DrillPicture } from './DrillPicture.tsx';
import { DRILL_PARTS } from './drill-parts.ts';
import { GrinderPicture } from './GrinderPicture.tsx';
import { GRINDER_PARTS } from './grinder-parts.ts';
import { LathePicture } from './LathePicture.tsx';
import { LATHE_PARTS } from './lathe-parts.ts';
import { MillPicture } from './MillPicture.tsx';
import { MILL_PARTS } from './mill-parts.ts';
import type { PictureProps } from './picture.ts';
import { SawPicture } from './SawPicture.tsx';
import { SAW_PARTS } from './saw-parts.ts';

/** Parts by machine kind. Kinds without a picture are not in it. */
export const PARTS_BY_KIND = {
  lathe: LATHE_PARTS,
  mill: MILL_PARTS,
  'drill-press': DRILL_PARTS,
  grinder: GRINDER_PARTS,
  'band-saw': SAW_PARTS,
} as const satisfies Readonly<Record<string, readonly string[]>>;

export type PicturedKind = keyof typeof PARTS_BY_KIND;

export interface MachinePictureProps extends PictureProps<string> {
  readonly kind: string;
}

/** Draws the kind's picture, or nothing for a kind that has none. A part it does not have lights nothing. */
export function MachinePicture({ kind, lit, ...rest }: MachinePictureProps) {
  switch (kind) {
    case 'lathe':
      return <LathePicture {...rest} lit={known(LATHE_PARTS, lit)} />;
    case 'mill':
      return <MillPicture {...rest} lit={known(MILL_PARTS, lit)} />;
    case 'drill-press':
      return <DrillPicture {...rest} lit={known(DRILL_PARTS, lit)} />;
    case 'grinder':
      return <GrinderPicture {...rest} lit={known(GRINDER_PARTS, lit)} />;
    case 'band-saw':
      return <SawPicture {...rest} lit={known(SAW_PARTS, lit)} />;
    default:
      return null;
  }
}

/** True for a machine kind that has a picture. */
export function isPictured(kind: string): kind is PicturedKind {
  return Object.hasOwn(PARTS_BY_KIND, kind);
}

function known<Id extends string>(parts: readonly Id[], id: string | undefined): Id | undefined {
  return parts.find((part) => part === id);
}
