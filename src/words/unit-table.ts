/** The table of units: how each is heard, said and shown, and how large it is beside its sisters. */
import { type Exact, exact } from './exact.ts';

/** What a unit measures. Units of one measure turn into each other exactly; others never. */
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
  | 'volume a minute'
  | 'area a minute'
  | 'area'
  | 'percent'
  | 'celsius'
  | 'fahrenheit'
  | 'expansion'
  | 'mass'
  | 'density'
  | 'pitch'
  | 'count';

export interface Unit {
  /** As flows and cards write it: "mm", "rpm", "m/min". */
  readonly id: string;
  /** Other ways of writing the same: "rev/min", "µm". */
  readonly alsoWritten: readonly string[];
  readonly measure: Measure;
  /** Size beside the other units of the measure: mm is 1 among lengths, m/min among surface speeds. */
  readonly size: Exact;
  /** Every way it may be heard, in plain words. */
  readonly heard: readonly string[];
  readonly one: string;
  readonly many: string;
  readonly shown: string;
  /** Not spoken after a number, since the trade does not say it: "four hundred and fifty". */
  readonly silent?: boolean;
  /** For a rate: the lengths that may be said alone as its short form ("five thou" for five thou a rev). */
  readonly shortOf?: { readonly top: string; readonly may: readonly string[] };
}

type More = Partial<Pick<Unit, 'alsoWritten' | 'shown' | 'silent' | 'shortOf'>>;

/** `one` and `many` are heard too. */
function unit(
  id: string,
  measure: Measure,
  size: Exact,
  [one, many]: readonly [string, string],
  heard: readonly string[],
  more: More = {},
): Unit {
  const all = [...new Set([one, many, id.toLowerCase(), ...heard])].filter((name) => name !== '');
  return { id, measure, size, heard: all, one, many, alsoWritten: [], shown: id, ...more };
}

const PER = ['per', 'a', 'an', 'each', 'every'];

/** "metres a minute", "metres per minute" … */
function rates(tops: readonly string[], bottoms: readonly string[]): string[] {
  return tops.flatMap((top) =>
    bottoms.flatMap((bottom) => PER.map((per) => `${top} ${per} ${bottom}`)),
  );
}

interface Length {
  readonly id: string;
  readonly size: Exact;
  readonly name: readonly [string, string];
  readonly heard: readonly string[];
}

const MM: Length = { id: 'mm', size: exact(1), name: ['millimetre', 'millimetres'], heard: ['mm'] };
/** International Yard and Pound Agreement 1959: one inch is 25.4 mm. */
const INCH: Length = {
  id: 'in',
  size: exact(254, 10),
  name: ['inch', 'inches'],
  heard: ['in', 'ins'],
};
const THOU: Length = {
  id: 'thou',
  size: exact(254, 10_000),
  name: ['thou', 'thou'],
  heard: ['thous', 'thousandth of an inch', 'thousandths of an inch'],
};
const METRE: Length = { id: 'm', size: exact(1000), name: ['metre', 'metres'], heard: ['m'] };
const FOOT: Length = { id: 'ft', size: exact(3048, 10), name: ['foot', 'feet'], heard: ['ft'] };
const SURFACE_FEET = ['sfm', 'surface feet', ...rates(['surface feet'], ['minute', 'min'])];

const SMALL_LENGTHS = ['mm', 'in', 'thou', 'um', 'tenth'];
const LARGE_LENGTHS = ['m', 'ft'];
const MINUTE = ['minute', 'min'];
const REV = ['rev', 'revolution', 'turn'];

function length({ id, size, name, heard }: Length, more: More = {}): Unit {
  return unit(id, 'length', size, name, heard, more);
}

/** A rate of a length over something: its names come from the length's. */
function rate(
  measure: Measure,
  top: Length,
  bottoms: readonly [string, ...string[]],
  size: Exact,
  more: More = {},
): Unit {
  const [bottom] = bottoms;
  const ids: Readonly<Record<string, string>> = { minute: 'min', second: 's' };
  const names = [...top.name, ...top.heard];
  const may = LARGE_LENGTHS.includes(top.id) ? LARGE_LENGTHS : SMALL_LENGTHS;
  return unit(
    `${top.id}/${ids[bottom] ?? bottom}`,
    measure,
    size,
    [`${top.name[0]} a ${bottom}`, `${top.name[1]} a ${bottom}`],
    rates(names, bottoms),
    { shortOf: { top: top.id, may }, ...more },
  );
}

function alsoHeard(known: Unit, names: readonly string[]): Unit {
  return { ...known, heard: [...known.heard, ...names] };
}

const LENGTHS: readonly Unit[] = [
  length(MM),
  length(INCH, { alsoWritten: ['inch', 'inches', '"', '″'] }),
  length(THOU),
  // Heard only as a part ("two tenths"): the grammar makes it.
  { ...unit('tenth', 'length', exact(254, 100_000), ['tenth', 'tenths'], []), heard: [] },
  unit('um', 'length', exact(1, 1000), ['micron', 'microns'], ['micrometre', 'micrometres'], {
    alsoWritten: ['µm', 'μm', 'micron'],
    shown: 'µm',
  }),
  unit(
    'uin',
    'length',
    exact(254, 10_000_000),
    ['microinch', 'microinches'],
    ['micro inch', 'micro inches'],
    {
      alsoWritten: ['µin', 'μin'],
      shown: 'µin',
    },
  ),
  unit('cm', 'length', exact(10), ['centimetre', 'centimetres'], []),
  length(METRE),
  length(FOOT, { alsoWritten: ['feet'] }),
];

const SPEEDS: readonly Unit[] = [
  unit(
    'rpm',
    'turning',
    exact(1),
    ['rev a minute', 'revs a minute'],
    [
      'r p m',
      'rev',
      'revs',
      'revolutions',
      'rev/min',
      'r/min',
      ...rates(['rev', 'revs', 'revolutions', 'turns'], MINUTE),
    ],
    { alsoWritten: ['rev/min', 'r/min', '/min'], silent: true },
  ),
  unit(
    'rev/s',
    'turning',
    exact(60),
    ['rev a second', 'revs a second'],
    rates(['revs'], ['second']),
    { alsoWritten: ['rps'] },
  ),
  rate('surface', METRE, ['minute', 'min'], exact(1)),
  alsoHeard(
    rate('surface', FOOT, ['minute', 'min'], exact(3048, 10_000), { alsoWritten: ['sfm', 'fpm'] }),
    SURFACE_FEET,
  ),
  rate('surface', METRE, ['second', 's'], exact(60)),
];

const FEEDS: readonly Unit[] = [
  ...[MM, INCH, THOU].map((top) => rate('feed a rev', top, ['rev', ...REV], top.size)),
  ...[MM, INCH, THOU].map((top) => rate('feed a tooth', top, ['tooth'], top.size)),
  ...[MM, INCH].map((top) => rate('feed a minute', top, ['minute', 'min'], top.size)),
  rate('feed a minute', MM, ['second', 's'], exact(60)),
];

const ANGLES_AND_TIMES: readonly Unit[] = [
  unit('deg', 'angle', exact(1), ['degree', 'degrees'], ['degs'], {
    alsoWritten: ['°', 'degrees'],
    shown: '°',
  }),
  unit(
    'arcmin',
    'angle',
    exact(1, 60),
    ['minute', 'minutes'],
    ['minute of arc', 'minutes of arc'],
    { shown: '′' },
  ),
  unit('arcsec', 'angle', exact(1, 3600), ['second', 'seconds'], ['seconds of arc'], {
    shown: '″',
  }),
  unit('min', 'time', exact(1), ['minute', 'minutes'], ['mins']),
  unit('s', 'time', exact(1, 60), ['second', 'seconds'], ['sec', 'secs'], { alsoWritten: ['sec'] }),
  unit('h', 'time', exact(60), ['hour', 'hours'], ['hr', 'hrs'], { alsoWritten: ['hr'] }),
];

/** Pound-force 4.4482216152605 N by the 1959 agreement and standard gravity. */
const POUND = exact(44_482_216_152_605n, 10_000_000_000_000n);

const FORCES: readonly Unit[] = [
  unit('N', 'force', exact(1), ['newton', 'newtons'], []),
  unit('kN', 'force', exact(1000), ['kilonewton', 'kilonewtons'], []),
  unit('lbf', 'force', POUND, ['pound', 'pounds'], ['lb', 'lbs', 'pounds force'], {
    alsoWritten: ['lb'],
  }),
  unit('kg', 'mass', exact(1), ['kilogram', 'kilograms'], ['kilo', 'kilos'], {}),
  unit('kg/m3', 'density', exact(1), ['kilogram a cubic metre', 'kilograms a cubic metre'], [], {
    alsoWritten: ['kg/m³'],
    shown: 'kg/m³',
  }),
  unit('kgf', 'force', exact(980_665, 100_000), ['kilogram force', 'kilograms force'], []),
  unit('Nm', 'torque', exact(1), ['newton metre', 'newton metres'], [], {
    alsoWritten: ['N·m', 'N m', 'N*m'],
    shown: 'N·m',
  }),
  unit('Nmm', 'torque', exact(1, 1000), ['newton millimetre', 'newton millimetres'], [], {
    alsoWritten: ['N·mm'],
    shown: 'N·mm',
  }),
  unit('kW', 'power', exact(1), ['kilowatt', 'kilowatts'], []),
  unit('W', 'power', exact(1, 1000), ['watt', 'watts'], []),
  unit(
    'hp',
    'power',
    exact(74_569_987_158_227_022n, 100_000_000_000_000_000n),
    ['horsepower', 'horsepower'],
    ['horse power'],
  ),
  unit(
    'N/mm2',
    'stress',
    exact(1),
    ['newton per square millimetre', 'newtons per square millimetre'],
    ['megapascal', 'megapascals', 'mpa'],
    {
      alsoWritten: ['N/mm²', 'MPa'],
      shown: 'N/mm²',
    },
  ),
  unit('GPa', 'stress', exact(1000), ['gigapascal', 'gigapascals'], [], {
    alsoWritten: ['kN/mm2', 'kN/mm²'],
  }),
];

const OTHERS: readonly Unit[] = [
  unit(
    'mm3/min',
    'volume a minute',
    exact(1),
    ['cubic millimetre a minute', 'cubic millimetres a minute'],
    rates(['cubic millimetres'], MINUTE),
    {
      alsoWritten: ['mm³/min'],
      shown: 'mm³/min',
    },
  ),
  unit(
    'cm3/min',
    'volume a minute',
    exact(1000),
    ['cubic centimetre a minute', 'cubic centimetres a minute'],
    rates(['cubic centimetres'], MINUTE),
    {
      alsoWritten: ['cm³/min'],
      shown: 'cm³/min',
    },
  ),
  unit(
    'in3/min',
    'volume a minute',
    exact(16_387_064, 1000),
    ['cubic inch a minute', 'cubic inches a minute'],
    rates(['cubic inches'], MINUTE),
    {
      alsoWritten: ['in³/min'],
      shown: 'in³/min',
    },
  ),
  unit(
    'cm2/min',
    'area a minute',
    exact(1),
    ['square centimetre a minute', 'square centimetres a minute'],
    rates(['square centimetres'], MINUTE),
    { alsoWritten: ['cm²/min'], shown: 'cm²/min' },
  ),
  unit(
    'mm2/min',
    'area a minute',
    exact(1, 100),
    ['square millimetre a minute', 'square millimetres a minute'],
    rates(['square millimetres'], MINUTE),
    { alsoWritten: ['mm²/min'], shown: 'mm²/min' },
  ),
  unit(
    'in2/min',
    'area a minute',
    exact(64_516, 10_000),
    ['square inch a minute', 'square inches a minute'],
    rates(['square inches'], MINUTE),
    { alsoWritten: ['in²/min'], shown: 'in²/min' },
  ),
  unit('mm2', 'area', exact(1), ['square millimetre', 'square millimetres'], [], {
    alsoWritten: ['mm²'],
    shown: 'mm²',
  }),
  unit('in2', 'area', exact(64_516, 100), ['square inch', 'square inches'], [], {
    alsoWritten: ['in²'],
    shown: 'in²',
  }),
  unit('%', 'percent', exact(1), ['percent', 'percent'], ['per cent'], {
    alsoWritten: ['percent'],
  }),
  unit(
    'degC',
    'celsius',
    exact(1),
    ['degree celsius', 'degrees celsius'],
    ['degree', 'degrees', 'celsius', 'degrees centigrade', 'degrees c'],
    {
      alsoWritten: ['°C', 'C'],
      shown: '°C',
    },
  ),
  unit(
    'degF',
    'fahrenheit',
    exact(1),
    ['degree fahrenheit', 'degrees fahrenheit'],
    ['degree', 'degrees', 'fahrenheit', 'degrees f'],
    {
      alsoWritten: ['°F', 'F'],
      shown: '°F',
    },
  ),
  unit(
    '1e-6/K',
    'expansion',
    exact(1),
    ['millionth a kelvin', 'millionths a kelvin'],
    ['microns per metre per degree'],
    {
      alsoWritten: ['µm/m/K', 'um/m/K', 'ppm/K'],
      shown: 'µm/(m·K)',
    },
  ),
  unit(
    'tpi',
    'pitch',
    exact(1),
    ['thread an inch', 'threads an inch'],
    ['t p i', 'threads per inch', 'threads to inch'],
    {
      alsoWritten: ['threads per inch', '/in', 'per-inch'],
    },
  ),
  unit('teeth/in', 'pitch', exact(1), ['tooth an inch', 'teeth an inch'], ['teeth per inch'], {}),
  {
    ...unit('count', 'count', exact(1), ['', ''], [], {
      alsoWritten: ['', 'ratio', ':1'],
      shown: '',
    }),
    heard: [],
  },
];

/** Every unit this room knows. */
export const UNITS: readonly Unit[] = [
  ...LENGTHS,
  ...SPEEDS,
  ...FEEDS,
  ...ANGLES_AND_TIMES,
  ...FORCES,
  ...OTHERS,
];
