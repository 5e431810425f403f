/** The shop's own materials for a screen; none while they are fetched. */

import { useCallback } from 'preact/hooks';
import type { Material } from '../trade/index.ts';
import { useAwaited } from './use-changes.ts';
import type { AppWorld } from './world.ts';

const none: readonly Material[] = [];

export function useOwnMaterials(world: AppWorld): readonly Material[] {
  const rows = useAwaited(
    useCallback(() => world.materials.all(), [world]),
    [world],
  );
  return rows.is === 'here' ? rows.value : none;
}
