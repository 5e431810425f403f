/** Front view of a manual centre lathe, drawn by us: chuck left, tailstock right, handles facing the reader. */
import { LATHE_BED, LATHE_TAIL } from './lathe-bed.tsx';
import { LATHE_CARRIAGE } from './lathe-carriage.tsx';
import { LATHE_GUARD, LATHE_HEAD } from './lathe-head.tsx';
import type { LathePart } from './lathe-parts.ts';
import { MachineFrame } from './MachineFrame.tsx';
import type { PartArt, PictureProps } from './picture.ts';

/** Every part's drawing, from back to front. */
export const LATHE_ART: readonly PartArt<LathePart>[] = [
  ...LATHE_BED,
  ...LATHE_HEAD,
  ...LATHE_TAIL,
  ...LATHE_CARRIAGE,
  LATHE_GUARD,
];

/** The lathe with one part lit, its name, and the arrow for the way it is to go. */
export function LathePicture(props: PictureProps<LathePart>) {
  return (
    <MachineFrame {...props} kind="lathe" height={544} parts={LATHE_ART} scenery={<Stand />} />
  );
}

function Stand() {
  return (
    <>
      <path d="M8 452 H632 V464 Q632 470 626 470 H14 Q8 470 8 464 Z" />
      <path d="M20 470 H196 V534 H20 Z" />
      <path d="M500 470 H622 V534 H500 Z" />
      <path d="M196 484 H500 V500 H196 Z" />
      <path d="M4 536 H636" fill="none" />
    </>
  );
}
