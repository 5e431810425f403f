/** The settings before a browser has told its voices, which may take seconds. */
import { render } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { SettingsForm } from '../../../src/screens/toolroom/SettingsForm.tsx';
import type { AppWorld, EarChoice } from '../../../src/screens/world.ts';
import { englishLanguage } from '../../../src/texts/index.ts';

function shown(ears: readonly Pick<EarChoice, 'id' | 'name'>[]): string {
  const world = {
    ...{ language: englishLanguage, languages: [['en', 'English']] },
    settings: () => ({ ear: 'auto', mouth: 'auto', language: 'en', theme: 'auto' }),
    ears: () => ears.map((one) => ({ ...one, about: '', soundLeavesDevice: 'no' })),
    mouths: () => ears,
  };
  return render(<SettingsForm world={world as unknown as AppWorld} />);
}

describe('settings', () => {
  it('offer keys and silence while nobody knows what else there is, and say so', () => {
    const early = shown([]);
    expect(early).toContain('value="keys"');
    expect(early).toContain('value="silent"');
    expect(early).toContain('has not told yet');
    expect(early).not.toContain('does not leave');
  });

  it('offer what the browser has once it has told', () => {
    const late = shown([{ id: 'own', name: 'ear of this page' }]);
    expect(late).toContain('value="own"');
    expect(late).not.toContain('value="keys"');
    expect(late).not.toContain('has not told yet');
  });
});
