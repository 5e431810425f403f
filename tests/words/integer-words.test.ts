/** Whole numbers and ordinals against the npm library `to-words` (MIT), which says them the American way, without "and". */
import { ToWords } from 'to-words';
import { describe, expect, it } from 'vitest';
import { ordinalOfInteger, readNumber, wordsOfInteger } from '../../src/words/index.ts';

const outside = new ToWords({ localeCode: 'en-US' });

function plain(words: string): string {
  return words.toLowerCase().replaceAll('-', ' ').replaceAll(' and ', ' ');
}

/** Every number to 1200, then ever wider apart. */
const NUMBERS = Array.from({ length: 1201 }, (_, n) => n);
for (let n = 1201; n < 999_999_999; n = Math.ceil(n * 1.013) + 1) NUMBERS.push(n);

describe('wordsOfInteger', () => {
  it('says what the outside library says, but for "and"', () => {
    for (const n of NUMBERS) expect(plain(wordsOfInteger(n))).toBe(plain(outside.convert(n)));
  });

  it.each([
    [105, 'one hundred and five'],
    [450, 'four hundred and fifty'],
    [1005, 'one thousand and five'],
    [1450, 'one thousand four hundred and fifty'],
    [1_000_001, 'one million and one'],
    [2_000_000_000, 'two zero zero zero zero zero zero zero zero zero'],
  ])('%d is "%s", with the British "and"', (n, words) => {
    expect(wordsOfInteger(n)).toBe(words);
  });
});

describe('ordinalOfInteger', () => {
  // Not beyond: to-words 5.7.0 says "one thousand hundredth" for 1100.
  it('says what the outside library says from 1 to 1099, but for "and"', () => {
    for (const n of NUMBERS.slice(1, 1100))
      expect(plain(ordinalOfInteger(n))).toBe(plain(outside.toOrdinal(n)));
  });
});

describe('readNumber', () => {
  it('reads what the outside library says, from 1 to 6000 and on', () => {
    for (const n of NUMBERS.filter((one) => one < 1_000_000)) {
      expect(readNumber(outside.convert(n), { unit: 'rpm' })[0]?.value).toBe(n);
    }
  });

  it('reads the outside library’s ordinals as parts of an inch', () => {
    for (const bottom of [8, 16, 32, 64]) {
      for (let top = 1; top < bottom; top++) {
        const part = outside.toOrdinal(bottom) + (top === 1 ? '' : 's');
        expect(readNumber(`${outside.convert(top)} ${part}`, { unit: 'in' })[0]?.value).toBe(
          top / bottom,
        );
      }
    }
  });
});
