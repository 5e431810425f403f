/** The German texts of the shipped flow and machine kind: whole, and only texts. */

import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readFlow, readKind, textsOfFile, translateFile } from '../../src/flow/index.ts';
import { german } from '../../src/texts/de/index.ts';

const textOf = (path: string) =>
  readFileSync(new URL(`../../flows/${path}`, import.meta.url), 'utf8');

const shipped = [
  { file: 'gate-hinge-pin.json', texts: 'texts/de/gate-hinge-pin.json' },
  { file: 'kinds/lathe.json', texts: 'texts/de/lathe.json' },
] as const;

describe.each(shipped)('the German of $file', ({ file, texts }) => {
  const translated = translateFile(texts, textOf(file), textOf(texts));

  it('has every text and no other, with the same {names}', () => {
    expect(translated.ok ? [] : translated.faults).toEqual([]);
  });

  it('changes nothing but texts', () => {
    const after = translated.ok ? translated.text : '';
    expect(withoutTexts(JSON.parse(after))).toEqual(withoutTexts(JSON.parse(textOf(file))));
    expect([...textsOfFile(after).keys()]).toEqual([...textsOfFile(textOf(file)).keys()]);
  });
});

describe('the hinge pin in German', () => {
  it('is read without a fault: no word means two things', () => {
    const [flow, kind] = shipped.map(({ file, texts }) => {
      const made = translateFile(texts, textOf(file), textOf(texts));
      return made.ok ? made.text : '';
    });
    const lathe = readKind('lathe', kind ?? '', german);
    expect(lathe.ok ? [] : lathe.faults).toEqual([]);
    const kinds = new Map(lathe.ok ? [[lathe.value.id, lathe.value] as const] : []);
    const read = readFlow('pin', flow ?? '', kinds, german);
    expect(read.ok ? [] : read.faults).toEqual([]);
  });
});

describe('a file of texts', () => {
  const small = JSON.stringify({ title: 'Pin', steps: [{ id: 'face', say: 'Face {left}.' }] });
  const withTexts = (texts: object) =>
    `{ "followrest": "texts", "version": 1, "language": "de", "of": "pin",\n  "texts": ${JSON.stringify(texts)} }`;
  const faultsOf = (texts: object) => {
    const made = translateFile('de.json', small, withTexts(texts));
    return made.ok ? [] : made.faults.map(({ line, message }) => `${line}: ${message}`);
  };

  it('is told what is unknown, what is missing and which names differ, with its line', () => {
    expect(faultsOf({ title: 'Bolzen', 'steps.face.say': '{left} ab.' })).toEqual([]);
    expect(faultsOf({ 'steps.face.say': 'Plan.', 'steps.fase.say': 'x' })).toEqual([
      '2: The text puts in {}, but the English one {left}. Use the same names.',
      expect.stringContaining('2: There is no text "steps.fase.say".'),
      '2: The text "title" is missing. Add it to "texts".',
    ]);
  });
});

/** The same value with every string that is a text made equal. */
function withoutTexts(value: unknown, key = ''): unknown {
  if (Array.isArray(value)) return value.map((one) => withoutTexts(one, key));
  if (typeof value !== 'object' || value === null) {
    return typeof value === 'string' && !idKeys.has(key) ? '' : value;
  }
  return Object.fromEntries(
    Object.entries(value).map(([name, one]) => [name, withoutTexts(one, name)]),
  );
}

/** Keys of ids and targets, which must stay. */
const idKeys = new Set(
  'id machineKind kind next rule input working reading card unit quantity part direction moment fact state side'.split(
    ' ',
  ),
);
