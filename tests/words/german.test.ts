/** German numbers by their table: whole numbers against the npm library `n2words` (MIT), the rest there and back. */

import fc from 'fast-check';
import { toCardinal } from 'n2words/de-DE';
import { describe, expect, it } from 'vitest';
import { german } from '../../src/texts/de/index.ts';
import {
  joinList,
  matchHeard,
  readNumber,
  sayDigits,
  sayNumber,
  showNumber,
  splitCorrection,
  UNIT_IDS,
  unitOf,
} from '../../src/words/index.ts';

const say = (value: number, unit = '', decimals = 0) =>
  sayNumber(value, unit, decimals, { language: german });
const read = (text: string, unit = 'mm', min = -1000, max = 100_000) =>
  readNumber(text, { unit, min, max }, german)[0]?.value;

const NUMBERS = Array.from({ length: 1201 }, (_, n) => n);
for (let n = 1201; n < 999_999; n = Math.ceil(n * 1.02) + 1) NUMBERS.push(n);

describe('a whole number in German', () => {
  it('is said as the outside library says it', () => {
    const plain = (text: string) => text.toLowerCase().replaceAll(' ', '');
    // n2words 4.0.0 says "einhunderteinstausend" for 101 000; the one is "ein" there (Duden, from memory).
    const alike = NUMBERS.filter((n) => Math.floor(n / 1000) % 100 !== 1 || n < 2000);
    for (const n of alike) expect([n, plain(say(n))]).toEqual([n, plain(toCardinal(n))]);
  });

  it('is read from the words of the outside library', () => {
    for (const n of NUMBERS) {
      expect([n, read(toCardinal(n), '', 0, 1_000_000)]).toEqual([n, n]);
    }
  });

  // Common ways of saying it in a shop, no source.
  it.each([
    ['vierzehnhundert', 1400],
    ['vier fünf null', 450],
    ['vier und zwanzig', 24],
    ['hundertfünfzig', 150],
    ['1.400', 1400],
    ['zwo', 2],
  ])('"%s" is %d', (text, value) => {
    expect(
      readNumber(text, { unit: 'rpm', decimals: 0, min: 0, max: 5000 }, german)[0]?.value,
    ).toBe(value);
  });
});

describe('a size in German', () => {
  it.each([
    [24.95, 'mm', 2, 'vierundzwanzig Komma neun fünf Millimeter', '24,95\u00a0mm'],
    [-0.02, 'mm', 2, 'minus null Komma null zwei Millimeter', '−0,02\u00a0mm'],
    [1, 'mm', 2, 'ein Millimeter', '1,00\u00a0mm'],
    [450, 'rev/min', 0, 'vierhundertfünfzig', '450\u00a01/min'],
  ] as const)('%d %s', (value, unit, decimals, words, figures) => {
    expect(say(value, unit, decimals)).toBe(words);
    expect(showNumber(value, unit, decimals, german)).toBe(figures);
  });

  it('is read back digit by digit', () => {
    expect(sayDigits(24.95, 'mm', 2, { language: german })).toBe(
      'zwei vier Komma neun fünf Millimeter',
    );
  });

  it.each([
    ['vierundzwanzig Komma neun fünf', 24.95],
    ['vierundzwanzig Komma fünfundneunzig', 24.95],
    ['minus zwei Hundertstel', -0.02],
    ['zwei Hundertstel Millimeter', 0.02],
    ['fünf Tausendstel', 0.005],
    ['null Komma null fünf', 0.05],
    ['anderthalb', 1.5],
    ['zweieinhalb', 2.5],
    ['24,95', 24.95],
    ['24.95', 24.95],
    ['24,95 mm', 24.95],
    ['ein Zoll', 25.4],
    ['zwölf Millimeter und fünf Hundertstel', 12.05],
    ['äh, es sind zwölf Komma fünf bitte', 12.5],
  ])('"%s" is %d mm', (text, value) => {
    expect(read(text)).toBe(value);
  });

  it.each(['Guten Morgen', 'und', 'zwei fertig', '1.2.3', 'Haube zu', ''])(
    '"%s" is no number',
    (text) => {
      expect(read(text)).toBeUndefined();
    },
  );

  it('with a sign that may part thousands counts only where the range leaves one meaning', () => {
    expect(readNumber('1,250', { unit: 'mm', min: 0, max: 100 }, german)[0]?.value).toBe(1.25);
    expect(readNumber('1,250', undefined, german)).toEqual([]);
  });

  it('comes back from its words, its digits and its figure', () => {
    const sizes = fc.tuple(
      fc.integer({ min: -99_999, max: 99_999 }),
      fc.integer({ min: 0, max: 4 }),
    );
    fc.assert(
      fc.property(sizes, ([count, decimals]) => {
        const value = Number(`${count}e-${decimals}`);
        const wanted = { unit: 'mm', decimals, min: value - 0.5, max: value + 0.5 };
        const back = (text: string) => readNumber(text, wanted, german)[0]?.value;
        expect(back(say(value, 'mm', decimals))).toBe(value);
        expect(back(sayDigits(value, 'mm', decimals, { language: german }))).toBe(value);
        expect(back(showNumber(value, 'mm', decimals, german))).toBe(value);
      }),
      { seed: 1946, numRuns: 400 },
    );
  });

  it('has a name for every unit', () => {
    expect(
      UNIT_IDS.filter((id) => german.spoken?.units[unitOf(id)?.id ?? id] === undefined),
    ).toEqual([]);
  });
});

describe('words in German', () => {
  const items = [
    { id: 'closed', phrases: ['haube zu'], group: 'fact', strict: true },
    { id: 'next', phrases: ['weiter'], group: 'move' },
  ];

  it('count whole, politeness aside, and never when they are denied', () => {
    expect(matchHeard(['Haube zu!'], items, german)).toMatchObject({ kind: 'one', id: 'closed' });
    expect(matchHeard(['weiter bitte'], items, german)).toMatchObject({ kind: 'one', id: 'next' });
    expect(matchHeard(['Haube nicht zu'], items, german)).toEqual({ kind: 'none' });
    expect(matchHeard(['Haube zu', 'Haube nicht zu'], items, german)).toEqual({ kind: 'none' });
  });

  it('are listed with "und" and "oder", and a denial leads in a correction', () => {
    expect(joinList(['Haube', 'Schlüssel', 'Werkzeug'], 'and', german)).toBe(
      'Haube, Schlüssel und Werkzeug',
    );
    expect(splitCorrection('Nein, zwölf Komma fünf', german)).toEqual({ rest: 'zwölf komma fünf' });
    expect(splitCorrection('zwölf Komma fünf', german)).toBeNull();
  });
});
