import { describe, expect, it } from 'vitest';
import {
  isTyped,
  rangeText,
  readInput,
  shownInput,
  type TypedInput,
  unitOfInput,
} from '../../../src/screens/begin/input-text.ts';
import { hingePin } from '../../flow/shipped.ts';

function inputNamed(id: string): TypedInput {
  const input = hingePin().file.inputs.find((one) => one.id === id);
  if (!input || !isTyped(input)) throw new Error(`No number is called ${id}.`);
  return input;
}
const bar = inputNamed('barDiameter');

describe('a number of a job', () => {
  // 1 inch is 25.4 mm exactly (International Yard and Pound Agreement, 1959).
  it.each([
    ['25', 'metric', 25],
    ['24.95', 'metric', 24.95],
    ['1 in', 'metric', 25.4],
    ['1 1/8 in', 'metric', 28.575],
    ['7/8"', 'metric', 22.225],
    ['1', 'inch', 25.4],
    ['1 1/8', 'inch', 28.575],
    ['25 mm', 'inch', 25],
    [' 2.5 cm ', 'metric', 25],
  ] as const)('%s at %s dials is %s mm', (text, units, mm) => {
    const read = readInput(bar, text, units);
    expect(read.ok && read.value).toBeCloseTo(mm, 9);
  });

  it('tells how it was read, in the unit of the flow', () => {
    expect(readInput(bar, '1 1/8 in', 'metric')).toMatchObject({ readAs: '28.575 mm' });
  });

  it.each([
    ['', /empty/],
    ['wide', /does not start with a number/],
    ['25 rpm', /allowed here/],
    ['17.9', /must be 18 to 40 mm/],
    ['40.1', /must be 18 to 40 mm/],
    ['1/0 in', /divides by nothing/],
  ])('"%s" is refused with a sentence that names the field', (text, sentence) => {
    const read = readInput(bar, text, 'metric');
    expect(read).toMatchObject({ ok: false, fault: expect.stringMatching(sentence) });
    expect(read).toMatchObject({ fault: expect.stringMatching(/^Bar diameter/) });
  });

  it('is shown and bounded in the unit of the dials', () => {
    expect(unitOfInput(bar, 'inch')).toBe('in');
    expect(shownInput(bar, 25.4, 'inch')).toBe('1');
    expect(rangeText(bar, 'metric')).toBe('18 to 40 mm');
    expect(rangeText(bar, 'inch')).toBe('0.7087 to 1.5748 in');
  });
});
