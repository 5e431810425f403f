import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { readCard } from '../../../src/flow/index.ts';
import { cardFaults, cardTexts, cardWith } from '../../../src/screens/toolroom/card-draft.ts';
import { englishLanguage } from '../../../src/texts/index.ts';

const folder = new URL('../../../flows/machines/', import.meta.url);
const shipped = readdirSync(folder).map(
  (name) => [name, readFileSync(new URL(name, folder), 'utf8')] as const,
);
const [, first = ''] = shipped.find(([name]) => name === 'metric-lathe.json') ?? [];

function textsIn(text: string) {
  const texts = cardTexts(text);
  if (!texts) throw new Error('No card.');
  return texts;
}

function changed(field: string, value: string) {
  const texts = { ...textsIn(first), [field]: value };
  const text = cardWith(first, texts, englishLanguage);
  return { text, faults: cardFaults(text, texts, englishLanguage) };
}

describe('a machine card in its form', () => {
  test.each(shipped)('says the same as its text: %s', (_name, text) => {
    expect(JSON.parse(cardWith(text, textsIn(text), englishLanguage))).toEqual(JSON.parse(text));
  });

  test('takes speeds as they stand on the plate, the unit once', () => {
    const read = readCard('card', changed('speeds', '450, 70, 200 rpm').text);
    expect(read.ok && read.value.values.speeds).toEqual([70, 200, 450]);
  });

  test('leaves out what is emptied', () => {
    const { text, faults } = changed('chuckLimit', '');
    expect(JSON.parse(text)).not.toHaveProperty('chuckLimit');
    expect(faults).toEqual({ fields: {}, others: [] });
  });

  test.each([
    ['chuckLimit', '1600', /has no unit/],
    ['crossDivision', '0.02 rpm', /has the unit "rpm"/],
    ['speeds', '', /./],
    ['efficiency', '7', /./],
    ['title', '', /./],
  ])('tells the fault beside its field: %s as "%s"', (field, value, says) => {
    const { faults } = changed(field, value);
    expect(faults.fields[field]).toMatch(says);
    expect(faults.others).toEqual([]);
  });

  test('keeps what the form does not know', () => {
    const more = JSON.stringify({ ...JSON.parse(first), $schema: 'there', id: 'ours' });
    expect(JSON.parse(cardWith(more, textsIn(more), englishLanguage))).toMatchObject({
      $schema: 'there',
      id: 'ours',
    });
  });

  test('is not shown for a text that is no card', () => {
    expect(['', '[', '7', 'null'].map(cardTexts)).toEqual([null, null, null, null]);
  });
});
