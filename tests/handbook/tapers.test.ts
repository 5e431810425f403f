/** Tapers and angles against printed tables. */

import { type Published, published } from './published.ts';

const GEOMETRY = 'derived from tan(α/2) = (D − d) ÷ 2 l (geometry)';
const ANGLES =
  'Tapers per foot and corresponding angles, printed handbook table (1 to 3 seconds low)';
const ROSE = 'Rose, Modern Machine-Shop Practice';
const NOTES = 'Angular measurement notes; metrology ch. 4';
const MORSE = 'Dimensions of standard tapers, printed';
const ISO_296 = 'from memory: ISO 296';
const SHANKS = 'Morse taper shanks table';

published('compound angle', [
  ['compound-angle large=40 small=30 length=60', 4.764, 'deg', 0.002, GEOMETRY],
  ['compound-angle.oneIn large=40 small=30 length=60', 6, '', 1e-9, GEOMETRY],
  ['compound-angle.fromSquare large=40 small=30 length=60', 85.236, 'deg', 0.002, GEOMETRY],
  ['taper-angle.included perFoot=0.5in', 2 + 23 / 60 + 10 / 3600, 'deg', 4 / 3600, ANGLES],
  ['taper-angle.included perFoot=0.25in', 1 + 11 / 60 + 36 / 3600, 'deg', 4 / 3600, ANGLES],
  ['taper-angle.included perFoot=0.75in', 3 + 34 / 60 + 44 / 3600, 'deg', 4 / 3600, ANGLES],
  ['taper-angle oneIn=10', 2.8624, 'deg', 0.001, GEOMETRY],
  ['taper-angle.perFoot oneIn=24', 0.5, 'in', 1e-9, 'derived: 12 in ÷ 24'],
]);

published('tailstock set-over', [
  ['tailstock-offset large=2in small=1in taperLength=12in workLength=36in', 1.5, 'in', 1e-9, ROSE],
  // The same lathe as in the first row, set over by mistake: the taper it turned tells how far.
  [
    'tailstock-correction difference=1in measuredLength=12in workLength=36in',
    1.5,
    'in',
    1e-9,
    ROSE,
  ],
  [
    'tailstock-correction difference=0.1 measuredLength=200 workLength=300',
    0.075,
    'mm',
    1e-9,
    GEOMETRY,
  ],
  ['tailstock-offset large=32 small=28 taperLength=100 workLength=250', 5, 'mm', 0.01, GEOMETRY],
]);

/** Number, half angle in degrees, x of 1 : x, inches at the large and the small end. */
const morse = [
  ['0', 1.4908, 19.212, 0.3561, 0.252],
  ['1', 1.4287, 20.047, 0.475, 0.369],
  ['2', 1.4307, 20.02, 0.7, 0.572],
  ['3', 1.4377, 19.922, 0.938, 0.778],
  ['4', 1.4876, 19.254, 1.231, 1.02],
  ['5', 1.5073, 19.002, 1.748, 1.475],
  ['6', 1.4933, 19.18, 2.494, 2.116],
] as const;

published(
  'Morse tapers',
  morse.flatMap(([number, half, oneIn, large, small]): Published[] => [
    [`morse-taper number=${number}`, half, 'deg', 0.0005, MORSE],
    [`morse-taper.oneIn number=${number}`, oneIn, '', 0.001, ISO_296],
    [`morse-taper.large number=${number}`, large, 'in', 1e-6, SHANKS],
    [`morse-taper.small number=${number}`, small, 'in', 1e-6, SHANKS],
  ]),
);

published('sine bar', [
  ['sine-bar-height bar=100 angle=30', 50, 'mm', 0.001, NOTES],
  ['sine-bar-height bar=200 angle=1.4307', 4.9935, 'mm', 0.001, `${MORSE}; derived`],
  ['sine-bar-height bar=5in angle=2.8754', 0.25082, 'in', 0.0001, `${MORSE}; derived`],
  ['sine-bar-angle bar=100 height=50', 30, 'deg', 0.001, NOTES],
]);

const DRAWN = 'derived by drawing the cone first (geometry)';
published('checking a taper', [
  // 60° included cone, small end 20: a 10 mm roller touches at 20 + 10 (1 + tan 60°).
  [
    'taper-over-rollers lowReading=47.320508 highReading=70.414524 height=20 roller=10',
    30,
    'deg',
    0.0001,
    DRAWN,
  ],
  [
    'taper-over-rollers.small lowReading=47.320508 highReading=70.414524 height=20 roller=10',
    20,
    'mm',
    0.0001,
    DRAWN,
  ],
  // 60° included hole: balls of 20 and 10 stand (10 − 5) ÷ sin 30° = 10 mm apart.
  [
    'taper-with-balls largeBall=20 smallBall=10 largeDepth=0 smallDepth=15',
    30,
    'deg',
    0.0001,
    DRAWN,
  ],
  [
    'taper-with-balls.mouth largeBall=20 smallBall=10 largeDepth=0 smallDepth=15',
    34.641016,
    'mm',
    0.0001,
    DRAWN,
  ],
]);
