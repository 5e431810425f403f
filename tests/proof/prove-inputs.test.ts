import { describe, expect, it } from 'vitest';
import { readFlowValue, resolveFlow, workOut } from '../../src/flow/index.ts';
import { proveInputs } from '../../src/proof/index.ts';
import { inputSetsOf } from '../../src/proof/input-sets.ts';
import { cardNamed, cut, flowWith, hingePin, kinds, tell } from '../flow/shipped.ts';

const card = cardNamed('metric-lathe');

function flowOf(inputs: readonly object[], steps: readonly Record<string, unknown>[], more = {}) {
  const value: unknown = JSON.parse(JSON.stringify(flowWith(steps, { inputs, ...more })));
  const read = resolveFlow(readFlowValue('small', value), kinds);
  if (!read.ok) throw new Error(read.faults.map(({ message }) => message).join('\n'));
  return read.flow;
}

const size = (id: string) => ({
  id,
  label: id,
  quantity: 'length',
  unit: 'mm',
  min: 5,
  max: 20,
  default: 10,
});
const metal = { id: 'metal', label: 'Metal', options: ['brass', 'steel'], default: 'steel' };
const still = { needs: { spindle: 'stopped' } };

describe('the sets of numbers', () => {
  it('are all combinations of both ends, what is proposed and every choice, where these are few', () => {
    const { how, sets, possible } = inputSetsOf(
      flowOf([size('long'), metal], [tell('only', still)]),
      card,
    );
    expect([how, possible, sets.length]).toEqual(['all', 6, 6]);
    expect(sets[0]?.name).toBe('long 10 mm, metal steel');
    expect(sets.map(({ name }) => name)).toContain('long 5 mm, metal brass');
  });

  it('count the combinations that no job begins with', () => {
    const plan = {
      id: 'plan',
      label: 'Plan',
      rule: 'pass-plan',
      given: {
        stockDiameter: { is: 25, unit: 'mm' },
        finishDiameter: { is: 16, unit: 'mm' },
        deepestCut: { input: 'deepest' },
        finishAllowance: { input: 'left' },
      },
    };
    const deepest = { ...size('deepest'), min: 0.2, default: 1.5, max: 3 };
    const left = { ...size('left'), min: 0.1, default: 0.5, max: 1 };
    const flow = flowOf([deepest, left], [tell('only', still)], { workings: [plan] });
    const { sets, refused } = inputSetsOf(flow, card);
    // The last cut takes half of what is left on the diameter: 0.25 and 0.5 are deeper than the 0.2 that may be cut.
    expect([sets.length, refused]).toEqual([7, 2]);
  });

  it('bring every three values of the hinge pin together, or say which were not found so', () => {
    const flow = hingePin();
    const { how, sets, apart } = inputSetsOf(flow, card);
    expect(how).toBe('triples');
    expect(sets.filter(({ inputs }) => !workOut(flow, card, inputs).ok)).toEqual([]);
    const met = new Set(sets.flatMap(({ name }) => threes(name.split(', ')).map(String)));
    const values = flow.file.inputs.map((input) =>
      'options' in input
        ? input.options.map((one) => `${input.id} ${one}`)
        : [input.min, input.default, input.max].map((one) => `${input.id} ${one} ${input.unit}`),
    );
    const missing = threes(values)
      .flatMap(([as = [], bs = [], cs = []]) =>
        as.flatMap((a) => bs.flatMap((b) => cs.map((c) => [a, b, c]))),
      )
      .filter((three) => !met.has(String(three)));
    const together = [
      // A bar has metal where the pin is cut from it.
      ...[25, 18].map((bar) => [`barDiameter ${bar} mm`, 'pinDiameter 30 mm']),
      ['blankLength 73 mm', 'overallLength 100 mm'],
      ...[70, 100].map((whole) => ['blankLength 60 mm', `overallLength ${whole} mm`]),
      // The last cut takes half of what is left on the diameter, and that is deeper than may be cut.
      ...[0.5, 1].map((left) => ['deepestCut 0.2 mm', `finishAllowance ${left} mm`]),
    ];
    expect(apart).toEqual(together.map(([one, other]) => `${one} with ${other}`));
    expect(missing.length).toBeGreaterThan(0);
    const others = missing.filter(
      (three) => !together.some((two) => two.every((one) => three.includes(one))),
    );
    expect(others).toEqual([]);
  });
});

/** Every three of a list, in its order. */
function threes<T>(list: readonly T[]): readonly (readonly T[])[] {
  return list.flatMap((a, i) =>
    list.slice(i + 1).flatMap((b, j) => list.slice(i + j + 2).map((c) => [a, b, c])),
  );
}

describe('a proof for the numbers that may be put in', () => {
  const ready = { needs: { tailstock: 'back' } };

  it('holds for a flow that no number can break, and says what it covers', () => {
    const flow = flowOf([size('long'), metal], [cut('turn', ready), tell('leave', still)]);
    const { verdict, together, covers } = proveInputs(flow, card);
    expect(verdict).toBe('proved');
    expect(together).toMatchObject({ how: 'all', possible: 6, walked: 6, refused: 0 });
    expect(covers).toContain('Sizes between the ends are not walked.');
  });

  it('[LATHE-CHUCK-LIMIT] finds the numbers with which a speed is too high for the chuck', () => {
    const speed = {
      id: 'fast',
      label: 'Speed',
      rule: 'spindle-speed',
      given: { diameter: { input: 'long' }, surfaceSpeed: { is: 30, unit: 'm/min' } },
    };
    const flow = flowOf(
      [size('long')],
      [cut('turn', { ...ready, speed: { working: 'fast' } }), tell('leave', still)],
      { workings: [speed] },
    );
    const { verdict, problems } = proveInputs(flow, card);
    expect(verdict).toBe('broken');
    // 1000 × 30 ÷ (π × 5) = 1910 rev/min, and the chuck of the card is marked 1600; at 10 mm it is 955.
    const found = problems.map(({ claim, numbers }) => `${claim} with ${numbers}`);
    expect(new Set(found)).toEqual(new Set(['LATHE-CHUCK-LIMIT with long 5 mm']));
  });
});
