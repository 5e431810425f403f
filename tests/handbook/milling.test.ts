/** Milling and indexing against worked examples. */

import { describe, expect, it } from 'vitest';
import { answerRule, findRule } from '../../src/trade/index.ts';
import { type PublishedWord, published, publishedWords } from './published.ts';

const GROOVER = 'Groover examples: drilling, slab milling (lecture copy)';
const KALPAKJIAN = 'from memory: Kalpakjian & Schmid, slab and face milling examples';
const PAGES = 'Tool-maker technical pages: printed milling problem';
const CARVILL = "Carvill, Mechanical Engineer's Data Handbook, p. 187";
const NIAGARA = 'Milling handbook 1973, feed per tooth';
const CHIPS = 'Milling chip thickness pages (cutter maker, titles not kept)';
const GEOMETRY = 'geometry';

published('speeds and feeds', [
  ['cutter-speed surfaceSpeed=28 cutter=20', 446, 'rev/min', 1, CARVILL],
  ['cutter-speed surfaceSpeed=80 cutter=250', 101.86, 'rev/min', 0.1, PAGES],
  ['cutter-speed surfaceSpeed=70 cutter=80', 278.5, 'rev/min', '0.5%', GROOVER],
  [
    'cutter-speed surfaceSpeed=28 cutter=20 speeds=70,200,350,500',
    350,
    'rev/min',
    1e-9,
    'common practice, no source: the next lower speed',
  ],
  ['table-feed feedPerTooth=0.004in teeth=32 spindleSpeed=88', 11.264, 'in/min', 0.01, NIAGARA],
  ['table-feed feedPerTooth=0.05 teeth=4 spindleSpeed=600', 120, 'mm/min', 1e-9, 'derived: fz z n'],
  ['table-feed feedPerTooth=0.25 teeth=22 spindleSpeed=278.5', 1531.9, 'mm/min', '0.5%', GROOVER],
  ['table-feed feedPerTooth=0.25 teeth=20 spindleSpeed=100', 500, 'mm/min', 1e-9, KALPAKJIAN],
  [
    'table-feed feedPerTooth=0.05 teeth=4 spindleSpeed=600 feeds=50,80,100,160',
    100,
    'mm/min',
    1e-9,
    'common practice, no source: the next lower feed',
  ],
]);

const DEPTH = 'derived: equal cuts, none deeper than the deepest; common practice, no source';

published('cuts down to a depth', [
  ['depth-passes depth=6 reached=0 deepestPass=2', 2, 'mm', 1e-9, DEPTH],
  ['depth-passes.passes depth=6 reached=0 deepestPass=2.5', 3, '', 1e-9, DEPTH],
  ['depth-passes depth=6 reached=5.5 deepestPass=2', 0.5, 'mm', 1e-9, DEPTH],
  ['depth-passes.passes depth=0.25in reached=0 deepestPass=0.1in', 3, '', 1e-9, DEPTH],
]);

published('chip thinning', [
  ['chip-thinning.factor chip=0.05 cutter=12 width=1.2', 0.6, '', 0.0005, GEOMETRY],
  ['chip-thinning chip=0.05 cutter=12 width=1.2', 0.0833, 'mm', 0.0005, GEOMETRY],
  ['chip-thinning.factor chip=0.05 cutter=20 width=10', 1, '', 1e-6, GEOMETRY],
  ['chip-thinning chip=0.08 cutter=100 width=60 edgeAngle=45', 0.113, 'mm', 0.001, CHIPS],
]);

const THIN = 'derived: hm = fz √(ae/D) (cutter maker); the whole formula reads 1 % higher';
published('power', [
  [
    'milling-cut-power depth=8 width=3 cutter=12 teeth=4 feedPerTooth=0.05 spindleSpeed=600 kc=1500 mc=0.22',
    0.1621,
    'kW',
    '2%',
    THIN,
  ],
  [
    'milling-cut-power depth=2 width=80 cutter=250 teeth=12 feedPerTooth=0.229074 spindleSpeed=101.86 kc=1800 mc=0',
    1.344,
    'kW',
    '0.5%',
    PAGES,
  ],
  [
    'milling-cut-power.atMotor depth=2 width=80 cutter=250 teeth=12 feedPerTooth=0.229074 spindleSpeed=101.86 kc=1800 mc=0',
    1.68,
    'kW',
    0.01,
    PAGES,
  ],
  [
    'milling-cut-power.removal depth=60 width=5 cutter=80 teeth=22 feedPerTooth=0.25 spindleSpeed=278.5 kc=1800 mc=0.25',
    459560,
    'mm3/min',
    '0.5%',
    GROOVER,
  ],
  [
    'milling-cut-power.removal depth=3 width=60 cutter=150 teeth=10 feedPerTooth=0.6 spindleSpeed=100 kc=1800 mc=0.25',
    108000,
    'mm3/min',
    '0.5%',
    KALPAKJIAN,
  ],
  [
    'milling-cut-power depth=3 width=60 cutter=150 teeth=10 feedPerTooth=0.6 spindleSpeed=100 kc=1100 mc=0',
    1.98,
    'kW',
    '0.5%',
    KALPAKJIAN,
  ],
]);

published('time', [
  ['milling-time.runUp length=400 feed=1531.9 cutter=80 across=5', 19.36, 'mm', 0.01, GROOVER],
  ['milling-time length=400 feed=1531.9 cutter=80 across=5', 0.2738, 'min', '0.5%', GROOVER],
  ['milling-time length=300 feed=500 cutter=50 across=3', 37.5, 's', '1%', KALPAKJIAN],
  [
    'milling-time.runUp length=100 feed=100 cutter=63 across=40 kind=face',
    7.164,
    'mm',
    0.005,
    'derived: (D − √(D² − w²)) ÷ 2',
  ],
  [
    'milling-time length=500 feed=600 cutter=150 across=60 kind=face overrun=143.74',
    65,
    's',
    '1%',
    `${KALPAKJIAN}; takes D ÷ 2 at both ends`,
  ],
]);

const ARMY = 'US Army OD1644, indexing';
const FOX = 'Fox Valley Technical College, angular indexing';
const MH_1916 = "Machinery's Handbook 1916";

publishedWords('indexing', [
  ['indexing divisions=6 circles=18', '6 turns + 12 holes on 18', ARMY],
  ['indexing divisions=6 circles=39', '6 turns + 26 holes on 39', ARMY],
  ['indexing divisions=7 circles=49', '5 turns + 35 holes on 49', 'derived: 40 ÷ 7'],
  ['indexing divisions=7 circles=21', '5 turns + 15 holes on 21', 'derived: 40 ÷ 7'],
  ['indexing divisions=24 circles=18', '1 turn + 12 holes on 18', 'derived: 40 ÷ 24'],
  ['indexing divisions=24 circles=39', '1 turn + 26 holes on 39', 'derived: 40 ÷ 24'],
  ['indexing divisions=40', '1 turn', 'derived: 40 ÷ 40'],
  ['indexing divisions=100 circles=20,30', '8 holes on 20', 'derived: 40 ÷ 100'],
  ['indexing-angle angle=45', '5 turns', FOX],
  ['indexing-angle angle=19 circles=54', '2 turns + 6 holes on 54', FOX],
  ['indexing-angle angle=35 circles=18', '3 turns + 16 holes on 18', MH_1916],
] satisfies PublishedWord[]);

describe('counts that plain indexing cannot do', () => {
  it('refuses 127 divisions on the usual plates (derived: 127 is prime and on no circle)', () => {
    const rule = findRule('indexing');
    const answer = rule && answerRule(rule, { divisions: 127 });
    expect(answer?.ok).toBe(false);
  });
});

published('rotary table, tramming, bolt circle', [
  ['rotary-table divisions=7', 51.428571, 'deg', 1e-5, GEOMETRY],
  ['rotary-table.turns divisions=7', 12, '', 1e-9, 'derived: 51.43° ÷ 4°'],
  ['rotary-table.rest divisions=7', 3.428571, 'deg', 1e-5, 'derived: 51.43° − 48°'],
  ['rotary-table.turns divisions=12 ratio=40', 3, '', 1e-9, 'derived: 30° ÷ 9°'],
  ['tramming-error sweep=200 difference=0.05', 0.014324, 'deg', 1e-6, 'derived: asin(0.05 ÷ 200)'],
  ['tramming-error.per100 sweep=200 difference=0.05', 0.025, 'mm', 1e-9, 'derived: 0.05 ÷ 2'],
  [
    'tramming-error.hollow sweep=200 difference=0.05 cutter=50 width=40',
    0.0025,
    'mm',
    1e-9,
    'derived: 0.00025 × (50 − 30) ÷ 2',
  ],
  [
    'bolt-circle holes=6 diameter=100',
    50,
    'mm',
    1e-9,
    'geometry: the hexagon has the radius for its side',
  ],
  ['bolt-circle holes=4 diameter=100', 70.710678, 'mm', 1e-6, 'geometry: side of the square'],
  ['bolt-circle holes=5 diameter=2in', 1.175571, 'in', 1e-6, 'geometry: side of the pentagon'],
  [
    'square-up roughLength=104 roughWidth=53 roughHeight=32 finishLength=100 finishWidth=50 finishHeight=30',
    6,
    '',
    1e-9,
    'common practice, no source: six faces',
  ],
]);
