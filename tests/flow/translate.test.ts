/** The German texts of the shipped flows, machine kinds and machine cards: whole, and only texts. */

import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readFlow, readKind, textsOfFile, translateFile } from '../../src/flow/index.ts';
import { german } from '../../src/texts/de/index.ts';

const textOf = (path: string) =>
  readFileSync(new URL(`../../flows/${path}`, import.meta.url), 'utf8');

const jsonIn = (folder: string) =>
  readdirSync(new URL(`../../flows/${folder}`, import.meta.url)).filter((name) =>
    name.endsWith('.json'),
  );
const flows = jsonIn('.').map((name) => ({ file: name, texts: `texts/de/${name}` }));
const machines = jsonIn('kinds').map((name) => ({
  file: `kinds/${name}`,
  texts: `texts/de/${name}`,
}));
const cards = jsonIn('machines').map((name) => ({
  file: `machines/${name}`,
  texts: `texts/de/${name}`,
}));
const shipped = [...machines, ...flows, ...cards];

function inGerman({ file, texts }: (typeof shipped)[number]): string {
  const made = translateFile(texts, textOf(file), textOf(texts));
  return made.ok ? made.text : '';
}

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

describe('in German', () => {
  const read = machines.map((one) => readKind(one.file, inGerman(one), german));
  const kinds = new Map(read.flatMap((one) => (one.ok ? [[one.value.id, one.value]] : [])));

  it('every machine kind is read without a fault: no word means two things', () => {
    expect(read.flatMap((one) => (one.ok ? [] : one.faults))).toEqual([]);
  });

  it.each(flows)('$file is read without a fault: no word means two things', (one) => {
    const flow = readFlow(one.file, inGerman(one), kinds, german);
    expect(flow.ok ? [] : flow.faults).toEqual([]);
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
