import { describe, expect, it } from 'vitest';
import {
  isTyped,
  rangeText,
  readInput,
  shownInput,
  type TypedInput,
  unitOfInput,
} from '../../../src/screens/begin/input-text.ts';
import { german } from '../../../src/texts/de/index.ts';
import { englishLanguage } from '../../../src/texts/index.ts';
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
    const read = readInput(bar, text, units, englishLanguage);
    expect(read.ok && read.value).toBeCloseTo(mm, 9);
  });

  it('may have the decimal comma of its language, and is shown with it', () => {
    expect(readInput(bar, '24,95', 'metric', german)).toMatchObject({ value: 24.95 });
    expect(readInput(bar, '24,95', 'metric', englishLanguage)).toMatchObject({ ok: false });
    expect(shownInput(bar, 24.95, 'metric', german)).toBe('24,95');
    expect(rangeText(bar, 'inch', german)).toBe('0,7087 bis 1,5748 in');
  });

  it('tells how it was read, in the unit of the flow', () => {
    expect(readInput(bar, '1 1/8 in', 'metric', englishLanguage)).toMatchObject({
      readAs: '28.575 mm',
    });
  });

  it.each([
    ['', /empty/],
    ['wide', /does not start with a number/],
    ['25 rpm', /allowed here/],
    ['17.9', /must be 18 to 40 mm/],
    ['40.1', /must be 18 to 40 mm/],
    ['1/0 in', /divides by nothing/],
  ])('"%s" is refused with a sentence that names the field', (text, sentence) => {
    const read = readInput(bar, text, 'metric', englishLanguage);
    expect(read).toMatchObject({ ok: false, fault: expect.stringMatching(sentence) });
    expect(read).toMatchObject({ fault: expect.stringMatching(/^Bar diameter/) });
  });

  it('is shown and bounded in the unit of the dials', () => {
    expect(unitOfInput(bar, 'inch')).toBe('in');
    expect(shownInput(bar, 25.4, 'inch', englishLanguage)).toBe('1');
    expect(rangeText(bar, 'metric', englishLanguage)).toBe('18 to 40 mm');
    expect(rangeText(bar, 'inch', englishLanguage)).toBe('0.7087 to 1.5748 in');
  });
});
