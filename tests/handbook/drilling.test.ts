/** Drilling, reaming and tap drills against handbooks. */

import { type Published, type PublishedWord, published, publishedWords } from './published.ts';

const GROOVER = 'Groover examples: drilling, slab milling (lecture copy)';
const GEOMETRY = 'geometry; Groover examples; Drilling forces and power';
const GUIDE = 'Metal drilling reference guide';
const NAVY = 'US Navy NAVEDTRA 14345';

const points: readonly Published[] = [
  ['drill-point diameter=12.7 pointAngle=118', 3.815, 'mm', 0.005, GROOVER],
  ['drill-point diameter=10 pointAngle=118', 3.004, 'mm', 0.005, GEOMETRY],
  ['drill-point diameter=10 pointAngle=135', 2.071, 'mm', 0.005, GEOMETRY],
  ['drill-point diameter=10 pointAngle=140', 1.82, 'mm', 0.005, GEOMETRY],
  ['drill-point diameter=20 pointAngle=90', 10, 'mm', 0.005, GEOMETRY],
  ['drill-depth diameter=8.5 depth=25 pointAngle=118', 27.55, 'mm', 0.01, GEOMETRY],
  ['countersink-depth topDiameter=6 pointAngle=90', 3, 'mm', 0.005, GEOMETRY],
];

const timed: readonly Published[] = [
  [
    'drilling-time diameter=12.7 depth=60 feedPerRev=0.3 spindleSpeed=626.6',
    0.3395,
    'min',
    0.001,
    GROOVER,
  ],
  [
    'drilling-time diameter=12.7 depth=60 feedPerRev=0.3 spindleSpeed=626.6 point=left-out',
    0.3192,
    'min',
    0.001,
    'from memory: Groover 3e',
  ],
  [
    'drill-removal diameter=12.7 feedPerRev=0.3 spindleSpeed=626.6',
    23812,
    'mm3/min',
    '0.5%',
    GROOVER,
  ],
  [
    'drilling-time diameter=10 depth=20 feedPerRev=0.2 spindleSpeed=954.9',
    0.1205,
    'min',
    0.001,
    `formula: ${GROOVER}; derived`,
  ],
  [
    'drill-removal diameter=12.7 feedPerRev=0.3 spindleSpeed=700',
    26602,
    'mm3/min',
    5,
    'Drilling MRR problem; derived',
  ],
  [
    'drill-removal diameter=10 feedPerRev=0.2 spindleSpeed=800',
    12566,
    'mm3/min',
    '1%',
    'from memory: Kalpakjian & Schmid',
  ],
];

/** Middle and half width of the printed bands, mm/rev. */
const feeds: readonly Published[] = [
  ['drill-feed diameter=3 material=low-carbon-steel', 0.05, 'mm/rev', 0.025, NAVY],
  ['drill-feed diameter=6 material=low-carbon-steel', 0.1, 'mm/rev', 0.05, NAVY],
  ['drill-feed diameter=10 material=low-carbon-steel', 0.15, 'mm/rev', 0.05, NAVY],
  ['drill-feed diameter=20 material=low-carbon-steel', 0.28, 'mm/rev', 0.1, NAVY],
  ['drill-feed diameter=30 material=low-carbon-steel', 0.445, 'mm/rev', 0.195, NAVY],
  ['drill-feed diameter=12 material=stainless-304', 0.14, 'mm/rev', 0.04, NAVY],
  [
    'drill-feed diameter=12 material=free-cutting-brass',
    0.25,
    'mm/rev',
    '1%',
    'Tutorial "Design tables and coefficients"',
  ],
];

const deep: readonly Published[] = [
  ['deep-hole diameter=6 depth=17', 100, '%', 0, GUIDE],
  ['deep-hole diameter=6 depth=18', 90, '%', 0, GUIDE],
  ['deep-hole diameter=6 depth=24', 80, '%', 0, GUIDE],
  ['deep-hole diameter=6 depth=30', 70, '%', 0, GUIDE],
  ['deep-hole.feedShare diameter=6 depth=30', 80, '%', 0, GUIDE],
  ['deep-hole diameter=6 depth=36', 62.5, '%', 2.5, GUIDE],
];

const REAM = 'Reaming: undersizes';

const reaming: readonly Published[] = [
  ['ream-drill diameter=12', 11.7, 'mm', 0.1, `${REAM}: 12 - (0.25 + 0.05)`],
  ['ream-drill.allowance diameter=4', 0.15, 'mm', 0.05, `${REAM}: 0.1-0.2`],
  ['ream-drill.allowance diameter=16', 0.25, 'mm', 0.05, `${REAM}: 0.2-0.3`],
  ['ream-drill.allowance diameter=30', 0.4, 'mm', 0.1, `${REAM}: 0.3-0.5`],
  ['ream-drill.allowance diameter=60', 0.75, 'mm', 0.25, `${REAM}: 0.5-1.0`],
  [
    'ream-drill.allowance diameter=12 hole=bored',
    0.19,
    'mm',
    0.06,
    'US War Dept TM 1-420: .005-.010 in',
  ],
];

const TAP_FORMULA = 'Tap maker "Technical formulas"';
const HANDBOOK = "Machinery's Handbook 31, p. 2155";

const percents: readonly Published[] = [
  ['thread-percent thread=1/4-20 hole=0.201in', 75.44, '%', 0.1, TAP_FORMULA],
  ['thread-percent thread=M8x1.25 hole=6.8', 73.9, '%', 0.1, TAP_FORMULA],
  ['thread-percent thread=#4-40 hole=0.0945in', 54, '%', 1, HANDBOOK],
  ['thread-percent thread=#4-40 hole=0.0935in', 57, '%', 1, HANDBOOK],
  ['thread-percent thread=#4-40 hole=0.0925in', 60, '%', 1, HANDBOOK],
  ['thread-percent thread=#4-40 hole=0.0905in', 66, '%', 1, HANDBOOK],
  ['thread-percent thread=#2-56 hole=0.0730in', 56, '%', 1, HANDBOOK],
  ['thread-percent thread=#2-56 hole=0.0709in', 65, '%', 1, HANDBOOK],
  ['thread-percent thread=#2-56 hole=0.0700in', 69, '%', 1, HANDBOOK],
  ['thread-percent thread=#2-56 hole=0.0689in', 74, '%', 1, HANDBOOK],
  ['tap-drill thread=M10x1.5 percent=75', 8.539, 'mm', 0.005, `formula: ${TAP_FORMULA}; derived`],
  ['tap-drill thread=1/2-13 percent=75', 0.4251, 'in', 0.0005, `formula: ${TAP_FORMULA}; derived`],
];

const CHARTS = 'metric hole chart; Drill and tap size chart; from memory: ISO 2306';

/** Thread, drill in mm, percent of thread on the 1.299 P base. */
const metricTaps: readonly (readonly [string, number, number])[] = [
  ['M3x0.5', 2.5, 77],
  ['M4x0.7', 3.3, 77],
  ['M5x0.8', 4.2, 77],
  ['M6x1', 5, 77],
  ['M8x1.25', 6.8, 73.9],
  ['M10x1.5', 8.5, 77],
  ['M12x1.75', 10.2, 79.2],
  ['M14x2', 12, 77],
  ['M16x2', 14, 77],
  ['M18x2.5', 15.5, 77],
  ['M20x2.5', 17.5, 77],
  ['M22x2.5', 19.5, 77],
  ['M24x3', 21, 77],
  ['M8x1', 7, 77],
  ['M10x1', 9, 77],
  ['M10x1.25', 8.8, 73.9],
  ['M12x1.25', 10.8, 73.9],
  ['M12x1.5', 10.5, 77],
  ['M14x1.5', 12.5, 77],
  ['M16x1.5', 14.5, 77],
  ['M20x1.5', 18.5, 77],
  ['M24x2', 22, 77],
];

const TAP_CHART = 'Tap drill chart; Tap drill selector chart (printed)';

/** Thread, drill in inches, its name, percent of thread on the 1.299 P base. */
const unifiedTaps: readonly (readonly [string, number, string, number])[] = [
  ['#4-40', 0.089, '#43', 70.8],
  ['#6-32', 0.1065, '#36', 77.6],
  ['#8-32', 0.136, '#29', 69],
  ['#10-24', 0.1495, '#25', 74.8],
  ['#10-32', 0.159, '#21', 76.4],
  ['1/4-20', 0.201, '#7', 75.4],
  ['1/4-28', 0.213, '#3', 79.8],
  ['5/16-18', 0.257, 'F', 76.9],
  ['5/16-24', 0.272, 'I', 74.8],
  ['3/8-16', 0.3125, '5/16', 77],
  ['3/8-24', 0.332, 'Q', 79.4],
  ['7/16-14', 0.368, 'U', 74.9],
  ['1/2-13', 0.4219, '27/64', 78.2],
  ['1/2-20', 0.4531, '29/64', 72.2],
  ['5/8-11', 0.5312, '17/32', 79.4],
  ['3/4-10', 0.6562, '21/32', 72.2],
  ['3/4-16', 0.6875, '11/16', 77],
  ['7/8-9', 0.7656, '49/64', 75.8],
  ['1-8', 0.875, '7/8', 77],
  ['1-12', 0.9219, '59/64', 72.2],
];

const metricDrills: readonly Published[] = metricTaps.flatMap(([thread, drill, percent]) => [
  [`tap-drill thread=${thread}`, drill, 'mm', 0, CHARTS] as const,
  [`tap-drill.percent thread=${thread}`, percent, '%', 0.06, CHARTS] as const,
]);

const unifiedDrills: readonly Published[] = unifiedTaps.flatMap(([thread, drill, , percent]) => [
  [`tap-drill thread=${thread}`, drill, 'in', 0.0001, TAP_CHART] as const,
  [`tap-drill.percent thread=${thread}`, percent, '%', 0.06, TAP_CHART] as const,
]);

const drillNames: readonly PublishedWord[] = unifiedTaps.map(
  ([thread, , name]) => [`tap-drill thread=${thread}`, name, TAP_CHART] as const,
);

const CENTRES = 'from memory: ISO 866 / DIN 333-A';
const centres: readonly Published[] = [
  ['centre-drill.body workDiameter=8', 3.15, 'mm', 0, CENTRES],
  ['centre-drill.body workDiameter=25', 8, 'mm', 0, CENTRES],
  ['centre-drill.body workDiameter=34', 12.5, 'mm', 0, CENTRES],
  ['centre-drill.body workDiameter=80', 25, 'mm', 0, CENTRES],
];

published('Drill points', points);
published('Drilling times', timed);
published('Drill feeds', feeds);
published('Deep holes', deep);
published('Reaming', reaming);
published('Percent of thread', percents);
published('Metric tap drills', metricDrills);
published('Unified tap drills', unifiedDrills);
publishedWords('Tap drill names', drillNames);
published('Centre drills', centres);
