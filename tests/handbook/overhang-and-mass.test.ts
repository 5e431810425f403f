/** Mass of bars, whipping of overhanging work, torque of taps, seats of cap screws: against printed numbers. */

import { type Published, published } from './published.ts';

const BARS = 'Mild steel round bars, printed table of kg a metre (density 7850)';

published(
  'mass of a metre of bar',
  (
    [
      [20, 2.466],
      [25, 3.853],
      [32, 6.313],
      [40, 9.864],
      [50, 15.413],
      [60, 22.195],
      [80, 39.458],
      [100, 61.654],
    ] as const
  ).map(
    ([diameter, mass]): Published => [
      `bar-mass material=low-carbon-steel diameter=${diameter} length=1m`,
      mass,
      'kg',
      0.001,
      BARS,
    ],
  ),
);

published('mass and density', [
  ['bar-mass.perMetre material=low-carbon-steel diameter=25 length=300', 3.853, 'kg', 0.001, BARS],
  ['material-density material=low-carbon-steel', 7850, 'kg/m3', 1e-9, BARS],
  // 50 mm bar less its 30 mm core, both by the same table: 15.413 − 5.549.
  ['bar-mass material=low-carbon-steel diameter=50 bore=30 length=1m', 9.864, 'kg', 0.002, BARS],
]);

const BEAM =
  'beam held at one end, 1.8751 from memory: Blevins, Formulas for Natural Frequency and Mode Shape; data of a printed lecture problem (d 10 mm, L 3 m, E 210 GPa, 7800 kg/m³), derived';
const ROD = 'the same constant, derived for a 25 mm steel rod, E 200 GPa, 7850 kg/m³';

published('whipping of overhanging work', [
  // 1.8751² × √(2.1e11 ÷ 7800 × 0.01² ÷ 16) ÷ 3² = 5.0676 rad/s = 48.39 rev/min.
  [
    'overhang-speed.whirling diameter=10 length=3m modulus=210GPa density=7800',
    48.39,
    'rev/min',
    0.05,
    BEAM,
  ],
  [
    'overhang-speed diameter=10 length=3m modulus=210GPa density=7800',
    16.13,
    'rev/min',
    0.02,
    BEAM,
  ],
  // 3.5160 × √(2e11 ÷ 7850) × 0.00625 ÷ 0.5² = 443.7 rad/s = 4237 rev/min; four times as long: a sixteenth.
  [
    'overhang-speed.whirling diameter=25 length=500 material=low-carbon-steel',
    4237,
    'rev/min',
    3,
    ROD,
  ],
  [
    'overhang-speed.whirling diameter=25 length=2000 material=low-carbon-steel',
    264.8,
    'rev/min',
    0.3,
    ROD,
  ],
]);

const TAPS = "Tap maker's printed formula and table of cutting forces, derived";
const OTHER =
  "another tap maker's printed formula by thread depth, hand tap in steel of 162 HB (3700 N/mm², K 1.35, hole 8.5), derived";

published('torque of taps', [
  ['tap-torque thread=M10 metal=structural-steel', 7.031, 'Nm', 0.001, TAPS],
  ['tap-torque thread=M6 metal=grey-cast-iron', 0.9375, 'Nm', 0.0001, TAPS],
  ['tap-torque thread=M8 metal=aluminium-long-chips', 1.25, 'Nm', 0.0001, TAPS],
  // tan 30° × 3700 × 1.35 × 1.5² × (10 + 2 × 8.5) ÷ 24000 = 7.30.
  ['tap-torque thread=M10 metal=structural-steel', 7.3, 'Nm', '5%', OTHER],
]);

const CHART = 'Counterbored hole chart for DIN screws, printed';
const DEPTHS = 'Counterbore table for socket-head screws, printed: head and 0.5 mm';
const MEMORY = 'from memory: ISO 273, DIN 974-1 row 1';

published('seats of cap screws', [
  ['counterbore screw=M3', 6.5, 'mm', 1e-9, CHART],
  ['counterbore screw=M5', 10, 'mm', 1e-9, CHART],
  ['counterbore screw=M8', 15, 'mm', 1e-9, CHART],
  ['counterbore.hole screw=M8', 9, 'mm', 1e-9, CHART],
  ['counterbore.hole screw=M8 fit=close', 8.4, 'mm', 1e-9, CHART],
  ['counterbore.hole screw=M8 fit=loose', 10, 'mm', 1e-9, CHART],
  ['counterbore.hole screw=M10', 11, 'mm', 1e-9, CHART],
  ['counterbore.depth screw=M6', 6.5, 'mm', 1e-9, DEPTHS],
  ['counterbore.depth screw=M10', 10.5, 'mm', 1e-9, DEPTHS],
  ['counterbore screw=M12', 20, 'mm', 1e-9, MEMORY],
  ['counterbore.hole screw=M16', 17.5, 'mm', 1e-9, MEMORY],
]);
