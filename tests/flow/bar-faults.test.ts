/** A job whose bar has no room for what is to be turned. Source: geometry: a cut takes metal that is there. */
import { describe, expect, it } from 'vitest';
import { readFlowValue, resolveFlow, workOut } from '../../src/flow/index.ts';
import { cardNamed, flowWith, hingePin, kinds, tell } from './shipped.ts';

const mm = (is: number) => ({ is, unit: 'mm' });
const bar = { stockDiameter: mm(20), stockLength: mm(50) };
const cylinder = { kind: 'cylinder', id: 'shank', from: mm(0), to: mm(40), diameter: mm(16) };
const bore = { kind: 'bore', id: 'hole', end: 'right', depth: mm(30), diameter: mm(8) };

/** Sentences of the job that is begun with these features. */
function refusedWith(...features: readonly object[]): readonly string[] {
  const file = flowWith([tell('begin')], { piece: { ...bar, features } });
  const read = resolveFlow(readFlowValue('small', file), kinds);
  if (!read.ok) throw new Error(JSON.stringify(read.faults));
  const worked = workOut(read.flow, cardNamed('metric-lathe'), {});
  return worked.ok ? [] : worked.faults.map((fault) => fault.replaceAll('\u00a0', ' '));
}

describe('a job with a bar', () => {
  it('begins when everything has room, up to the whole bar', () => {
    expect(refusedWith(cylinder, bore)).toEqual([]);
    expect(refusedWith({ ...cylinder, to: mm(50), diameter: mm(20) })).toEqual([]);
  });

  it.each([
    [
      'a cylinder thicker than the bar',
      { ...cylinder, diameter: mm(20.5) },
      '20.50 mm',
      '20.00 mm',
    ],
    ['a cylinder longer than the bar', { ...cylinder, to: mm(51) }, '51.00 mm', '50.00 mm'],
    ['a hole as wide as the bar', { ...bore, diameter: mm(20) }, '20.00 mm', '20.00 mm'],
    ['a hole deeper than the bar', { ...bore, depth: mm(51) }, '51.00 mm', '50.00 mm'],
    [
      'a taper thicker than the bar at its large end',
      {
        ...cylinder,
        kind: 'taper',
        diameter: undefined,
        largeDiameter: mm(24),
        smallDiameter: mm(18),
      },
      '24.00 mm',
      '20.00 mm',
    ],
  ])('does not begin with %s', (_what, feature, wanted, there) => {
    const faults = refusedWith(feature);
    expect(faults).toHaveLength(1);
    expect(faults[0]).toContain(`it needs ${wanted} and the bar has ${there}`);
  });

  it('does not begin the shipped pin from a bar that is thinner than its shank', () => {
    const worked = workOut(hingePin(), cardNamed('metric-lathe'), {
      barDiameter: 18,
      pinDiameter: 20,
    });
    expect(worked.ok ? [] : worked.faults.join()).toMatch(/shank/i);
  });
});
