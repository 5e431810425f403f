/** Units by every name, and their sizes beside the trade room's own table, which was written apart from this one. */
import { describe, expect, it } from 'vitest';
import { baseUnitOf, quantities } from '../../src/trade/index.ts';
import { readNumber, UNIT_IDS, unitName, unitOf, unitShown } from '../../src/words/index.ts';

describe('unitName and unitShown', () => {
  it.each([
    ['mm', 'millimetre', 'millimetres', 'mm'],
    ['in', 'inch', 'inches', 'in'],
    ['"', 'inch', 'inches', 'in'],
    ['thou', 'thou', 'thou', 'thou'],
    ['µm', 'micron', 'microns', 'µm'],
    ['rev/min', 'rev a minute', 'revs a minute', 'rpm'],
    ['m/min', 'metre a minute', 'metres a minute', 'm/min'],
    ['ft/min', 'foot a minute', 'feet a minute', 'ft/min'],
    ['mm/rev', 'millimetre a rev', 'millimetres a rev', 'mm/rev'],
    ['in/rev', 'inch a rev', 'inches a rev', 'in/rev'],
    ['mm/min', 'millimetre a minute', 'millimetres a minute', 'mm/min'],
    ['deg', 'degree', 'degrees', '°'],
    ['min', 'minute', 'minutes', 'min'],
    ['s', 'second', 'seconds', 's'],
    ['N', 'newton', 'newtons', 'N'],
    ['Nm', 'newton metre', 'newton metres', 'N·m'],
    ['kW', 'kilowatt', 'kilowatts', 'kW'],
    ['%', 'percent', 'percent', '%'],
    ['count', '', '', ''],
    ['furlong', 'furlong', 'furlong', 'furlong'],
  ])('%s is "%s", "%s", shown "%s"', (id, one, many, shown) => {
    expect([unitName(id, true), unitName(id, false), unitShown(id)]).toEqual([one, many, shown]);
  });
});

describe('every unit', () => {
  it('can be said after a number and is heard as itself', () => {
    for (const id of UNIT_IDS.filter((one) => one !== 'count' && one !== 'tenth')) {
      expect(readNumber(`two ${unitName(id, false)}`, { unit: id })[0]).toMatchObject({
        value: 2,
        said: id,
      });
      expect(readNumber(`one ${unitName(id, true)}`, { unit: id })[0]).toMatchObject({
        value: 1,
        said: id,
      });
    }
  });

  it('that trade rules count in has a spoken name', () => {
    for (const quantity of quantities)
      expect(unitOf(baseUnitOf(quantity)), quantity).not.toBeNull();
  });
});

describe('sizes', () => {
  it.each([
    ['one inch', 'mm', 25.4],
    ['one thou', 'mm', 0.0254],
    ['one micron', 'mm', 0.001],
    ['one foot', 'mm', 304.8],
    ['one foot a minute', 'm/min', 0.3048],
    ['one metre a second', 'm/min', 60],
    ['one inch a rev', 'mm/rev', 25.4],
    ['one inch a minute', 'mm/min', 25.4],
    ['one minute', 'deg', 1 / 60],
    ['one hour', 's', 3600],
    ['one kilonewton', 'N', 1000],
    ['one kilogram force', 'N', 9.80665],
    ['one pound', 'N', 4.4482216152605],
    ['one cubic inch a minute', 'cm3/min', 16.387064],
    ['one gigapascal', 'MPa', 1000],
  ])(
    '%s is %s %d (SI brochure; International Yard and Pound Agreement 1959)',
    (text, unit, value) => {
      expect(readNumber(text, { unit })[0]?.value).toBe(value);
    },
  );
});
