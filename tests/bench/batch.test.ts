import { describe, expect, test } from 'vitest';
import {
  characteristics,
  driftTold,
  groupSize,
  groupsOf,
  hear,
  type KeptReading,
} from '../../src/bench/index.ts';
import { limitsOf, positionOf, stepJob } from '../../src/flow/index.ts';
import { rightEvent } from '../flow/right-walk.ts';
import { cardNamed, inspect, jobOf, passes, smallFlow } from '../flow/shipped.ts';
import { begun, heardAs } from './scripted.ts';

const mm = (is: number) => ({ is, unit: 'mm' });
const limits = { lower: mm(24.95), upper: mm(25.05) };
const jobWith = (side: 'outside' | 'inside', crossDivision = 0.01) => {
  const card = cardNamed('metric-lathe');
  const flow = smallFlow([
    passes('turn', { ...limits, side }),
    inspect('measure', { ...limits, side }),
  ]);
  return jobOf(flow, {}, { ...card, values: { ...card.values, crossDivision } });
};

const piece = (value: number, more: Partial<KeptReading> = {}): readonly KeptReading[] => [
  {
    step: 'measure',
    reading: 'final',
    label: 'Final',
    unit: 'mm',
    value,
    lower: 24.95,
    upper: 25.05,
    at: 1,
    ...more,
  },
];

function told(values: readonly number[], job = jobWith('outside')): string | undefined {
  const [one] = characteristics(
    job,
    values.map((value) => piece(value)),
  );
  return one && driftTold(job, one)?.line;
}

describe('the drift of a batch', () => {
  // Means by hand: 25.002 to 25.008 is 25.005, five over the middle of 24.95 and 25.05.
  test('is told with what to take off, and where the dial goes', () => {
    expect(told([25.002, 25.004, 25.006, 25.008])).toBe(
      'The last four are each larger: take five microns off. Set the dial five microns further.',
    );
  });

  test('goes the other way for pieces that shrink, and for bores', () => {
    expect(told([24.998, 24.996, 24.994, 24.992])).toBe(
      'The last four are each smaller: leave five microns more on. Set the dial five microns less far.',
    );
    expect(told([25.002, 25.004, 25.006, 25.008], jobWith('inside'))).toBe(
      'The last four are each larger: make it five microns smaller. Set the dial five microns less far.',
    );
  });

  test('towards the middle is told, and the dial is left', () => {
    expect(told([24.97, 24.98, 24.99, 25])).toBe('The last four are each larger. Leave the dial.');
  });

  test('of a size that no passes make is told without the dial', () => {
    const flow = smallFlow([passes('turn'), inspect('measure', limits)]);
    const job = jobOf(flow, {}, cardNamed('inch-lathe'));
    // The dial of the inch card counts the radius, which a length has not: half a thou is half a division.
    expect(told([25.02, 25.022, 25.024, 25.026], job)).toBe(
      'The last four are each larger: make it one thou smaller.',
    );
    expect(told([24.98, 24.978, 24.976, 24.974], job)).toBe(
      'The last four are each smaller: make it one thou larger.',
    );
    expect(told([24.97, 24.98, 24.99, 25], job)).toBe('The last four are each larger.');
  });

  test('of three, or with one that is equal, is none', () => {
    expect(told([25.001, 25.002, 25.003])).toBeUndefined();
    expect(told([25.001, 25.002, 25.002, 25.003])).toBeUndefined();
  });
});

describe('the sizes of a batch', () => {
  const job = jobWith('outside');

  test('are those that are inspected; a size that was reworked counts as it ended', () => {
    const twice = [...piece(25.2), ...piece(25.01)];
    const between = piece(25.4, { step: 'turn', reading: 'size', label: 'Size' });
    const sizes = characteristics(job, [[...between, ...twice], piece(25.02)]);
    expect(sizes.map(({ label, values }) => [label, values])).toEqual([['Final', [25.01, 25.02]]]);
  });

  test('are also those of passes that stand in the drawing', () => {
    const piece = {
      stockDiameter: mm(30),
      stockLength: mm(50),
      features: [{ kind: 'cylinder', id: 'rim', to: mm(4), diameter: mm(25), reading: 'size' }],
    };
    const steps = [passes('turn', limits), inspect('measure', limits)];
    const drawn = jobOf(smallFlow(steps, { piece }));
    const turned = { step: 'turn', reading: 'size', label: 'Size', value: 25.03 };
    const kept = { unit: 'mm', lower: 24.95, upper: 25.05, at: 1 };
    const final = { ...kept, step: 'measure', reading: 'final', label: 'Final', value: 25.02 };
    const pieces = [[{ ...kept, ...turned }, final]];
    expect(characteristics(drawn, pieces).map(({ label }) => label)).toEqual(['Size', 'Final']);
    expect(characteristics(job, pieces).map(({ label }) => label)).toEqual(['Final']);
  });

  test('stand in the chart by whole groups of pairs, threes or fives', () => {
    expect([4, 11, 12, 19, 20].map(groupSize)).toEqual([2, 2, 3, 3, 5]);
    expect(groupsOf([1, 2, 3, 4, 5])).toEqual([
      [1, 2],
      [3, 4],
    ]);
  });
});

describe('a run that is a piece of a batch', () => {
  /** The shipped job led to its first inspection by doing everything right. */
  function atInspection() {
    const { state } = begun();
    let { snapshot } = state;
    for (let turns = 0; turns < 600; turns += 1) {
      const step = state.job.flow.steps.get(positionOf(snapshot).step);
      if (step?.kind === 'inspect' && positionOf(snapshot).phase === 'open') {
        const found = limitsOf(step, state.job.numbers, snapshot.context.readings);
        if (found) return { state: { ...state, snapshot }, step, limits: found };
      }
      snapshot = stepJob(state.job, snapshot, rightEvent(state.job, snapshot));
    }
    throw new Error('No inspection comes.');
  }

  test('hears of the drift as soon as the fourth is measured, and why', () => {
    const { state, step, limits: found } = atInspection();
    const middle = (found.lower + found.upper) / 2;
    const was = (value: number): readonly KeptReading[] => [
      {
        ...found,
        step: step.id,
        reading: step.reading.id,
        label: 'Shank',
        unit: 'mm',
        value,
        at: 1,
      },
    ];
    const least = Number((middle - 0.005).toFixed(2));
    const earlier = [least, least + 0.001, least + 0.002].map(was);
    const size = String(Number((least + 0.01).toFixed(2)));
    const inBatch = { ...state, batch: { earlier } };
    const read = hear(inBatch, heardAs(size));
    const taken = hear(read.state, heardAs('correct'));
    const lines = taken.effects.flatMap((one) => (one.kind === 'say' ? [one.line] : []));
    expect(lines.join(' ')).toMatch(/^The last four are each larger/);
    const why = hear(taken.state, heardAs('why that'));
    const [line = ''] = why.effects.flatMap((one) => (one.kind === 'say' ? [one.line] : []));
    expect(line).toMatch(/the last 4 of 4: rising.*Source: /);
    const alone = hear(hear(state, heardAs(size)).state, heardAs('correct'));
    expect(JSON.stringify(alone.effects)).not.toMatch(/each larger/);
  });
});
