import { describe, expect, test } from 'vitest';
import { faultText, readFlow } from '../../src/flow/index.ts';
import { type BadRow, badMeaning, badShape, badText, goodFlow } from './bad-flow-table.ts';
import { edited, unmarked } from './marked.ts';
import { kinds } from './shipped.ts';

function faultsOf(text: string): readonly string[] {
  const read = readFlow('small.json', text, kinds);
  return read.ok ? [] : read.faults.map(faultText);
}

function expected({ edits, faults }: BadRow): { text: string; lines: readonly string[] } {
  const { text, places } = unmarked(edited(goodFlow, edits));
  expect(places).toHaveLength(faults.length);
  return { text, lines: faults.map((fault, index) => `small.json:${places[index]} ${fault}`) };
}

test('the flow that is broken below is whole', () => {
  expect(faultsOf(goodFlow)).toEqual([]);
});

describe.each([
  ['no JSON', badText],
  ['no flow', badShape],
  ['a flow that does not hang together', badMeaning],
])('%s', (_, rows) => {
  test.each(rows)('$what', (row) => {
    const { text, lines } = expected(row);
    expect(faultsOf(text)).toEqual(lines);
  });
});
