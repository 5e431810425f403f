/** What the drawings of shipped flows name has its word in each language, and is not shown as it stands in the file. */

import { describe, expect, it } from 'vitest';
import { german } from '../../src/texts/de/index.ts';
import { englishLanguage } from '../../src/texts/index.ts';
import { optionShown } from '../../src/texts/option.ts';
import { textOf } from '../flow/shipped.ts';

const flows = [
  'gate-hinge-pin',
  'hinge-pin-blank',
  'latch-washer',
  'split-pin-hole',
  'latch-keeper',
  'leaf-bolt',
];

describe('a feature of a shipped piece', () => {
  it.each(flows)('of %s is named in each language', (flow) => {
    const { piece } = JSON.parse(textOf(`${flow}.json`)) as {
      readonly piece: { readonly features: readonly { readonly id: string }[] };
    };
    expect(piece.features.length).toBeGreaterThan(0);
    for (const language of [englishLanguage, german]) {
      const unnamed = piece.features.filter(({ id }) => optionShown(language, id) === undefined);
      expect([language.code, unnamed.map(({ id }) => id)]).toEqual([language.code, []]);
    }
  });
});
