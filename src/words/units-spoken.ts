/** The units of the trade: how each is heard, said and shown, and how large it is beside its sisters. */
import { type Exact, exact } from './exact.ts';

/** What a unit measures. Units of one kind turn into each other exactly; others never. */
export type Measure =
  | 'length'
  | 'turning'
  | 'surface'
  | 'feed a rev'
  | 'feed a tooth'
  | 'feed a minute'
  | 'angle'
  | 'time'
  | 'force'
  | 'torque'
  | 'power'
  | 'stress'
  | 'percent'
  | 'temperature'
  | 'pitch'
  | 'count';

export interface Unit {
  /** As flows and cards write it: "mm", "rpm", "m/min". */
  readonly id: string;
  /** Other ways of writing the same: "rev/min", "µm". */
  readonly alsoWritten: readonly string[];
  readonly measure: Measure;
  /** Size in the smallest common step of its measure: mm for lengths, m/min for surface speeds … */
  readonly size: Exact;
  /** Every way it may be heard, plain words. */
  readonly heard: readonly string[];
  readonly one: string;
  readonly many: string;
  readonly shown: string;
  /** Not spoken after a number, since the trade does not say it: "four hundred and fifty". */
  readonly silent?: boolean;
  /** For a rate: the lengths that may be said alone as its short form ("five thou" for thou a rev). */
  readonly shortOf?: { readonly top: string; readonly may: readonly string[] };
}

const PER = ['per', 'a', 'an', 'each', 'every', 'the'];

function rates(tops: readonly string[], bottoms: readonly string[]): string[] {
  return tops.flatMap((top) =>
    bottoms.flatMap((bottom) => PER.map((per) => `${top} ${per} ${bottom}`)),
  );
}

const MM = ['millimetre', 'millimetres', 'millimeter', 'millimeters', 'mm'];
const IN = ['inch', 'inches', 'in', 'ins'];
const THOU = ['thou', 'thous', 'thousandths of an inch', 'thousandth of an inch'];
const M = ['metre', 'metres', 'meter', 'meters', 'm'];
const FT = ['foot', 'feet', 'ft'];
const REV = ['rev', 'revolution', 'turn'];
const MINUTE = ['minute', 'min'];
const LENGTHS = ['mm', 'in', 'thou', 'um', 'tenth'];

const LENGTH_UNITS: readonly Unit[] = [
  unit('mm', 'length', exact(1), MM, 'millimetre', 'millimetres'),
  unit('in', 'length', exact(254, 10), IN, 'inch', 'inches', { alsoWritten: ['"', 'inch', '″'] }),
  unit('thou', 'length', exact(254, 10000), THOU, 'thou', 'thou'),
  unit('tenth', 'length', exact(254, 100000), [], 'tenth', 'tenths'),
  unit('um', 'length', exact(1, 1000), ['micron', 'microns', 'um'], 'micron', 'microns', {
    alsoWritten: ['µm', 'μm', 'micron'],
    shown: 'µm',
  }),
  unit(
    'cm',
    'length',
    exact(10),
    ['centimetre', 'centimetres', 'centimeter', 'centimeters', 'cm'],
    'centimetre',
    'centimetres',
  ),
  unit('m', 'length', exact(1000), M, 'metre', 'metres'),
  unit('ft', 'length', exact(3048, 10), FT, 'foot', 'feet'),
];

const SPEED_UNITS: readonly Unit[] = [
  unit(
    'rpm',
    'turning',
    exact(1),
    ['rpm', 'r p m', 'rev', 'revs', 'revolutions', 'rev/min', 'r/min', 'revs/min'].concat(
      rates(['rev', 'revs', 'revolutions', 'turns'], MINUTE),
    ),
    'rev a minute',
    'revs a minute',
    { alsoWritten: ['rev/min', 'r/min', '1/min', 'min-1'], silent: true },
  ),
  unit(
    'm/min',
    'surface',
    exact(1),
    ['m/min', ...rates(M, MINUTE)],
    'metre a minute',
    'metres a minute',
    {
      shortOf: { top: 'm', may: ['m', 'ft'] },
    },
  ),
  unit(
    'ft/min',
    'surface',
    exact(3048, 10000),
    ['ft/min', 'sfm', 'surface feet', ...rates(['foot', 'feet', 'ft', 'surface feet'], MINUTE)],
    'foot a minute',
    'feet a minute',
    { alsoWritten: ['sfm', 'ft per min'], shortOf: { top: 'ft', may: ['m', 'ft'] } },
  ),
  unit(
    'm/s',
    'surface',
    exact(60),
    ['m/s', ...rates(M, ['second', 's'])],
    'metre a second',
    'metres a second',
    {
      shortOf: { top: 'm', may: ['m', 'ft'] },
    },
  ),
];

const FEED_UNITS: readonly Unit[] = [
  feed('mm/rev', 'feed a rev', exact(1), MM, REV, ['millimetre a rev', 'millimetres a rev'], 'mm'),
  feed('in/rev', 'feed a rev', exact(254, 10), IN, REV, ['inch a rev', 'inches a rev'], 'in'),
  feed(
    'thou/rev',
    'feed a rev',
    exact(254, 10000),
    THOU,
    REV,
    ['thou a rev', 'thou a rev'],
    'thou',
  ),
  feed(
    'mm/tooth',
    'feed a tooth',
    exact(1),
    MM,
    ['tooth'],
    ['millimetre a tooth', 'millimetres a tooth'],
    'mm',
  ),
  feed(
    'in/tooth',
    'feed a tooth',
    exact(254, 10),
    IN,
    ['tooth'],
    ['inch a tooth', 'inches a tooth'],
    'in',
  ),
  feed(
    'mm/min',
    'feed a minute',
    exact(1),
    MM,
    MINUTE,
    ['millimetre a minute', 'millimetres a minute'],
    'mm',
  ),
  feed(
    'in/min',
    'feed a minute',
    exact(254, 10),
    IN,
    MINUTE,
    ['inch a minute', 'inches a minute'],
    'in',
  ),
];

const OTHER_UNITS: readonly Unit[] = [
  unit('deg', 'angle', exact(1), ['degree', 'degrees', 'deg', 'degs'], 'degree', 'degrees', {
    alsoWritten: ['°', 'degree', 'degrees'],
    shown: '°',
  }),
  unit('arcmin', 'angle', exact(1, 60), ['minute', 'minutes', 'arcmin'], 'minute', 'minutes', {
    shown: '′',
  }),
  unit('arcsec', 'angle', exact(1, 3600), ['second', 'seconds', 'arcsec'], 'second', 'seconds', {
    shown: '″',
  }),
  unit('min', 'time', exact(1), ['minute', 'minutes', 'min', 'mins'], 'minute', 'minutes'),
  unit('s', 'time', exact(1, 60), ['second', 'seconds', 'sec', 'secs', 's'], 'second', 'seconds', {
    alsoWritten: ['sec'],
  }),
  unit('h', 'time', exact(60), ['hour', 'hours', 'h'], 'hour', 'hours'),
  unit('N', 'force', exact(1), ['newton', 'newtons', 'n'], 'newton', 'newtons'),
  unit(
    'kN',
    'force',
    exact(1000),
    ['kilonewton', 'kilonewtons', 'kn'],
    'kilonewton',
    'kilonewtons',
  ),
  unit(
    'Nm',
    'torque',
    exact(1),
    ['newton metre', 'newton metres', 'newton meter', 'newton meters', 'nm'],
    'newton metre',
    'newton metres',
    { alsoWritten: ['N·m', 'N m'], shown: 'N·m' },
  ),
  unit('kW', 'power', exact(1), ['kilowatt', 'kilowatts', 'kw'], 'kilowatt', 'kilowatts'),
  unit('W', 'power', exact(1, 1000), ['watt', 'watts', 'w'], 'watt', 'watts'),
  unit(
    'N/mm2',
    'stress',
    exact(1),
    ['n/mm2', 'megapascal', 'megapascals', 'mpa', 'newtons per square millimetre'],
    'newton per square millimetre',
    'newtons per square millimetre',
    { alsoWritten: ['N/mm²', 'MPa'], shown: 'N/mm²' },
  ),
  unit('%', 'percent', exact(1), ['percent', 'per cent', '%'], 'percent', 'percent', {
    alsoWritten: ['percent'],
  }),
  unit(
    'degC',
    'temperature',
    exact(1),
    ['degree', 'degrees', 'degrees celsius', 'degrees centigrade', 'celsius', 'degrees c'],
    'degree celsius',
    'degrees celsius',
    { alsoWritten: ['°C', 'C'], shown: '°C' },
  ),
  unit(
    'tpi',
    'pitch',
    exact(1),
    [
      'tpi',
      't p i',
      'threads per inch',
      'threads an inch',
      'threads to the inch',
      'threads to inch',
    ],
    'thread an inch',
    'threads an inch',
    { alsoWritten: ['threads per inch', '1/in'] },
  ),
  unit('count', 'count', exact(1), [], '', '', { alsoWritten: ['', 'ratio', '1'], shown: '' }),
];

const UNITS: readonly Unit[] = [...LENGTH_UNITS, ...SPEED_UNITS, ...FEED_UNITS, ...OTHER_UNITS];

function unit(
  id: string,
  measure: Measure,
  size: Exact,
  heard: readonly string[],
  one: string,
  many: string,
  more: Partial<Pick<Unit, 'alsoWritten' | 'shown' | 'silent' | 'shortOf'>> = {},
): Unit {
  return { id, measure, size, heard, one, many, alsoWritten: [], shown: id, ...more };
}

function feed(
  id: string,
  measure: Measure,
  size: Exact,
  tops: readonly string[],
  bottoms: readonly string[],
  [one, many]: readonly [string, string],
  top: string,
): Unit {
  const heard = [id, ...rates(tops, bottoms)];
  return unit(id, measure, size, heard, one, many, { shortOf: { top, may: LENGTHS } });
}

const byWriting = new Map<string, Unit>();
const byHearing = new Map<string, Unit[]>();
for (const known of UNITS) {
  for (const written of [known.id, ...known.alsoWritten]) byWriting.set(written, known);
  for (const heard of known.heard) byHearing.set(heard, [...(byHearing.get(heard) ?? []), known]);
}

/** The unit written so ("mm", "rev/min", "µm", "°"), or null. */
export function unitOf(written: string): Unit | null {
  return byWriting.get(written) ?? null;
}

/** The units that these plain words may mean: "minutes" is a time and a part of a degree. */
export function unitsHeard(words: string): readonly Unit[] {
  return byHearing.get(words) ?? [];
}

/** Words in the longest name of a unit: "newtons per square millimetre". */
export const LONGEST_UNIT_NAME = 4;

/** The spoken name that goes with a value: "millimetre" for exactly one, else "millimetres". Unknown units are said as written. */
export function unitName(written: string, one: boolean): string {
  const known = unitOf(written);
  if (known === null) return written;
  return one ? known.one : known.many;
}

/** As shown on the screen: "µm", "rpm", "°". Unknown units are shown as written. */
export function unitShown(written: string): string {
  return unitOf(written)?.shown ?? written;
}

/** Every unit this room knows, as flows and cards write it. */
export const UNIT_IDS: readonly string[] = UNITS.map((known) => known.id);
