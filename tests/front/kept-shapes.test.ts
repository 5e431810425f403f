import { describe, expect, it } from 'vitest';
import { judgeKept } from '../../src/front/kept-shapes.ts';
import { englishLanguage, frontTexts, sayIn } from '../../src/texts/index.ts';
import { textOf } from '../flow/shipped.ts';

const say = sayIn(englishLanguage, frontTexts);
const ida = { id: 'ida', name: 'Ida', addedAt: 1 };

describe('a kept value in a file', () => {
  it.each([
    ['settings', { theme: 'dark' }],
    ['slate', []],
    ['operator/ida', ida],
    ['card/metric-lathe', textOf('machines/metric-lathe.json')],
  ])('under "%s" is read by its owner', (key, value) => {
    expect(judgeKept(say)(key, value)).toBeNull();
  });

  it.each([
    ['settings', 7],
    ['slate', [{ question: 1 }]],
    ['operator/ida', { ...ida, name: '' }],
    ['operator/ruth', ida],
    ['card/x', { id: 'x' }],
    ['card/x', 'no card'],
    ['card/x', '{}'],
    ['secret/ida', 'x'],
    ['', ''],
  ])('under "%s" is refused when it is %j', (key, value) => {
    expect(judgeKept(say)(key, value)).toMatch(/cannot be read|nothing that this version keeps/);
  });
});
