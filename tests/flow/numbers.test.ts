import { describe, expect, test } from 'vitest';
import {
  compileJob,
  defaultInputs,
  readFlowValue,
  readingsBehind,
  resolveFlow,
  workOut,
} from '../../src/flow/index.ts';
import { cardNamed, flowWith, hingePin, jobOf, kinds, smallFlow, tell } from './shipped.ts';

const inchInput = {
  id: 'bar',
  label: 'Bar',
  quantity: 'length',
  unit: 'in',
  min: 0.5,
  max: 1.5,
  default: 0.75,
};
const metal = {
  id: 'metal',
  label: 'Metal',
  options: ['low-carbon-steel', 'free-cutting-brass'],
  default: 'low-carbon-steel',
};
const metric = cardNamed('metric-lathe');

describe('inputs', () => {
  const flow = smallFlow([tell('a')], { inputs: [inchInput, metal] });

  test('begin with the defaults of the flow, in base units', () => {
    // 0.75 in × 25.4 = 19.05 mm (International Yard and Pound Agreement 1959).
    expect(defaultInputs(flow)).toEqual({ bar: 19.05, metal: 'low-carbon-steel' });
  });

  test('may be given at either end of their range', () => {
    // 0.5 in = 12.7 mm, 1.5 in = 38.1 mm.
    for (const bar of [12.7, 38.1]) expect(workOut(flow, metric, { bar }).ok).toBe(true);
  });

  test.each([
    [{ bar: 12.69 }, 'Bar: 12.69 is outside 0.5 to 1.5 in.'],
    [{ bar: 38.2 }, 'Bar: 38.2 is outside 0.5 to 1.5 in.'],
    [{ bar: Number.NaN }, 'Bar: NaN is outside 0.5 to 1.5 in.'],
    [{ bar: 'thick' }, 'Bar: thick is outside 0.5 to 1.5 in.'],
    [{ metal: 'lead' }, 'Metal: "lead" is not one of low-carbon-steel, free-cutting-brass.'],
  ])('are refused as %j', (given, sentence) => {
    expect(workOut(flow, metric, given)).toEqual({ ok: false, faults: [sentence] });
  });

  test('are refused together with a card of another kind of machine', () => {
    const mill = { ...metric, title: 'Yard mill', machineKind: 'mill' };
    expect(compileJob(flow, mill, { bar: 0, metal: 'lead' })).toEqual({
      ok: false,
      faults: [
        'Bar: 0 is outside 0.5 to 1.5 in.',
        'Metal: "lead" is not one of low-carbon-steel, free-cutting-brass.',
        '"Yard mill" is a mill; this flow is for a lathe. Choose another machine card.',
      ],
    });
  });
});

describe('workings', () => {
  const speed = (id: string, diameter: object, more: object = {}) => ({
    id,
    label: `Speed ${id}`,
    rule: 'spindle-speed',
    given: { diameter, surfaceSpeed: { is: 30, unit: 'm/min' } },
    ...more,
  });
  const measured = {
    kind: 'measure',
    id: 'gauge',
    title: 'Gauge',
    say: 'Measure.',
    gates: [],
    needs: { spindle: 'stopped' },
    reading: {
      id: 'now',
      label: 'Now',
      unit: 'mm',
      decimals: 2,
      min: { is: 1, unit: 'mm' },
      max: { is: 90, unit: 'mm' },
    },
  };
  const flow = smallFlow([measured, tell('after')], {
    inputs: [inchInput],
    workings: [
      speed('fixed', { input: 'bar' }),
      speed('later', { reading: 'now' }),
      speed('inch', { is: 2, unit: 'in' }),
    ],
  });
  const { numbers } = jobOf(flow);
  const known = (id: string, readings = {}) => numbers.number({ working: id }, readings);

  test('follow n = 1000 v ÷ (π D), whatever unit the diameter came in', () => {
    // 30 m/min on 19.05 mm: 30 000 ÷ (3.14159 × 19.05) = 501.275 rev/min.
    expect(known('fixed')).toBeCloseTo(501.275, 2);
    // 2 in is 50.8 mm: 30 000 ÷ (3.14159 × 50.8) = 187.98.
    expect(known('inch')).toBeCloseTo(187.98, 2);
  });

  test('wait for the reading behind them, and change with it', () => {
    expect(known('later')).toBeUndefined();
    // 30 000 ÷ (3.14159 × 20) = 477.46; on 10 twice that.
    expect(known('later', { now: 20 })).toBeCloseTo(477.46, 2);
    expect(known('later', { now: 10 })).toBeCloseTo(954.93, 2);
  });

  test('never take the default of a rule for a size that is still to be measured', () => {
    const blade = {
      id: 'blade',
      label: 'Blade',
      rule: 'parting-blade',
      given: {
        diameter: { is: 40, unit: 'mm' },
        boreDiameter: { reading: 'now' },
        bladeWidth: { is: 3, unit: 'mm' },
      },
    };
    const work = jobOf(smallFlow([measured, tell('after')], { workings: [blade] })).numbers;
    expect(work.working('blade', {})).toEqual({ ok: false, fault: 'Now is not measured yet.' });
    // (40 − 20) ÷ 2 + 2 = 12.
    expect(work.number({ working: 'blade' }, { now: 20 })).toBe(12);
  });

  test('are worked out once for the same readings', () => {
    const readings = { now: 20 };
    expect(numbers.working('later', readings)).toBe(numbers.working('later', readings));
    expect(numbers.working('fixed', readings)).toBe(numbers.working('fixed', {}));
  });

  test('that a rule refuses are a fault of the job, as a sentence', () => {
    // The slowest speed of the card is 70, the chuck of this one allows 60.
    const pin = hingePin();
    const slow = { ...metric, values: { ...metric.values, chuckLimit: 60 } };
    const made = compileJob(pin, slow);
    expect(made.ok ? [] : made.faults.map((fault) => fault.split(':')[0])).toEqual([
      'Spindle speed, turning',
      'Spindle speed, facing',
      'Cutting time of the shank',
      'Spindle speed, centre drill',
      'Spindle speed, drilling',
    ]);
    expect(made.ok ? '' : made.faults[0]).toContain('no speed of this machine is safe here');
  });
});

describe('the readings behind a value', () => {
  const doubling = (count: number) =>
    Array.from({ length: count }, (_, index) => ({
      id: `w${index}`,
      label: 'W',
      rule: 'facing-plan',
      given: {
        measured: index === 0 ? { input: 'bar' } : { working: `w${index - 1}` },
        finishLength: index === 0 ? { input: 'bar' } : { working: `w${index - 1}` },
        deepestCut: { is: 1, unit: 'mm' },
      },
    }));

  test('are found once for each working, however often it is used', () => {
    // Followed anew at each use, eighty workings that use the one above twice would be 2⁸⁰ walks.
    const read = resolveFlow(
      readFlowValue(
        'deep.json',
        flowWith([tell('a')], { inputs: [inchInput], workings: doubling(80) }),
      ),
      kinds,
    );
    expect(read.ok && readingsBehind({ working: 'w79' }, read.flow.scope)).toEqual([]);
  });

  test('end where workings use each other in a circle', () => {
    const [first, second] = doubling(2);
    const circle = [{ ...first, given: { ...second?.given, measured: { working: 'w1' } } }, second];
    const steps = [tell('a', { say: 'Take {w1}.' })];
    const read = resolveFlow(
      readFlowValue('c.json', flowWith(steps, { inputs: [inchInput], workings: circle })),
      kinds,
    );
    expect(read.ok ? [] : read.faults.map((fault) => fault.message)).toEqual([
      '"w1" stands below "w0". Workings are done from top to bottom: move "w1" above.',
      'The working "w0" cannot use itself. Take its value from somewhere else.',
    ]);
  });
});
