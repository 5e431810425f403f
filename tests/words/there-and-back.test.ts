/** Every value that can be spoken comes back the same: value → words → value, and text → value → words → value. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  readNumber,
  sayDigits,
  sayFraction,
  sayNumber,
  showFraction,
  showNumber,
} from '../../src/words/index.ts';

const RUNS = { seed: 20261125, numRuns: 80 };

/** Whole steps as the decimal a person would write: 24950 by 3 → 24.95, without float dust. */
function stepped(steps: number, decimals: number): number {
  return Number(`${steps}e-${decimals}`);
}

function best(text: string, unit: string): number | undefined {
  return readNumber(text, { unit })[0]?.value;
}

const RANGES: readonly (readonly [
  title: string,
  unit: string,
  decimals: number,
  min: number,
  max: number,
])[] = [
  ['millimetres by thousandths', 'mm', 3, -400_000, 400_000],
  ['inches by tenths of a thou', 'in', 4, -160_000, 160_000],
  ['thou by tenths', 'thou', 1, -20_000, 20_000],
  ['microns', 'um', 0, -2000, 2000],
  ['spindle speeds', 'rpm', 0, 1, 6000],
  ['degrees by hundredths', 'deg', 2, -36_000, 36_000],
  ['feeds in millimetres a rev', 'mm/rev', 3, 1, 2000],
  ['feeds in inches a rev', 'in/rev', 4, 1, 1000],
  ['surface speeds in metres a minute', 'm/min', 1, 1, 9000],
  ['surface speeds in feet a minute', 'ft/min', 0, 1, 3000],
  ['seconds', 's', 0, 1, 4000],
  ['percent', '%', 1, 0, 1000],
];

describe.each(RANGES)('%s', (_, unit, decimals, min, max) => {
  const steps = fc.integer({ min, max });

  it('come back from words, from digits and from figures', () => {
    fc.assert(
      fc.property(steps, (count) => {
        const value = stepped(count, decimals);
        expect(best(sayNumber(value, unit, decimals), unit)).toBe(value);
        expect(best(sayNumber(value, unit, decimals, { unit: true }), unit)).toBe(value);
        expect(best(sayDigits(value, unit, decimals), unit)).toBe(value);
        expect(best(sayDigits(value, unit, decimals, { radio: true }), unit)).toBe(value);
        expect(best(showNumber(value, unit, decimals), unit)).toBe(value);
      }),
      RUNS,
    );
  });

  it('come back from what was read: text → value → words → value', () => {
    fc.assert(
      fc.property(steps, (count) => {
        const [first] = readNumber(String(stepped(count, decimals)), { unit });
        expect(first?.value).toBe(stepped(count, decimals));
        expect(readNumber(first?.text ?? '', { unit })[0]?.exact).toEqual(first?.exact);
      }),
      RUNS,
    );
  });
});

describe('every spindle speed from 1 to 6000', () => {
  it('comes back from its words', () => {
    for (let n = 1; n <= 6000; n++) expect(best(sayNumber(n, 'rpm', 0), 'rpm')).toBe(n);
  });
});

describe('every sixty-fourth from 0 to 4 inches', () => {
  it('comes back from the spoken fraction, the shown one, and the decimal words', () => {
    for (let n = -64; n <= 256; n++) {
      const value = n / 64 + 0;
      expect(best(sayFraction(value) ?? '', 'in')).toBe(value);
      expect(best(showFraction(value) ?? '', 'in')).toBe(value);
      expect(best(readNumber(sayFraction(value) ?? '', { unit: 'in' })[0]?.text ?? '', 'in')).toBe(
        value,
      );
    }
  });
});

describe('every thou from 1 to 999', () => {
  it('comes back in inches and, exactly, in millimetres (25.4 mm to the inch)', () => {
    for (let n = 1; n <= 999; n++) {
      const words = sayNumber(stepped(n, 3), 'in', 3, { inThou: true });
      expect(words).toMatch(/thou$/);
      expect(best(words, 'in')).toBe(stepped(n, 3));
      expect(best(words, 'mm')).toBe(stepped(n * 254, 4));
    }
  });
});

/** Ways of saying one whole number of hundredths of a millimetre, by a person and not by our own mouth. */
const DIGIT = ['zero', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine'];
const OTHERS = [
  ['nought', 'oh', 'o'],
  ['wun'],
  [],
  ['tree'],
  ['fower'],
  ['fife'],
  [],
  [],
  ['ait'],
  ['niner'],
].map((more, digit) => [...more, DIGIT[digit] ?? '']);

describe('digits said singly, in any of their forms', () => {
  it('are read as the figures they spell', () => {
    const said = fc.array(
      fc
        .integer({ min: 0, max: 9 })
        .chain((d) => fc.tuple(fc.constant(d), fc.constantFrom(...(OTHERS[d] ?? [''])))),
      { minLength: 1, maxLength: 4 },
    );
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 9 }), said, (whole, part) => {
        const words = `${DIGIT[whole]} point ${part.map(([, word]) => word).join(' ')}`;
        expect(best(words, 'mm')).toBe(Number(`${whole}.${part.map(([digit]) => digit).join('')}`));
      }),
      RUNS,
    );
  });
});

describe('whatever is heard', () => {
  it('is read or refused, never thrown at', () => {
    const word = fc.constantFrom(
      ...DIGIT,
      'point',
      'and',
      'a',
      'half',
      'eighths',
      'tenths',
      'thou',
      'minus',
      'hundred',
      'inches',
      'of',
      '3/8',
      '24.95',
      'oh',
      'twenty',
      'to',
      'mil',
    );
    fc.assert(
      fc.property(fc.array(word, { maxLength: 9 }), fc.string(), (words, noise) => {
        for (const text of [words.join(' '), noise, `${words.join(' ')} ${noise}`]) {
          for (const reading of readNumber(text, { unit: 'mm', min: 0, max: 100, decimals: 2 })) {
            expect(Number.isFinite(reading.value)).toBe(true);
            expect(reading.value).toBe(reading.exact.numerator / reading.exact.denominator);
          }
        }
      }),
      { seed: 20261125, numRuns: 600 },
    );
  });
});
