/** A text comes in the language in use, with its values in the forms of that language. */

import { IntlMessageFormat } from 'intl-messageformat';
import { describe, expect, it } from 'vitest';
import { german } from '../../src/texts/de/index.ts';
import * as english from '../../src/texts/en/index.ts';
import { englishLanguage, frameTexts, type Language, sayIn } from '../../src/texts/index.ts';

const steps = {
  area: 'steps',
  texts: { of: '{n, plural, one {# step} other {# steps}}' },
} as const;
const inGerman: Language = {
  ...german,
  tables: { steps: { of: '{n, plural, one {# Schritt} other {# Schritte}}' } },
};

describe('a text', () => {
  it('takes the plural form and the number form of its language', () => {
    expect(sayIn(englishLanguage, steps)('of', { n: 1 })).toBe('1 step');
    expect(sayIn(englishLanguage, steps)('of', { n: 1234 })).toBe('1,234 steps');
    expect(sayIn(inGerman, steps)('of', { n: 1 })).toBe('1 Schritt');
    expect(sayIn(inGerman, steps)('of', { n: 1234 })).toBe('1.234 Schritte');
  });

  it('comes from the table of its area', () => {
    expect(sayIn(german, frameTexts)('shelf')).toBe(german.tables.frame?.shelf);
  });
});

describe('German', () => {
  it.each(Object.values(english))('has every text of the area $area, and no other', (area) => {
    const table = german.tables[area.area] ?? {};
    expect(Object.keys(table).sort()).toEqual(Object.keys(area.texts).sort());
  });

  it.each(Object.values(english))(
    'asks for the same values in the area $area',
    ({ area, texts }) => {
      for (const [key, text] of Object.entries<unknown>(texts)) {
        const other = german.tables[area]?.[key];
        expect([key, valuesIn(other)]).toEqual([key, valuesIn(text)]);
      }
    },
  );

  it.each(Object.values(english))('leaves no text of the area $area empty', ({ area, texts }) => {
    for (const [key, text] of Object.entries<unknown>(texts)) {
      expect([key, isEmpty(german.tables[area]?.[key])]).toEqual([key, isEmpty(text)]);
    }
  });
});

function isEmpty(entry: unknown): boolean {
  return String(entry).trim() === '';
}

/** The names in braces, by the reader of the format itself; phrases take none. */
function valuesIn(entry: unknown): unknown {
  if (Array.isArray(entry)) return 'phrases';
  return [...new Set(namesOf(new IntlMessageFormat(String(entry), 'en').getAst()))].sort();
}

function namesOf(ast: ReturnType<IntlMessageFormat['getAst']>): readonly string[] {
  return ast.flatMap((part) => [
    ...('value' in part && part.type !== 0 ? [String(part.value)] : []),
    ...('options' in part ? Object.values(part.options).flatMap((one) => namesOf(one.value)) : []),
  ]);
}
