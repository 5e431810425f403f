/** Threads against printed limits, wires, infeed and tap-drill tables. */

import { describe, expect, it } from 'vitest';
import { answerRule, findRule } from '../../src/trade/index.ts';
import { type Published, type PublishedWord, published, publishedWords } from './published.ts';
import {
  metricBasic,
  metricBasicSource,
  metricNuts,
  metricScrews,
  metricScrewsShort,
  screwTolerances,
  screwTolerancesSource,
  unifiedNuts,
  unifiedScrews,
} from './thread-table.ts';

/** Printed to 0.001 mm, some from rounded basic sizes. */
const PRINTED_MM = 0.001;
/** Printed to 0.0001 in. */
const PRINTED_IN = 0.00005;

const mm = (asked: string, value: number, source: string): Published => [
  asked,
  value,
  'mm',
  PRINTED_MM,
  source,
];
const inch = (asked: string, value: number, source: string): Published => [
  asked,
  value,
  'in',
  PRINTED_IN,
  source,
];

published(
  'ISO basic sizes',
  metricBasic.flatMap((row) => {
    const [thread = '', ...numbers] = row.split(' ');
    return [
      `thread-sizes.root thread=${thread}`,
      `thread-sizes.minor thread=${thread}`,
      `thread-sizes thread=${thread}`,
      `thread-sizes thread=${thread} side=internal`,
      `thread-sizes.pitchDiameter thread=${thread}`,
      `thread-limits thread=${thread} side=internal`,
    ].map((one, index) => mm(one, Number(numbers[index]), metricBasicSource));
  }),
);

published('6g limits', [
  ...metricScrews.flatMap(([thread, , , , , minorMax, minorMin, source]) => [
    mm(`thread-limits.minorMax thread=${thread}`, minorMax, source),
    mm(`thread-limits.minorMin thread=${thread}`, minorMin, source),
  ]),
  ...[
    ...metricScrews.map(
      ([thread, a, b, c, d, , , source]) => [thread, a, b, c, d, source] as const,
    ),
    ...metricScrewsShort,
  ].flatMap(([thread, majorMax, majorMin, pitchMax, pitchMin, source]) => [
    mm(`thread-limits.majorMax thread=${thread}`, majorMax, source),
    mm(`thread-limits.majorMin thread=${thread}`, majorMin, source),
    mm(`thread-limits thread=${thread}`, pitchMax, source),
    mm(`thread-limits.pitchMin thread=${thread}`, pitchMin, source),
  ]),
]);

published(
  '6H limits',
  metricNuts.flatMap(([thread, pitchMin, pitchMax, minorMin, minorMax, source]) => [
    mm(`thread-limits.pitchMin thread=${thread} side=internal`, pitchMin, source),
    mm(`thread-limits thread=${thread} side=internal`, pitchMax, source),
    mm(`thread-limits.minorMin thread=${thread} side=internal`, minorMin, source),
    mm(`thread-limits.minorMax thread=${thread} side=internal`, minorMax, source),
  ]),
);

published(
  'ISO 68-1 and ISO 724, M20 to M24 and fine',
  (
    [
      ['M20', 18.376, 17.294, 16.933, 1.534],
      ['M24', 22.051, 20.752, 20.319, 1.84],
      ['M8x1', 7.35, 6.917, 6.773, 0.613],
      ['M12x1.25', 11.188, 10.647, 10.466, 0.767],
      ['M16x1.5', 15.026, 14.376, 14.16, 0.92],
      ['M20x1.5', 19.026, 18.376, 18.16, 0.92],
    ] as const
  ).flatMap(([thread, pitch, minor, root, depth]) => {
    const source = 'derived from the formulas of ISO 68-1 and ISO 724';
    return [
      mm(`thread-sizes.pitchDiameter thread=${thread}`, pitch, source),
      mm(`thread-sizes.minor thread=${thread}`, minor, source),
      mm(`thread-sizes.root thread=${thread}`, root, source),
      mm(`thread-sizes thread=${thread}`, depth, source),
    ];
  }),
);

describe('ISO 965-4 tolerances', () => {
  it.each(screwTolerances.map((row) => [...row] as const))(
    `%s has Td %d and Td2 %d µm [${screwTolerancesSource}]`,
    (thread, td, td2) => {
      const rule = findRule('thread-limits');
      const answer = rule && answerRule(rule, { thread });
      if (!answer?.ok) throw new Error('no answer');
      const size = (name: string) => Number(answer.parts?.[name]?.value);
      expect((size('majorMax') - size('majorMin')) * 1000).toBeCloseTo(td, 6);
      expect((size('pitchMax') - size('pitchMin')) * 1000).toBeCloseTo(td2, 6);
    },
  );
});

/** Spaces stand between the asked words, so "1 1/4-7" is asked as "1-1/4-7". */
const asked = (thread: string) => thread.replace(' ', '-');

published(
  '2A limits',
  unifiedScrews.flatMap(([thread, majorMax, majorMin, pitchMax, pitchMin, source]) => [
    inch(`thread-limits.majorMax thread=${thread}`, majorMax, source),
    inch(`thread-limits.majorMin thread=${thread}`, majorMin, source),
    inch(`thread-limits thread=${thread}`, pitchMax, source),
    inch(`thread-limits.pitchMin thread=${thread}`, pitchMin, source),
  ]),
);

published(
  '2B limits',
  unifiedNuts.flatMap(([thread, limits, source]) =>
    ['.pitchMin', '', '.minorMin', '.minorMax'].map((part, index) =>
      inch(
        `thread-limits${part} thread=${asked(thread)} side=internal`,
        Number(limits.split(' ')[index]),
        source,
      ),
    ),
  ),
);

const TAP_CATALOGUE = 'Tap and reamer catalogue, UNF pitch diameters (from rounded inches)';
published('UNF pitch diameters in mm', [
  ['thread-sizes.pitchDiameter thread=1/4-28', 5.761, 'mm', 0.0015, TAP_CATALOGUE],
  ['thread-sizes.pitchDiameter thread=3/8-24', 8.837, 'mm', 0.0015, TAP_CATALOGUE],
  ['thread-sizes.pitchDiameter thread=1/2-20', 11.874, 'mm', 0.0015, TAP_CATALOGUE],
  ['thread-sizes.pitchDiameter thread=3/4-16', 18.019, 'mm', 0.0015, TAP_CATALOGUE],
]);

const SHEET = 'Three-wire sheet (NEME-S)';
const ARMY = 'US Army OD1645';
const DERIVED = `derived from the formula of the ${SHEET}`;
published('wires', [
  ['size-over-wires thread=7/16-14 wire=0.045in', 0.4642, 'in', 0.0005, SHEET],
  ['best-wire thread=7/16-14', 0.0412, 'in', 0.0002, SHEET],
  ['best-wire thread=1-8', 0.07217, 'in', 0.0001, ARMY],
  ['best-wire thread=M10x1.5', 0.866, 'mm', 0.001, DERIVED],
  ['size-over-wires thread=M10x1.5', 10.3248, 'mm', 0.001, DERIVED],
  ['size-over-wires.least thread=M10x1.5 wire=0.895', 10.248, 'mm', 0.002, DERIVED],
  ['size-over-wires.most thread=M10x1.5 wire=0.895', 10.38, 'mm', 0.002, DERIVED],
  ['best-wire thread=M20x2.5', 1.4434, 'mm', 0.002, DERIVED],
  ['size-over-wires thread=M20x2.5', 20.541, 'mm', 0.002, DERIVED],
  ['pitch-diameter-over-wires thread=M20x2.5 reading=20.541', 18.376, 'mm', 0.002, DERIVED],
]);
published('the wire constant 0.866025 P', [
  // Without wires the constant is the pitch diameter less the size: 3 w − (M − d2).
  [
    'size-over-wires thread=1/2-13 wire=0.0445in pitchDiameter=0.45in',
    0.45 + 0.1335 - 0.06662,
    'in',
    0.00001,
    "Machinery's Handbook 31 p. 2129",
  ],
  [
    'size-over-wires thread=1/4-20 wire=0.029in pitchDiameter=0.2175in',
    0.2175 + 0.087 - 0.0433,
    'in',
    0.00001,
    "Machinery's Handbook 31 p. 2129",
  ],
]);

function partList(
  name: string,
  values: Record<string, string | number>,
  part: string,
): readonly number[] {
  const rule = findRule(name);
  const answer = rule && answerRule(rule, values);
  if (!answer?.ok) throw new Error('no answer');
  const list = answer.parts?.[part]?.value;
  if (list === undefined || typeof list === 'number') throw new Error(`${part} is no list`);
  return list;
}

type Infeed = readonly [Record<string, string | number>, string, readonly number[], number, string];
const M10 = { thread: 'M10x1.5', passes: 6 };
const infeeds: readonly Infeed[] = [
  [
    M10,
    'cumulative',
    [0.376, 0.531, 0.651, 0.751, 0.84, 0.92],
    0.001,
    'derived from equal areas (geometry)',
  ],
  [
    M10,
    'passes',
    [0.376, 0.156, 0.119, 0.101, 0.089, 0.08],
    0.001,
    'derived from equal areas (geometry)',
  ],
  [
    { ...M10, depth: 0.94, method: 'softened-first' },
    'cumulative',
    [0.23, 0.42, 0.595, 0.728, 0.841, 0.94],
    0.005,
    'formula: Threading manual p. 114; numbers from memory: its worked example',
  ],
];

describe('single-point infeed, as published', () => {
  it.each(infeeds)('%o gives %s %o within %d [%s]', (values, part, wanted, within) => {
    const got = partList('thread-infeed', values, part);
    expect(got).toHaveLength(wanted.length);
    wanted.forEach((one, index) => {
      expect(Math.abs((got[index] ?? Number.NaN) - one)).toBeLessThanOrEqual(within);
    });
  });

  it('takes the same area, 0.0815 mm², with every pass of M10 in six', () => {
    const deep = [0, ...partList('thread-infeed', M10, 'cumulative')];
    for (let pass = 1; pass < deep.length; pass += 1) {
      const area = Math.tan(Math.PI / 6) * ((deep[pass] ?? 0) ** 2 - (deep[pass - 1] ?? 0) ** 2);
      expect(area).toBeCloseTo(0.0815, 4);
    }
  });
});
published('the compound dial', [
  ['thread-infeed thread=M10x1.5 depth=0.92 passes=6', 1.057, 'mm', 0.001, 'geometry'],
]);

const TAPS = 'Tap maker "Technical formulas"';
const HOLES = 'Metric hole chart; Drill and tap size chart';
const CHART = 'Tap drill chart ("75 %"); Tap drill selector chart';
published('drills at hand', [
  ['tap-drill-at-hand thread=M10x1.5', 8.539, 'mm', 0.005, `formula: ${TAPS}; derived`],
  ['tap-drill-at-hand thread=1/2-13', 0.4251, 'in', 0.0005, `formula: ${TAPS}; derived`],
  ['tap-drill-at-hand.handbook thread=M8x1.25 drills=6.8', 73.9, '%', 0.1, TAPS],
  ['tap-drill-at-hand.handbook thread=1/4-20 drills=0.201in', 75.44, '%', 0.1, TAPS],
  ['tap-drill-at-hand.basicProfile thread=M10 drills=8.5', 92.4, '%', 0.1, 'derived from ISO 68-1'],
  ['tap-drill-at-hand.drill thread=M6 percent=77', 5, 'mm', 1e-6, HOLES],
  ['tap-drill-at-hand.drill thread=M8 percent=74', 6.8, 'mm', 1e-6, HOLES],
  ['tap-drill-at-hand.drill thread=M10 percent=77', 8.5, 'mm', 1e-6, HOLES],
  ['tap-drill-at-hand.drill thread=M12 percent=79', 10.2, 'mm', 1e-6, HOLES],
]);
publishedWords('drills at hand', [
  ...(
    [
      ['#4-40', '#43'],
      ['#6-32', '#36'],
      ['#8-32', '#29'],
      ['#10-24', '#25'],
      ['#10-32', '#21'],
      ['1/4-20', '#7'],
      ['1/4-28', '#3'],
      ['5/16-18', 'F'],
      ['5/16-24', 'I'],
      ['3/8-16', '5/16 in'],
      ['7/16-14', 'U'],
      ['1/2-13', '27/64 in'],
      ['5/8-11', '17/32 in'],
      ['3/4-16', '11/16 in'],
      ['1-8', '7/8 in'],
    ] as const
  ).map(
    ([thread, drill]): PublishedWord => [
      `tap-drill-at-hand thread=${thread} drillSet=inch percent=${{ '#4-40': 70, '#8-32': 70, '3/8-16': 77, '1/4-28': 80, '1/2-13': 78, '5/8-11': 79, '1-8': 77, '5/16-18': 77, '3/4-16': 77, '#6-32': 78 }[thread as string] ?? 75}`,
      drill,
      CHART,
    ],
  ),
]);

const ARITHMETIC = 'arithmetic: drivers ÷ driven = lead ÷ lead screw';
const SET = 'gears=20,24,28,32,36,40,44,48,52,56,60,64,72,80,100,127';
published('change gears', [
  [
    `change-gears pitch=1.5 screwTpi=8 ${SET}`,
    1.5,
    'mm',
    1e-9,
    `${ARITHMETIC}; 127 makes it exact`,
  ],
  [`change-gears tpi=20 screwTpi=8 ${SET}`, 1.27, 'mm', 1e-9, ARITHMETIC],
  [`change-gears.errorPercent pitch=1.5 screwTpi=8 ${SET}`, 0, '%', 1e-9, ARITHMETIC],
  [
    'change-gears.errorPercent pitch=1.5 screwTpi=8 gears=30,63',
    0.794,
    '%',
    0.001,
    'derived: 30/63 × 3.175 ÷ 1.5',
  ],
  [
    'change-gears pitch=1.75 screwPitch=3 gears=20,25,30,35,40,45,50,60,65',
    1.75,
    'mm',
    1e-9,
    ARITHMETIC,
  ],
]);
publishedWords('the chasing dial', [
  ['chasing-dial tpi=8 screwTpi=8 dialTeeth=32', 'any place', 'common practice, no source'],
  ['chasing-dial tpi=16 screwTpi=8 dialTeeth=32', 'any place', 'common practice, no source'],
  [
    'chasing-dial tpi=12 screwTpi=8 dialTeeth=32',
    'any mark',
    'common practice, no source: even threads',
  ],
  [
    'chasing-dial tpi=13 screwTpi=8 dialTeeth=32',
    'every 2 marks',
    'common practice, no source: odd threads',
  ],
  [
    'chasing-dial tpi=11.5 screwTpi=8 dialTeeth=32',
    'every 4 marks',
    'common practice, no source: half threads',
  ],
  [
    'chasing-dial tpi=6.75 screwTpi=8 dialTeeth=32',
    'same mark',
    'common practice, no source: quarter threads',
  ],
  [
    'chasing-dial pitch=1.5 screwTpi=8 dialTeeth=32',
    'keep closed',
    'common practice, no source: metric on an inch screw',
  ],
]);

const DIN = 'from memory: DIN 76-1';
published('thread relief', [
  ['thread-relief thread=M10', 7.7, 'mm', 1e-6, DIN],
  ['thread-relief.leastWidth thread=M10', 3.2, 'mm', 1e-6, DIN],
  ['thread-relief thread=M20', 16.4, 'mm', 1e-6, DIN],
  ['thread-relief thread=M12 side=internal', 12.5, 'mm', 1e-6, DIN],
  ['thread-relief.leastWidth thread=M12 side=internal', 7, 'mm', 1e-6, DIN],
]);
