/** Control charts and capability against worked examples. */

import { type Published, published, publishedWords } from './published.ts';

const FACTORS = 'Factors for control charts, printed table';
const WORKED = 'Worked control chart (printed example)';
const NIST = 'from memory: NIST/SEMATECH e-Handbook 6.1.6';
const DERIVED = 'derived from the formulas of the printed capability notes';
const INTEGRATED =
  'numerical integration of the normal range distribution, worked out outside this program';

/** Size, A2, D3, D4, d2. A mean of 0 and a mean range of 1 show the factors themselves. */
const factors = [
  [2, 1.88, 0, 3.267, 1.1284],
  [3, 1.023, 0, 2.5746, 1.6926],
  [4, 0.729, 0, 2.2821, 2.0588],
  [5, 0.577, 0, 2.1145, 2.3259],
  [6, 0.483, 0, 2.0038, 2.5344],
  [7, 0.419, 0.076, 1.9243, 2.7044],
  [8, 0.373, 0.136, 1.8638, 2.8472],
  [9, 0.337, 0.184, 1.816, 2.97],
  [10, 0.308, 0.223, 1.777, 3.0775],
] as const;

published(
  'control chart factors',
  factors.flatMap(([size, a2, d3, d4, d2]): Published[] => [
    [`control-limits.upper means=0 ranges=1 size=${size}`, a2, 'mm', 0.001, FACTORS],
    [`control-limits.rangeLower means=0 ranges=1 size=${size}`, d3, 'mm', 0.001, FACTORS],
    [`control-limits.rangeUpper means=0 ranges=1 size=${size}`, d4, 'mm', 0.001, INTEGRATED],
    [`control-limits.sigma means=0 ranges=1 size=${size}`, 1 / d2, 'mm', 0.0005, INTEGRATED],
  ]),
);

published('control limits', [
  ['control-limits.upper means=13.57 ranges=2.07 size=5', 14.76, 'mm', 0.01, WORKED],
  ['control-limits.lower means=13.57 ranges=2.07 size=5', 12.38, 'mm', 0.01, WORKED],
  ['control-limits.rangeUpper means=13.57 ranges=2.07 size=5', 4.38, 'mm', 0.01, WORKED],
  ['control-limits.sigma means=25 ranges=0.0125 size=5', 0.00537, 'mm', 1e-5, FACTORS],
]);

published('capability', [
  ['capability.cp lower=8 upper=20 mean=16 sigma=2', 1, '', 0.0005, NIST],
  ['capability lower=8 upper=20 mean=16 sigma=2', 0.6667, '', 0.0005, NIST],
  ['capability.upperShare lower=8 upper=20 mean=16 sigma=2', 0.6667, '', 0.0005, NIST],
  ['capability.lowerShare lower=8 upper=20 mean=16 sigma=2', 1.3333, '', 0.0005, NIST],
  ['capability.cp lower=9.95 upper=10.05 mean=10.01 sigma=0.012', 1.3889, '', 0.001, DERIVED],
  ['capability lower=9.95 upper=10.05 mean=10.01 sigma=0.012', 1.1111, '', 0.001, DERIVED],
  ['batch-spread readings=10.00,10.02,9.99,10.01,10.03', 10.01, 'mm', 1e-9, DERIVED],
  ['batch-spread.range readings=10.00,10.02,9.99,10.01,10.03', 0.04, 'mm', 1e-9, DERIVED],
  ['batch-spread.deviation readings=10.00,10.02,9.99,10.01,10.03', 0.01581, 'mm', 1e-5, DERIVED],
]);

publishedWords('trend', [
  ['trend readings=1,2,3,4,5,6', 'rising', 'from memory: Nelson, six in a row'],
  ['trend readings=6,5,4,3,2,1', 'falling', 'from memory: Nelson, six in a row'],
  ['trend readings=1,2,3,4,5', 'steady', 'from memory: Nelson, six in a row'],
  [
    'trend readings=1,2,3,4,5,6 run=7',
    'steady',
    'common practice, no source: older charts take seven',
  ],
  ['trend readings=1,2,3,3,4,5', 'steady', 'from memory: Nelson, an equal reading ends the run'],
]);

const ARITHMETIC = 'arithmetic';
published('tool offset and time', [
  [
    'tool-offset readings=25.03,25.035,25.04 lower=25 upper=25.021',
    -0.0245,
    'mm',
    1e-6,
    ARITHMETIC,
  ],
  [
    'tool-offset.dial readings=25.03,25.035,25.04 lower=25 upper=25.021 dial=radius',
    -0.01225,
    'mm',
    1e-6,
    ARITHMETIC,
  ],
  [
    'tool-offset readings=25.009,25.011 lower=25 upper=25.021',
    0,
    'mm',
    1e-9,
    'common practice, no source: leave alone near the middle',
  ],
  [
    'batch-time pieces=100 cutting=3 handling=1 setUp=40 checking=0.5 checkEvery=5',
    450,
    'min',
    1e-9,
    ARITHMETIC,
  ],
  [
    'batch-time.each pieces=100 cutting=3 handling=1 setUp=40 toolChange=2 toolPieces=20',
    4.1,
    'min',
    1e-9,
    ARITHMETIC,
  ],
]);

const BY_HAND =
  'worked by hand from the stated practice: middle less the mean of the run, to half a division';

// Limits 24.95 to 25.05 have their middle at 25.
publishedWords('drift', [
  ['drift readings=25.01,25.00,25.01,25.02,25.03 lower=24.95 upper=25.05', 'rising', BY_HAND],
  ['drift readings=25.03,25.02,25.01,25.00 lower=24.95 upper=25.05', 'falling', BY_HAND],
  ['drift readings=25.00,25.01,25.02 lower=24.95 upper=25.05', 'steady', BY_HAND],
  ['drift readings=25.00,25.01,25.01,25.02 lower=24.95 upper=25.05', 'steady', BY_HAND],
]);

published('what a drift asks of the dial', [
  // Mean of 25.00, 25.01, 25.02, 25.03 is 25.015: 15 off the size, with halves of 0.02 at 10, 20: 1.5 goes to 2.
  ['drift readings=25.00,25.01,25.02,25.03 lower=24.95 upper=25.05', -0.02, 'mm', 1e-9, BY_HAND],
  [
    'drift.dial readings=25.00,25.01,25.02,25.03 lower=24.95 upper=25.05',
    0.02,
    'mm',
    1e-9,
    BY_HAND,
  ],
  // The same on a radius dial of 0.01: halves of 5 on the dial are 10 on the size: 7.5 on the dial goes to 10.
  [
    'drift.dial readings=25.00,25.01,25.02,25.03 lower=24.95 upper=25.05 dial=radius graduation=0.01',
    0.01,
    'mm',
    1e-9,
    BY_HAND,
  ],
  // A bore that grows: the same off the size is a shallower cut.
  [
    'drift.dial readings=25.00,25.01,25.02,25.03 lower=24.95 upper=25.05 side=inside',
    -0.02,
    'mm',
    1e-9,
    BY_HAND,
  ],
  // Five microns: mean 25.005 on a dial of 0.01.
  [
    'drift readings=25.002,25.004,25.006,25.008 lower=24.95 upper=25.05 graduation=0.01',
    -0.005,
    'mm',
    1e-9,
    BY_HAND,
  ],
  // Rising towards the middle from below: left alone.
  ['drift readings=24.97,24.98,24.99,25.00 lower=24.95 upper=25.05', 0, 'mm', 1e-9, BY_HAND],
]);
