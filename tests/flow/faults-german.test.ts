/** What is wrong with a machine card is told in German, wherever the card goes wrong. */

import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { faultMessage, readCard } from '../../src/flow/index.ts';
import { german } from '../../src/texts/de/index.ts';
import { sourcesIn } from '../house/sources.ts';
import { templatesIn } from '../texts/worded-in.ts';

const whole = readFileSync(
  new URL('../../flows/machines/metric-lathe.json', import.meta.url),
  'utf8',
);
const card: Readonly<Record<string, unknown>> = JSON.parse(whole);
const changed = (part: object) => JSON.stringify({ ...card, ...part });

/** Files whose sentences a person sees who writes a card. */
const told = /^flow\/(?:card|json-fault|nearest|read-file|shape-fault|source)\.ts$/;

describe('a fault of a machine card in German', () => {
  it.each([
    ['empty', ' '],
    ['no object', '[]'],
    ['another file', changed({ followrest: 'flow' })],
    ['no version', changed({ version: undefined })],
    ['a strange key', changed({ chuckLimitt: '1600 rpm' })],
    ['a stranger key', changed({ qqq: 1 })],
    ['a missing key', changed({ title: undefined })],
    ['a number for a text', changed({ title: 5 })],
    ['a strange choice', changed({ units: 'metrik' })],
    ['too long a name', changed({ title: 'x'.repeat(61) })],
    ['no speeds', changed({ speeds: [] })],
    ['an id with a blank', changed({ id: 'my lathe' })],
    ['too much of a share', changed({ efficiency: 2 })],
    ['no unit', changed({ chuckLimit: '1600' })],
    ['a unit of something else', changed({ chuckLimit: '1600 mm' })],
    ['nothing at all', changed({ swing: '0 mm' })],
    ['a comma too many', whole.replace(/\n}/, ',\n}')],
    ['a comma too few', whole.replace(',', '')],
    ['an open quote', whole.replace('",', ',')],
    ['an open bracket', whole.slice(0, -3)],
    ['a word without quotes', whole.replace('"metric"', 'metric')],
    ['a remark', `// mine\n${whole}`],
    ['a key that comes twice', whole.replace('{', '{ "version": 1,')],
  ])('is told: %s', (_what, text) => {
    const read = readCard('card', text, german);
    expect(read.ok).toBe(false);
    for (const fault of read.ok ? [] : read.faults) {
      const sentence = faultMessage(fault, german);
      expect(sentence).toMatch(/\p{L}/u);
      expect(sentence).not.toMatch(/\b(?:the|is|this|here|found|write|take|missing|expected)\b/i);
    }
  });

  it('has German for every sentence there is', () => {
    const templates = Object.entries(sourcesIn('src')).flatMap(([path, source]) =>
      told.test(path) ? templatesIn(source) : [],
    );
    expect(templates.length).toBeGreaterThan(25);
    const known = german.sentences ?? {};
    expect(templates.filter((key) => !Object.hasOwn(known, key))).toEqual([]);
  });

  it('has German for the cards that are shipped', () => {
    const names = readdirSync(new URL('../../flows/machines/', import.meta.url));
    const texts = readdirSync(new URL('../../flows/texts/de/', import.meta.url));
    expect(names.filter((name) => !texts.includes(name))).toEqual([]);
  });
});
