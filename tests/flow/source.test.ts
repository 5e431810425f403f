import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Fault, readFlow } from '../../src/flow/index.ts';
import { deepestNesting, largestFile, readSource } from '../../src/flow/source.ts';
import { kinds, textOf } from './shipped.ts';

const seed = 20_261_125;

/** Lines end as JSON's own newlines do; a fault may stand just behind the last sign of its line. */
function isInside(text: string, { line, column }: Fault): boolean {
  const found = text.split(/\r\n|\n|\r/)[line - 1];
  return found !== undefined && column >= 1 && column <= found.length + 1;
}

const faultsOf = (text: string): readonly Fault[] => {
  const read = readSource('any.json', text);
  return read.ok ? [] : read.faults;
};

/** Signs that JSON is made of, so that chance comes near to it. */
const nearly = fc
  .array(
    fc.constantFrom(
      '{',
      '}',
      '[',
      ']',
      ',',
      ':',
      '"',
      '"a"',
      '"b"',
      '1',
      '-',
      '.5',
      'e',
      'true',
      'null',
      ' ',
      '\n',
      '\r\n',
      '\\',
      '\\u00',
      '//',
      "'",
      '\uFEFF',
      'é',
      '😀',
    ),
    { maxLength: 40 },
  )
  .map((parts) => parts.join(''));

describe('readSource', () => {
  test('never throws, and points into the text it refuses', () => {
    const check = (text: string) => {
      for (const fault of faultsOf(text)) expect(isInside(text, fault), fault.message).toBe(true);
    };
    fc.assert(fc.property(fc.string({ maxLength: 200, unit: 'binary' }), check), {
      seed,
      numRuns: 1000,
    });
    fc.assert(fc.property(nearly, check), { seed, numRuns: 1500 });
  });

  test('takes nothing that the language itself refuses', () => {
    fc.assert(
      fc.property(nearly, (text) => {
        if (faultsOf(text).length === 0) JSON.parse(text.replace(/^\uFEFF/, ''));
      }),
      { seed, numRuns: 1500 },
    );
  });

  test('gives what JSON.parse gives', () => {
    fc.assert(
      fc.property(fc.jsonValue({ maxDepth: 6 }), fc.constantFrom(0, 1, 2), (value, indent) => {
        const text = JSON.stringify(value, null, indent);
        const read = readSource('any.json', text);
        const forbidden = /"(__proto__|constructor|prototype)":/.test(text);
        expect(read.ok ? read.source.value : 'refused').toEqual(
          forbidden ? 'refused' : JSON.parse(text),
        );
      }),
      { seed, numRuns: 600 },
    );
  });

  test('reads the mark that some editors put before the first sign', () => {
    expect(readSource('any.json', '\uFEFF{}').ok).toBe(true);
  });

  test.each(['', ' \n\t'])('says that %j is empty', (text) => {
    expect(faultsOf(text)).toEqual([
      { file: 'any.json', path: '$', line: 1, column: 1, message: 'The file is empty.' },
    ]);
  });

  test('refuses a file of more than 1 MiB before reading it', () => {
    const text = (length: number) => `"${'x'.repeat(length - 2)}"`;
    expect(readSource('any.json', text(largestFile)).ok).toBe(true);
    expect(faultsOf(text(1_048_577))[0]?.message).toBe(
      'The file has 1048577 characters; at most 1048576 are read. Split the job into two flows.',
    );
  });

  test('refuses nesting over 32, however deep', () => {
    const nested = (depth: number) => `${'['.repeat(depth)}${']'.repeat(depth)}`;
    expect(readSource('any.json', nested(32)).ok).toBe(true);
    for (const depth of [33, 500_000]) {
      expect(faultsOf(nested(depth))).toMatchObject([
        {
          file: 'any.json',
          path: '$',
          line: 1,
          column: 33,
          message: 'Nested deeper than 32 levels. Make it flatter.',
        },
      ]);
    }
    expect(deepestNesting).toBe(32);
  });

  test('does not count brackets inside text', () => {
    expect(readSource('any.json', JSON.stringify(`\\"${'['.repeat(100)}`)).ok).toBe(true);
  });
});

describe('the shipped flow with one sign changed', () => {
  const whole = textOf('gate-hinge-pin.json');
  const sign = fc.constantFrom(
    '',
    '{',
    '}',
    '[',
    ']',
    ',',
    ':',
    '"',
    '0',
    '9',
    '-',
    '.',
    'x',
    'Q',
    ' ',
    '\n',
    '\\',
    '»',
  );

  test('still reads, or is refused with places in the text', () => {
    fc.assert(
      fc.property(fc.nat(whole.length - 1), sign, (at, put) => {
        const text = whole.slice(0, at) + put + whole.slice(at + 1);
        const read = readFlow('pin.json', text, kinds);
        const faults = read.ok ? [] : read.faults;
        expect(read.ok || faults.length > 0).toBe(true);
        for (const fault of faults) expect(isInside(text, fault), fault.message).toBe(true);
      }),
      { seed, numRuns: 250 },
    );
  });
});
