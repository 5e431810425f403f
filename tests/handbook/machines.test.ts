/** Drill press, band saw and grinder against handbooks and law. */

import { describe, expect, it } from 'vitest';
import { answerRule, findRule, type RuleValues } from '../../src/trade/index.ts';
import { published, publishedWords } from './published.ts';

const DERIVED_WHEEL = 'derived: v = π D n ÷ 60 000';
const OSHA = '29 CFR 1910.215';
const MH_31 = "Machinery's Handbook 31 p. 1245";
const THREE_TEETH =
  'Agricultural Mechanics and Technology Systems (2017) p. 202: at least three teeth in the cut';
const NEXT_LOWER = 'common practice, no source: the next lower step';

published('grinding wheels', [
  [
    'grinding-wheel-speed wheel=150 spindleSpeed=2850 markedSpeed=35',
    22.38,
    'm/s',
    0.02,
    DERIVED_WHEEL,
  ],
  [
    'grinding-wheel-speed wheel=200 spindleSpeed=2850 markedSpeed=35',
    29.85,
    'm/s',
    0.02,
    DERIVED_WHEEL,
  ],
  [
    'grinding-wheel-speed wheel=6in spindleSpeed=3600 markedSpeed=6500ft/min',
    5655,
    'ft/min',
    5,
    DERIVED_WHEEL,
  ],
  [
    'grinding-wheel-speed.most wheel=200 spindleSpeed=2850 markedSpeed=35',
    3342,
    'rev/min',
    2,
    DERIVED_WHEEL,
  ],
]);

const SFPM = 'from memory: ANSI B7.1, table of wheel speeds: surface feet a minute to turns';

published('turns that a mark allows', [
  ['wheel-turns wheel=6in markedSpeed=6500ft/min', 4138, 'rev/min', 0.5, SFPM],
  ['wheel-turns wheel=8in markedSpeed=6500ft/min', 3104, 'rev/min', 0.5, SFPM],
  ['wheel-turns wheel=200 markedSpeed=35', 3342, 'rev/min', 0.5, DERIVED_WHEEL],
  ['grinder-speed wheel=200 markedSpeed=35 speeds=2850', 2850, 'rev/min', 1e-9, `${OSHA}(d)(1)`],
  [
    'grinder-speed wheel=200 markedSpeed=25 speeds=1425,2850',
    1425,
    'rev/min',
    1e-9,
    `${OSHA}(d)(1)`,
  ],
]);

function refusal(name: string, values: RuleValues): string {
  const rule = findRule(name);
  const answer = rule && answerRule(rule, values);
  return answer === undefined || answer.ok ? 'answered' : answer.fault;
}

describe('what is refused', () => {
  it.each([
    [200, 3450, 35, '200 mm at 3450 is 36.13 m/s (derived)'],
    [203.2, 3450, 33.02, '8 in at 3450 is 7226 ft/min against 6500 (derived)'],
  ])(
    'refuses a %d mm wheel at %d rev/min marked %d m/s [%s]',
    (wheel, spindleSpeed, markedSpeed) => {
      const told = refusal('grinding-wheel-speed', { wheel, spindleSpeed, markedSpeed });
      expect(told).toContain('burst');
    },
  );
  it(`refuses a spindle faster than the marked revolutions [${OSHA}(d)(1)]`, () => {
    const values = { wheel: 200, spindleSpeed: 3600, markedTurns: 3450 };
    expect(refusal('grinding-wheel-speed', values)).toContain('burst');
  });
  it(`refuses a grinder whose slowest speed is above the mark [${OSHA}(d)(1)]`, () => {
    const marked = { wheel: 200, markedSpeed: 35, speeds: [2850, 3450] };
    const told = refusal('grinder-speed', { ...marked, chuckLimit: 2800 });
    expect(told).toContain("2850 rev/min, and the wheel's mark allows 2800: the wheel can burst");
    expect(refusal('grinder-speed', { ...marked, markedSpeed: 25 })).toContain('of this size');
  });
  it('refuses a wheel without a mark', () => {
    expect(refusal('grinding-wheel-speed', { wheel: 200, spindleSpeed: 100 })).toContain('mark');
  });
  it(`refuses a work rest over 1/8 in and a tongue guard over 1/4 in [${OSHA}(a)(4), (b)(9)]`, () => {
    expect(refusal('grinder-gaps', { rest: 3.2, tongue: 6 })).toContain('work rest');
    expect(refusal('grinder-gaps', { rest: 3, tongue: 6.4 })).toContain('tongue guard');
    expect(refusal('grinder-gaps', { rest: 3.175, tongue: 6.35 })).toBe('answered');
  });
});

published('gaps', [
  ['grinder-gaps.mostRest rest=2 tongue=5', 0.125, 'in', 1e-9, `${OSHA}(a)(4); 30 CFR 56.14115(b)`],
  ['grinder-gaps.mostTongue rest=2 tongue=5', 0.25, 'in', 1e-9, `from memory: ${OSHA}(b)(9)`],
]);

published('band saws', [
  ['saw-speed material=1018 thickness=0.75in', 336, 'ft/min', 2, MH_31],
  ['saw-speed material=1018 thickness=4in blade=carbon', 150, 'ft/min', 2, MH_31],
  ['saw-speed material=12L14 thickness=4in', 425, 'ft/min', 1e-6, MH_31],
  ['saw-speed material=304 thickness=4in', 120, 'ft/min', 1e-6, MH_31],
  ['saw-speed material=1117 thickness=4in', 340, 'ft/min', 1e-6, MH_31],
  ['saw-speed material=1040 thickness=8in', 270 * 0.88, 'ft/min', 0.5, MH_31],
  ['saw-speed material=1018 thickness=0.25in', 345, 'ft/min', 2, MH_31],
  ['band-speed wheel=300 wheelSpeed=60', 56.5, 'm/min', 0.1, 'derived: π D n ÷ 1000'],
  ['saw-pitch.least thickness=1in', 3, 'tpi', 1e-9, THREE_TEETH],
  ['saw-pitch.least thickness=0.125in', 24, 'tpi', 1e-9, THREE_TEETH],
  ['saw-pitch thickness=6', 14, 'tpi', 1e-9, `${THREE_TEETH}: 12.7 wanted, 14 is the next`],
  ['saw-pitch thickness=20 blades=4,6,10', 4, 'tpi', 1e-9, `${THREE_TEETH}: 3.8 wanted`],
]);

const WORKED = 'derived: worked out by hand from the geometry';

published('sawing to length', [
  ['teeth-in-cut thickness=1in teeth=3', 3, '', 1e-9, THREE_TEETH],
  ['teeth-in-cut thickness=25 teeth=10', 9.84, '', 0.01, `${THREE_TEETH}; 25 ÷ 25.4 × 10`],
  // 4 in at 300 ft/min is 91.4 m/min; three quarters of an inch at 336 is 102.4.
  ['band-card-speed surfaceSpeed=300ft/min speeds=20,40,60,90', 90, 'm/min', 1e-9, NEXT_LOWER],
  ['band-card-speed surfaceSpeed=120ft/min speeds=20,40,60,90', 20, 'm/min', 1e-9, NEXT_LOWER],
  ['band-card-speed surfaceSpeed=90 cardLimit=70 speeds=20,40,60,90', 60, 'm/min', 0, NEXT_LOWER],
  ['saw-blank length=70 allowance=1.5 kerf=1.3 bar=1000 grip=80', 73, 'mm', 1e-9, WORKED],
  ['saw-blank.pieces length=70 allowance=1.5 kerf=1.3 bar=1000 grip=80', 12, '', 1e-9, WORKED],
  ['saw-blank.left length=70 allowance=1.5 kerf=1.3 bar=1000 grip=80', 108.4, 'mm', 1e-6, WORKED],
  ['grind-length length=250 most=5 bar=252', 255, 'mm', 1e-9, WORKED],
  // π × 25² ÷ 4 = 490.9 mm², at 12 cm² a minute; a square inch at an inch a minute.
  ['saw-time width=25 rate=12cm2/min', 0.409, 'min', 0.0005, WORKED],
  ['saw-time section=flat-bar width=1in height=1in rate=2in2/min', 0.5, 'min', 1e-9, WORKED],
]);

published('drill press', [
  [
    'drill-press-step surfaceSpeed=28 drill=10 steps=500,900,1400,2200',
    500,
    'rev/min',
    1e-9,
    NEXT_LOWER,
  ],
  [
    'drill-press-step surfaceSpeed=28 drill=6 steps=500,900,1400,2200',
    1400,
    'rev/min',
    1e-9,
    NEXT_LOWER,
  ],
  [
    'drill-press-step.ideal surfaceSpeed=28 drill=20 steps=500',
    445.6,
    'rev/min',
    0.1,
    'derived: 1000 v ÷ (π D)',
  ],
]);
publishedWords('drill press', [
  ['drill-press-step surfaceSpeed=28 drill=6 steps=2200,500,1400,900', 'step 3', NEXT_LOWER],
  ['drill-press-step surfaceSpeed=28 drill=30 steps=500,900', 'step 1', NEXT_LOWER],
]);
