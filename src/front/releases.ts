/** The only maker of releases: an instructor's passphrase is checked, and the release sealed by a key of this device. */

import type { Release, ReleaseCheck } from '../bench/ports.ts';
import type { Secrets } from '../logbook/index.ts';
import type { Credential } from '../screens/world.ts';
import { englishLanguage, frontTexts, type Language, sayIn } from '../texts/index.ts';
import type { Operators } from './operators.ts';

export type Sealed =
  | { readonly ok: true; readonly release: Release }
  /** Why not, and whose passphrase was tried. */
  | { readonly ok: false; readonly byName: string; readonly why: string };

export interface Releases extends ReleaseCheck {
  make(runId: string, step: string, by: Credential): Promise<Sealed>;
}

export function openReleases(
  operators: Pick<Operators, 'all' | 'check'>,
  secrets: Pick<Secrets, 'seal' | 'isSealed'>,
  now: () => number,
  language: Language = englishLanguage,
): Releases {
  return {
    async make(runId, step, by) {
      const byName =
        operators.all().find(({ id }) => id === by.id)?.name ??
        sayIn(language, frontTexts)('nobody');
      const why = await operators.check(by);
      if (why !== null) return { ok: false, byName, why };
      const unsealed = { runId, step, by: by.id, byName, at: now() };
      return { ok: true, release: { ...unsealed, seal: await secrets.seal(sealText(unsealed)) } };
    },
    genuine: async ({ seal, ...release }) => secrets.isSealed(sealText(release), seal),
  };
}

/** All that a release says, in one order: a changed letter breaks the seal. */
function sealText({ runId, step, by, byName, at }: Omit<Release, 'seal'>): string {
  return JSON.stringify(['release', runId, step, by, byName, at]);
}
