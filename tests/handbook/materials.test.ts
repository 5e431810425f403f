/** The materials table against published ranges. */

import { describe, expect, it } from 'vitest';
import { materialTable } from '../../src/trade/index.ts';
import { type Published, published } from './published.ts';

const FERROUS = 'Ferrous Metals Data Book, tables 9-1 to 9-3; Speeds and feeds by AISI group';
const HANDOUT = 'Machine-tool speeds and feeds hand-out; Tutorial "Design tables and coefficients"';
const AIR_FORCE = 'US T.O. 1-1A-9 table 2-8';
const DRILLS = 'Speed/feed tables for HSS and carbide drills and reamers; US Navy NAVEDTRA 14345';
const MILLS = "Carvill, Mechanical Engineer's Data Handbook, p. 187; end-mill tables";
const PRACTICE = 'common practice, no source';

/** Published low and high ends, m/min; a start must not lie above the high end. */
type Range = readonly [
  material: string,
  operation: string,
  tool: string,
  low: number,
  high: number,
  source: string,
];

const ranges: readonly Range[] = [
  ['low-carbon-steel', 'turn', 'hss', 24, 46, FERROUS],
  ['low-carbon-steel', 'turn', 'carbide', 100, 152, FERROUS],
  ['low-carbon-steel', 'turn', 'coated-carbide', 150, 290, FERROUS],
  ['medium-carbon-steel', 'turn', 'hss', 20, 40, FERROUS],
  ['medium-carbon-steel', 'turn', 'carbide', 90, 122, FERROUS],
  ['medium-carbon-steel', 'turn', 'coated-carbide', 126, 239, FERROUS],
  ['free-machining-steel', 'turn', 'hss', 43, 91, FERROUS],
  ['free-machining-steel', 'turn', 'carbide', 140, 183, FERROUS],
  ['free-machining-steel', 'turn', 'coated-carbide', 200, 411, FERROUS],
  ['tool-steel', 'turn', 'hss', 15, 46, HANDOUT],
  ['stainless-304', 'turn', 'hss', 6, 24, AIR_FORCE],
  ['stainless-304', 'turn', 'carbide', 46, 91, AIR_FORCE],
  ['stainless-416', 'turn', 'hss', 9, 37, AIR_FORCE],
  ['stainless-416', 'turn', 'carbide', 69, 137, AIR_FORCE],
  ['grey-cast-iron', 'turn', 'hss', 15, 76, HANDOUT],
  ['aluminium-6061', 'turn', 'hss', 60, 213, HANDOUT],
  ['free-cutting-brass', 'turn', 'hss', 45, 152, HANDOUT],
  ['bronze', 'turn', 'hss', 18, 36, 'from memory: Carvill p. 192'],
  ['copper', 'turn', 'hss', 30, 76, HANDOUT],
  ['nylon', 'turn', 'hss', 120, 300, "Carvill, Mechanical Engineer's Data Handbook, p. 194"],
  ['titanium-6-4', 'turn', 'hss', 12, 25, PRACTICE],
  ['low-carbon-steel', 'drill', 'hss', 21, 34, DRILLS],
  ['medium-carbon-steel', 'drill', 'hss', 18, 27, DRILLS],
  ['free-machining-steel', 'drill', 'hss', 30, 40, DRILLS],
  ['tool-steel', 'drill', 'hss', 9, 26, DRILLS],
  ['stainless-304', 'drill', 'hss', 9, 17, DRILLS],
  ['stainless-416', 'drill', 'hss', 18, 27, DRILLS],
  ['grey-cast-iron', 'drill', 'hss', 18, 46, DRILLS],
  ['aluminium-6061', 'drill', 'hss', 60, 122, DRILLS],
  [
    'titanium-6-4',
    'drill',
    'hss',
    9,
    12,
    'El-Hofy table 5.4; Machine-tool speeds and feeds hand-out',
  ],
  ['low-carbon-steel', 'ream', 'hss', 14, 20, DRILLS],
  ['medium-carbon-steel', 'ream', 'hss', 12, 18, DRILLS],
  ['stainless-416', 'ream', 'hss', 13, 18, DRILLS],
  ['grey-cast-iron', 'ream', 'hss', 12, 20, DRILLS],
  ['low-carbon-steel', 'ream', 'carbide', 61, 91, DRILLS],
  ['medium-carbon-steel', 'ream', 'carbide', 46, 76, DRILLS],
  ['low-carbon-steel', 'mill', 'hss', 21, 37, MILLS],
  ['stainless-304', 'mill', 'hss', 9, 20, MILLS],
  ['grey-cast-iron', 'mill', 'hss', 15, 37, MILLS],
  ['aluminium-6061', 'mill', 'hss', 60, 152, MILLS],
  ['copper', 'mill', 'hss', 30, 61, MILLS],
  ['low-carbon-steel', 'tap', 'hss', 15, 18, 'HSS tap speeds'],
  ['medium-carbon-steel', 'tap', 'hss', 10, 15, 'HSS tap speeds'],
  ['stainless-304', 'tap', 'hss', 5, 7, 'HSS tap speeds'],
  ['free-cutting-brass', 'tap', 'hss', 15, 35, 'HSS tap speeds'],
];

published(
  'Cutting speeds within the printed range',
  ranges.map(([material, operation, tool, low, high, source]) => [
    `cutting-speed material=${material} operation=${operation} tool=${tool}`,
    (low + high) / 2,
    'm/min',
    (high - low) / 2,
    source,
  ]),
);

const VDI = 'Material groups VDI 3323 / ISO 513 with kc1.1 and mc, 2017 and 2022 editions';
const MODULI = 'Material-property appendices (Hibbeler type; Gere; Triton College)';
const EXPANSIONS = 'Thermal expansion charts; Material-property appendices';

const properties: readonly Published[] = [
  ['material-force material=low-carbon-steel', 1350, 'N/mm2', 0, VDI],
  ['material-force-exponent material=low-carbon-steel', 0.21, '', 0, VDI],
  ['material-force material=medium-carbon-steel', 1500, 'N/mm2', 0, VDI],
  ['material-force-exponent material=medium-carbon-steel', 0.22, '', 0, VDI],
  ['material-force material=tool-steel', 2450, 'N/mm2', 0, VDI],
  ['material-force material=stainless-304', 2150, 'N/mm2', 0, VDI],
  ['material-force-exponent material=stainless-304', 0.2, '', 0, VDI],
  ['material-force material=stainless-416', 1875, 'N/mm2', 0, VDI],
  ['material-force material=grey-cast-iron', 1150, 'N/mm2', 0, VDI],
  ['material-force material=aluminium-6061', 800, 'N/mm2', 0, VDI],
  ['material-force material=free-cutting-brass', 700, 'N/mm2', 0, VDI],
  ['material-force material=titanium-6-4', 2110, 'N/mm2', 0, `${VDI} (2017)`],
  ['material-group material=stainless-304', 14, '', 0, VDI],
  ['material-group material=aluminium-6061', 22, '', 0, VDI],
  ['material-stiffness material=low-carbon-steel', 200, 'GPa', 0, MODULI],
  ['material-stiffness material=aluminium-6061', 68.9, 'GPa', 0, MODULI],
  ['material-stiffness material=grey-cast-iron', 67, 'GPa', 0, `${MODULI} (class 20)`],
  ['material-stiffness material=free-cutting-brass', 103, 'GPa', 7, MODULI],
  ['material-stiffness material=copper', 110, 'GPa', 10, MODULI],
  ['material-stiffness material=titanium-6-4', 117, 'GPa', 3, MODULI],
  ['material-expansion material=low-carbon-steel', 11.7, '1e-6/K', 0, EXPANSIONS],
  ['material-expansion material=stainless-304', 17, '1e-6/K', 0.5, EXPANSIONS],
  ['material-expansion material=aluminium-6061', 23.6, '1e-6/K', 0, EXPANSIONS],
  ['material-expansion material=grey-cast-iron', 10.8, '1e-6/K', 0, EXPANSIONS],
  ['material-expansion material=copper', 17, '1e-6/K', 0.6, EXPANSIONS],
  ['material-expansion material=acetal', 106.5, '1e-6/K', 0.5, EXPANSIONS],
  ['material-expansion material=titanium-6-4', 9, '1e-6/K', 0.4, EXPANSIONS],
];

published('Material properties', properties);

const speedChecks: readonly Published[] = [
  [
    'spindle-speed surfaceSpeed=100ft/min diameter=50',
    194,
    'rev/min',
    1,
    'Ferrous Metals Data Book table 9-3: 1045, ~200 HB, HSS, 3.8 mm deep; derived',
  ],
  ['spindle-speed surfaceSpeed=20ft/min diameter=25', 78, 'rev/min', 1, `${AIR_FORCE}; derived`],
  ['spindle-speed surfaceSpeed=40ft/min diameter=25', 155, 'rev/min', 1, `${AIR_FORCE}; derived`],
  ['spindle-speed surfaceSpeed=28 diameter=20', 446, 'rev/min', 1, `${MILLS}; derived`],
];

published('Speeds out of tables', speedChecks);

describe('the order of the turning speeds (Ferrous Metals Data Book to reamer tables)', () => {
  const metals = materialTable.filter((row) => row.iso !== 'O');
  const turnOf = (name: string) => metals.find((row) => row.name === name)?.speeds.turn ?? [];

  it.each(metals.map((row) => [row.name, row.speeds.turn] as const))(
    'in %s HSS is slower than carbide, and that not faster than coated',
    (_, [hss, carbide, coated]) => {
      expect(hss).toBeLessThan(carbide ?? 0);
      expect(carbide).toBeLessThanOrEqual(coated ?? 0);
    },
  );

  it.each([0, 1, 2])('in column %d 304 is slower than 416, and carbon slows steel', (column) => {
    const speed = (name: string) => turnOf(name)[column] ?? Number.NaN;
    expect(speed('stainless-304')).toBeLessThan(speed('stainless-416'));
    expect(speed('medium-carbon-steel')).toBeLessThan(speed('low-carbon-steel'));
    expect(speed('low-carbon-steel')).toBeLessThan(speed('free-machining-steel'));
  });

  it('has 304 and titanium as the two slowest with HSS', () => {
    const slowest = [...metals].sort((a, b) => a.speeds.turn[0] - b.speeds.turn[0]).slice(0, 2);
    expect(slowest.map((row) => row.name).sort()).toEqual(['stainless-304', 'titanium-6-4']);
  });
});
