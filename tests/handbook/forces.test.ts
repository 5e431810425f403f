/** Cutting force, torque, power and bending against published formulas and examples. */

import { type Published, published } from './published.ts';

const KIENZLE =
  'formula: The specific cutting force (tool maker); constants: VDI 3323 groups; derived';
const PAGES = 'Tool-maker technical pages: printed power formulas and worked problems';
const DRILL = "from memory: a tool maker's training handbook; derived";
const CARVILL = "Carvill, Mechanical Engineer's Data Handbook, p. 192";
const KALPAKJIAN = 'from memory: Kalpakjian & Schmid';

/** Asked words, kc, force and power of a turning cut. */
const cuts: readonly (readonly [string, number, number, number])[] = [
  ['kc=1350 mc=0.21 feedPerRev=0.2 depth=2 surfaceSpeed=150', 1892.9, 757.1, 1.893],
  [
    'kc=1500 mc=0.22 feedPerRev=0.3 depth=3 approachAngle=45 surfaceSpeed=120',
    2109.8,
    1898.8,
    3.798,
  ],
  ['kc=1500 mc=0.22 feedPerRev=0.1 depth=1 rake=6 surfaceSpeed=25', 2340, 234, 0.098],
  [
    'kc=2150 mc=0.2 feedPerRev=0.2 depth=1.5 approachAngle=95 surfaceSpeed=100',
    2968.7,
    890.6,
    1.484,
  ],
  ['kc=1150 mc=0.2 feedPerRev=0.25 depth=2 approachAngle=75 surfaceSpeed=80', 1528, 764, 1.019],
  ['kc=800 mc=0.25 feedPerRev=0.15 depth=2 rake=10 surfaceSpeed=200', 1156.9, 347.1, 1.157],
  ['kc=700 mc=0.27 feedPerRev=0.1 depth=1 surfaceSpeed=80', 1303.5, 130.3, 0.174],
  ['material=low-carbon-steel feedPerRev=0.2 depth=2 surfaceSpeed=150', 1892.9, 757.1, 1.893],
  [
    'material=grey-cast-iron feedPerRev=0.25 depth=2 approachAngle=75 surfaceSpeed=80',
    1528,
    764,
    1.019,
  ],
  [
    'material=aluminium-6061 feedPerRev=0.15 depth=2 rake=10 surfaceSpeed=200',
    1156.9,
    347.1,
    1.157,
  ],
];

const turning: readonly Published[] = cuts.flatMap(([asked, kc, force, power]) => [
  [`cutting-power.kc ${asked}`, kc, 'N/mm2', '0.5%', KIENZLE] as const,
  [`cutting-power.force ${asked}`, force, 'N', '0.5%', KIENZLE] as const,
  [`cutting-power ${asked}`, power, 'kW', '0.6%', KIENZLE] as const,
]);

const examples: readonly Published[] = [
  [
    'turning-power surfaceSpeed=120 depth=3 feedPerRev=0.2 specificForce=3100 efficiency=0.8',
    4.65,
    'kW',
    0.01,
    PAGES,
  ],
  [
    'turning-power surfaceSpeed=30 depth=2 feedPerRev=0.25 specificForce=1200',
    0.3,
    'kW',
    '0.5%',
    CARVILL,
  ],
  ['removal-power removal=1924 energy=4 spindleSpeed=400', 128, 'W', '1%', KALPAKJIAN],
  ['removal-power.torque removal=1924 energy=4 spindleSpeed=400', 3.06, 'Nm', '1%', KALPAKJIAN],
  [
    'removal-power removal=1924 energy=3 spindleSpeed=400',
    96,
    'W',
    '1%',
    'Kalpakjian turning data',
  ],
  ['removal-power removal=12566 energy=0.5 spindleSpeed=800', 105, 'W', '1%', KALPAKJIAN],
  ['removal-power.torque removal=12566 energy=0.5 spindleSpeed=800', 1.25, 'Nm', '1%', KALPAKJIAN],
  ['removal-power removal=150000 energy=3 spindleSpeed=100', 7.5, 'kW', '0.5%', KALPAKJIAN],
  ['removal-power.torque removal=150000 energy=3 spindleSpeed=100', 716, 'Nm', '0.5%', KALPAKJIAN],
  ['removal-power removal=108000 energy=1.1 spindleSpeed=100', 1.98, 'kW', '0.5%', KALPAKJIAN],
  ['removal-power removal=2880 energy=2.7 spindleSpeed=600', 130, 'W', '1%', CARVILL],
];

/** Asked words, chip thickness, kc, torque, power, thrust of a drill. */
const drills: readonly (readonly [string, number, number, number, number, number])[] = [
  ['kc=1500 mc=0.22 diameter=10 feedPerRev=0.2', 0.0857, 2575, 6.44, 0.537, 1104],
  ['kc=1350 mc=0.21 diameter=6 feedPerRev=0.1', 0.0429, 2616, 1.18, 0.183, 336],
  ['kc=800 mc=0.25 diameter=12 feedPerRev=0.25', 0.1071, 1398, 6.29, 1.049, 899],
];
const drillSpeeds = [25, 28, 60];

const drilling: readonly Published[] = drills.flatMap(
  ([asked, thickness, kc, torque, power, thrust], index) => [
    [`drill-torque.chipThickness ${asked}`, thickness, 'mm', '1%', DRILL] as const,
    [`drill-torque.kc ${asked}`, kc, 'N/mm2', '1%', DRILL] as const,
    [`drill-torque ${asked}`, torque, 'Nm', '1%', DRILL] as const,
    [`drill-power ${asked} surfaceSpeed=${drillSpeeds[index]}`, power, 'kW', '1%', DRILL] as const,
    [`drill-thrust ${asked}`, thrust, 'N', '1%', DRILL] as const,
  ],
);

const law: readonly Published[] = [
  ['drill-torque-law diameter=10 feedPerRev=0.2 metal=mild-steel', 6.79, 'Nm', '1%', CARVILL],
  ['drill-torque-law diameter=12 feedPerRev=0.25 metal=aluminium', 3.41, 'Nm', '1%', CARVILL],
  [
    'drill-torque diameter=10 feedPerRev=0.2 material=medium-carbon-steel',
    6.79,
    'Nm',
    '10%',
    `${CARVILL} (another law)`,
  ],
];

const BEAMS = 'from memory: Shigley, table A-9; derived';

const bends: readonly Published[] = [
  ['bend-in-chuck force=100 length=75 diameter=25 modulus=207GPa', 3.54, 'um', '1%', BEAMS],
  ['bend-in-chuck force=200 length=100 diameter=20 modulus=200GPa', 42.44, 'um', '1%', BEAMS],
  [
    'bend-chuck-and-centre force=200 length=200 diameter=20 modulus=200GPa',
    9.28,
    'um',
    '1%',
    BEAMS,
  ],
  [
    'bend-between-centres force=200 length=200 diameter=20 modulus=200GPa',
    21.22,
    'um',
    '1%',
    BEAMS,
  ],
  ['bend-in-chuck force=100 length=60 diameter=20 modulus=68.9GPa', 13.31, 'um', '1%', BEAMS],
  [
    'bend-in-chuck force=100 length=60 diameter=20 material=aluminium-6061',
    13.31,
    'um',
    '1%',
    BEAMS,
  ],
  ['bend-in-chuck force=100 length=60 diameter=20 modulus=200GPa', 4.58, 'um', '1%', BEAMS],
  ['boring-bar-bend force=150 diameter=16 overhang=64', 19.7, 'um', '1%', BEAMS],
  [
    'boring-bar-overhang diameter=16',
    64,
    'mm',
    0,
    'Boring-bar catalogue page (change to carbide at 4:1); otherwise common practice, no source',
  ],
];

const ROUGH = 'from memory: Groover, Boothroyd; derived';

/** f, r, Rt, exact Rt, Ra by 32, Ra by 31.18. */
const marks: readonly (readonly number[])[] = [
  [0.2, 0.8, 6.25, 6.275, 1.563, 1.604],
  [0.1, 0.4, 3.125, 3.137, 0.781, 0.802],
  [0.25, 1.2, 6.51, 6.528, 1.628, 1.671],
  [0.05, 0.2, 1.563, 1.569, 0.391, 0.401],
  [0.3, 0.8, 14.062, 14.188, 3.516, 3.608],
  [0.16, 0.4, 8, 8.082, 2, 2.053],
];

const roughness: readonly Published[] = marks.flatMap(
  ([f, r, rt = 0, exact = 0, ra = 0, ra18 = 0]) => {
    const asked = `feedPerRev=${f} noseRadius=${r}`;
    return [
      [`roughness-peak ${asked}`, rt, 'um', '1%', ROUGH] as const,
      [`roughness-peak.exact ${asked}`, exact, 'um', '1%', ROUGH] as const,
      [`roughness-average ${asked}`, ra, 'um', '1%', ROUGH] as const,
      [`roughness-average.parabola ${asked}`, ra18, 'um', '1%', ROUGH] as const,
    ];
  },
);

/** Ra, then the feed for nose radii 0.2, 0.4, 0.8, 1.2; undefined where 0.8 r rules. */
const feedTable: readonly (readonly (number | undefined)[])[] = [
  [0.4, 0.051, 0.072, 0.101, 0.124],
  [0.8, 0.072, 0.101, 0.143, 0.175],
  [1.6, 0.101, 0.143, 0.202, 0.248],
  [3.2, 0.143, 0.202, 0.286, 0.351],
  [6.3, undefined, 0.284, 0.402, 0.492],
];
const noses = [0.2, 0.4, 0.8, 1.2];

const feedsForRoughness: readonly Published[] = feedTable.flatMap(([ra, ...feeds]) =>
  feeds.flatMap((feed, index) =>
    feed === undefined
      ? []
      : [
          [
            `feed-for-roughness roughness=${ra} noseRadius=${noses[index]}`,
            feed,
            'mm/rev',
            '1%',
            'from memory: Groover, f = sqrt(32 r Ra); derived',
          ] as const,
        ],
  ),
);

const finish: readonly Published[] = [
  [
    'roughness-average feedPerRev=0.25 noseRadius=1.2 ratio=1.25',
    2,
    'um',
    0.05,
    'from memory: Groover, example on surface finish',
  ],
  ['roughness-grade roughness=32uin', 0.8, 'um', 0, 'from memory: ISO 1302; 32 µin = N6'],
  ['roughness-grade roughness=63uin', 1.6, 'um', 0, 'from memory: ISO 1302; 63 µin = N7'],
  ['roughness-grade roughness=125uin', 3.2, 'um', 0, 'from memory: ISO 1302; 125 µin = N8'],
];

const CHART = 'Thermal expansion charts';

const warm: readonly Published[] = [
  [
    'thermal-growth length=100 expansion=11.7 temperature=120',
    117,
    'um',
    0.1,
    `${CHART} (0.117 mm)`,
  ],
  [
    'thermal-growth length=50 expansion=11.5 temperature=28',
    4.6,
    'um',
    0.05,
    `formula: ${CHART}; derived`,
  ],
  [
    'size-at-20 reading=50 expansion=11.5 temperature=28',
    49.9954,
    'mm',
    0.00005,
    `formula: ${CHART}; derived`,
  ],
  [
    'thermal-growth length=100 expansion=23.6 temperature=35',
    35.4,
    'um',
    0.1,
    `formula: ${CHART}; derived`,
  ],
  [
    'size-at-20.correction reading=80 material=aluminium-6061 temperature=26 gaugeTemperature=26',
    -5.81,
    'um',
    0.05,
    'only the difference to the gauge counts; derived',
  ],
  ['thermal-growth length=60 expansion=106.5 temperature=30', 63.9, 'um', 0.1, `${CHART}; derived`],
  [
    'thermal-growth length=100 expansion=20.8 temperature=600 from=0',
    1.248,
    'mm',
    0.001,
    `${CHART} (1.248)`,
  ],
];

published('Turning force and power', turning);
published('Worked examples of power', examples);
published('Drilling torque, thrust and power', drilling);
published('Drilling torque by the power law', law);
published('Bending', bends);
published('Feed marks', roughness);
published('Feeds for a roughness', feedsForRoughness);
published('Roughness', finish);
published('Temperature', warm);
