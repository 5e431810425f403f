/** Plain text for comparing. British and American pairs as in any dictionary. */
import { describe, expect, it } from 'vitest';
import { denies, normalise, splitCorrection } from '../../src/words/index.ts';

describe('normalise', () => {
  it.each([
    ['Guard closed.', 'guard closed'],
    ['The guard, closed!', 'guard closed'],
    ['um, er, next', 'next'],
    ['Twenty-four point nine', 'twenty four point nine'],
    ['24.95 mm', '24.95 mm'],
    ['2,5', '2,5'],
    ['Isn’t closed', "isn't closed"],
    ['is not closed', "isn't closed"],
    ['will not start', "won't start"],
    ['‘closed’', 'closed'],
    ["'closed'", 'closed'],
    ['set the center, gray aluminum', 'set centre grey aluminium'],
    ['e-stop', 'emergency stop'],
    ['tail stock', 'tailstock'],
    ['toolpost', 'tool post'],
    ['  a   b  ', 'a b'],
    ['OK', 'okay'],
    ['', ''],
    ['…!?', ''],
  ])('"%s" is "%s"', (text, plain) => {
    expect(normalise(text)).toBe(plain);
  });

  it('changes nothing the second time', () => {
    for (const text of ['The e-stop, please', 'is not 24.95 mm', 'Half-nuts; center', "won't"]) {
      expect(normalise(normalise(text))).toBe(normalise(text));
    }
  });
});

describe('denies', () => {
  it.each(['no', 'not', 'never', "isn't", "won't", 'nearly', 'without'])('"%s"', (word) => {
    expect(denies(word)).toBe(true);
  });
  it.each(['yes', 'closed', 'knot', 'note', 'now'])('not "%s"', (word) => {
    expect(denies(word)).toBe(false);
  });
});

describe('splitCorrection', () => {
  it.each([
    ['no, twenty four point nine', 'twenty four point nine'],
    ['No. 24.9', '24.9'],
    ['wrong twenty four point nine', 'twenty four point nine'],
    ['no no twenty', 'twenty'],
    ["no, it's twenty", 'twenty'],
    ['no i said twenty', 'twenty'],
    ['sorry, make that twenty', 'twenty'],
    ["that's wrong, twenty", 'twenty'],
    ['um no twenty please', 'twenty'],
    ['i meant minus twenty', 'minus twenty'],
    ['no minus two hundredths', 'minus two hundredths'],
    ['no', null],
    ['wrong', null],
    ['no no', null],
    ['twenty four', null],
    ["it's twenty", null],
    ['nought point five', null],
    ['not twenty', null],
    ['nothing twenty', null],
    ['', null],
  ])('"%s" leaves %s', (text, rest) => {
    expect(splitCorrection(text)?.rest ?? null).toBe(rest);
  });
});
