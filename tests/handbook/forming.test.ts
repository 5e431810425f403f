/** Knurls, chamfers, radii, grooves and eccentrics against worked examples. */

import { published } from './published.ts';

const DIAMETRAL = 'Diametral pitch knurling, after ANSI B94.6';
const BUMP = 'Bump knurling from the cross slide (die maker), worked example';
const GEOMETRY = 'derived from D = N p ÷ π (geometry)';
const THIBAULT = 'Thibault, Turning an Eccentric Hole in a 3-Jaw Chuck, worked example';
const PRACTICE = 'common practice, no source';

published('knurls', [
  ['knurl-diametral.teeth diameter=0.5in diametralPitch=96', 48, '', 1e-9, DIAMETRAL],
  ['knurl-diametral diameter=0.1953in diametralPitch=128', 0.1953, 'in', 1e-4, DIAMETRAL],
  ['knurl-diametral.teeth diameter=0.1953in diametralPitch=128', 25, '', 1e-9, DIAMETRAL],
  [
    'knurl-from-wheel.teeth wheel=0.75in wheelTeeth=47 stock=0.5in correction=0.007in',
    31,
    '',
    1e-9,
    BUMP,
  ],
  [
    'knurl-from-wheel wheel=0.75in wheelTeeth=47 stock=0.5in correction=0.007in',
    0.499,
    'in',
    0.001,
    BUMP,
  ],
  [
    'knurl-from-wheel.smaller wheel=0.75in wheelTeeth=47 stock=0.5in correction=0.007in',
    0.483,
    'in',
    0.001,
    BUMP,
  ],
  ['knurl-blank pitch=1 diameter=25', 25.146, 'mm', 0.002, GEOMETRY],
  ['knurl-blank.teeth pitch=1 diameter=25', 79, '', 1e-9, GEOMETRY],
  ['knurl-blank.smaller pitch=1 diameter=25', 24.828, 'mm', 0.002, GEOMETRY],
  ['knurl-blank pitch=1 diameter=25 choose=smaller', 24.828, 'mm', 0.002, GEOMETRY],
  [
    'knurl-blank pitch=1 diameter=25 helix=30',
    24.994,
    'mm',
    0.002,
    'derived: p ÷ cos 30° = 1.1547, N 68',
  ],
]);

const SQUARE = 'geometry of the right triangle';
published('chamfers', [
  ['chamfer leg=1', 1, 'mm', 1e-9, SQUARE],
  ['chamfer.face leg=2', 2.82843, 'mm', 1e-5, SQUARE],
  ['chamfer.onDiameter leg=2 angle=30', 2.3094, 'mm', 1e-4, SQUARE],
  ['chamfer leg=3 angle=60', 5.19615, 'mm', 1e-5, SQUARE],
]);

published('eccentrics', [
  ['eccentric-packing diameter=3.375in offset=0.313in', 0.448, 'in', 0.0006, THIBAULT],
  [
    'eccentric-packing diameter=50 offset=4 jaws=wide',
    6,
    'mm',
    1e-9,
    'rule of thumb 1.5 × offset: common practice, no source',
  ],
  [
    'eccentric-packing.throw diameter=50 offset=4',
    8,
    'mm',
    1e-9,
    'geometry: throw is twice the offset',
  ],
]);

published('grooves', [
  [
    'groove-plan turningSpeed=28 diameter=40 width=8 depth=3 blade=3',
    15.4,
    'm/min',
    0.001,
    `${PRACTICE}: 0.5 to 0.6 of turning, HSS`,
  ],
  [
    'groove-plan turningSpeed=100 tool=carbide diameter=40 width=3 depth=3 blade=3',
    65,
    'm/min',
    0.001,
    `${PRACTICE}: 0.6 to 0.7 of turning, carbide`,
  ],
  [
    'groove-plan.bottom turningSpeed=28 diameter=40 width=8 depth=3 blade=3',
    34,
    'mm',
    1e-9,
    'arithmetic',
  ],
  [
    'groove-plan.overhang turningSpeed=28 diameter=60 width=3 depth=20 blade=3',
    21.5,
    'mm',
    0.5,
    `${PRACTICE}: depth + 1 to 2 mm, at most 8 blades`,
  ],
]);
