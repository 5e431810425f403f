/** Spindle speed, feed rate and cutting time against textbooks. */

import { type Published, published } from './published.ts';

const GROOVER = 'Groover, Fundamentals of Modern Manufacturing 4e, solutions 22.1, 22.3, 22.6';
const GROOVER_EXAMPLES = 'Groover examples: drilling, slab milling (lecture copy)';
const GROOVER_FORMULA = `formula: ${GROOVER}; derived`;
const POWER = 'Tool-maker technical pages: printed power formulas and worked problems';
const KALPAKJIAN = 'Kalpakjian & Schmid turning data; from memory: Kalpakjian & Schmid';

const speeds: readonly Published[] = [
  ['spindle-speed surfaceSpeed=25 diameter=12.7', 626.6, 'rev/min', 0.2, GROOVER_EXAMPLES],
  ['spindle-speed surfaceSpeed=2.3m/s diameter=200', 3.66, 'rev/s', 0.005, GROOVER],
  ['spindle-speed surfaceSpeed=138 diameter=200', 219.6, 'rev/min', 0.2, GROOVER],
  ['spindle-speed surfaceSpeed=80 diameter=250', 101.86, 'rev/min', 0.1, POWER],
  ['spindle-speed surfaceSpeed=60 diameter=40', 477.5, 'rev/min', 0.2, GROOVER_FORMULA],
  ['spindle-speed surfaceSpeed=100ft/min diameter=0.5in', 763.9, 'rev/min', 0.5, GROOVER_FORMULA],
  ['spindle-speed surfaceSpeed=100ft/min diameter=1/2in', 763.9, 'rev/min', 0.5, GROOVER_FORMULA],
  [
    'spindle-speed surfaceSpeed=300ft/min diameter=0.75in',
    1527.9,
    'rev/min',
    0.5,
    'Groover drill-press problem data; derived',
  ],
  [
    'spindle-speed surfaceSpeed=100ft/min diameter=0.5in',
    764,
    'rev/min',
    '0.05%',
    'Machine-tool speeds and feeds hand-out: 3.82 V / D',
  ],
  ['surface-speed spindleSpeed=500 diameter=50', 78.54, 'm/min', 0.02, GROOVER_FORMULA],
];

const feeds: readonly Published[] = [
  ['feed-rate feedPerRev=0.008in/rev spindleSpeed=180', 1.44, 'in/min', 0.005, GROOVER],
  ['feed-rate feedPerRev=0.32 spindleSpeed=219.63', 70.28, 'mm/min', 0.1, GROOVER],
  ['feed-rate feedPerRev=0.32 spindleSpeed=219.63', 1.17, 'mm/s', 0.005, GROOVER],
  [
    'feed-rate feedPerRev=0.128in/rev spindleSpeed=88',
    11.264,
    'in/min',
    0.01,
    'Milling handbook 1973, feed per tooth (32 teeth at 0.004 in)',
  ],
  [
    'turning-feed operation=rough material=low-carbon-steel tool=carbide',
    0.0115,
    'in/rev',
    0.0035,
    'US Army OD1645: roughing slender work 0.008-0.015 in/rev',
  ],
  [
    'turning-feed operation=finish material=low-carbon-steel',
    0.0065,
    'in/rev',
    0.0035,
    'US Army OD1645: finishing 0.003-0.010 in/rev',
  ],
  [
    'turning-feed operation=finish material=free-cutting-brass',
    0.0065,
    'in/rev',
    0.0035,
    'Machine-tool speeds and feeds hand-out: brass and bronze, finish 0.003-0.010 in/rev',
  ],
  [
    'turning-feed operation=part material=low-carbon-steel',
    0.055,
    'mm/rev',
    0.025,
    'common practice, no source: 0.03-0.08',
  ],
  ['feed-per-rev feedRate=200 spindleSpeed=400', 0.5, 'mm/rev', 1e-9, KALPAKJIAN],
];

const times: readonly Published[] = [
  ['turning-time length=700 feedPerRev=0.32 spindleSpeed=219.63', 9.96, 'min', '0.5%', GROOVER],
  [
    'turning-removal surfaceSpeed=138 feedPerRev=0.32 depth=1.8',
    1324.8,
    'mm3/s',
    '0.5%',
    `${GROOVER}; the book rounds to 1320`,
  ],
  ['surface-speed spindleSpeed=400 diameter=12.5', 15.71, 'm/min', '0.5%', KALPAKJIAN],
  ['cutting-time length=150 feedRate=200', 0.75, 'min', '0.5%', KALPAKJIAN],
  [
    'turning-removal surfaceSpeed=15.708 feedPerRev=0.5 depth=0.25 diameter=12.5',
    1924,
    'mm3/min',
    '0.5%',
    KALPAKJIAN,
  ],
  [
    'surface-speed-for-time length=400 diameter=150 feedPerRev=0.3 time=5',
    125.7,
    'm/min',
    0.5,
    'from memory: Groover 4e problem 22.2; derived',
  ],
  [
    'facing-time outerDiameter=6in feedPerRev=0.008in/rev spindleSpeed=180',
    2.083,
    'min',
    0.002,
    GROOVER,
  ],
  [
    'facing-time outerDiameter=120 feedPerRev=0.15 spindleSpeed=300',
    1.3333,
    'min',
    0.001,
    GROOVER_FORMULA,
  ],
  [
    'facing-time outerDiameter=100 innerDiameter=40 feedPerRev=0.2 spindleSpeed=400',
    0.375,
    'min',
    0.001,
    GROOVER_FORMULA,
  ],
  [
    'facing-time.speedAtStart outerDiameter=100 innerDiameter=40 feedPerRev=0.2 spindleSpeed=400',
    125.7,
    'm/min',
    0.1,
    GROOVER_FORMULA,
  ],
  [
    'facing-time.speedAtEnd outerDiameter=100 innerDiameter=40 feedPerRev=0.2 spindleSpeed=400',
    50.3,
    'm/min',
    0.1,
    GROOVER_FORMULA,
  ],
  [
    'facing-time-constant-speed outerDiameter=100 innerDiameter=40 feedPerRev=0.2 surfaceSpeed=100',
    0.3299,
    'min',
    0.001,
    'calculus on the formula of Groover; derived',
  ],
  [
    'turning-removal surfaceSpeed=300ft/min feedPerRev=0.012in/rev depth=0.1in',
    4.32,
    'in3/min',
    0.01,
    `12 V f d: ${GROOVER}`,
  ],
];

const PASSES = 'Groover 4e: depth = (D0 - D1) / 2, passes rounded up; derived';
const DIALS = 'Graduated dials; derived';

const passes: readonly Published[] = [
  ['pass-plan stockDiameter=60 finishDiameter=42 deepestCut=2 finishAllowance=0', 5, '', 0, PASSES],
  [
    'pass-plan.roughingDepth stockDiameter=60 finishDiameter=42 deepestCut=2 finishAllowance=0',
    1.8,
    'mm',
    1e-9,
    PASSES,
  ],
  ['dial-setting.divisions change=0.6 dialReads=diameter graduation=0.02', 30, '', 0, DIALS],
  ['dial-setting.divisions change=0.6 dialReads=radius graduation=0.02', 15, '', 0, DIALS],
  [
    'next-pass.depthASide measured=2.15in finishDiameter=2in deepestCut=0.1in finishAllowance=0 dialReads=diameter graduation=0.001in',
    0.075,
    'in',
    1e-6,
    'Graduated dials: a class question (a diameter collar moved 0.150 in cuts 0.075 in deep)',
  ],
  ['compound-travel travel=0.1 angle=5.74', 0.01, 'mm', 0.00005, 'geometry; derived'],
  [
    'parting-blade diameter=40 bladeWidth=3',
    21.5,
    'mm',
    0.5,
    'common practice, no source: radius + 1 to 2 mm',
  ],
  ['parting-blade.longest diameter=40 bladeWidth=3', 24, 'mm', 0, 'common practice, no source'],
  ['bar-out.travel length=4 bladeWidth=3 diameter=20', 7, 'mm', 1e-9, 'geometry; derived'],
  [
    'bar-out length=1/4in bladeWidth=1/8in diameter=1in facing=1/16in gap=3/16in',
    0.625,
    'in',
    1e-9,
    'sum by hand in sixteenths: 1 + 4 + 2 + 3 = 10',
  ],
  ['bar-out.longest length=4 bladeWidth=3 diameter=20', 60, 'mm', 0, 'common practice, no source'],
];

const RIM = 'geometry; derived';

const chucks: readonly Published[] = [
  ['chuck-rim diameter=160 spindleSpeed=2500 body=steel', 20.94, 'm/s', 0.02, RIM],
  ['chuck-rim.fastest diameter=250 spindleSpeed=100', 1528, 'rev/min', 1, RIM],
  [
    'chuck-grip spindleSpeed=2000 chuckLimit=2000',
    33.3,
    '%',
    0.1,
    'EN 1550, DIN 6386 and VDI 3106, as lathe and chuck manuals quote them (titles not kept): one third left at the mark',
  ],
];

published('Spindle and surface speed', speeds);
published('Feeds', feeds);
published('Cutting times', times);
published('Passes, dials and parting', passes);
published('Chucks', chucks);
