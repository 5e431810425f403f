/** A piece that is a block: what its file may say, and what a job refuses. */
import { describe, expect, it } from 'vitest';
import { faultMessage, readFlowValue, resolveFlow, workOut } from '../../src/flow/index.ts';
import { german } from '../../src/texts/de/index.ts';
import { cardNamed, flowWith, kinds, tell } from './shipped.ts';

const mm = (is: number) => ({ is, unit: 'mm' });
const stock = { stockLength: mm(60), stockWidth: mm(25), stockHeight: mm(18) };
const face = { kind: 'face', id: 'top', side: 'top', size: mm(16) };
const slot = { kind: 'slot', id: 'slot', along: 'length', width: mm(10), depth: mm(6) };
const shoulder = { kind: 'shoulder', id: 'edge', edge: 'left', width: mm(8), depth: mm(4) };
const hole = { kind: 'hole', id: 'bore', fromLeft: mm(20), fromFront: mm(10), diameter: mm(5) };

const flowOf = (features: readonly object[], more: object = {}) =>
  readFlowValue('small', flowWith([tell('begin')], { piece: { ...stock, features, ...more } }));

function faultsOf(features: readonly object[], more: object = {}): readonly string[] {
  const read = resolveFlow(flowOf(features, more), kinds);
  return read.ok ? [] : read.faults.map(({ path, message }) => `${path} — ${message}`);
}

describe('a block in a flow', () => {
  it('is read with every feature', () => {
    expect(faultsOf([face, slot, shoulder, hole])).toEqual([]);
  });

  it.each([
    [
      'a feature of no kind',
      [{ ...slot, kind: 'slott' }],
      'Expected a feature of a block (face, slot, shoulder, hole), found "slott". Did you mean "slot"?',
    ],
    [
      'a slot with no depth',
      [{ ...slot, depth: undefined }],
      'depth — Expected where the value comes from',
    ],
    ['a face of no side', [{ ...face, side: 'upper' }], 'found "upper"'],
    [
      'a key of a turned feature',
      [{ ...face, diameter: mm(4) }],
      'The key "diameter" is not known here. Take it out. Known here: kind, id, given, lower, upper, reading, side, size.',
    ],
    ['two features of one name', [face, { ...slot, id: 'top' }], 'The feature "top" stands twice.'],
    [
      'a reading of the depth that is none',
      [{ ...slot, reading: 'deep' }],
      'There is no reading "deep".',
    ],
    [
      'a reading of the width that is none',
      [{ ...slot, widthReading: 'wide' }],
      'There is no reading "wide".',
    ],
    ['a value that is not there', [{ ...slot, depth: { input: 'deep' } }], '"deep"'],
    ['an angle for a length', [{ ...slot, width: { is: 45, unit: 'deg' } }], '"deg"'],
    ['a length for an angle', [{ ...hole, pointAngle: mm(118) }], '"mm"'],
  ])('is refused with %s', (_what, features, sentence) => {
    const faults = faultsOf(features);
    expect(faults.join('\n')).toContain(sentence);
    expect(faults).toHaveLength(1);
    expect(faults[0]).toMatch(/^\$?\.?piece/);
  });

  it('has no diameter of stock', () => {
    expect(faultsOf([], { stockDiameter: mm(20) }).join()).toContain('"stockDiameter"');
  });

  it('tells its faults in German', () => {
    const read = flowOf([{ ...slot, kind: 'slott' }]);
    const messages = read.ok ? [] : read.faults.map((fault) => faultMessage(fault, german));
    expect(messages.join()).toContain('Erwartet ist ein Formelement eines Blocks');
  });
});

/** Sentences of the job that is begun with these features. */
function refusedWith(...features: readonly object[]): readonly string[] {
  const read = resolveFlow(flowOf(features), kinds);
  if (!read.ok) throw new Error(JSON.stringify(read.faults));
  const worked = workOut(read.flow, cardNamed('metric-lathe'), {});
  return worked.ok ? [] : worked.faults.map((fault) => fault.replaceAll('\u00a0', ' '));
}

// Source: geometry: a cut takes metal that is there, and leaves some under and beside a slot.
describe('a job with a block', () => {
  it('begins when everything has room', () => {
    expect(refusedWith(face, slot, shoulder, hole)).toEqual([]);
    expect(refusedWith({ ...face, size: mm(18) })).toEqual([]);
    expect(refusedWith({ ...hole, fromFront: mm(2.5), depth: mm(18) })).toEqual([]);
    expect(refusedWith(slot, { ...hole, fromFront: mm(12), depth: mm(12) })).toEqual([]);
    expect(refusedWith(shoulder, { ...hole, depth: mm(18) })).toEqual([]);
  });

  it.each([
    ['a face higher than the stock', [{ ...face, size: mm(18.5) }], '18.50 mm', '18.00 mm'],
    [
      'a slot as deep as what the face leaves',
      [face, { ...slot, depth: mm(16) }],
      '16.00 mm',
      '16.00 mm',
    ],
    ['a slot as wide as the block', [{ ...slot, width: mm(25) }], '25.00 mm', '25.00 mm'],
    ['a slot that reaches past the back', [{ ...slot, from: mm(16) }], '26.00 mm', '25.00 mm'],
    [
      'a shoulder as wide as the block is long',
      [{ ...shoulder, width: mm(60) }],
      '60.00 mm',
      '60.00 mm',
    ],
    ['a hole deeper than the block', [{ ...hole, depth: mm(19) }], '19.00 mm', '18.00 mm'],
    [
      'a hole in a slot that goes through its floor',
      [slot, { ...hole, fromFront: mm(12), depth: mm(13) }],
      '13.00 mm',
      '12.00 mm',
    ],
    ['a slot that begins before the front', [{ ...slot, from: mm(-2) }], '−2.00 mm', '0.00 mm'],
    ['a hole over the right edge', [{ ...hole, fromLeft: mm(58) }], '60.50 mm', '60.00 mm'],
    ['a hole over the front edge', [{ ...hole, fromFront: mm(2) }], '2.50 mm', '2.00 mm'],
  ])('does not begin with %s', (_what, features, wanted, there) => {
    const faults = refusedWith(...features);
    expect(faults).toHaveLength(1);
    expect(faults[0]).toContain(`it needs ${wanted}, and the block has ${there} there`);
  });
});
