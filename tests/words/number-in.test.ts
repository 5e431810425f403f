/**
 * Spoken and typed numbers against what a machinist means by them.
 * Sources: arithmetic of the words themselves; decimal parts of an inch as in any decimal-equivalents chart; radio
 * digits from ICAO Annex 10 vol. II; 1 inch = 25.4 mm (International Yard and Pound Agreement 1959); "a tenth" for
 * 0.0001 in and dropped hundreds are common practice, no source.
 */
import { describe, expect, it } from 'vitest';
import { readNumber, type WantedNumber } from '../../src/words/index.ts';

type Row = readonly [heard: string, value: number | null, wanted?: WantedNumber];

const MM = { unit: 'mm' };
const IN = { unit: 'in' };
const RPM = { unit: 'rpm', min: 30, max: 2500, decimals: 0 };
const DEG = { unit: 'deg' };
const NEAR_25: WantedNumber = { unit: 'mm', min: 24.8, max: 25.2, decimals: 2 };

function reads(title: string, rows: readonly Row[]): void {
  describe(title, () => {
    for (const [heard, value, wanted] of rows) {
      it(`"${heard.slice(0, 80)}" is ${value}`, () => {
        const [best] = readNumber(heard, wanted);
        expect(best?.value ?? null).toBe(value);
      });
    }
  });
}

reads('decimals', [
  ['twenty four point nine five', 24.95, MM],
  ['Twenty-four point nine five.', 24.95, MM],
  ['twenty four point ninety five', 24.95, MM],
  ['two four point nine five', 24.95, MM],
  ['two four decimal nine five', 24.95, MM],
  ['24.95', 24.95, MM],
  ['24.95 mm', 24.95, MM],
  ['24.95mm', 24.95, MM],
  ['24 point 95', 24.95, MM],
  ['24 point 9 five', 24.95, MM],
  ['point oh five', 0.05, MM],
  ['nought point nought two', 0.02, MM],
  ['zero point zero zero five', 0.005, MM],
  ['oh point five', 0.5, MM],
  ['twelve point oh oh five', 12.005, MM],
  ['twenty five point oh', 25, MM],
  ['one point double five', 1.55, MM],
  ['.5', 0.5, MM],
  ['5.', 5, MM],
  ['point seven fifty', 0.75, IN],
  ['point five hundred', 0.5, IN],
  ['one point two five oh inches', 1.25, IN],
  ['one hundred and twenty point five', 120.5, MM],
  ['zero', 0, MM],
  ['nought', 0, MM],
]);

reads('whole numbers', [
  ['four fifty', 450, RPM],
  ['four hundred and fifty', 450, RPM],
  ['four hundred fifty', 450, RPM],
  ['fourteen hundred', 1400, RPM],
  ['one thousand four hundred', 1400, RPM],
  ['a thousand', 1000, RPM],
  ['a hundred and five', 105, RPM],
  ['two thousand and fifty', 2050, RPM],
  ['one twenty', 120, RPM],
  ['twelve fifty', 1250, RPM],
  ['four oh five', 405, RPM],
  ['four five oh', 450, RPM],
  ['four five zero revs', 450, RPM],
  ['450 rpm', 450, RPM],
  ['1,400 rpm', 1400, RPM],
  ['450rpm', 450, RPM],
  ['4:50', 450, RPM],
  ['three sixty revs a minute', 360, RPM],
  ['six thousand', 6000, { unit: 'rev/min' }],
  ['twenty four fifty', 2450, RPM],
  ['thirteen', 13, RPM],
]);

reads('radio digits', [
  ['fife', 5, MM],
  ['tree point niner', 3.9, MM],
  ['two fower point niner fife', 24.95, MM],
  ['wun ait', 18, MM],
]);

reads('thou and tenths', [
  ['nine eighty thou', 0.98, IN],
  ['twenty five thou', 0.025, IN],
  ['twenty five thousandths of an inch', 0.025, IN],
  ['a thou', 0.001, IN],
  ['half a thou', 0.0005, IN],
  ['a thou and a half', 0.0015, IN],
  ['two and a half thou', 0.0025, IN],
  ['a tenth', 0.0001, IN],
  ['two tenths', 0.0002, IN],
  ['half a tenth', 0.00005, IN],
  ['five thou two tenths', 0.0052, IN],
  ['one inch and twenty five thou', 1.025, IN],
  ['two tenths of an inch', 0.2, IN],
  ['two tenths of a thou', 0.0002, IN],
  ['five thousandths', 0.005, IN],
  ['ten thousandths', 0.01, IN],
  ['five ten thousandths', 0.0005, IN],
  ['twenty thousandths', 0.02, IN],
  ['twenty five though', 0.025, IN],
  ['25 thou', 0.025, IN],
  ['point two thou', 0.0002, IN],
  ['five thou', 5, { unit: 'thou' }],
  ['three tenths', 0.3, { unit: 'thou' }],
]);

reads('fractions of an inch', [
  ['three eighths', 0.375, IN],
  ['one and three eighths', 1.375, IN],
  ['one three eighths', 1.375, IN],
  ['one inch and three eighths', 1.375, IN],
  ['an inch and a half', 1.5, IN],
  ['inch and a quarter', 1.25, IN],
  ['two inches three eighths', 2.375, IN],
  ['seven thirty seconds', 0.21875, IN],
  ['seven thirty-seconds', 0.21875, IN],
  ['a thirty second', 0.03125, IN],
  ['five sixty-fourths', 0.078125, IN],
  ['63/64', 0.984375, IN],
  ['thirteen sixteenths', 0.8125, IN],
  ['a half', 0.5, IN],
  ['half inch', 0.5, IN],
  ['three quarters of an inch', 0.75, IN],
  ['a quarter of an inch', 0.25, IN],
  ['an eighth', 0.125, IN],
  ['one and a half', 1.5, IN],
  ['1 3/8', 1.375, IN],
  ['1-3/8"', 1.375, IN],
  ['1⅜', 1.375, IN],
  ['⅜ in', 0.375, IN],
  ['7 32nds', 0.21875, IN],
  ['3 8ths', 0.375, IN],
  ['5 sixty fourths', 0.078125, IN],
]);

reads('millimetres in parts', [
  ['two hundredths', 0.02, MM],
  ['five hundredths', 0.05, MM],
  ['minus two hundredths', -0.02, MM],
  ['two hundredths of a millimetre', 0.02, MM],
  ['two tenths', 0.2, MM],
  ['a tenth', 0.1, MM],
  ['a millimetre and a half', 1.5, MM],
  ['half a millimetre', 0.5, MM],
  ['twenty four and a half millimetres', 24.5, MM],
  ['twenty four millimetres and five hundredths', 24.05, MM],
  ['twenty four and five hundredths', 24.05, MM],
  ['five thousandths', 0.005, MM],
  ['plus five microns', 0.005, MM],
  ['five microns', 5, { unit: 'µm' }],
  ['two hundredths', 20, { unit: 'um' }],
]);

reads('signs', [
  ['minus point oh two', -0.02, MM],
  ['negative five', -5, MM],
  ['plus five', 5, MM],
  ['-0.02', -0.02, MM],
  ['−0.02 mm', -0.02, MM],
  ['+0.005', 0.005, MM],
  ['- 3', -3, MM],
  ['- two', -2, MM],
  ['−two hundredths', -0.02, MM],
  ["it's minus two hundredths", -0.02, MM],
  ['24 -point 9', null, MM],
  ['2-', null, MM],
  ['plus or minus two', null, MM],
  ['minus zero', 0, MM],
  ['minus twenty five thou', -0.025, IN],
]);

reads('units that were said are turned into the unit that is wanted, exactly', [
  ['one inch', 25.4, MM],
  ['nine eighty thou', 24.892, MM],
  ['three eighths', 9.525, MM],
  ['25.4 mm', 1, IN],
  ['two centimetres', 20, MM],
  ['a hundred feet a minute', 30.48, { unit: 'm/min' }],
  ['thirty metres a minute', 30, { unit: 'm/min' }],
  ['thirty meters per minute', 30, { unit: 'm/min' }],
  ['thirty metres', 30, { unit: 'm/min' }],
  ['ninety surface feet', 90, { unit: 'ft/min' }],
  ['point two millimetres a rev', 0.2, { unit: 'mm/rev' }],
  ['point two millimetres', 0.2, { unit: 'mm/rev' }],
  ['five thou a rev', 0.127, { unit: 'mm/rev' }],
  ['five thou', 0.005, { unit: 'in/rev' }],
  ['two tenths', 0.0002, { unit: 'in/rev' }],
  ['two tenths', 0.2, { unit: 'mm/rev' }],
  ['ninety seconds', 1.5, { unit: 'min' }],
  ['thirty seconds', 30, { unit: 's' }],
  ['seven thirty seconds', 730, { unit: 's' }],
  ['seven and a half degrees', 7.5, DEG],
  ['seven degrees thirty minutes', 7.5, DEG],
  ['twenty nine degrees and fifteen minutes', 29.25, DEG],
  ['29.5°', 29.5, DEG],
  ["7° 30'", 7.5, DEG],
  ['sixty degrees', 60, { unit: 'degC' }],
  ['fifty percent', 50, { unit: '%' }],
  ['fifty %', 50, { unit: '%' }],
  ['twelve newton metres', 12, { unit: 'Nm' }],
  ['one point five kilowatts', 1.5, { unit: 'kW' }],
  ['fifteen hundred watts', 1.5, { unit: 'kW' }],
  ['eight threads per inch', 8, { unit: 'tpi' }],
  ['twelve', 12, { unit: 'count' }],
]);

reads('words that only sound like numbers', [
  ['to point five', 2.5, MM],
  ['twenty for point nine five', 24.95, MM],
  ['twenty-too', 22, MM],
  ['ate hundred', 800, RPM],
  ['to', null, MM],
  ['for', null, MM],
  ['to for', null, MM],
  ['ate', null, MM],
]);

reads('a point or a thou that was left out, where the range allows one meaning', [
  ['twenty four nine five', 24.95, NEAR_25],
  ['twenty four ninety five', 24.95, NEAR_25],
  ['two four nine five', 24.95, NEAR_25],
  ['24 95', 24.95, NEAR_25],
  ['twenty five oh five', 25.05, NEAR_25],
  ['twenty four', 24, NEAR_25],
  ['nine eighty', 0.98, { unit: 'in', min: 0.95, max: 1.05, decimals: 3 }],
  ['four ninety eight and a half', 0.4985, { unit: 'in', min: 0.49, max: 0.51, decimals: 4 }],
  ['twenty five', 0.025, { unit: 'in', min: 0.01, max: 0.05, decimals: 3 }],
  ['nine eighty', 980, IN],
  ['twenty four nine five', null, MM],
  ['twenty five mils', null, MM],
  ['twenty five mil', 25, NEAR_25],
  ['nine eighty mil', 0.98, { unit: 'in', min: 0.95, max: 1.05, decimals: 3 }],
]);

reads('run-ups and politeness', [
  ['um, twenty four point nine five please', 24.95, MM],
  ["it's twenty four point nine five", 24.95, MM],
  ['it reads twenty four point er nine five', 24.95, MM],
  ['okay so twelve', 12, MM],
]);

reads('what is not one sure number', [
  ['', null],
  ['24,95', null, MM],
  ['1,250', null, MM],
  ['1,25', null, RPM],
  ['1,2500', null, RPM],
  ['1,400.5', null, RPM],
  ['24.9.5', null, MM],
  ['1e3', null, RPM],
  ['24-25', null, MM],
  ['±0.02', null, MM],
  ['oh', null, MM],
  ['oh five', null, MM],
  ['point', null, MM],
  ['minus', null, MM],
  ['and', null, MM],
  ['thou', null, IN],
  ['guard closed', null, MM],
  ['twenty four or twenty five', null, MM],
  ['not twenty four', null, MM],
  ['about twenty four', null, MM],
  ['twenty four point nine no twenty five', null, MM],
  ['three eighths and a half', null, IN],
  ['twenty degrees', null, MM],
  ['four fifty millimetres', null, RPM],
  ['four fifty revs', null, MM],
  ['two tenths inch', null, IN],
  ['thirty mm/min', null, { unit: 'mm/rev' }],
  ['one inch and two inches', null, MM],
  ['one thou and one inch', null, IN],
  ['twenty metres a minute', null, MM],
  ['five millimetres', null, { unit: 'furlong' }],
  ['nine nine nine nine nine nine nine nine nine nine nine nine', null, MM],
  ['9'.repeat(40), null, MM],
  ['one '.repeat(400), null, MM],
]);

describe('a reading', () => {
  it('keeps the unit that was said beside the value in the wanted unit', () => {
    expect(readNumber('nine eighty thou', MM)[0]).toMatchObject({
      unit: 'mm',
      said: 'thou',
      value: 24.892,
    });
  });

  it('is an exact fraction in lowest terms', () => {
    expect(readNumber('seven thirty seconds', IN)[0]?.exact).toEqual({
      numerator: 7,
      denominator: 32,
    });
    expect(readNumber('nine eighty thou', MM)[0]?.exact).toEqual({
      numerator: 6223,
      denominator: 250,
    });
  });

  it('carries its words, with its unit', () => {
    expect(readNumber('24.95', MM)[0]?.text).toBe('twenty-four point nine five millimetres');
    expect(readNumber('twenty minutes', DEG)[0]?.text).toBe('twenty minutes');
  });

  it('names the wanted unit as the caller wrote it, and the said one when nothing is wanted', () => {
    expect(readNumber('four fifty', { unit: 'rev/min' })[0]?.unit).toBe('rev/min');
    expect(readNumber('two inches')[0]?.unit).toBe('in');
    expect(readNumber('two')[0]?.unit).toBe('');
  });

  it('says whether it fits the wanted range and decimals, and is given even when it does not', () => {
    expect(readNumber('twenty six point nine', NEAR_25)[0]).toMatchObject({
      value: 26.9,
      fits: false,
    });
    expect(readNumber('twenty four point nine five five', NEAR_25)[0]).toMatchObject({
      value: 24.955,
      fits: false,
    });
    expect(readNumber('twenty four point nine five', NEAR_25)[0]?.fits).toBe(true);
  });

  it('comes after plainer readings of the same words', () => {
    const values = readNumber('two ten thousandths', IN).map((reading) => reading.value);
    expect(values).toEqual([0.0002, 0.21]);
    const spread = readNumber('twenty four ninety five', NEAR_25).map((reading) => reading.value);
    expect(spread).toEqual([24.95, 2495]);
  });

  it('costs more when a word only sounds like a number', () => {
    const [plain, alike] = ['two point five', 'to point five'].map(
      (text) => readNumber(text, MM)[0]?.cost ?? -1,
    );
    expect(plain).toBe(0);
    expect(alike).toBeGreaterThan(0);
  });
});
